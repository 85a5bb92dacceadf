package tintwright.optics;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;

/** A thousand random mixes of a white and twelve tints to Lab: time for one mix (the fastest call is p0.00). */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 20, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class MixBenchmark {
    private static final int MIXES = 1000;
    private static final int STOCKS = 13;

    private final double[][] k = new double[STOCKS][31];
    private final double[][] s = new double[STOCKS][31];
    private final double[] amounts = new double[MIXES * STOCKS];
    private final double[] labs = new double[3 * MIXES];
    private MixBatch batch;

    @Setup
    public void fill() {
        Random random = new Random(12);
        for (int stock = 0; stock < STOCKS; stock++) {
            for (int i = 0; i < 31; i++) {
                k[stock][i] = stock == 0 ? 0.001 : random.nextDouble();
                s[stock][i] = stock == 0 ? 1 : 0.3 * random.nextDouble();
            }
        }
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = i % STOCKS == 0 ? 0.9 : 0.02 * random.nextDouble();
        }
        batch = new MixBatch(k, s, Surface.RESIN, Geometry.SPECULAR_INCLUDED, LabBatch.of(Viewing.D65_10, Grid.INSIDE));
    }

    @Benchmark
    @OperationsPerInvocation(MIXES)
    public double[] batch() {
        batch.labs(amounts, MIXES, labs);
        return labs;
    }

    @Benchmark
    @OperationsPerInvocation(MIXES)
    public double readable() {
        double sum = 0;
        for (int m = 0; m < MIXES; m++) {
            double[] read = new double[31];
            for (int i = 0; i < 31; i++) {
                double absorbs = 0;
                double scatters = 0;
                for (int stock = 0; stock < STOCKS; stock++) {
                    absorbs += amounts[m * STOCKS + stock] * k[stock][i];
                    scatters += amounts[m * STOCKS + stock] * s[stock][i];
                }
                read[i] =
                        Surface.RESIN.measured(KubelkaMunk.reflectance(absorbs / scatters), Geometry.SPECULAR_INCLUDED);
            }
            sum += Lab.of(Spectrum.of(Grid.INSIDE, read), Viewing.D65_10).lightness();
        }
        return sum;
    }
}
