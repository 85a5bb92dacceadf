package tintwright.match;

import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.LabBatch;
import tintwright.optics.KubelkaMunk;
import tintwright.optics.Surface;

/**
 * How much of each addition brings a stock (a base, or a cup as it is) nearest to a colour.
 *
 * <p>Weighted Gauss-Newton on L*, a*, b* with the local CIEDE2000 metric; each step is an exact bounded quadratic
 * problem. It starts from the additions that best reproduce the target's K/S spectrum, which is a linear problem:
 * the start matters more than the solver. Allocates nothing in {@link #fit}; not for use by two threads at once.
 */
public final class MixFit {
    private static final int N = Grid.INSIDE.count();
    /** A bound on work, a judgement of ours. */
    private static final int MOST_STEPS = 30;

    /** Small beside all that it is held against, a judgement of ours. */
    private static final double DAMPING = 1e-4;
    /** A step that gains less than this share ends the search; small beside all that it is held against, a judgement of ours. */
    private static final double STILL = 1e-7;
    /** Squared metric distance below which nobody can see a gain; small beside all that it is held against, a judgement of ours. */
    private static final double ZERO = 4e-7;
    /** Squared metric distance above which a mix with a tint put aside is looked for again; settled in MixFitTest. */
    static final double FAR = 0.25;

    private final double[][] k;
    private final double[][] s;
    private final double[] stockK;
    private final double[] stockS;
    private final Loading loading;
    private final double[] floor;
    private final double[] target;
    private final double[][] metric;
    private final LabBatch projection;
    private final Geometry geometry;
    private final double[][] gram;
    private final double[] right;

    private final SmallQuadratic quadratic = new SmallQuadratic();
    private final double[] reflectance = new double[N];
    private final double[] ratio = new double[N];
    private final double[] sumS = new double[N];
    private final double[] slopeOfK = new double[N];
    private final double[] lab = new double[3];
    private final double[] residual = new double[3];
    private final double[] responses = new double[3];
    private final double[] change = new double[N];
    private final double[] moves = new double[3];
    private final double[][] jacobian = new double[3][SmallQuadratic.MOST];
    private final double[][] h = new double[SmallQuadratic.MOST][SmallQuadratic.MOST];
    private final double[] g = new double[SmallQuadratic.MOST];
    private final double[] high = new double[SmallQuadratic.MOST];
    private final double[] low = new double[SmallQuadratic.MOST];
    private final double[] next = new double[SmallQuadratic.MOST];
    private final double[] step = new double[SmallQuadratic.MOST];
    private final double[] other = new double[SmallQuadratic.MOST];

    /**
     * What can be added, and to what.
     *
     * @param k           absorption per gram of each addition, rows of 31
     * @param s           scattering per gram of each addition, rows of 31
     * @param stockK      absorption of the stock, 31 values: K per gram times its grams
     * @param stockS      scattering of the stock, 31 values
     * @param loading     how much of them may go in
     */
    public record Additions(double[][] k, double[][] s, double[] stockK, double[] stockS, Loading loading) {}

    /**
     * @param additions   what can be added
     * @param target      L*, a*, b* to hit, under the projection's light
     * @param reflectance the target's spectrum, measured or estimated, 31 values: only for the start
     */
    public MixFit(
            Additions additions,
            double[] target,
            double[][] metric,
            double[] reflectance,
            LabBatch projection,
            Geometry geometry) {
        this.k = additions.k();
        this.s = additions.s();
        this.stockK = additions.stockK();
        this.stockS = additions.stockS();
        this.loading = additions.loading();
        this.floor = new double[k.length];
        this.target = target.clone();
        this.metric = metric;
        this.projection = projection;
        this.geometry = geometry;
        this.gram = new double[k.length][k.length];
        this.right = new double[k.length];
        prepareStart(reflectance);
    }

