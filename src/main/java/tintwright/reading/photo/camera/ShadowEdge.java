package tintwright.reading.photo.camera;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import tintwright.reading.photo.file.Rgb;

/**
 * Looks for a straight line across the references with less light on one side than on the other, beyond what a
 * smooth change of light and the camera's tone curve explain.
 */
final class ShadowEdge {
    /** A bound on work, a judgement of ours. */
    private static final int DIRECTIONS = 12;

    /** A judgement of ours. */
    private static final int LEAST_ON_A_SIDE = 4;

    /** A judgement of ours. */
    private static final int LEAST_REFERENCES = 15;
    /** Standard errors by which the two sides must differ: many lines are tried; a judgement of ours. */
    private static final double PLAIN = 6;

    /** A judgement of ours. */
    private static final double LEAST_STEP = 0.10;
    /** Level, two slopes of the light, two of the tone curve, and the step; a judgement of ours. */
    private static final int UNKNOWNS = 6;

    private ShadowEdge() {}

    /** @return the share of light that the darker side lacks; empty when no edge is plain */
    static Optional<Double> find(List<KnownSample> known) {
        int n = known.size();
        if (n < LEAST_REFERENCES) {
            return Optional.empty();
        }
        DMatrixRMaj lack = new DMatrixRMaj(n, 1);
        double[] level = new double[n];
        for (int i = 0; i < n; i++) {
            Rgb light = known.get(i).sample().light();
            double seen = 0.2126 * light.red() + 0.7152 * light.green() + 0.0722 * light.blue();
            double there = Math.max(known.get(i).colour().toXyz().y() / 100, 1e-3);
            level[i] = Math.log(there);
            lack.set(i, level[i] - Math.log(Math.max(seen, 1e-3)));
        }
        double best = 0;
        double step = 0;
        for (int d = 0; d < DIRECTIONS; d++) {
            double angle = Math.PI * d / DIRECTIONS;
            double[] along = new double[n];
            for (int i = 0; i < n; i++) {
                along[i] = known.get(i).sample().x() * Math.cos(angle)
                        + known.get(i).sample().y() * Math.sin(angle);
            }
            double[] sorted = along.clone();
            Arrays.sort(sorted);
            for (int cut = LEAST_ON_A_SIDE; cut <= n - LEAST_ON_A_SIDE; cut++) {
                double[] found = step(known, level, lack, along, (sorted[cut - 1] + sorted[cut]) / 2);
                if (found[1] > best) {
                    best = found[1];
                    step = found[0];
                }
            }
        }
        double share = 1 - Math.exp(-Math.abs(step));
        return best > PLAIN && share > LEAST_STEP ? Optional.of(share) : Optional.empty();
    }

    /** @return the step in log light at an edge, by least squares, and how many standard errors it is */
    private static double[] step(
            List<KnownSample> known, double[] level, DMatrixRMaj lack, double[] along, double edge) {
        int n = level.length;
        DMatrixRMaj a = new DMatrixRMaj(n, UNKNOWNS);
        for (int i = 0; i < n; i++) {
            a.set(i, 0, 1);
            a.set(i, 1, known.get(i).sample().x());
            a.set(i, 2, known.get(i).sample().y());
            a.set(i, 3, level[i]);
            a.set(i, 4, level[i] * level[i]);
            a.set(i, 5, along[i] < edge ? 0 : 1);
        }
        DMatrixRMaj normal = new DMatrixRMaj(UNKNOWNS, UNKNOWNS);
        CommonOps_DDRM.multTransA(a, a, normal);
        DMatrixRMaj inverse = new DMatrixRMaj(UNKNOWNS, UNKNOWNS);
        if (!CommonOps_DDRM.invert(normal, inverse)) {
            return new double[] {0, 0};
        }
        DMatrixRMaj right = new DMatrixRMaj(UNKNOWNS, 1);
        CommonOps_DDRM.multTransA(a, lack, right);
        DMatrixRMaj answer = new DMatrixRMaj(UNKNOWNS, 1);
        CommonOps_DDRM.mult(inverse, right, answer);
        DMatrixRMaj off = lack.copy();
        CommonOps_DDRM.multAdd(-1, a, answer, off);
        double variance = CommonOps_DDRM.dot(off, off) / (n - UNKNOWNS);
        double error = Math.sqrt(Math.max(1e-12, variance * inverse.get(5, 5)));
        return new double[] {answer.get(5), Math.abs(answer.get(5)) / error};
    }
}
