package tintwright.reading.photo.camera;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import tintwright.colour.Matrix3;
import tintwright.reading.photo.card.Sample;

/**
 * The most probable unknowns of a {@link CameraModel} given the references, by Gauss-Newton with damping; what is
 * left over near each reference is carried to its neighbours in colour (a Gaussian process), so that a reference
 * close to the hull's colour counts most there.
 *
 * <p>All residuals are in steps the eye weighs alike ({@link EyeMetric}), so 1 is about one CIEDE2000.
 */
final class CorrectionFit {
    /** What the model cannot bend to: standard deviation in CIEDE2000, settled with {@link Flexibility}. */
    static final double LEFT_OVER = 0.6;
    /** How far apart in L*, a*, b* two colours still share what is left over; a judgement of ours. */
    static final double LEFT_OVER_REACH = 12;

    /** A bound on work, a judgement of ours. */
    private static final int STEPS = 12;
    /** Of the sum of squares, a gain that no longer moves an answer; small beside all that it is held against, a judgement of ours. */
    private static final double SETTLED = 0.02;

    private static final int N = CameraModel.UNKNOWNS;

    final CameraModel model;
    final List<KnownSample> known;
    final DMatrixRMaj prior;
    /** The unknowns that the prior holds most probable. */
    final double[] expected;
    /** The most probable unknowns. */
    final double[] unknowns;
    /** Inverse covariance of references (left-over and noise), 3 rows for each. */
    private final DMatrixRMaj inverseNoise;

    private final DMatrixRMaj noise;
    private final double[][][] eye;
    /** Slopes of the weighted colours at the answer. */
    private DMatrixRMaj slopes;
    /** Reference minus model at the answer, weighted. */
    private DMatrixRMaj residual;

    private double cost;
    /** Null until somebody asks. */
    private LeftOut[] leftOut;

    CorrectionFit(
            CameraModel model,
            List<KnownSample> known,
            Flexibility flexibility,
            double exposure,
            double balance,
            double[] expected,
            double[] start) {
        this(new Scatter(model, known, start), flexibility, exposure, balance, expected, start);
    }

    /** @param scatter of the references about the model; fits from the same start may share it */
    CorrectionFit(
            Scatter scatter,
            Flexibility flexibility,
            double exposure,
            double balance,
            double[] expected,
            double[] start) {
        this.model = scatter.model;
        this.known = scatter.known;
        this.prior = flexibility.prior(exposure, balance);
        this.expected = expected.clone();
        this.unknowns = start.clone();
        this.eye = scatter.eye;
        this.noise = scatter.noise;
        this.inverseNoise = scatter.inverse;
        solve(inverse(prior));
    }

    static double[][] noiseInEyeSteps(double[][] eye, double[][] byLight, Sample sample) {
        double[][] scaled = new double[3][3];
        for (int k = 0; k < 3; k++) {
            scaled[k][k] = sample.noise().at(k) * sample.noise().at(k);
        }
        return Matrix3.sandwich(Matrix3.times(eye, byLight), scaled);
    }

    /** Covariance of what is left over at a colour and at a reference. */
    static double near(double lightness, double a, double b, KnownSample reference) {
        double dl = lightness - reference.colour().lightness();
        double da = a - reference.colour().a();
        double db = b - reference.colour().b();
        double apart = (dl * dl + da * da + db * db) / (LEFT_OVER_REACH * LEFT_OVER_REACH);
        return LEFT_OVER * LEFT_OVER * Math.exp(-apart / 2);
    }

    private void solve(DMatrixRMaj precision) {
        evaluate(unknowns, true);
        double damping = 1e-3;
        DMatrixRMaj step = new DMatrixRMaj(N, 1);
        for (int i = 0; i < STEPS; i++) {
            DMatrixRMaj weighted = new DMatrixRMaj(1, 1);
            CommonOps_DDRM.mult(inverseNoise, slopes, weighted);
            DMatrixRMaj normal = precision.copy();
            CommonOps_DDRM.multAddTransA(slopes, weighted, normal);
            DMatrixRMaj right = new DMatrixRMaj(N, 1);
            CommonOps_DDRM.multTransA(weighted, residual, right);
            DMatrixRMaj away = offExpected(unknowns);
            CommonOps_DDRM.multAdd(-1, precision, away, right);
            double before = cost;
            double after = before;
            boolean better = false;
            while (!better && damping < 1e6) {
                DMatrixRMaj damped = normal.copy();
                for (int k = 0; k < N; k++) {
                    damped.add(k, k, damping * normal.get(k, k));
                }
                LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(N);
                if (solver.setA(damped)) {
                    solver.solve(right, step);
                    double[] tried = unknowns.clone();
                    for (int k = 0; k < N; k++) {
                        tried[k] += step.get(k);
                    }
                    after = costAt(tried, precision);
                    if (after < before) {
                        System.arraycopy(tried, 0, unknowns, 0, N);
                        better = true;
                    }
                }
                damping *= better ? 0.1 : 5;
                if (!better && CommonOps_DDRM.dot(right, step) < SETTLED) {
                    break; // even the straight-line model promises nothing from here
                }
            }
            if (!better) {
                evaluate(unknowns, true); // the last trial left its own residuals behind
                break;
            }
            evaluate(unknowns, true);
            cost = after;
            if (before - cost < SETTLED) {
                break;
            }
        }
    }

