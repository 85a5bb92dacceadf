package tintwright.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.colour.SmoothReflectance;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.study.HiddenShop;

/**
 * The fit against a general-purpose optimiser: Levenberg-Marquardt of Hipparchus from several starts, the same
 * residuals written again from the published formulas.
 */
class MixFitTest {
    private static final String[] TINTS = {"carbon-black", "yellow-iron-oxide", "phthalo-blue"};

    @Test
    void endsAtTheSameOptimumAsAGeneralOptimiser() {
        Random random = new Random(17);
        int better = 0;
        for (int problem = 0; problem < 150; problem++) {
            HiddenShop shop = new HiddenShop(problem);
            double[][] k = new double[3][];
            double[][] s = new double[3][];
            for (int i = 0; i < 3; i++) {
                k[i] = shop.k(TINTS[i]);
                s[i] = shop.s(TINTS[i]);
            }
            Lab wanted = new Lab(
                    45 + 45 * random.nextDouble(),
                    12 * random.nextGaussian(),
                    12 * random.nextGaussian(),
                    Viewing.D65_10);
            double[][] metric = Metric.around(wanted);
            double[] aim = {wanted.lightness(), wanted.a(), wanted.b()};
            Spectrum start = SmoothReflectance.of(wanted).resampled(Grid.INSIDE);
            MixFit fit = new MixFit(
                    new MixFit.Additions(k, s, shop.k("white"), shop.s("white"), Loading.NONE),
                    aim,
                    metric,
                    start.toArray(),
                    LabBatch.of(Viewing.D65_10, Grid.INSIDE),
                    Geometry.SPECULAR_INCLUDED);
            double[] x = new double[SmallQuadratic.MOST];
            double ours = Math.sqrt(fit.fit(new int[] {0, 1, 2}, 3, x));
            double theirs = Math.sqrt(hipparchus(shop, k, s, aim, metric));
            assertTrue(ours <= theirs + 0.01, "problem " + problem + ": " + ours + " against " + theirs);
            better += ours < theirs - 0.01 ? 1 : 0;
            for (int i = 0; i < 3; i++) {
                assertTrue(x[i] >= 0);
            }
        }
        assertTrue(better < 10, "the general optimiser missed " + better + ": it is no oracle any more");
    }

    /** Strong colours of any lightness; beside the best of forty starts at random. */
    @Test
    void findsTheNearestMixAlsoOfColoursOutOfReach() {
        Random random = new Random(18);
        int outOfReach = 0;
        for (int problem = 0; problem < 200; problem++) {
            HiddenShop shop = new HiddenShop(problem);
            int count = 3 + problem % 2;
            double[][] k = new double[count][];
            double[][] s = new double[count][];
            int[] chosen = new int[count];
            for (int i = 0; i < count; i++) {
                String id = shop.tints()
                        .get((problem + 3 * i) % shop.tints().size())
                        .id();
                k[i] = shop.k(id);
                s[i] = shop.s(id);
                chosen[i] = i;
            }
            Lab wanted = new Lab(
                    15 + 78 * random.nextDouble(),
                    35 * random.nextGaussian(),
                    35 * random.nextGaussian(),
                    Viewing.D65_10);
            MixFit fit = new MixFit(
                    new MixFit.Additions(k, s, shop.k("white"), shop.s("white"), Loading.NONE),
                    new double[] {wanted.lightness(), wanted.a(), wanted.b()},
                    Metric.around(wanted),
                    SmoothReflectance.of(wanted).resampled(Grid.INSIDE).toArray(),
                    LabBatch.of(Viewing.D65_10, Grid.INSIDE),
                    Geometry.SPECULAR_INCLUDED);
            double[] x = new double[SmallQuadratic.MOST];
            double ours = Math.sqrt(fit.fitThoroughly(chosen, count, x));
            double least = Double.POSITIVE_INFINITY;
            for (int start = 0; start < 40; start++) {
                for (int i = 0; i < count; i++) {
                    x[i] = Math.exp(-10 + 8 * random.nextDouble());
                }
                least = Math.min(least, Math.sqrt(fit.fitFrom(chosen, count, x)));
            }
            outOfReach += least > 1 ? 1 : 0;
            assertTrue(ours <= least + 0.01, "problem " + problem + ": " + ours + " against " + least);
        }
        assertTrue(outOfReach > 100, "only " + outOfReach + " colours lie out of reach");
    }

    @Test
    void keepsToTheLimitOfEachPartWhateverElseIsIn() {
        HiddenShop shop = new HiddenShop(1);
        double[][] k = {shop.k("carbon-black"), shop.k("red-iron-oxide")};
        double[][] s = {shop.s("carbon-black"), shop.s("red-iron-oxide")};
        Lab dark = new Lab(20, 10, 5, Viewing.D65_10);
        MixFit fit = new MixFit(
                new MixFit.Additions(
                        k,
                        s,
                        shop.k("white"),
                        shop.s("white"),
                        Loading.ofParts(1, new double[] {0.01, 0.02}, new double[2])),
                new double[] {20, 10, 5},
                Metric.around(dark),
                SmoothReflectance.of(dark).resampled(Grid.INSIDE).toArray(),
                LabBatch.of(Viewing.D65_10, Grid.INSIDE),
                Geometry.SPECULAR_INCLUDED);
        double[] x = new double[SmallQuadratic.MOST];
        fit.fit(new int[] {0, 1}, 2, x);
        double whole = 1 + x[0] + x[1];
        assertEquals(0.01, x[0] / whole, 1e-9);
        assertEquals(0.02, x[1] / whole, 1e-9);
    }

