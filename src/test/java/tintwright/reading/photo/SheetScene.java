package tintwright.reading.photo;

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
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.reading.photo.sheet.SheetLayout;
import tintwright.shelf.Parts;
import tintwright.study.HiddenShop;

/** A hull, a sheet with a hidden shop's chips and tape on it, and a made-up phone before them, all from one seed. */
final class SheetScene {
    static final Viewing VIEWING = Viewing.D65_10;
    private static final int N = Grid.INSIDE.count();
    private static final int HIGH = 720;
    private static final int WIDE = 540;

    final SheetLayout layout = SheetLayout.A4;
    final HiddenShop shop;
    final SimulatedPhone phone;
    final Random random;
    final Spectrum hull;
    final List<Chip> chips = new ArrayList<>();
    private final PhotographedSheet sheet;

    /** A chip as it truly is, and as it was weighed. */
    record Chip(String name, Map<String, Double> weighed, Spectrum truly) {}

    SheetScene(long seed, List<Spectrum> training, PaintedHulls hulls) {
        random = new Random(seed * 7919 + 13);
        phone = new SimulatedPhone(seed, training);
        shop = new HiddenShop(seed + 5000);
        hull = hulls.random(random);
        sheet = new PhotographedSheet(random, phone, hull);
        chip("white", Map.of());
        for (double black : new double[] {0.1, 0.5, 2}) {
            chip("black " + black, Map.of("carbon-black", black));
        }
        chip("red", Map.of("red-iron-oxide", 1.0));
        chip("yellow", Map.of("yellow-iron-oxide", 1.0));
        chip("blue", Map.of("phthalo-blue", 0.4));
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
        return new SheetContents(lying, tape ? PhotographedSheet.LAYERS : 0, Optional.empty());
    }

    /**
     * Takes the photo.
     *
     * @param leftOut place of a chip that is not laid down though it was said to be; 0 for none
     */
    void shoot(Path file, String sign, int leftOut, double tilt) throws IOException {
        codes(file, sign, leftOut, tilt, (x, y) -> 1);
    }

    void codes(Path file, String sign, int leftOut, double tilt, PhotographedSheet.Light light) throws IOException {
        sheet.shoot(
                file,
                sign,
                chips.stream().map(Chip::truly).toList(),
                leftOut,
                new PhotographedSheet.Taken(WIDE, HIGH, 1, 0.62, tilt, light));
    }
}
