package tintwright.reading.photo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.reading.FilmState;
import tintwright.reading.photo.sheet.Area;
import tintwright.reading.photo.sheet.MadeUpGreys;
import tintwright.reading.photo.sheet.MadeUpView;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.reading.photo.sheet.SheetLayout;
import tintwright.shelf.Parts;
import tintwright.study.HiddenShop;

/**
 * A hull, a sheet with a hidden shop's chips and tape on it, and a made-up phone before them. Paper, tape, hull, chips
 * and phone are drawn from the seed and share nothing with what reads the photo.
 */
final class SheetScene {
    static final Viewing VIEWING = Viewing.D65_10;
    private static final int N = Grid.INSIDE.count();
    private static final int HIGH = 720;
    private static final int WIDE = 540;
    private static final int LAYERS = 10;

    final SheetLayout layout = SheetLayout.A4;
    final HiddenShop shop;
    final SimulatedPhone phone;
    final Random random;
    final Spectrum hull;
    final Spectrum paper;
    final Spectrum tape;
    final List<Chip> chips = new ArrayList<>();
    private final List<Spectrum> surfaces = new ArrayList<>();

    /** A chip as it truly is, and as it was weighed. */
    record Chip(String name, Map<String, Double> weighed, Spectrum truly) {}

    SheetScene(long seed, List<Spectrum> training, PaintedHulls hulls) {
        random = new Random(seed * 7919 + 13);
        phone = new SimulatedPhone(seed, training);
        shop = new HiddenShop(seed + 5000);
        hull = hulls.random(random);
        paper = paper(0.80 + 0.07 * random.nextDouble());
        double scattering = 0.6 + 1.4 * random.nextDouble();
        double[] over = paper.toArray();
        for (int i = 0; i < N; i++) {
            over[i] = Math.min(0.99, 1 - (1 - over[i]) / (1 + (1 - over[i]) * scattering * LAYERS));
        }
        tape = Spectrum.of(Grid.INSIDE, over);
        chip("white", Map.of());
        for (double black : new double[] {0.1, 0.5, 2}) {
            chip("black " + black, Map.of("carbon-black", black));
        }
        chip("red", Map.of("red-iron-oxide", 1.0));
        chip("yellow", Map.of("yellow-iron-oxide", 1.0));
        chip("blue", Map.of("phthalo-blue", 0.4));
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

    private void chip(String name, Map<String, Double> tints) {
        Map<String, Double> weighed = new LinkedHashMap<>();
        weighed.put("white", 20.0);
        tints.forEach((id, percent) -> weighed.put(id, 20 * percent / 100));
        Map<String, Double> truly = new LinkedHashMap<>();
        weighed.forEach((id, grams) -> truly.put(id, Math.max(0, grams + 0.005 * random.nextGaussian())));
        double[] seen = shop.reflectance(Parts.of(truly)).toArray();
        for (int i = 0; i < N; i++) {
            seen[i] -= 0.04; // a photo in shade does not see the gloss that the shop's instrument does
        }
        chips.add(new Chip(name, weighed, Spectrum.of(Grid.INSIDE, seen)));
    }

    Lab truth() {
        return Lab.of(hull, VIEWING);
    }

    /** What the person says lies on the sheet. */
    SheetContents contents(int chips, boolean tape) {
        List<SheetContents.Chip> lying = new ArrayList<>();
        for (int i = 0; i < chips; i++) {
            Chip one = this.chips.get(i);
            lying.add(new SheetContents.Chip(i + 1, one.name(), one.weighed(), FilmState.CURED));
        }
        return new SheetContents(lying, tape ? LAYERS : 0, Optional.empty());
    }

    /**
     * Takes the photo.
     *
     * @param leftOut place of a chip that is not laid down though it was said to be; 0 for none
     */
    void shoot(Path file, String sign, int leftOut, double tilt) throws IOException {
        codes(file, sign, leftOut, tilt, (x, y) -> 1);
    }

    /** Light at a place of the sheet, mm, beyond what the phone's own unevenness does. */
    interface Light {
        double at(double x, double y);
    }

    void codes(Path file, String sign, int leftOut, double tilt, Light light) throws IOException {
        MadeUpView view = new MadeUpView(
                layout,
                WIDE,
                HIGH,
                0.62,
                0.2 * random.nextGaussian(),
                tilt,
                2 * Math.PI * random.nextDouble(),
                0,
                0,
                Double.POSITIVE_INFINITY,
                0);
        BufferedImage page = MadeUpGreys.page(layout, sign);
        byte[] print = ((DataBufferByte) page.getRaster().getDataBuffer()).getData();
        surfaces.clear();
        surfaces.add(hull);
        surfaces.add(paper);
        surfaces.add(flat(0.05));
        surfaces.add(tape);
        chips.forEach(one -> surfaces.add(one.truly()));
        double[] at = new double[2];
        double perMm = page.getWidth() / layout.width();
        double[] extra = new double[WIDE * HIGH];
        double[] codes = phone.shoot(
                WIDE,
                HIGH,
                surfaces,
                (x, y) -> {
                    int index = y * WIDE + x;
                    extra[index] = 1;
                    if (!view.sees(x + 0.5, y + 0.5, at)
                            || at[0] < 0
                            || at[1] < 0
                            || at[0] >= layout.width()
                            || at[1] >= layout.height()) {
                        return 0;
                    }
                    extra[index] = light.at(at[0], at[1]);
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
                (x, y) -> extra[y * WIDE + x]);
        phone.save(codes, WIDE, HIGH, file);
    }

    private static boolean in(Area area, double[] at) {
        return at[0] >= area.left() && at[0] < area.right() && at[1] >= area.top() && at[1] < area.bottom();
    }

    static Spectrum flat(double level) {
        double[] values = new double[N];
        java.util.Arrays.fill(values, level);
        return Spectrum.of(Grid.INSIDE, values);
    }
}
