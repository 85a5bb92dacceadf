package tintwright.colour;

/**
 * Lagrange interpolation on a regular grid.
 *
 * <p>Source: CIE 15:2018, 7.2.3; ASTM E2022 (the same weights, used to make tables of coarser steps).
 */
final class Interpolation {
    private Interpolation() {
    }

    /** Value at a wavelength; the nearest end value outside the grid. */
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
        int interval = Math.min((int) position, last - 1);
        boolean quadratic = interval == 0 || interval == last - 1;
        int points = quadratic ? 3 : 4;
        int first = interval == 0 ? 0 : interval == last - 1 ? last - 2 : interval - 1;
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
