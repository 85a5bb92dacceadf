package tintwright.shelf.knowledge;

/** Sums of rows, four rows at a time: what slopes and products over the unknowns are made of. */
final class RowSum {
    private RowSum() {}

    /**
     * Adds {@code by[r]} times {@code rows[r]}, for the first {@code count} rows, to the first {@code length} figures
     * of {@code into}.
     */
    static void add(double[] into, int length, double[] by, double[][] rows, int count) {
        int r = 0;
        for (; r + 4 <= count; r += 4) {
            double[] a = rows[r];
            double[] b = rows[r + 1];
            double[] c = rows[r + 2];
            double[] d = rows[r + 3];
            double byA = by[r];
            double byB = by[r + 1];
            double byC = by[r + 2];
            double byD = by[r + 3];
            for (int i = 0; i < length; i++) {
                into[i] += byA * a[i] + byB * b[i] + byC * c[i] + byD * d[i];
            }
        }
        for (; r < count; r++) {
            double[] a = rows[r];
            double byA = by[r];
            for (int i = 0; i < length; i++) {
                into[i] += byA * a[i];
            }
        }
    }
}
