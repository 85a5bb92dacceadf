package tintwright.shelf.knowledge;

import java.util.Arrays;
import tintwright.colour.Grid;

/**
 * How far real paint strays from the theory beside its {@link DosePower}: a smooth error in ln K/S of a whole mix. Films
 * do not quite hide, pigments act on each other; all of it grows with the share of tint.
 */
final class TheoryError {
    /**
     * One standard deviation of the whole curve with hardly any tint; chosen by the study ShelfStudy on its choosing
     * half, for the stated ranges to hold; at 0.025 and below two tests of the eye's answers fell.
     */
    private static final double AT_NONE = 0.03;
    /** What a mix of nothing but tint has more; chosen by the study OilPaintStudy. */
    private static final double AT_ALL = 0.2;
    /** Standard deviation of the shape, the whole curve's being 1; chosen by the study OilPaintStudy. */
    private static final double SHAPE = 1.0;
    /** Directions with a smaller share of the variance are left out; a judgement of ours: a third of it changed nothing. */
    private static final double LEAST_VARIANCE = 0.1;

    /** Share of its variance that all mixes of one cup have in common: the same tints, in like doses; a judgement of ours. */
    private static final double IN_COMMON = 0.95;

    private static final double[][] BASIS = basis();

    private TheoryError() {}

    private static double[][] basis() {
        double[] shape = new double[Grid.INSIDE.count()];
        Arrays.fill(shape, SHAPE);
        return CurvePrior.basis(new double[shape.length], 1, shape, 0, LEAST_VARIANCE);
    }

    /** @return part of the standard deviation that the mixes of one cup share, 0 to 1 */
    static double shared() {
        return Math.sqrt(IN_COMMON);
    }

    /** @return the rest of it, which each mix has for itself */
    static double own() {
        return Math.sqrt(1 - IN_COMMON);
    }

    /** @return the curve of these amounts of each direction, for a size of 1 */
    static double[] curve(double[] amounts, double times) {
        double[] out = new double[BASIS.length];
        for (int w = 0; w < out.length; w++) {
            for (int d = 0; d < amounts.length; d++) {
                out[w] += times * BASIS[w][d] * amounts[d];
            }
        }
        return out;
    }

    /** @return what K/S is multiplied by for this curve at this size; near enough to exp for errors below 1 */
    static double times(double size, double curve) {
        double x = size * curve;
        return 1 + x * (1 + x * (0.5 + x / 6));
    }

    /** @return rows: wavelengths; columns: directions, each times its standard deviation; not to be changed */
    static double[][] directions() {
        return BASIS;
    }

    /** @return standard deviation in ln K/S of the whole curve of a mix with this share of tint by mass, 0 to 1 */
    static double size(double tintShare) {
        return AT_NONE + AT_ALL * tintShare;
    }
}
