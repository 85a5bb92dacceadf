package tintwright.phone;

import java.util.function.LongSupplier;

/** How many requests are served: a store of tries that fills at an even pace and lets a short burst through. */
final class Flow {
    private static final double NANOS = 1e9;

    private final double aSecond;
    private final double most;
    private final LongSupplier nanos;
    private double left;
    private long last;

    /**
     * @param aSecond how many in the long run
     * @param most    how many at once
     * @param nanos   a clock in nanoseconds that never goes back
     */
    Flow(double aSecond, double most, LongSupplier nanos) {
        this.aSecond = aSecond;
        this.most = most;
        this.nanos = nanos;
        this.left = most;
        this.last = nanos.getAsLong();
    }

    /** @return true when one more may pass now */
    synchronized boolean pass() {
        long now = nanos.getAsLong();
        left = Math.min(most, left + (now - last) / NANOS * aSecond);
        last = now;
        if (left < 1) {
            return false;
        }
        left--;
        return true;
    }
}
