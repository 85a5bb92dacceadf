package tintwright.reading.photo;

import java.util.Optional;

/**
 * Looks for a straight line across the references with less light on one side than on the other, more than the
 * smooth change of light and chance explain.
 */
final class ShadowEdge {
    private static final int DIRECTIONS = 12;
    private static final int LEAST_ON_A_SIDE = 4;
    /** Standard errors by which the two sides must differ: many lines are tried. */
    private static final double PLAIN = 5;
    private static final double LEAST_STEP = 0.06;

    private ShadowEdge() {
    }

    static Optional<Double> find(CorrectionFit fit) {
        int n = fit.known.size();
        if (n < 3 * LEAST_ON_A_SIDE) {
            return Optional.empty();
        }
        double[] lack = new double[n];
        double[] lab = new double[3];
        for (int i = 0; i < n; i++) {
            KnownSample one = fit.known.get(i);
            fit.model.colour(fit.unknowns, one.sample(), lab, null, null);
            // A step of L* as a share of light: L* + 16 goes with the cube root of light.
            lack[i] = 3 * (one.colour().lightness() - lab[0]) / (one.colour().lightness() + 16);
        }
        double best = 0;
        double step = 0;
        for (int d = 0; d < DIRECTIONS; d++) {
            double angle = Math.PI * d / DIRECTIONS;
            double[] along = new double[n];
            for (int i = 0; i < n; i++) {
                along[i] = fit.known.get(i).sample().x() * Math.cos(angle)
                        + fit.known.get(i).sample().y() * Math.sin(angle);
            }
            double[] sorted = along.clone();
            java.util.Arrays.sort(sorted);
            for (int cut = LEAST_ON_A_SIDE; cut <= n - LEAST_ON_A_SIDE; cut++) {
                double edge = (sorted[cut - 1] + sorted[cut]) / 2;
                double[] found = split(along, lack, edge);
                if (found[1] > best) {
                    best = found[1];
                    step = found[0];
                }
            }
        }
        return best > PLAIN && Math.abs(step) > LEAST_STEP ? Optional.of(Math.abs(step)) : Optional.empty();
    }

    /** @return the difference between both sides and how many standard errors it is */
    private static double[] split(double[] along, double[] lack, double edge) {
        double[] sum = new double[2];
        double[] square = new double[2];
        int[] count = new int[2];
        for (int i = 0; i < along.length; i++) {
            int side = along[i] < edge ? 0 : 1;
            sum[side] += lack[i];
            square[side] += lack[i] * lack[i];
            count[side]++;
        }
        if (count[0] < 2 || count[1] < 2) {
            return new double[] {0, 0};
        }
        double difference = sum[1] / count[1] - sum[0] / count[0];
        double within = (square[0] - sum[0] * sum[0] / count[0] + square[1] - sum[1] * sum[1] / count[1])
                / (along.length - 2);
        return new double[] {difference,
            Math.abs(difference) / Math.sqrt(Math.max(1e-12, within) * (1.0 / count[0] + 1.0 / count[1]))};
    }
}
