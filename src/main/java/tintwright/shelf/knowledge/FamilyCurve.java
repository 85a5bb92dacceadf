package tintwright.shelf.knowledge;

import java.util.EnumMap;
import java.util.Map;
import tintwright.colour.Grid;
import tintwright.shelf.PigmentFamily;

/**
 * What is expected of a tint before any chip: the middle of ln K and ln S of its pigment family, and how far a
 * tint of that family may lie from it.
 *
 * <p>Scale: absorption and scattering of a mass of paste, the scattering of the same mass of white base being 1.
 * Shapes: means of the acrylic paints of each family in Okumura (2005), rounded to 0.1 and thinned to 20 nm;
 * ORANGE and UNKNOWN are invented, plausible. A paste for gel coat is stronger than an artist's paint against its
 * white: by {@link #CONCENTRATION}, invented, plausible, and shared by the tints of a shop up to a wide error.
 */
final class FamilyCurve {
    /** How much stronger a paste is than an artist's paint of the same pigment, against their whites; a judgement of ours. */
    static final double CONCENTRATION = 6;

    private static final Grid KNOTS = Grid.between(400, 700, 20);
    private static final Map<PigmentFamily, FamilyCurve> ALL = new EnumMap<>(PigmentFamily.class);

    static {
        put(
                PigmentFamily.CARBON_BLACK,
                "1.6,1.6,1.7,1.7,1.8,1.8,1.9,1.9,2.0,2.0,2.0,2.1,2.1,2.2,2.2,2.2",
                "-0.7,-0.7,-0.6,-0.6,-0.5,-0.5,-0.5,-0.4,-0.4,-0.3,-0.3,-0.2,-0.2,-0.2,-0.1,-0.1");
        put(
                PigmentFamily.RED_IRON_OXIDE,
                "-0.3,-0.4,-0.3,-0.3,-0.3,-0.3,-0.3,-0.4,-0.7,-1.3,-1.9,-2.2,-2.4,-2.6,-2.8,-3.0",
                "-3.0,-3.0,-3.0,-3.0,-2.9,-2.8,-2.7,-2.6,-2.3,-1.9,-1.8,-1.8,-1.7,-1.7,-1.7,-1.7");
        put(
                PigmentFamily.BROWN_OXIDE,
                "0.0,-0.1,-0.2,-0.2,-0.2,-0.3,-0.3,-0.4,-0.5,-0.7,-0.8,-0.8,-0.9,-0.9,-0.9,-0.9",
                "-3.3,-3.3,-3.4,-3.4,-3.3,-3.3,-3.3,-3.2,-3.2,-3.1,-3.1,-3.1,-3.1,-3.1,-3.0,-3.0");
        put(
                PigmentFamily.YELLOW_IRON_OXIDE,
                "-0.3,-0.5,-0.8,-0.9,-1.0,-1.2,-1.7,-2.3,-3.0,-3.5,-3.7,-3.7,-3.7,-3.7,-3.7,-3.8",
                "-2.4,-2.5,-2.4,-2.4,-2.3,-2.3,-2.2,-2.1,-2.0,-2.0,-2.1,-2.1,-2.1,-2.1,-2.1,-2.0");
        put(
                PigmentFamily.ORGANIC_YELLOW,
                "0.3,0.5,0.6,0.7,0.8,0.4,-1.4,-4.0,-5.2,-5.3,-5.3,-5.3,-5.3,-5.3,-5.3,-5.3",
                "-1.8,-1.7,-1.7,-1.7,-1.6,-1.1,-0.7,-0.6,-0.7,-0.8,-0.9,-0.8,-0.9,-1.0,-1.0,-1.0");
        put(
                PigmentFamily.ORGANIC_RED,
                "-0.5,-0.4,-0.2,0.0,0.2,0.4,0.6,0.7,0.9,0.4,-1.8,-3.6,-4.6,-4.8,-4.9,-4.9",
                "-3.4,-3.3,-3.2,-3.0,-2.8,-2.6,-2.4,-2.3,-1.8,-1.6,-1.8,-2.2,-2.4,-2.6,-2.7,-2.7");
        put(
                PigmentFamily.PHTHALO_BLUE,
                "-0.9,-1.7,-2.5,-3.0,-2.8,-2.2,-1.4,-0.4,0.5,1.2,1.5,1.7,1.8,1.7,1.7,2.0",
                "-2.3,-2.9,-3.3,-3.7,-4.1,-4.7,-5.0,-4.2,-3.2,-2.3,-1.6,-1.1,-0.8,-0.8,-0.9,-0.5");
        put(
                PigmentFamily.PHTHALO_GREEN,
                "0.3,0.0,-0.3,-1.0,-2.2,-2.8,-2.4,-1.6,-0.7,0.1,0.9,1.5,1.6,1.7,1.5,1.2",
                "-2.1,-2.2,-2.4,-2.9,-3.4,-3.8,-4.2,-4.4,-4.0,-3.5,-2.3,-1.4,-1.0,-0.7,-0.8,-1.1");
        put(
                PigmentFamily.ULTRAMARINE,
                "-4.0,-4.3,-4.6,-4.4,-3.5,-2.4,-1.5,-0.9,-0.5,-0.3,-0.2,-0.2,-0.3,-0.6,-1.1,-1.7",
                "-5.2,-5.2,-5.2,-5.3,-5.3,-5.2,-4.9,-4.6,-4.2,-4.1,-4.0,-4.0,-4.0,-4.0,-4.1,-4.3");
        put(
                PigmentFamily.ORANGE,
                "0.0,0.2,0.4,0.5,0.6,0.7,0.7,0.4,-1.2,-3.2,-4.3,-4.7,-4.8,-4.9,-4.9,-4.9",
                "-2.8,-2.7,-2.6,-2.5,-2.4,-2.3,-2.0,-1.6,-1.3,-1.2,-1.3,-1.4,-1.5,-1.6,-1.7,-1.7");
        put(
                PigmentFamily.VIOLET,
                "-1.3,-1.6,-1.8,-1.4,-0.8,0.1,0.8,1.1,1.1,1.0,0.4,0.6,0.4,-0.7,-2.0,-3.1",
                "-4.0,-4.4,-4.7,-4.5,-4.0,-3.3,-2.6,-2.2,-1.9,-1.8,-2.3,-2.3,-2.2,-2.6,-3.2,-3.5");
        put(
                PigmentFamily.UNKNOWN,
                "-1,-1,-1,-1,-1,-1,-1,-1,-1,-1,-1,-1,-1,-1,-1,-1",
                "-2.8,-2.8,-2.8,-2.8,-2.8,-2.8,-2.8,-2.8,-2.8,-2.8,-2.8,-2.8,-2.8,-2.8,-2.8,-2.8");
    }

    private final double[] lnK;
    private final double[] lnS;

    private FamilyCurve(double[] lnK, double[] lnS) {
        this.lnK = lnK;
        this.lnS = lnS;
    }

    private static void put(PigmentFamily family, String lnK, String lnS) {
        ALL.put(family, new FamilyCurve(drawn(lnK), drawn(lnS)));
    }

    private static double[] drawn(String knots) {
        String[] cells = knots.split(",");
        double[] curve = new double[Grid.INSIDE.count()];
        for (int i = 0; i < curve.length; i++) {
            int left = Math.min(i / 2, cells.length - 2);
            double part = (Grid.INSIDE.nm(i) - KNOTS.nm(left)) / (double) KNOTS.stepNm();
            curve[i] = Math.log(CONCENTRATION)
                    + Double.parseDouble(cells[left]) * (1 - part)
                    + Double.parseDouble(cells[left + 1]) * part;
        }
        return curve;
    }

    static FamilyCurve of(PigmentFamily family) {
        return ALL.get(family);
    }

    /** @return ln K at the 31 wavelengths inside the program */
    double[] lnK() {
        return lnK.clone();
    }

    /** @return ln S at the 31 wavelengths inside the program */
    double[] lnS() {
        return lnS.clone();
    }
}
