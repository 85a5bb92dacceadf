package tintwright.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.bench.SheetBench;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.reading.FilmState;
import tintwright.reading.photo.PhotographedSheet;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.shelf.Shelf;

/**
 * The photo of the demo: the port bow of the invented boat with the sheet on it and seven chips of the invented shop,
 * weighed and nothing more, with ten layers of plumber's tape, before an invented phone in open shade.
 *
 * <p>Assumptions on top of {@link HiddenBench}'s: in shade a phone does not see the surface's 4 % of gloss; the
 * phone's maker trained its colours on mixes of the same pigments.
 */
public final class DemoPhoto {
    static final String NAME = "port-bow.jpg";
    /** The first one whose phone burns nothing out. */
    private static final long SEED = 1;

    private static final double GLOSS = 0.04;
    private static final double WHITE_GRAMS = 50;

    private final HiddenBench bench = new HiddenBench(20260502);
    private final Map<String, HiddenPigment> inside;
    private final List<SheetContents.Chip> weighed = new ArrayList<>();
    private final List<Spectrum> chips = new ArrayList<>();
    private final Spectrum hull;

    /**
     * @param inside what is really in each tub
     * @param hull   reflectances of the hull, gloss included
     */
    DemoPhoto(Map<String, HiddenPigment> inside, double[] hull) {
        this.inside = inside;
        this.hull = matt(hull);
        chip("white", Map.of());
        chip("black 0.1", Map.of("soot-black", 0.05));
        chip("black 0.5", Map.of("soot-black", 0.25));
        chip("black 2", Map.of("soot-black", 1.0));
        chip("red 1", Map.of("brick-red", 0.5));
        chip("yellow 1", Map.of("straw-yellow", 0.5));
        chip("green 0.4", Map.of("bottle-green", 0.2));
    }

    private void chip(String name, Map<String, Double> tints) {
        Map<String, Double> shown = new LinkedHashMap<>();
        shown.put("plain-white", WHITE_GRAMS);
        shown.putAll(tints);
        Map<HiddenPigment, Double> mix = new EnumMap<>(HiddenPigment.class);
        shown.forEach((id, grams) -> mix.put(inside.get(id), grams));
        chips.add(matt(HiddenBench.reflectance(bench.weighed(mix))));
        weighed.add(new SheetContents.Chip(chips.size(), name, shown, FilmState.CURED));
    }

    private static Spectrum matt(double[] reflectance) {
        double[] seen = reflectance.clone();
        for (int i = 0; i < seen.length; i++) {
            seen[i] -= GLOSS;
        }
        return Spectrum.of(Grid.INSIDE, seen);
    }

    /** @return what the person says lies on the sheet: by weight only */
    SheetContents contents() {
        return new SheetContents(weighed, PhotographedSheet.LAYERS, Optional.empty());
    }

    /** @return the hull as nobody at the bench can know it */
    public Lab truth() {
        return Lab.of(hull, Viewing.D65_10);
    }

    /** @return what a cured dab of this looks like beside the hull, gloss against gloss */
    public Lab dab(Map<String, Double> grams) {
        Map<HiddenPigment, Double> mix = new EnumMap<>(HiddenPigment.class);
        grams.forEach((id, mass) -> mix.put(inside.get(id), mass));
        return Lab.of(matt(HiddenBench.reflectance(mix)), Viewing.D65_10);
    }

    void take(Path file, Shelf shelf) throws IOException {
        PhotographedSheet.of(SEED, trained(), hull)
                .shoot(
                        file,
                        SheetBench.signOf(shelf),
                        chips,
                        0,
                        new PhotographedSheet.Taken(1200, 1600, 2, 0.5, 0.25, (x, y) -> 1));
    }

    /** Each pigment in much and in little white. */
    private List<Spectrum> trained() {
        List<Spectrum> all = new ArrayList<>();
        for (HiddenPigment pigment : HiddenPigment.values()) {
            for (double share : new double[] {0.05, 0.5, 5}) {
                Map<HiddenPigment, Double> mix = new EnumMap<>(HiddenPigment.class);
                mix.put(HiddenPigment.WHITE, 50.0);
                mix.merge(pigment, share, Double::sum);
                all.add(matt(HiddenBench.reflectance(mix)));
            }
        }
        return all;
    }
}