    @Test
    void theBoundedProblemIsSolvedAsByTryingEveryCorner() {
        Random random = new Random(23);
        SmallQuadratic quadratic = new SmallQuadratic();
        for (int problem = 0; problem < 2000; problem++) {
            int n = 1 + random.nextInt(4);
            double[][] h = new double[6][6];
            double[] g = new double[6];
            double[] low = new double[6];
            double[] high = new double[6];
            for (int i = 0; i < n; i++) {
                g[i] = 3 * random.nextGaussian();
                low[i] = random.nextDouble();
                high[i] = low[i] + random.nextDouble() * random.nextInt(3);
                for (int row = 0; row < 3; row++) {
                    double left = random.nextGaussian();
                    for (int j = 0; j <= i; j++) {
                        h[i][j] += left * (j == i ? left : random.nextGaussian());
                        h[j][i] = h[i][j];
                    }
                }
                h[i][i] += 12;
            }
            double[] x = new double[6];
            quadratic.solve(n, h, g, low, high, x);
            for (int i = 0; i < n; i++) {
                double pull = g[i];
                for (int j = 0; j < n; j++) {
                    pull -= h[i][j] * x[j];
                }
                assertTrue(x[i] >= low[i] - 1e-9 && x[i] <= high[i] + 1e-9, "problem " + problem);
                // Karush-Kuhn-Tucker: no pull inside, pushed against its floor or ceiling.
                assertTrue(x[i] < high[i] - 1e-9 ? pull < 1e-7 : true, "problem " + problem + " pulls up " + pull);
                assertTrue(x[i] > low[i] + 1e-9 ? pull > -1e-7 : true, "problem " + problem + " pulls down " + pull);
            }
        }
    }

    /** Best of several starts; amounts are squares of what it searches, so they stay at 0 or more. */
    private static double hipparchus(HiddenShop shop, double[][] k, double[][] s, double[] aim, double[][] metric) {
        double least = Double.POSITIVE_INFINITY;
        for (double start : new double[] {0.0005, 0.003, 0.015}) {
            double root = Math.sqrt(start);
            LeastSquaresProblem problem = new LeastSquaresBuilder()
                    .start(new double[] {root, root, root})
                    .target(new double[3])
                    .weight(new DiagonalMatrix(new double[] {1, 1, 1}))
                    .model(p -> value(shop, k, s, aim, metric, p))
                    .maxEvaluations(2000)
                    .maxIterations(500)
                    .build();
            try {
                double cost =
                        new LevenbergMarquardtOptimizer().optimize(problem).getCost();
                least = Math.min(least, cost * cost);
            } catch (MathIllegalStateException stuckAtZero) {
                // A square has no slope at zero, where it can get stuck; another start answers.
            }
        }
        return least;
    }

    private static Pair<RealVector, RealMatrix> value(
            HiddenShop shop, double[][] k, double[][] s, double[] aim, double[][] metric, RealVector p) {
        double[] x = p.toArray();
        double[] here = residual(shop, k, s, aim, metric, squares(x));
        double[][] jacobian = new double[3][3];
        for (int j = 0; j < 3; j++) {
            double step = 1e-7;
            double[] moved = x.clone();
            moved[j] += step;
            double[] there = residual(shop, k, s, aim, metric, squares(moved));
            for (int i = 0; i < 3; i++) {
                jacobian[i][j] = (there[i] - here[i]) / step;
            }
        }
        return new Pair<>(new ArrayRealVector(here), new Array2DRowRealMatrix(jacobian));
    }

    private static double[] squares(double[] roots) {
        return java.util.Arrays.stream(roots).map(r -> r * r).toArray();
    }

    private static double[] residual(
            HiddenShop shop, double[][] k, double[][] s, double[] aim, double[][] metric, double[] x) {
        double[] r = new double[31];
        for (int w = 0; w < 31; w++) {
            double sumK = shop.k("white")[w];
            double sumS = shop.s("white")[w];
            for (int i = 0; i < 3; i++) {
                sumK += x[i] * k[i][w];
                sumS += x[i] * s[i][w];
            }
            double a = 1 + sumK / sumS;
            double inside = a - Math.sqrt(a * a - 1);
            r[w] = 0.04 + 0.96 * 0.4 * inside / (1 - 0.6 * inside);
        }
        Lab lab = Lab.of(Spectrum.of(Grid.INSIDE, r), Viewing.D65_10);
        double[] miss = {lab.lightness() - aim[0], lab.a() - aim[1], lab.b() - aim[2]};
        double[] out = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                out[i] += metric[i][j] * miss[j];
            }
        }
        return out;
    }
}
