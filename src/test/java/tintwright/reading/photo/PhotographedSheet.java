package tintwright.reading.photo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tintwright.colour.Grid;
import tintwright.colour.Spectrum;
import tintwright.reading.photo.sheet.Area;
import tintwright.reading.photo.sheet.MadeUpGreys;
import tintwright.reading.photo.sheet.MadeUpView;
import tintwright.reading.photo.sheet.SheetLayout;

/**
 * The printed sheet on a hull before a made-up phone. Paper, tape and phone are drawn from the seed and share nothing
 * with what reads the photo.
 */
public final class PhotographedSheet {
    /** Layers of tape that lie there. */
    public static final int LAYERS = 10;

    private static final int N = Grid.INSIDE.count();

    final SheetLayout layout = SheetLayout.A4;
    final SimulatedPhone phone;
    final Random random;
    final Spectrum hull;
    private final Spectrum paper;
    private final Spectrum tape;

    /** Light at a place of the sheet, mm, beyond what the phone's own unevenness does. */
    public interface Light {
        double at(double x, double y);
    }

    /**
     * How the photo is taken.
     *
     * @param finer so many dots of the sensor along each side of a pixel, averaged
     * @param fill  share of the picture that the paper covers
     * @param tilt  of the sheet away from square, radians
     */
    public record Taken(int wide, int high, int finer, double fill, double tilt, Light light) {}

    PhotographedSheet(Random random, SimulatedPhone phone, Spectrum hull) {
        this.random = random;
        this.phone = phone;
        this.hull = hull;
        this.paper = paper(0.80 + 0.07 * random.nextDouble());
        double scattering = 0.6 + 1.4 * random.nextDouble();
        double[] over = paper.toArray();
        for (int i = 0; i < N; i++) {
            over[i] = Math.min(0.99, 1 - (1 - over[i]) / (1 + (1 - over[i]) * scattering * LAYERS));
        }
        tape = Spectrum.of(Grid.INSIDE, over);
    }

    /**
     * @param seed     of phone, paper and tape
     * @param training surfaces that the phone's maker trained its colours on
     * @param hull     as a phone sees it: without gloss
     */
    public static PhotographedSheet of(long seed, List<Spectrum> training, Spectrum hull) {
        return new PhotographedSheet(new Random(seed), new SimulatedPhone(seed, training), hull);
    }

    private Spectrum paper(double level) {
        double glow = 0.08 + 0.12 * random.nextDouble();
        double tone = 0.02 * random.nextGaussian();
        double[] values = new double[N];
        for (int i = 0; i < N; i++) {
            double nm = 400 + 10.0 * i;
            double bright = glow * Math.exp(-(nm - 445) * (nm - 445) / (2 * 22 * 22));
            values[i] = level * (1 + tone * (nm - 550) / 150) / (1 + Math.exp((408 - nm) / 6)) + level * bright;
        }
        return Spectrum.of(Grid.INSIDE, values);
    }

    /**
     * Takes the photo.
     *
     * @param sign    of the shop, in the corner codes
     * @param chips   in the places from the first on
     * @param leftOut place of a chip that is not laid down; 0 for none
     */
    public void shoot(Path file, String sign, List<Spectrum> chips, int leftOut, Taken taken) throws IOException {
        int wide = taken.wide() * taken.finer();
        int high = taken.high() * taken.finer();
        MadeUpView view = new MadeUpView(
                layout,
                wide,
                high,
                taken.fill(),
                0.2 * random.nextGaussian(),
                taken.tilt(),
                2 * Math.PI * random.nextDouble(),
                0,
                0,
                Double.POSITIVE_INFINITY,
                0);
        BufferedImage page = MadeUpGreys.page(layout, sign);
        byte[] print = ((DataBufferByte) page.getRaster().getDataBuffer()).getData();
        List<Spectrum> surfaces = new ArrayList<>(List.of(hull, paper, flat(0.05), tape));
        surfaces.addAll(chips);
        double[] at = new double[2];
        double perMm = page.getWidth() / layout.width();
        double[] extra = new double[wide * high];
        double[] codes = phone.shoot(
                wide,
                high,
                surfaces,
                (x, y) -> {
                    int index = y * wide + x;
                    extra[index] = 1;
                    if (!view.sees(x + 0.5, y + 0.5, at)
                            || at[0] < 0
                            || at[1] < 0
                            || at[0] >= layout.width()
                            || at[1] >= layout.height()) {
                        return 0;
                    }
                    extra[index] = taken.light().at(at[0], at[1]);
                    if (in(layout.window(), at)) {
                        return 0;
                    }
                    if (in(layout.tape(), at)) {
                        return 3;
                    }
                    for (int i = 0; i < chips.size(); i++) {
                        Area place = layout.places().get(i);
                        if (i + 1 != leftOut
                                && Math.abs(at[0] - place.middleX()) < 15
                                && Math.abs(at[1] - place.middleY()) < 15) {
                            return 4 + i;
                        }
                    }
                    int px = Math.min(page.getWidth() - 1, (int) (at[0] * perMm));
                    int py = Math.min(page.getHeight() - 1, (int) (at[1] * perMm));
                    return (print[py * page.getWidth() + px] & 255) < 128 ? 2 : 1;
                },
                (x, y) -> extra[y * wide + x]);
        phone.save(averaged(codes, taken), taken.wide(), taken.high(), file);
    }

    private static double[] averaged(double[] codes, Taken taken) {
        int finer = taken.finer();
        if (finer == 1) {
            return codes;
        }
        double[] out = new double[3 * taken.wide() * taken.high()];
        int row = 3 * taken.wide() * finer;
        for (int y = 0; y < taken.high() * finer; y++) {
            for (int x = 0; x < taken.wide() * finer; x++) {
                int to = 3 * (Math.floorDiv(y, finer) * taken.wide() + Math.floorDiv(x, finer));
                for (int k = 0; k < 3; k++) {
                    out[to + k] += codes[y * row + 3 * x + k] / (finer * finer);
                }
            }
        }
        return out;
    }

    private static boolean in(Area area, double[] at) {
        return at[0] >= area.left() && at[0] < area.right() && at[1] >= area.top() && at[1] < area.bottom();
    }

    private static Spectrum flat(double level) {
        double[] values = new double[N];
        java.util.Arrays.fill(values, level);
        return Spectrum.of(Grid.INSIDE, values);
    }
}
