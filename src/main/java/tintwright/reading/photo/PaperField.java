package tintwright.reading.photo;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;

/**
 * The light over the sheet, seen in its paper, which is the same everywhere: for each channel the logarithm of the
 * light as a curved surface of the second degree over the sheet. Patches that the others contradict (ink, a chip that
 * overlaps) count little.
 *
 * <p>Source: Huber and Ronchetti (2009), Robust Statistics, 7.8 (weights that fall off with the residual, repeated).
 */
final class PaperField {
    /** A judgement of ours. */
    private static final int TERMS = 6;

    /** A bound on work, a judgement of ours. */
    private static final int ROUNDS = 8;
    /** Curvature must be shown by the paper: a prior of half the light over the sheet; small beside all that it is held against, a judgement of ours. */
    private static final double RIDGE = 0.05;
    /** A residual of this many median deviations counts half. */
    private static final double DOUBT = 2.5;
    /** Noise of a small patch, in log light; below it nothing is doubted; a judgement of ours. */
    private static final double GRAIN = 0.006;

    /**
     * A patch of paper.
     *
     * @param u     place on the sheet, -1 left to 1 right
     * @param v     place on the sheet, -1 up to 1 down
     * @param light log of red, green and blue light
     * @param good  which channels are not cut off
     */
    record Patch(double u, double v, double[] light, boolean[] good) {}

    private final double[][] surface = new double[3][];
    private final List<Patch> patches;

    private PaperField(List<Patch> patches) {
        this.patches = patches;
    }

    /** @param least fewer good patches than this leave a channel without a field: see {@link #knows} */
    static PaperField of(List<Patch> patches, int least) {
        PaperField field = new PaperField(List.copyOf(patches));
        for (int k = 0; k < 3; k++) {
            int channel = k;
            if (patches.stream().filter(one -> one.good()[channel]).count() >= least) {
                field.fit(k);
            }
        }
        return field;
    }

    private void fit(int channel) {
        double[] weight = new double[patches.size()];
        for (int i = 0; i < weight.length; i++) {
            weight[i] = patches.get(i).good()[channel] ? 1 : 0;
        }
        for (int round = 0; round < ROUNDS; round++) {
            surface[channel] = solve(channel, weight);
            double spread = spread(channel);
            for (int i = 0; i < weight.length; i++) {
                double off = residual(channel, patches.get(i)) / (DOUBT * spread);
                weight[i] = patches.get(i).good()[channel] ? 1 / (1 + off * off * off * off) : 0;
            }
        }
    }

    private double[] solve(int channel, double[] weight) {
        DMatrixRMaj normal = new DMatrixRMaj(TERMS, TERMS);
        DMatrixRMaj right = new DMatrixRMaj(TERMS, 1);
        for (int k = 1; k < TERMS; k++) {
            normal.set(k, k, RIDGE);
        }
        for (int i = 0; i < weight.length; i++) {
            Patch one = patches.get(i);
            double[] terms = terms(one.u(), one.v());
            for (int r = 0; r < TERMS; r++) {
                right.add(r, 0, weight[i] * terms[r] * one.light()[channel]);
                for (int c = 0; c < TERMS; c++) {
                    normal.add(r, c, weight[i] * terms[r] * terms[c]);
                }
            }
        }
        normal.add(0, 0, 1e-9);
        DMatrixRMaj solved = new DMatrixRMaj(TERMS, 1);
        var solver = LinearSolverFactory_DDRM.symmPosDef(TERMS);
        solver.setA(normal);
        solver.solve(right, solved);
        return solved.data.clone();
    }

    private double spread(int channel) {
        double[] off = patches.stream()
                .filter(one -> one.good()[channel])
                .mapToDouble(one -> Math.abs(residual(channel, one)))
                .sorted()
                .toArray();
        return Math.max(GRAIN, 1.4826 * off[off.length / 2]);
    }

    private double residual(int channel, Patch one) {
        return one.light()[channel] - log(channel, one.u(), one.v());
    }

    private static double[] terms(double u, double v) {
        return new double[] {1, u, v, u * u, u * v, v * v};
    }

    /** @return false when too little of the paper shows what light fell on it in this channel */
    boolean knows(int channel) {
        return surface[channel] != null;
    }

    /** @return log of the light of the paper at a place of the sheet; 0 for a channel without a field */
    double log(int channel, double u, double v) {
        double sum = 0;
        double[] terms = terms(u, v);
        for (int i = 0; i < TERMS && knows(channel); i++) {
            sum += surface[channel][i] * terms[i];
        }
        return sum;
    }

    /** @return how far patches usually are from the smooth light, as a share of it, over the channels that are known */
    double unevenness() {
        double sum = 0;
        int known = 0;
        for (int k = 0; k < 3; k++) {
            if (knows(k)) {
                sum += spread(k);
                known++;
            }
        }
        return known == 0 ? 1 : sum / known;
    }

    /**
     * @param from first patch
     * @param to   last patch, not included
     * @return root mean square of how far these patches are from the smooth light, as a share of it
     */
    double roughness(int from, int to) {
        double sum = 0;
        int count = 0;
        for (Patch one : patches.subList(from, to)) {
            for (int k = 0; k < 3; k++) {
                if (knows(k) && one.good()[k]) {
                    sum += residual(k, one) * residual(k, one);
                    count++;
                }
            }
        }
        return count == 0 ? 1 : Math.sqrt(sum / count);
    }
}
