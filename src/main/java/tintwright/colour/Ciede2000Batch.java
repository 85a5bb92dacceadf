package tintwright.colour;

/**
 * CIEDE2000 of many pairs on plain arrays, nothing allocated after construction.
 *
 * <p>The same answers as {@link Ciede2000} to 1e-9, with unit weights. All colours of a call belong to one light and
 * observer: the caller's arrays carry no such mark, so the caller must. Not for two threads at once.
 */
public final class Ciede2000Batch {
    /**
     * @param l1  L* of the first colours; {@code a1}, {@code b1} likewise
     * @param l2  L* of the second colours; {@code a2}, {@code b2} likewise
     * @param out filled with the differences from index {@code from} on
     * @param from  first index in all the arrays
     * @param count how many pairs
     */
    public void between(double[] l1, double[] a1, double[] b1, double[] l2, double[] a2, double[] b2, double[] out,
            int from, int count) {
        for (int i = from; i < from + count; i++) {
            out[i] = between(l1[i], a1[i], b1[i], l2[i], a2[i], b2[i]);
        }
    }

    /** One colour against many: {@code out[i]} is the difference between the target and colour number i. */
    public void toTarget(double l, double a, double b, double[] l2, double[] a2, double[] b2, double[] out, int from,
            int count) {
        for (int i = from; i < from + count; i++) {
            out[i] = between(l, a, b, l2[i], a2[i], b2[i]);
        }
    }

    /** One pair. */
    public static double between(double l1, double a1, double b1, double l2, double a2, double b2) {
        return Ciede2000.total(l1, a1, b1, l2, a2, b2);
    }
}
