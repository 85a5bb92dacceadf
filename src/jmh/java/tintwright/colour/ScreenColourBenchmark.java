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

/** sRGB codes of random pixels to Lab, twenty thousand a call: time for one pixel (the fastest call is p0.00). */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 20, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class ScreenColourBenchmark {
    private static final int PIXELS = 20_000;

    private final int[] packed = new int[PIXELS];
    private final double[] l = new double[PIXELS];
    private final double[] a = new double[PIXELS];
    private final double[] b = new double[PIXELS];
    private final RgbBatch batch = RgbBatch.of(RgbSpace.SRGB);
    private final double[] matrix = new double[9];
    private final double[] white = new double[3];
    private final double[] lab = new double[3];

    @Setup
    public void fill() {
        Random random = new Random(6);
        for (int i = 0; i < PIXELS; i++) {
            packed[i] = random.nextInt(1 << 24);
        }
        double[][] toXyz = RgbSpace.SRGB.matrixToXyz();
        for (int i = 0; i < 9; i++) {
            matrix[i] = toXyz[i / 3][i % 3];
            white[i / 3] += matrix[i];
        }
    }

    @Benchmark
    @OperationsPerInvocation(PIXELS)
    public double[] batch() {
        batch.labs(packed, 0, PIXELS, l, a, b);
        return l;
    }

    @Benchmark
    @OperationsPerInvocation(PIXELS)
    public double[] plainPort() {
        for (int i = 0; i < PIXELS; i++) {
            PlainPort.srgbToLab(packed[i], matrix, white, lab);
            l[i] = lab[0];
            a[i] = lab[1];
            b[i] = lab[2];
        }
        return l;
    }
}
