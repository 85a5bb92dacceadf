package tintwright.shelf.knowledge;

import java.util.Random;
import java.util.function.ToDoubleFunction;

/**
 * Draws from a normal distribution around zero in proportion to a likelihood, whatever the shape of that: each step
 * goes along an ellipse through the last draw and a fresh one of the normal, to a point that is likely enough.
 *
 * <p>Source: Murray, Adams and MacKay (2010), Elliptical slice sampling, Proc. AISTATS 9, figure 2 (from memory).
 */
final class EllipticalSlice {
    /** The whole ellipse is tried at first; then so many times the usual turn, which finds a place sooner; a judgement of ours. */
    private static final double WIDER = 5;

    private EllipticalSlice() {}

    /** A normal distribution around zero. */
    interface Normal {
        /** @param draw filled with one draw */
        void draw(Random random, double[] draw);
    }

    /**
     * Where to begin and how long to go on.
     *
     * @param first steps that are thrown away
     * @param count draws wanted
     * @param apart steps from one draw to the next
     * @param seed  of the random numbers: the same seed, the same draws
     */
    record Walk(int first, int count, int apart, long seed) {}

    /**
     * Draws in the order they came.
     *
     * @param rows draws, in rows
     * @param mean of all steps, those between the draws counted
     */
    record Draws(double[][] rows, double[] mean) {}

    /**
     * @param size       how many numbers a draw has
     * @param likelihood natural logarithm of how likely a draw makes what was seen, up to a constant
     */
    static Draws draws(int size, Normal normal, ToDoubleFunction<double[]> likelihood, Walk walk) {
        Random random = new Random(walk.seed());
        double[] at = new double[size];
        double[] to = new double[size];
        double[] fresh = new double[size];
        double[] mean = new double[size];
        double[][] rows = new double[walk.count()][];
        double likely = likelihood.applyAsDouble(at);
        int steps = walk.first() + walk.count() * walk.apart();
        double width = 2 * Math.PI;
        double turned = 0;
        for (int step = 0; step < steps; step++) {
            normal.draw(random, fresh);
            double least = likely + Math.log(1 - random.nextDouble());
            if (step == walk.first()) {
                width = Math.min(width, WIDER * turned / Math.max(1, walk.first() - walk.first() / 2));
            }
            double high = width * random.nextDouble();
            double low = high - width;
            double angle = step < walk.first() ? high : low + width * random.nextDouble();
            while (true) {
                double cos = Math.cos(angle);
                double sin = Math.sin(angle);
                for (int i = 0; i < size; i++) {
                    to[i] = cos * at[i] + sin * fresh[i];
                }
                double there = likelihood.applyAsDouble(to);
                // The bracket closes on where the walk stands, which is likely enough by itself.
                if (there >= least || high - low < 1e-9) {
                    likely = there;
                    break;
                }
                low = angle < 0 ? angle : low;
                high = angle < 0 ? high : angle;
                angle = low + (high - low) * random.nextDouble();
            }
            turned += step >= walk.first() / 2 ? Math.abs(angle) : 0;
            double[] left = at;
            at = to;
            to = left;
            int after = step - walk.first() + 1;
            if (after > 0) {
                for (int i = 0; i < size; i++) {
                    mean[i] += at[i] / (steps - walk.first());
                }
                if (after % walk.apart() == 0) {
                    rows[after / walk.apart() - 1] = at.clone();
                }
            }
        }
        return new Draws(rows, mean);
    }
}
