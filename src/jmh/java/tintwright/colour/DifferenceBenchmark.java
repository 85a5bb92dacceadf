package tintwright.colour;

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

/** CIEDE2000 of random pairs, twenty thousand a call: time for one pair (the fastest call is p0.00). */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 20, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class DifferenceBenchmark {
    private static final int PAIRS = 20_000;

    private final double[][] first = new double[3][PAIRS];
    private final double[][] second = new double[3][PAIRS];
    private final double[] out = new double[PAIRS];
    private final Ciede2000Batch batch = new Ciede2000Batch();

    @Setup
    public void fill() {
        Random random = new Random(2000);
        for (double[][] side : new double[][][] {first, second}) {
            for (int i = 0; i < PAIRS; i++) {
                side[0][i] = 100 * random.nextDouble();
                side[1][i] = 256 * random.nextDouble() - 128;
                side[2][i] = 256 * random.nextDouble() - 128;
            }
        }
    }

    @Benchmark
    @OperationsPerInvocation(PAIRS)
    public double[] batch() {
        batch.between(first[0], first[1], first[2], second[0], second[1], second[2], out, 0, PAIRS);
        return out;
    }

    @Benchmark
    @OperationsPerInvocation(PAIRS)
    public double[] plainPort() {
        for (int i = 0; i < PAIRS; i++) {
            out[i] = PlainPort.ciede2000(
                    first[0][i], first[1][i], first[2][i], second[0][i], second[1][i], second[2][i]);
        }
        return out;
    }

    @Benchmark
    @OperationsPerInvocation(PAIRS)
    public double[] readable() {
        for (int i = 0; i < PAIRS; i++) {
            out[i] = Ciede2000.between(
                    new Lab(first[0][i], first[1][i], first[2][i], Viewing.D65_10),
                    new Lab(second[0][i], second[1][i], second[2][i], Viewing.D65_10));
        }
        return out;
    }
}
