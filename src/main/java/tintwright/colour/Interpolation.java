package tintwright.colour;

/**
 * Between the readings of a regular grid: the smooth curve of Sprague, and the weights of Lagrange.
 *
 * <p>Source of Lagrange's weights: CIE 15:2018, 7.2.3; ASTM E2022 (used to make tables of coarser steps). Source of
 * Sprague's curve and of the readings it supposes beyond the ends: CIE 167:2005; Westland, Ripamonti, Cheung,
 * Computational Colour Science using MATLAB. Its numbers are written from memory and held by their laws:
 * the curve meets its readings, with two smooth derivatives, and returns every polynomial of the fourth degree.
 */
final class Interpolation {
    private Interpolation() {}

    /** Readings one and two steps beyond an end, from the six readings at that end, over {@link #END_SCALE}. */
    private static final double[][] BEYOND = {{508, -540, 488, -367, 144, -24}, {884, -1960, 3033, -2648, 1080, -180}};

    private static final double END_SCALE = 209;
    /** Coefficients of 1, t, t^2 ... t^5, over {@link #CURVE_SCALE}, from six neighbours; t runs from the third. */
    private static final double[][] CURVE = {
        {0, 0, 24, 0, 0, 0}, {2, -16, 0, 16, -2, 0}, {-1, 16, -30, 16, -1, 0},
        {-9, 39, -70, 66, -33, 7}, {13, -64, 126, -124, 61, -12}, {-5, 25, -50, 50, -25, 5}
    };

    private static final double CURVE_SCALE = 24;
    /** Fewest readings for the curve. */
    private static final int SIX = 6;

    /**
     * Value at a wavelength on the curve through the readings; the nearest end value outside the grid.
     * With fewer than six readings the curve is Lagrange's.
     */
    static double smooth(Grid grid, double[] values, double nm) {
        int last = grid.count() - 1;
        double position = (nm - grid.firstNm()) / grid.stepNm();
        if (last + 1 < SIX || position <= 0 || position >= last) {
            return at(grid, values, nm);
        }
        int left = (int) position;
        double t = position - left;
        double value = 0;
        for (int power = SIX - 1; power >= 0; power--) {
            double sum = 0;
            for (int k = 0; k < SIX; k++) {
                if (CURVE[power][k] != 0) {
                    sum += CURVE[power][k] * reading(values, left - 2 + k);
                }
            }
            value = value * t + sum / CURVE_SCALE;
        }
        return value;
    }

    /** A reading, or what the standard supposes up to two steps beyond an end. */
    private static double reading(double[] values, int index) {
        int last = values.length - 1;
        if (index >= 0 && index <= last) {
            return values[index];
        }
        double[] weight = BEYOND[index < 0 ? -index - 1 : index - last - 1];
        double sum = 0;
        for (int k = 0; k < SIX; k++) {
            sum += weight[k] * values[index < 0 ? k : last - k];
        }
        return sum / END_SCALE;
    }

    /** Value at a wavelength by Lagrange's weights; the nearest end value outside the grid. */
    static double at(Grid grid, double[] values, double nm) {
        double[] weight = new double[4];
        int first = weights(grid, nm, weight);
        double sum = 0;
        for (int k = 0; k < 4; k++) {
            if (weight[k] != 0) {
                sum += weight[k] * values[first + k];
            }
        }
        return sum;
    }

    /**
     * The weights of up to four neighbouring readings.
     *
     * @param weight filled with four weights that sum to 1
     * @return index of the reading that the first weight belongs to
     */
    static int weights(Grid grid, double nm, double[] weight) {
        int last = grid.count() - 1;
        double position = (nm - grid.firstNm()) / grid.stepNm();
        java.util.Arrays.fill(weight, 0);
        if (position <= 0 || position >= last || grid.count() == 2) {
            double held = Math.max(0, Math.min(last, position));
            int left = Math.min((int) held, last - 1);
            weight[0] = 1 - (held - left);
            weight[1] = held - left;
            return left;
        }
        int interval = (int) position;
        int points = interval == 0 || interval == last - 1 ? 3 : 4;
        int first = Math.max(0, interval - 1);
        double t = position - first;
        for (int k = 0; k < points; k++) {
            double w = 1;
            for (int j = 0; j < points; j++) {
                if (j != k) {
                    w *= (t - j) / (k - j);
                }
            }
            weight[k] = w;
        }
        return first;
    }
}
