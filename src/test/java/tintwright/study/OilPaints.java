package tintwright.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.Reference;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.reading.FilmState;
import tintwright.reading.SpectralReading;
import tintwright.shelf.Base;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Stock;
import tintwright.shelf.Tint;

/**
 * Real paints mixed with white: oil paints read over a white card, gloss included. Geldof and others (2018),
 * Heritage Science 6:17, data CC0. About half of these films do not hide.
 */
final class OilPaints {
    static final int N = Grid.INSIDE.count();

    /**
     * A tint in white at several shares.
     *
     * @param name   of the family
     * @param said   what a person would call the pigment from the program's list
     * @param white  code of the white alone
     * @param mixes  code and share of the tint by mass, 0 to 1; the pure paint where it was read
     * @param choose true when constants may be chosen on it, false when it is only reported
     */
    record Family(String name, PigmentFamily said, String white, Map<String, Double> mixes, boolean choose) {}

    /** Every other family by its code is for choosing. */
    static final List<Family> FAMILIES = List.of(
            family("eosin lake", PigmentFamily.ORGANIC_RED, "07A", true, "03A", 1, "03B", 0.111, "03C", 0.503),
            family("red lead", PigmentFamily.ORANGE, "07A", false, "05A", 1, "05B", 0.092, "05C", 0.508),
            family(
                    "bone black",
                    PigmentFamily.CARBON_BLACK,
                    "07A",
                    true,
                    "07C",
                    0.029,
                    "07D",
                    0.096,
                    "07E",
                    0.522,
                    "07F",
                    0.742),
            family("bone black in lead", PigmentFamily.CARBON_BLACK, "08A", false, "08B", 0.009, "08C", 0.102),
            family("viridian", PigmentFamily.PHTHALO_GREEN, "07A", true, "09A", 1, "09B", 0.116, "09C", 0.497),
            family("ultramarine", PigmentFamily.ULTRAMARINE, "07A", false, "11A", 1, "11B", 0.107, "11C", 0.51),
            family("cobalt blue", PigmentFamily.ULTRAMARINE, "07A", true, "12A", 1, "12B", 0.1, "12C", 0.5),
            family("chrome yellow", PigmentFamily.ORGANIC_YELLOW, "07A", false, "14A", 1, "14B", 0.088, "14C", 0.489));

    private final Map<String, Spectrum> read = new LinkedHashMap<>();

    OilPaints() {
        for (String file : List.of("oil-mixtures-geldof-2018.csv", "oil-mixtures-geldof-2018-more.csv")) {
            for (String[] row : Reference.rows("paints/" + file)) {
                if (row[1].equals("paint_over_white")) {
                    double[] r = new double[N];
                    for (int w = 0; w < N; w++) {
                        r[w] = Double.parseDouble(row[5 + w]);
                    }
                    read.put(row[0], Spectrum.of(Grid.INSIDE, r));
                }
            }
        }
    }

    private static Family family(String name, PigmentFamily said, String white, boolean choose, Object... mixes) {
        Map<String, Double> shares = new LinkedHashMap<>();
        for (int i = 0; i < mixes.length; i += 2) {
            shares.put((String) mixes[i], ((Number) mixes[i + 1]).doubleValue());
        }
        return new Family(name, said, white, shares, choose);
    }

    Spectrum spectrum(String code) {
        return read.get(code);
    }

    Lab lab(String code) {
        return Lab.of(read.get(code), Viewing.D65_10);
    }

    static Parts parts(double share) {
        return Parts.of(Map.of("white", 100 * (1 - share), "tint", 100 * share));
    }

    /** The white and all mixes but one, as chips; the tint said to be of a family. */
    Shelf without(Family family, String left, PigmentFamily said) {
        List<Chip> chips = new ArrayList<>();
        chips.add(chip("white", 0, family.white()));
        family.mixes().forEach((code, share) -> {
            if (!code.equals(left)) {
                chips.add(chip(code, share, code));
            }
        });
        return new Shelf(
                "oil",
                List.of(new Base("white", "white", 1.5, false, Stock.UNKNOWN), Tint.of("tint", family.name(), said)),
                chips);
    }

    private Chip chip(String id, double share, String code) {
        return new Chip(
                id,
                parts(share),
                List.of(new SpectralReading(read.get(code), 0.004, Geometry.SPECULAR_INCLUDED, FilmState.CURED)),
                Optional.empty(),
                "");
    }
}
