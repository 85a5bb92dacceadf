package tintwright.shelf.knowledge;

import java.util.EnumMap;
import java.util.Map;
import tintwright.colour.Grid;
import tintwright.shelf.PigmentFamily;

/**
 * What is expected of one part of a mix, base or tint, before any chip.
 *
 * @param absorption over ln K
 * @param scattering over ln S
 * @param paste      true for a tint: its concentration shares the shop's unknown factor
 */
record PartPrior(CurvePrior absorption, CurvePrior scattering, boolean paste) {
    /**
     * One standard deviation, in ln, of the strength of a tint around its family and shop; chosen by the study
     * ShelfStudy on its choosing half. The widths below are judgements of ours; PriorCoverageTest counts how often published acrylics (Okumura 2005) lie within them.
     */
    static final double OWN_STRENGTH = 0.5;
    /** The same for the factor that the tints of a shop share: one maker, one concentration; a judgement of ours. */
    static final double SHARED_STRENGTH = 0.5;
    /** Shape of ln K where a pigment absorbs; a judgement of ours, see {@link #OWN_STRENGTH}. */
    private static final double SHAPE = 0.25;
    /**
     * What the shape may wander more where a pigment hardly absorbs: traces of anything show there. A
     * judgement of ours, as are those below: the shift of an absorption edge in nm and the
     * widths, in ln, of strength and shape of S.
     */
    private static final double SHAPE_IN_THE_CLEAR = 0.7;

    private static final double EDGE_SHIFT_NM = 7;
    private static final double SCATTER_STRENGTH = 0.4;
    private static final double SCATTER_SHAPE = 0.25;
    /** An unknown pigment may be anything: strength, S and shape in ln, about three times a known one; a judgement of
     * ours, as are those below. */
    private static final double UNKNOWN_STRENGTH = 1.2;

    private static final double UNKNOWN_SCATTER = 0.8;
    private static final double UNKNOWN_SHAPE = 1.6;

    private static final Map<PigmentFamily, PartPrior> TINTS = new EnumMap<>(PigmentFamily.class);
    private static final PartPrior BASE = makeBase(1e-3);
    private static final PartPrior SECOND_BASE = makeBase(0.2);

    static {
        for (PigmentFamily family : PigmentFamily.values()) {
            TINTS.put(family, makeTint(family));
        }
    }

    static PartPrior tint(PigmentFamily family) {
        return TINTS.get(family);
    }

    /** The first base sets the scale: its scattering is 1 in the middle. */
    static PartPrior base(boolean first) {
        return first ? BASE : SECOND_BASE;
    }

    private static PartPrior makeTint(PigmentFamily family) {
        boolean unknown = family == PigmentFamily.UNKNOWN;
        double[] lnK = FamilyCurve.of(family).lnK();
        double most = java.util.Arrays.stream(lnK).max().orElseThrow();
        double[] shapeK = new double[lnK.length];
        double[] shapeS = new double[lnK.length];
        for (int i = 0; i < lnK.length; i++) {
            double clear = Math.min(1, Math.max(0, (most - lnK[i] - 2) / 3));
            shapeK[i] = unknown ? UNKNOWN_SHAPE : SHAPE + (SHAPE_IN_THE_CLEAR - SHAPE) * clear;
            shapeS[i] = unknown ? UNKNOWN_SCATTER : SCATTER_SHAPE;
        }
        return new PartPrior(
                CurvePrior.of(lnK, unknown ? UNKNOWN_STRENGTH : OWN_STRENGTH, shapeK, EDGE_SHIFT_NM),
                CurvePrior.of(
                        FamilyCurve.of(family).lnS(),
                        unknown ? UNKNOWN_SCATTER : SCATTER_STRENGTH,
                        shapeS,
                        EDGE_SHIFT_NM),
                true);
    }

    /** Titanium white: clear but for the violet end, where it turns to absorb; invented, plausible. */
    private static PartPrior makeBase(double scatterStrength) {
        int n = Grid.INSIDE.count();
        double[] lnK = new double[n];
        double[] lnS = new double[n];
        double[] shapeK = new double[n];
        double[] shapeS = new double[n];
        for (int i = 0; i < n; i++) {
            double nm = Grid.INSIDE.nm(i);
            lnK[i] = Math.log(0.0015 + 0.1 * Math.exp(-(nm - 400) / 7));
            shapeK[i] = 0.6;
            shapeS[i] = 0.03;
        }
        return new PartPrior(CurvePrior.of(lnK, 0.7, shapeK, 3), CurvePrior.of(lnS, scatterStrength, shapeS, 0), false);
    }
}
