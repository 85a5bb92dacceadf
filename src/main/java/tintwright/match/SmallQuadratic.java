package tintwright.match;

/**
 * The exact answer to a small convex problem: least x'Hx/2 - g'x with each x between its floor and its ceiling.
 * Tries the free solution first, then moves the bounds that its answer names, and only when that goes in circles
 * every choice of which bounds hold; with at most six unknowns that is quicker than any general solver, and never
 * ends in the wrong corner.
 *
 * <p>Conditions: Karush-Kuhn-Tucker; Nocedal and Wright (2006), Numerical Optimization, 16.5. Allocates nothing
 * in its calls; not for use by two threads at once.
 */
final class SmallQuadratic {
    /** As many tints as a recipe may hold, and what counts as zero beside them; judgements of ours, as are those below. */
    static final int MOST = 6;

    /** Small beside all that it is held against, a judgement of ours. */
    private static final double TINY = 1e-12;
    /** Rounds in which bounds may move before every choice is tried; a judgement of ours. */
    private static final int ROUNDS = 8;

    /** Not a figure, nor are those below: what holds an unknown. */
    private static final int FREE = 0;

    /** Not a figure: a name. */
    private static final int ON_FLOOR = 1;

    /** Not a figure: a name. */
    private static final int ON_CEILING = 2;

    private final double[][] m = new double[MOST][MOST + 1];
    private final int[] held = new int[MOST];
    private final int[] free = new int[MOST];
    private final double[] x = new double[MOST];

    /**
     * @param h       symmetric, positive definite, the upper left n by n counts
     * @param g       right side
     * @param floor   least value of each unknown
     * @param ceiling most of each unknown, at or above its floor
     * @param best    filled with the answer
     */
    void solve(int n, double[][] h, double[] g, double[] floor, double[] ceiling, double[] best) {
        java.util.Arrays.fill(held, 0, n, FREE);
        for (int round = 0; round < ROUNDS; round++) {
            if (!solveFree(n, h, g, floor, ceiling)) {
                break;
            }
            if (!moveBounds(n, h, g, floor, ceiling)) {
                System.arraycopy(x, 0, best, 0, n);
                return;
            }
        }
        everyChoice(n, h, g, floor, ceiling, best);
    }

    /** Holds what went over a bound and lets go what is pulled off one; true when anything changed. */
    private boolean moveBounds(int n, double[][] h, double[] g, double[] floor, double[] ceiling) {
        boolean moved = false;
        for (int i = 0; i < n; i++) {
            int now = held[i];
            if (now == FREE) {
                now = x[i] < floor[i] - TINY ? ON_FLOOR : x[i] > ceiling[i] + TINY ? ON_CEILING : FREE;
            } else {
                double pull = g[i];
                for (int j = 0; j < n; j++) {
                    pull -= h[i][j] * x[j];
                }
                boolean off = now == ON_FLOOR ? pull > TINY * h[i][i] : pull < -TINY * h[i][i];
                now = off && ceiling[i] > floor[i] ? FREE : now;
            }
            moved |= now != held[i];
            held[i] = now;
        }
        return moved;
    }

    private void everyChoice(int n, double[][] h, double[] g, double[] floor, double[] ceiling, double[] best) {
        System.arraycopy(floor, 0, best, 0, n);
        double least = cost(n, h, g, best);
        int choices = (int) Math.pow(3, n);
        for (int choice = 0; choice < choices; choice++) {
            int rest = choice;
            for (int i = 0; i < n; i++) {
                held[i] = rest % 3;
                rest /= 3;
            }
            boolean allowed = solveFree(n, h, g, floor, ceiling);
            for (int i = 0; i < n && allowed; i++) {
                allowed = x[i] >= floor[i] - TINY && x[i] <= ceiling[i] + TINY;
            }
            if (allowed && cost(n, h, g, x) < least) {
                least = cost(n, h, g, x);
                System.arraycopy(x, 0, best, 0, n);
            }
        }
    }

    private static double cost(int n, double[][] h, double[] g, double[] at) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double row = 0;
            for (int j = 0; j < n; j++) {
                row += h[i][j] * at[j];
            }
            sum += at[i] * (row / 2 - g[i]);
        }
        return sum;
    }

    /** Solves for the unknowns that no bound holds; false when these do not make a solvable problem. */
    private boolean solveFree(int n, double[][] h, double[] g, double[] floor, double[] ceiling) {
        int count = 0;
        for (int i = 0; i < n; i++) {
            if (held[i] == FREE) {
                free[count++] = i;
            } else {
                x[i] = held[i] == ON_FLOOR ? floor[i] : ceiling[i];
            }
        }
        for (int r = 0; r < count; r++) {
            int i = free[r];
            double right = g[i];
            for (int j = 0; j < n; j++) {
                right -= held[j] == FREE ? 0 : h[i][j] * x[j];
            }
            for (int c = r; c < count; c++) {
                m[r][c] = h[i][free[c]];
            }
            m[r][count] = right;
        }
        if (!eliminate(count)) {
            return false;
        }
        for (int r = 0; r < count; r++) {
            x[free[r]] = m[r][count];
        }
        return true;
    }

    /** Gauss without looking for pivots: a symmetric, positive definite matrix has them on its diagonal. */
    private boolean eliminate(int size) {
        for (int col = 0; col < size; col++) {
            double[] top = m[col];
            if (!(top[col] > 1e-14)) {
                return false;
            }
            double scale = 1 / top[col];
            for (int r = col + 1; r < size; r++) {
                double by = top[r] * scale;
                for (int c = r; c <= size; c++) {
                    m[r][c] -= by * top[c];
                }
            }
        }
        for (int r = size - 1; r >= 0; r--) {
            double rest = m[r][size];
            for (int c = r + 1; c < size; c++) {
                rest -= m[r][c] * m[c][size];
            }
            m[r][size] = rest / m[r][r];
        }
        return true;
    }
}
