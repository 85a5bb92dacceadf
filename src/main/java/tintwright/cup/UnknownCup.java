package tintwright.cup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.mult.VectorVectorMult_DDRM;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.colour.SmoothReflectance;
import tintwright.colour.Viewing;
import tintwright.match.Loading;
import tintwright.match.Metric;
import tintwright.match.MixFit;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Knowledge;

/**
 * What is in a cup that nobody wrote down, from its colour and the tints on the shelf: every set of up to three
 * tints, weighed by how well it explains the reading and by how little it has to assume.
 *
 * <p>Evidence by Laplace's method over ln of the amounts; Bishop (2006), Pattern Recognition and Machine Learning,
 * 4.4.1. A colour is three numbers: several sets explain it, and the chances say so.
 */
public final class UnknownCup {
    /** A judgement of ours. */
    private static final int MOST_TINTS = 3;
    /** A tint is in a cup mixed by eye with this chance before anything is read; common practice, no source. */
    private static final double USED = 0.25;
    /** Middle and spread, in ln, of a tint's share by mass; common practice, no source. */
    private static final double USUAL_SHARE = 0.004;

    /** A judgement of ours. */
    private static final double SPREAD = 1.5;

    /** A judgement of ours. */
    private static final double MODEL = 0.3;

    /** A judgement of ours. */
    private static final double STEP = 0.02;
    /** Contents with less chance than this are not worth telling; a judgement of ours. */
    private static final double WORTH_TELLING = 0.02;

    private final Knowledge knowledge;
    private final String base;
    private final Viewing viewing;
    private final Geometry geometry;
    private final double[] seen = new double[3];
    private final Covariance noise;

    /**
     * One answer.
     *
     * @param parts  grams by id
     * @param chance 0 to 1, all answers together 1
     * @param off    how far each tint may be off, as a share of it
     */
    public record Contents(Parts parts, double chance, double off) {}

    private record Candidate(Map<String, Double> shares, double evidence, double off) {}

    private UnknownCup(Knowledge knowledge, String base, Reading reading) {
        this.knowledge = knowledge;
        this.base = base;
        this.viewing = reading.judgedUnder();
        this.geometry = reading.geometry();
        Lab lab = reading.colour(viewing).orElseThrow();
        double[] axes = {lab.lightness(), lab.a(), lab.b()};
        Covariance all = Covariance.same(MODEL).plus(reading.doubt(viewing));
        for (int axis = 0; axis < 3; axis++) {
            seen[axis] = axes[axis];
        }
        if (reading.film() == FilmState.WET) {
            double[][] wet = knowledge.wetShift();
            for (int axis = 0; axis < 3; axis++) {
                seen[axis] -= wet[axis][0];
            }
            all = all.plus(Covariance.of(new double[][] {
                {wet[0][1] * wet[0][1], 0, 0}, {0, wet[1][1] * wet[1][1], 0}, {0, 0, wet[2][1] * wet[2][1]}
            }));
        }
        this.noise = all;
    }

    /**
     * @param grams how much is in the cup
     * @param base  id of the white it was most likely mixed in
     * @return likely contents, the likeliest first, at least one
     */
    public static List<Contents> likely(Knowledge knowledge, Reading reading, double grams, String base) {
        Checks.mass("what is in the cup", grams);
        if (knowledge.shelf().base(base).isEmpty()) {
            throw new IllegalArgumentException("there is no base \"" + base + "\" on the shelf");
        }
        return new UnknownCup(knowledge, base, reading).answers(grams);
    }

    private List<Contents> answers(double grams) {
        List<Candidate> candidates = new ArrayList<>();
        grow(candidates, fit(), new int[MOST_TINTS], 0, 0);
        candidates.sort(Comparator.comparingDouble(Candidate::evidence).reversed());
        double best = candidates.get(0).evidence();
        double total = candidates.stream()
                .mapToDouble(c -> Math.exp(c.evidence() - best))
                .sum();
        List<Contents> answers = new ArrayList<>();
        for (Candidate candidate : candidates) {
            double chance = Math.exp(candidate.evidence() - best) / total;
            if (answers.isEmpty() || chance >= WORTH_TELLING) {
                answers.add(new Contents(Parts.of(candidate.shares()).times(grams), chance, candidate.off()));
            }
        }
        return answers;
    }

