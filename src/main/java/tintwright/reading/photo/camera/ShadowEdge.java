package tintwright.reading.photo.camera;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import tintwright.reading.photo.file.Rgb;

/**
 * Looks for a straight line across the references with less light on one side than on the other, or with a reflection
 * on one side alone, beyond what a smooth change of light and the camera's tone curve explain. A shadow takes a share of
 * every patch's light; a reflection adds the same light to all, so that dark patches show it.
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
    /** Share of full light that a reflection must add; chosen by CardBesideHullStudy. */
    private static final double LEAST_VEIL = 0.01;
    /** Level, two slopes of the light, two of the tone curve, and the step; a judgement of ours. */
    private static final int UNKNOWNS = 6;

    private ShadowEdge() {}

    /** @return the share of light that the darker side lacks; empty when no edge is plain */
    static Optional<Double> find(List<KnownSample> known) {
        return plainest(known, false)
                .map(edge -> 1 - Math.exp(-Math.abs(edge.step())))
                .filter(share -> share > LEAST_STEP);
    }

    /** @return the references that a reflection lies on, fewer than half of them; empty when none is plain */
    static List<KnownSample> underReflection(List<KnownSample> known) {
        return plainest(known, true)
                .filter(edge -> Math.abs(edge.step()) > LEAST_VEIL)
                // Light is added where the step, which stands for what is lacking, is below 0.
                .map(edge -> edge.step() < 0 ? edge.beyond() : edge.before())
                .filter(side -> 2 * side.size() < known.size())
                .orElse(List.of());
    }

    /**
     * A straight edge.
     *
     * @param step   what the references beyond it lack: log light of a shadow, share of full light of a reflection
     * @param before references on the one side
     * @param beyond references on the other
     */
    private record Edge(double step, List<KnownSample> before, List<KnownSample> beyond) {}

    private static Optional<Edge> plainest(List<KnownSample> known, boolean reflection) {
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
        double best = PLAIN;
        Edge plainest = null;
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
                double edge = (sorted[cut - 1] + sorted[cut]) / 2;
                double[] found = step(known, level, lack, along, edge, reflection);
                if (found[1] > best) {
                    best = found[1];
                    plainest = new Edge(found[0], side(known, along, edge, false), side(known, along, edge, true));
                }
            }
        }
        return Optional.ofNullable(plainest);
    }

    private static List<KnownSample> side(List<KnownSample> known, double[] along, double edge, boolean beyond) {
        return IntStream.range(0, along.length)
                .filter(i -> along[i] >= edge == beyond)
                .mapToObj(known::get)
                .toList();
    }

    /** @return the step at an edge, by least squares, and how many standard errors it is */
    private static double[] step(
            List<KnownSample> known,
            double[] level,
            DMatrixRMaj lack,
            double[] along,
            double edge,
            boolean reflection) {
        int n = level.length;
        DMatrixRMaj a = new DMatrixRMaj(n, UNKNOWNS);
        for (int i = 0; i < n; i++) {
            a.set(i, 0, 1);
            a.set(i, 1, known.get(i).sample().x());
            a.set(i, 2, known.get(i).sample().y());
            a.set(i, 3, level[i]);
            a.set(i, 4, level[i] * level[i]);
            // A little light added to a dark patch is a large share of its own.
            double counts = reflection ? Math.exp(-level[i]) : 1;
            a.set(i, 5, along[i] < edge ? 0 : counts);
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