    private void prepareStart(double[] wanted) {
        double[][] slope = new double[3][N];
        projection.labAndSlopes(wanted, new double[3], slope);
        double[] sense = new double[N];
        double mean = 0;
        for (int w = 0; w < N; w++) {
            for (int axis = 0; axis < 3; axis++) {
                double by = 0;
                for (int b = 0; b < 3; b++) {
                    by += metric[axis][b] * slope[b][w];
                }
                sense[w] += by * by;
            }
            mean += sense[w] / N;
        }
        double[] row = new double[k.length];
        for (int w = 0; w < N; w++) {
            double internal = Math.min(0.995, Math.max(0.002, Surface.RESIN.internal(wanted[w], geometry)));
            double q = KubelkaMunk.ratio(internal);
            double gain = internal / Math.sqrt(q * (q + 2)) * Surface.RESIN.slope(internal) / stockS[w];
            double weight = gain * gain * (sense[w] + 0.1 * mean);
            double rest = q * stockS[w] - stockK[w];
            for (int i = 0; i < row.length; i++) {
                row[i] = k[i][w] - q * s[i][w];
                right[i] += weight * row[i] * rest;
            }
            for (int i = 0; i < row.length; i++) {
                for (int j = 0; j <= i; j++) {
                    gram[i][j] += weight * row[i] * row[j];
                    gram[j][i] = gram[i][j];
                }
            }
        }
    }

    /**
     * The best amounts of some of the additions.
     *
     * @param chosen which additions, at most six
     * @param count  how many of {@code chosen} count
     * @param x      filled with grams of each chosen addition for the whole stock
     * @return squared distance to the target in the local CIEDE2000 metric
     */
    public double fit(int[] chosen, int count, double[] x) {
        start(chosen, count, x);
        return fitFrom(chosen, count, x);
    }

    /**
     * The same as {@link #fit}, and where a tint was put aside far from the target also from each of them alone and from
     * equal amounts: a colour out of reach has more than one nearest mix.
     */
    public double fitThoroughly(int[] chosen, int count, double[] x) {
        double distance = fit(chosen, count, x);
        boolean onePutAside = false;
        for (int i = 0; i < count; i++) {
            onePutAside |= x[i] <= floor[chosen[i]];
        }
        return onePutAside && count > 1 && distance > FAR ? fromOtherStarts(chosen, count, x, distance) : distance;
    }

    private double fromOtherStarts(int[] chosen, int count, double[] x, double distance) {
        double least = distance;
        for (int alone = 0; alone <= count; alone++) {
            double wanted = 0;
            double sensed = 0;
            for (int i = 0; i < count; i++) {
                if (alone == i || alone == count) {
                    wanted += right[chosen[i]];
                    for (int j = 0; j < count; j++) {
                        sensed += alone == j || alone == count ? gram[chosen[i]][chosen[j]] : 0;
                    }
                }
            }
            for (int i = 0; i < count; i++) {
                other[i] = floor[chosen[i]] + (alone == i || alone == count ? Math.max(0, wanted / sensed) : 0);
            }
            double reached = fitFrom(chosen, count, other);
            if (reached < least * (1 - STILL)) {
                least = reached;
                System.arraycopy(other, 0, x, 0, count);
            }
        }
        evaluate(chosen, count, x);
        return least;
    }

    /** Changes what to hit: L*, a*, b* near the target that the start was prepared for. */
    public void aim(double[] lab) {
        System.arraycopy(lab, 0, target, 0, 3);
    }

    /**
     * Forbids less than this: what is in cannot be taken out.
     *
     * @param grams of each addition, 0 or more, together within the limit
     */
    public void atLeast(double[] grams) {
        System.arraycopy(grams, 0, floor, 0, floor.length);
    }

    /** The same as {@link #fit}, from the amounts that stand in {@code x}. */
    public double fitFrom(int[] chosen, int count, double[] x) {
        for (int i = 0; i < count; i++) {
            low[i] = floor[chosen[i]];
        }
        loading.keep(chosen, count, x, low);
        double cost = evaluate(chosen, count, x);
        double damping = DAMPING;
        for (int iteration = 0; iteration < MOST_STEPS && cost > ZERO; iteration++) {
            differentiate(chosen, count);
            normalEquations(count, x, damping);
            limit(chosen, count, x);
            quadratic.solve(count, h, g, low, high, next);
            loading.keep(chosen, count, next, low);
            for (int i = 0; i < count; i++) {
                step[i] = next[i] - x[i];
            }
            double nextCost = evaluate(chosen, count, next);
            for (int half = 0; half < 8 && !(nextCost < cost); half++) {
                for (int i = 0; i < count; i++) {
                    step[i] *= 0.35;
                    next[i] = x[i] + step[i];
                }
                nextCost = evaluate(chosen, count, next);
            }
            if (!(nextCost < cost)) {
                evaluate(chosen, count, x);
                break;
            }
            double gain = cost - nextCost;
            System.arraycopy(next, 0, x, 0, count);
            cost = nextCost;
            if (gain < STILL * cost) {
                break;
            }
        }
        return cost;
    }

