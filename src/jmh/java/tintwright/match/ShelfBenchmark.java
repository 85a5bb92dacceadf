package tintwright.match;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.colour.SmoothReflectance;
import tintwright.colour.Viewing;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Base;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Stock;
import tintwright.shelf.StockItem;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.study.HiddenShop;

/**
 * A shelf of 12 tints and 60 chips: learning it, fitting three tints beside a general-purpose optimiser on the same
 * residuals and slopes, fitting all 793 sets of up to four tints, and a whole match.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ShelfBenchmark {
    private static final int N = 31;
    private static final int[] THREE = {0, 2, 3};

    private Shelf shelf;
    private Knowledge knowledge;
    private MixFit fit;
    private Wish wish;
    private double[][] k;
    private double[][] s;
    private double[] aim;
    private double[][] metric;
    private final double[] x = new double[SmallQuadratic.MOST];

    @Setup
    public void prepare() {
        HiddenShop one = new HiddenShop(5);
        HiddenShop two = new HiddenShop(6);
        List<StockItem> items = new ArrayList<>(one.tints());
        List<Chip> chips = new ArrayList<>();
        chips.add(one.chip("base", Parts.of(Map.of("white", 20.0))));
        for (Tint tint : one.tints()) {
            for (int i = 1; i <= 5; i++) {
                chips.add(one.chip(tint.id() + i, Parts.of(Map.of("white", 20.0, tint.id(), 0.06 * i))));
            }
        }
        PigmentFamily[] more = {
            PigmentFamily.ORGANIC_RED,
            PigmentFamily.YELLOW_IRON_OXIDE,
            PigmentFamily.PHTHALO_BLUE,
            PigmentFamily.RED_IRON_OXIDE
        };
        for (PigmentFamily family : more) {
            Tint tint = Tint.of("second-" + family.code(), "second " + family.words(), family);
            items.add(tint);
            for (int i = 1; i <= 5; i++) {
                Chip chip = two.chip(tint.id() + i, Parts.of(Map.of("white", 20.0, family.code(), 0.06 * i)));
                Map<String, Double> renamed = new LinkedHashMap<>();
                chip.parts().grams().forEach((id, grams) -> renamed.put(id.equals("white") ? id : tint.id(), grams));
                chips.add(new Chip(chip.id(), Parts.of(renamed), chip.readings(), Optional.empty(), ""));
            }
        }
        while (chips.size() > 60) {
            chips.remove(chips.size() - 1);
        }
        items.add(new Base("white", "White", 1.3, false, Stock.UNKNOWN));
        shelf = new Shelf("benchmark", items, chips);
        knowledge = Knowledge.of(shelf);
        Lab hull = new Lab(66, -4, 9, Viewing.D65_10);
        Target target = Aim.of(new PlaceReadings("", "hull", List.of(one.read(hull)), ""))
                .target();
        wish = Wish.of(target, 100, 0.01);
        k = knowledge.absorption();
        s = knowledge.scattering();
        Pool pool = Pool.of(knowledge, wish, k, s, "white");
        Lab c = target.colour();
        aim = new double[] {c.lightness(), c.a(), c.b()};
        metric = Metric.around(c);
        MixFit.Additions limited = pool.additions();
        // The rival knows no loading limit, so neither may this fit.
        MixFit.Additions free =
                new MixFit.Additions(limited.k(), limited.s(), limited.stockK(), limited.stockS(), Loading.NONE);
        fit = new MixFit(
                free,
                aim,
                metric,
                SmoothReflectance.of(c).resampled(Grid.INSIDE).toArray(),
                LabBatch.of(c.viewing(), Grid.INSIDE),
                Geometry.SPECULAR_INCLUDED);
        double ours = fit.fit(THREE, 3, x);
        double theirs = Math.pow(hipparchusCost(), 2);
        if (Math.abs(Math.sqrt(ours) - Math.sqrt(theirs)) > 0.01) {
            throw new IllegalStateException("the two do not end at the same answer: " + ours + ", " + theirs);
        }
    }

    @Benchmark
    public Object learnTwelveTintsAndSixtyChips() {
        return Knowledge.learn(shelf);
    }

    @Benchmark
    public double fitThreeTints() {
        return fit.fit(THREE, 3, x);
    }

    @Benchmark
    public double fitThreeTintsHipparchus() {
        return hipparchusCost();
    }

    /** 12 single tints, 66 pairs, 220 threes, 495 fours. */
    @Benchmark
    public double fitAllSetsOfUpToFour() {
        int[] chosen = new int[4];
        return grow(chosen, 0, 0);
    }

    private double grow(int[] chosen, int count, int from) {
        double least = count == 0 ? Double.POSITIVE_INFINITY : fit.fit(chosen, count, x);
        if (count < 4) {
            for (int i = from; i < 12; i++) {
                chosen[count] = i;
                least = Math.min(least, grow(chosen, count + 1, i + 1));
            }
        }
        return least;
    }

    @Benchmark
    public Object wholeMatch() {
        return new Matcher(knowledge).match(wish);
    }

    private double hipparchusCost() {
        MultivariateJacobianFunction model = this::valueAndSlope;
        double root = Math.sqrt(0.003);
        return new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(new double[] {root, root, root})
                        .target(new double[3])
                        .model(model)
                        .maxEvaluations(1000)
                        .maxIterations(1000)
                        .build())
                .getCost();
    }

    /** The same residuals with exact slopes; amounts are squares, so that they stay at 0 or more. */
    private Pair<RealVector, RealMatrix> valueAndSlope(RealVector roots) {
        double[] p = roots.toArray();
        double[] r = new double[N];
        double[][] dr = new double[3][N];
        for (int w = 0; w < N; w++) {
            double sumK = k[0][w];
            double sumS = s[0][w];
            for (int i = 0; i < 3; i++) {
                sumK += p[i] * p[i] * k[THREE[i] + 1][w];
                sumS += p[i] * p[i] * s[THREE[i] + 1][w];
            }
            double q = sumK / sumS;
            double inside = 1 + q - Math.sqrt(q * q + 2 * q);
            double rest = 1 - 0.6 * inside;
            r[w] = 0.04 + 0.96 * 0.4 * inside / rest;
            double slope = -inside / Math.sqrt(q * q + 2 * q) * 0.96 * 0.4 / (rest * rest);
            for (int i = 0; i < 3; i++) {
                dr[i][w] = slope * (k[THREE[i] + 1][w] - q * s[THREE[i] + 1][w]) / sumS * 2 * p[i];
            }
        }
        double[] lab = new double[3];
        double[][] slopes = new double[3][N];
        LabBatch.of(Viewing.D65_10, Grid.INSIDE).labAndSlopes(r, lab, slopes);
        double[] residual = new double[3];
        double[][] jacobian = new double[3][3];
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                residual[a] += metric[a][b] * (lab[b] - aim[b]);
                for (int i = 0; i < 3; i++) {
                    for (int w = 0; w < N; w++) {
                        jacobian[a][i] += metric[a][b] * slopes[b][w] * dr[i][w];
                    }
                }
            }
        }
        return new Pair<>(new ArrayRealVector(residual), new Array2DRowRealMatrix(jacobian));
    }
}