    private MixFit fit() {
        List<Tint> tints = knowledge.shelf().tints();
        double[][] k = knowledge.absorption();
        double[][] s = knowledge.scattering();
        double[][] rowsK = new double[tints.size()][];
        double[][] rowsS = new double[tints.size()][];
        double[] most = new double[tints.size()];
        for (int i = 0; i < rowsK.length; i++) {
            int part = knowledge.ids().indexOf(tints.get(i).id());
            rowsK[i] = k[part];
            rowsS[i] = s[part];
            // A cup mixed by eye may be far beyond any loading limit; half of the mass is the most there can be.
            most[i] = 0.5;
        }
        int white = knowledge.ids().indexOf(base);
        Lab lab = new Lab(seen[0], seen[1], seen[2], viewing);
        return new MixFit(
                new MixFit.Additions(
                        rowsK, rowsS, k[white], s[white], Loading.ofParts(1, most, new double[most.length])),
                seen,
                Metric.around(lab),
                SmoothReflectance.of(lab).resampled(Grid.INSIDE).toArray(),
                LabBatch.of(viewing, Grid.INSIDE),
                geometry);
    }

    private void grow(List<Candidate> found, MixFit fit, int[] chosen, int count, int from) {
        double[] x = new double[6];
        fit.fit(chosen, count, x);
        boolean useful = true;
        for (int i = 0; i < count; i++) {
            useful &= x[i] > 1e-6;
        }
        if (useful) {
            found.add(candidate(chosen, count, x));
        }
        for (int i = from; count < MOST_TINTS && i < knowledge.shelf().tints().size(); i++) {
            chosen[count] = i;
            grow(found, fit, chosen, count + 1, i + 1);
        }
    }

    private Candidate candidate(int[] chosen, int count, double[] x) {
        double total = 1;
        for (int i = 0; i < count; i++) {
            total += x[i];
        }
        Map<String, Double> shares = new LinkedHashMap<>();
        shares.put(base, 1 / total);
        double[] logs = new double[count];
        for (int i = 0; i < count; i++) {
            shares.put(knowledge.shelf().tints().get(chosen[i]).id(), x[i] / total);
            logs[i] = Math.log(x[i]);
        }
        DMatrixRMaj doubt = new DMatrixRMaj(knowledge
                .predict(Parts.of(shares), viewing, geometry)
                .covariance()
                .plus(noise)
                .toArray());
        DMatrixRMaj precision = inverse(doubt);
        DMatrixRMaj miss = new DMatrixRMaj(minus(seen, colour(shares)));
        double evidence = -0.5 * VectorVectorMult_DDRM.innerProdA(miss, precision, miss)
                - 0.5 * Math.log(CommonOps_DDRM.det(doubt));
        int tints = knowledge.shelf().tints().size();
        evidence += count * Math.log(USED) + (tints - count) * Math.log(1 - USED);
        double[][] slope = slope(chosen, count, x);
        DMatrixRMaj h = new DMatrixRMaj(count, count);
        for (int i = 0; i < count; i++) {
            double z = (logs[i] - Math.log(USUAL_SHARE)) / SPREAD;
            evidence += -0.5 * z * z - Math.log(SPREAD);
            for (int j = 0; j < count; j++) {
                DMatrixRMaj one = new DMatrixRMaj(slope[i]);
                DMatrixRMaj other = new DMatrixRMaj(slope[j]);
                h.set(
                        i,
                        j,
                        VectorVectorMult_DDRM.innerProdA(one, precision, other) + (i == j ? 1 / (SPREAD * SPREAD) : 0));
            }
        }
        double off = 0;
        if (count > 0) {
            evidence -= 0.5 * Math.log(CommonOps_DDRM.det(h));
            DMatrixRMaj spread = inverse(h);
            for (int i = 0; i < count; i++) {
                off = Math.max(off, Math.sqrt(spread.get(i, i)));
            }
        }
        return new Candidate(shares, evidence, Math.min(1, off));
    }

    private static DMatrixRMaj inverse(DMatrixRMaj of) {
        DMatrixRMaj inverse = of.copy();
        CommonOps_DDRM.invert(inverse);
        return inverse;
    }

    /** How L*, a*, b* move with ln of each amount. */
    private double[][] slope(int[] chosen, int count, double[] x) {
        double[][] slope = new double[count][];
        for (int i = 0; i < count; i++) {
            double[][] ends = new double[2][];
            for (int side = 0; side < 2; side++) {
                Map<String, Double> parts = new LinkedHashMap<>();
                parts.put(base, 1.0);
                for (int j = 0; j < count; j++) {
                    double factor = j == i ? Math.exp(side == 0 ? -STEP : STEP) : 1;
                    parts.put(knowledge.shelf().tints().get(chosen[j]).id(), x[j] * factor);
                }
                ends[side] = colour(parts);
            }
            slope[i] = minus(ends[1], ends[0]);
            for (int axis = 0; axis < 3; axis++) {
                slope[i][axis] /= 2 * STEP;
            }
        }
        return slope;
    }

    private double[] colour(Map<String, Double> parts) {
        Lab lab = knowledge.colour(Parts.of(parts), viewing, geometry);
        return new double[] {lab.lightness(), lab.a(), lab.b()};
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }
}