    private void start(int[] chosen, int count, double[] x) {
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                h[i][j] = gram[chosen[i]][chosen[j]];
            }
            h[i][i] *= 1 + 1e-9;
            g[i] = right[chosen[i]];
            low[i] = floor[chosen[i]];
            x[i] = low[i];
        }
        limit(chosen, count, x);
        quadratic.solve(count, h, g, low, high, x);
    }

    /** The most of each beside what stands of the others; in the end they stand where the answer has them. */
    private void limit(int[] chosen, int count, double[] x) {
        for (int i = 0; i < count; i++) {
            high[i] = Math.max(low[i], loading.ceiling(chosen, count, x, i));
        }
    }

    private void normalEquations(int count, double[] x, double damping) {
        for (int i = 0; i < count; i++) {
            double right = 0;
            for (int axis = 0; axis < 3; axis++) {
                right += jacobian[axis][i] * residual[axis];
            }
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int axis = 0; axis < 3; axis++) {
                    sum += jacobian[axis][i] * jacobian[axis][j];
                }
                h[i][j] = sum;
                h[j][i] = sum;
            }
            g[i] = right;
        }
        for (int i = 0; i < count; i++) {
            h[i][i] += damping * h[i][i] + 1e-9;
        }
        // The step is measured from x: turn the right side into one for the new amounts.
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                g[i] += h[i][j] * x[j];
            }
        }
    }

    /** Squared distance at these amounts; leaves reflectance, colour and residual behind. */
    private double evaluate(int[] chosen, int count, double[] x) {
        film(chosen, count, x);
        projection.lab(reflectance, lab, responses);
        return distance();
    }

    private double distance() {
        double cost = 0;
        for (int axis = 0; axis < 3; axis++) {
            double sum = 0;
            for (int b = axis; b < 3; b++) {
                sum += metric[axis][b] * (target[b] - lab[b]);
            }
            residual[axis] = sum;
            cost += sum * sum;
        }
        return cost;
    }

    private void film(int[] chosen, int count, double[] x) {
        double[] sumK = ratio;
        System.arraycopy(stockK, 0, sumK, 0, N);
        System.arraycopy(stockS, 0, sumS, 0, N);
        for (int i = 0; i < count; i++) {
            double grams = x[i];
            double[] ki = k[chosen[i]];
            double[] si = s[chosen[i]];
            for (int w = 0; w < N; w++) {
                sumK[w] += grams * ki[w];
                sumS[w] += grams * si[w];
            }
        }
        double mirror = geometry == Geometry.SPECULAR_INCLUDED ? Surface.RESIN.outside() : 0;
        double back = 1 - Surface.RESIN.inside();
        double through = (1 - Surface.RESIN.outside()) * back;
        // Film and surface in one: with d = K + S + root the reading is mirror + through * S / (d - inside * S); what
        // is
        // divided by, here and in its slope by K, is divided by once.
        for (int w = 0; w < N; w++) {
            double absorbs = sumK[w];
            double scatters = sumS[w];
            double root = Math.sqrt(absorbs * (absorbs + 2 * scatters));
            double leaves = back * scatters + absorbs + root;
            double over = 1 / (root * leaves * scatters);
            double gone = over * root * scatters;
            reflectance[w] = mirror + through * scatters * gone;
            double overRoot = over * leaves * scatters;
            slopeOfK[w] = -through * (absorbs + scatters + root) * scatters * gone * gone * overRoot;
            ratio[w] = absorbs * over * root * leaves;
        }
    }

    private void differentiate(int[] chosen, int count) {
        for (int i = 0; i < count; i++) {
            double[] ki = k[chosen[i]];
            double[] si = s[chosen[i]];
            for (int w = 0; w < N; w++) {
                change[w] = slopeOfK[w] * (ki[w] - ratio[w] * si[w]);
            }
            projection.along(change, responses, moves);
            jacobian[0][i] = metric[0][0] * moves[0] + metric[0][1] * moves[1] + metric[0][2] * moves[2];
            jacobian[1][i] = metric[1][1] * moves[1] + metric[1][2] * moves[2];
            jacobian[2][i] = metric[2][2] * moves[2];
        }
    }

    /** @return the colour that the last fit ended at, a copy */
    public double[] lab() {
        return lab.clone();
    }
}