    private double costAt(double[] at, DMatrixRMaj precision) {
        evaluate(at, false);
        DMatrixRMaj away = offExpected(at);
        return quadratic(residual, inverseNoise) + quadratic(away, precision);
    }

    private static double quadratic(DMatrixRMaj v, DMatrixRMaj m) {
        DMatrixRMaj mv = new DMatrixRMaj(m.numRows, 1);
        CommonOps_DDRM.mult(m, v, mv);
        return CommonOps_DDRM.dot(v, mv);
    }

    private DMatrixRMaj offExpected(double[] at) {
        DMatrixRMaj away = new DMatrixRMaj(N, 1);
        for (int k = 0; k < N; k++) {
            away.set(k, at[k] - expected[k]);
        }
        return away;
    }

    /** Residuals, and with them the slopes, at some unknowns. */
    private void evaluate(double[] at, boolean withSlopes) {
        int n = known.size();
        residual = new DMatrixRMaj(3 * n, 1);
        if (withSlopes) {
            slopes = new DMatrixRMaj(3 * n, N);
            cost = Double.POSITIVE_INFINITY;
        }
        double[] lab = new double[3];
        double[][] by = withSlopes ? new double[3][N] : null;
        for (int i = 0; i < n; i++) {
            KnownSample one = known.get(i);
            model.colour(at, one.sample(), lab, by, null);
            double[] off = Matrix3.times(eye[i], new double[] {
                one.colour().lightness() - lab[0],
                one.colour().a() - lab[1],
                one.colour().b() - lab[2]
            });
            for (int r = 0; r < 3; r++) {
                residual.set(3 * i + r, off[r]);
                if (withSlopes) {
                    for (int k = 0; k < N; k++) {
                        slopes.set(
                                3 * i + r,
                                k,
                                eye[i][r][0] * by[0][k] + eye[i][r][1] * by[1][k] + eye[i][r][2] * by[2][k]);
                    }
                }
            }
        }
    }

    /**
     * Each reference predicted from all the others, in the straight-line model at the answer.
     *
     * @param error how far off, in CIEDE2000
     * @param chance the same over its stated spread: about 1 when the stated spread is honest
     */
    record LeftOut(double error, double chance) {}

    /** @return one for each reference; worked out once from one inverse, without fitting again */
    LeftOut[] leaveOneOut() {
        if (leftOut == null) {
            leftOut = eachLeftOut();
        }
        return leftOut.clone();
    }

    private LeftOut[] eachLeftOut() {
        int n = known.size();
        DMatrixRMaj all = noise.copy();
        DMatrixRMaj sp = new DMatrixRMaj(3 * n, N);
        CommonOps_DDRM.mult(slopes, prior, sp);
        CommonOps_DDRM.multAddTransB(sp, slopes, all);
        DMatrixRMaj q = inverse(all);
        DMatrixRMaj r0 = residual.copy();
        CommonOps_DDRM.multAdd(slopes, offExpected(unknowns), r0);
        DMatrixRMaj qr = new DMatrixRMaj(3 * n, 1);
        CommonOps_DDRM.mult(q, r0, qr);
        LeftOut[] out = new LeftOut[n];
        for (int i = 0; i < n; i++) {
            double[][] block = new double[3][3];
            double[] v = new double[3];
            for (int r = 0; r < 3; r++) {
                v[r] = qr.get(3 * i + r);
                for (int c = 0; c < 3; c++) {
                    block[r][c] = q.get(3 * i + r, 3 * i + c);
                }
            }
            double[] e = Matrix3.times(Matrix3.inverse(block), v);
            double chance = (e[0] * v[0] + e[1] * v[1] + e[2] * v[2]) / 3;
            out[i] = new LeftOut(Math.sqrt(e[0] * e[0] + e[1] * e[1] + e[2] * e[2]), Math.sqrt(Math.max(0, chance)));
        }
        return out;
    }

    /**
     * The colours of samples, with what is left over near them.
     *
     * @param lab        one row for each sample
     * @param covariance 3 rows and columns for each sample, in L*, a*, b*, all samples together: of the correction
     *                   alone, without the samples' own noise
     * @param own        3 by 3 for each sample: its own noise, in L*, a*, b*
     */
    record Predicted(double[][] lab, DMatrixRMaj covariance, double[][][] own) {}

