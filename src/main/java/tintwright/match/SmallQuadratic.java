package tintwright.match;

/**
 * The exact answer to a small convex problem: least x'Hx/2 - g'x with x at or above its floors and one limit
 * a'x at most b. Tries the free solution first, then every choice of which bounds hold; with at most six unknowns
 * that is quicker than any general solver, and never ends in the wrong corner.
 *
 * <p>Conditions: Karush-Kuhn-Tucker; Nocedal and Wright (2006), Numerical Optimization, 16.5. Allocates nothing
 * in its calls; not for use by two threads at once.
 */
final class SmallQuadratic {
    static final int MOST = 6;
    private static final double TINY = 1e-12;

    private final double[][] m = new double[MOST + 1][MOST + 2];
    private final int[] free = new int[MOST];
    private final double[] x = new double[MOST];

    /**
     * @param h     symmetric, positive definite, the upper left n by n counts
     * @param g     right side
     * @param floor least value of each unknown
     * @param a     the limit's weights, 0 or more
     * @param b     the limit; the floors must respect it
     * @param best  filled with the answer
     */
    void solve(int n, double[][] h, double[] g, double[] floor, double[] a, double b, double[] best) {
        if (tryChoice(n, h, g, floor, a, b, 0, false)) {
            System.arraycopy(x, 0, best, 0, n);
            return;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int bound = 0; bound < 1 << n; bound++) {
            for (int limit = 0; limit < 2; limit++) {
                if (tryChoice(n, h, g, floor, a, b, bound, limit == 1)) {
                    double cost = cost(n, h, g);
                    if (cost < least) {
                        least = cost;
                        System.arraycopy(x, 0, best, 0, n);
                    }
                }
            }
        }
        if (least == Double.POSITIVE_INFINITY) {
            System.arraycopy(floor, 0, best, 0, n);
        }
    }

    private double cost(int n, double[][] h, double[] g) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double row = 0;
            for (int j = 0; j < n; j++) {
                row += h[i][j] * x[j];
            }
            sum += x[i] * (row / 2 - g[i]);
        }
        return sum;
    }

    /** Solves with the chosen unknowns on their floors and the limit held or not; true when that is allowed. */
    private boolean tryChoice(
            int n, double[][] h, double[] g, double[] floor, double[] a, double b, int bound, boolean limit) {
        int count = 0;
        double rest = b;
        for (int i = 0; i < n; i++) {
            if ((bound >> i & 1) == 1) {
                x[i] = floor[i];
                rest -= a[i] * floor[i];
            } else {
                free[count++] = i;
            }
        }
        int size = count + (limit ? 1 : 0);
        if (limit && count == 0) {
            return false;
        }
        for (int r = 0; r < count; r++) {
            int i = free[r];
            double right = g[i];
            for (int j = 0; j < n; j++) {
                if ((bound >> j & 1) == 1) {
                    right -= h[i][j] * floor[j];
                }
            }
            for (int c = 0; c < count; c++) {
                m[r][c] = h[i][free[c]];
            }
            if (limit) {
                m[r][count] = a[i];
            }
            m[r][size] = right;
        }
        if (limit) {
            for (int c = 0; c < count; c++) {
                m[count][c] = a[free[c]];
            }
            m[count][count] = 0;
            m[count][size] = rest;
        }
        if (!eliminate(size)) {
            return false;
        }
        double used = 0;
        for (int r = 0; r < count; r++) {
            x[free[r]] = m[r][size];
            if (x[free[r]] < floor[free[r]] - TINY) {
                return false;
            }
        }
        for (int i = 0; i < n; i++) {
            used += a[i] * x[i];
        }
        return limit ? m[count][size] >= -TINY : used <= b * (1 + 1e-9) + TINY;
    }

    private boolean eliminate(int size) {
        for (int col = 0; col < size; col++) {
            int pivot = col;
            for (int r = col + 1; r < size; r++) {
                if (Math.abs(m[r][col]) > Math.abs(m[pivot][col])) {
                    pivot = r;
                }
            }
            if (!(Math.abs(m[pivot][col]) > 1e-14)) {
                return false;
            }
            double[] swap = m[col];
            m[col] = m[pivot];
            m[pivot] = swap;
            double scale = 1 / m[col][col];
            for (int c = col; c <= size; c++) {
                m[col][c] *= scale;
            }
            for (int r = 0; r < size; r++) {
                double by = m[r][col];
                if (r != col && by != 0) {
                    for (int c = col; c <= size; c++) {
                        m[r][c] -= by * m[col][c];
                    }
                }
            }
        }
        return true;
    }
}