    /** @param wide the prior whose width counts for the covariance */
    Predicted predict(List<Sample> samples, DMatrixRMaj wide) {
        int m = samples.size();
        int n = known.size();
        double[][] lab = new double[m][3];
        double[][][] own = new double[m][][];
        DMatrixRMaj g = new DMatrixRMaj(3 * m, N);
        DMatrixRMaj cross = new DMatrixRMaj(3 * m, 3 * n);
        DMatrixRMaj covariance = new DMatrixRMaj(3 * m, 3 * m);
        double[][][] back = new double[m][][];
        double[][] by = new double[3][N];
        double[][] byLight = new double[3][3];
        for (int i = 0; i < m; i++) {
            model.colour(unknowns, samples.get(i), lab[i], by, byLight);
            double[][] here = EyeMetric.at(lab[i][0], lab[i][1], lab[i][2]);
            back[i] = Matrix3.inverse(here);
            own[i] = Matrix3.sandwich(Matrix3.inverse(here), noiseInEyeSteps(here, byLight, samples.get(i)));
            for (int r = 0; r < 3; r++) {
                for (int k = 0; k < N; k++) {
                    g.set(3 * i + r, k, here[r][0] * by[0][k] + here[r][1] * by[1][k] + here[r][2] * by[2][k]);
                }
                for (int j = 0; j < n; j++) {
                    cross.set(3 * i + r, 3 * j + r, near(lab[i][0], lab[i][1], lab[i][2], known.get(j)));
                }
            }
        }
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < m; j++) {
                double apart = 0;
                for (int axis = 0; axis < 3; axis++) {
                    apart += (lab[i][axis] - lab[j][axis]) * (lab[i][axis] - lab[j][axis]);
                }
                double k = LEFT_OVER * LEFT_OVER * Math.exp(-apart / (2 * LEFT_OVER_REACH * LEFT_OVER_REACH));
                for (int r = 0; r < 3; r++) {
                    covariance.set(3 * i + r, 3 * j + r, k);
                }
            }
        }
        if (n > 0) {
            DMatrixRMaj gain = new DMatrixRMaj(3 * m, 3 * n);
            CommonOps_DDRM.mult(cross, inverseNoise, gain);
            CommonOps_DDRM.multAddTransB(-1, gain, cross, covariance);
            CommonOps_DDRM.multAdd(-1, gain, slopes, g);
        }
        DMatrixRMaj pull = pull();
        for (int i = 0; i < m; i++) {
            addLeftOver(lab[i], back[i], pull);
        }
        DMatrixRMaj normal = inverse(wide);
        if (n > 0) {
            DMatrixRMaj weighted = new DMatrixRMaj(1, 1);
            CommonOps_DDRM.mult(inverseNoise, slopes, weighted);
            CommonOps_DDRM.multAddTransA(slopes, weighted, normal);
        }
        DMatrixRMaj ga = new DMatrixRMaj(3 * m, N);
        CommonOps_DDRM.mult(g, inverse(normal), ga);
        CommonOps_DDRM.multAddTransB(ga, g, covariance);
        return new Predicted(lab, inLab(covariance, back), own);
    }

    /** @return L*, a*, b* of samples as {@link #predict} has them, without the covariance and its cost */
    double[][] colours(List<Sample> samples) {
        double[][] lab = new double[samples.size()][3];
        DMatrixRMaj pull = pull();
        for (int i = 0; i < lab.length; i++) {
            model.colour(unknowns, samples.get(i), lab[i], null, null);
            addLeftOver(lab[i], Matrix3.inverse(EyeMetric.at(lab[i][0], lab[i][1], lab[i][2])), pull);
        }
        return lab;
    }

    /** @return what is left over at the references, as each of them pulls at its neighbours */
    private DMatrixRMaj pull() {
        DMatrixRMaj pull = new DMatrixRMaj(residual.numRows, 1);
        CommonOps_DDRM.mult(inverseNoise, residual, pull);
        return pull;
    }

    /** @param back from steps of the eye at this colour to L*, a*, b* */
    private void addLeftOver(double[] lab, double[][] back, DMatrixRMaj pull) {
        double[] sum = new double[3];
        for (int j = 0; j < known.size(); j++) {
            double share = near(lab[0], lab[1], lab[2], known.get(j));
            for (int r = 0; r < 3; r++) {
                sum[r] += share * pull.get(3 * j + r);
            }
        }
        double[] shift = Matrix3.times(back, sum);
        for (int axis = 0; axis < 3; axis++) {
            lab[axis] += shift[axis];
        }
    }

    private static DMatrixRMaj inLab(DMatrixRMaj inEyeSteps, double[][][] back) {
        int m = back.length;
        DMatrixRMaj out = new DMatrixRMaj(3 * m, 3 * m);
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < m; j++) {
                double[][] block = new double[3][3];
                for (int r = 0; r < 3; r++) {
                    for (int c = 0; c < 3; c++) {
                        block[r][c] = inEyeSteps.get(3 * i + r, 3 * j + c);
                    }
                }
                double[][] turned = Matrix3.sandwich(back[i], block, back[j]);
                for (int r = 0; r < 3; r++) {
                    for (int c = 0; c < 3; c++) {
                        out.set(3 * i + r, 3 * j + c, turned[r][c]);
                    }
                }
            }
        }
        return out;
    }

    static DMatrixRMaj inverse(DMatrixRMaj m) {
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(m.numRows);
        DMatrixRMaj out = new DMatrixRMaj(m.numRows, m.numCols);
        if (m.numRows == 0) {
            return out;
        }
        if (!solver.setA(m.copy())) {
            throw new IllegalStateException("a covariance of " + m.numRows + " rows is not positive");
        }
        solver.invert(out);
        return out;
    }
}
