package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The forms on plain arrays give the answers of the readable forms, to 1e-9. */
class BatchTest {
    private static final double SAME = 1e-9;
    private static final double STEP_AT_RED = 5e-4;

    @Test
    void labOfReflectances() {
        Random random = new Random(91);
        for (Viewing viewing : new Viewing[] {Viewing.D65_10, Viewing.FL11_10, Viewing.D50_2}) {
            int samples = 300;
            double[] reflectances = new double[31 * samples];
            for (int i = 0; i < reflectances.length; i++) {
                // A third of the samples nearly black, where CIELAB is a straight line.
                reflectances[i] = random.nextDouble() * (i / 31 % 3 == 0 ? 0.01 : 1.1);
            }
            LabBatch batch = LabBatch.of(viewing, Grid.INSIDE);
            double[] labs = new double[3 * samples];
            batch.labs(reflectances, samples, labs);
            double[][] slopes = new double[3][31];
            double[] one = new double[3];
            for (int s = 0; s < samples; s++) {
                double[] own = java.util.Arrays.copyOfRange(reflectances, 31 * s, 31 * s + 31);
                Lab readable = Lab.of(Spectrum.of(Grid.INSIDE, own), viewing);
                same(readable, labs[3 * s], labs[3 * s + 1], labs[3 * s + 2]);
                batch.labAndSlopes(own, one, slopes);
                same(readable, one[0], one[1], one[2]);
                int at = random.nextInt(31);
                own[at] += 1e-6;
                double[] moved = new double[3];
                batch.lab(own, 0, moved, 0);
                for (int axis = 0; axis < 3; axis++) {
                    assertEquals(
                            slopes[axis][at],
                            (moved[axis] - one[axis]) / 1e-6,
                            1e-3 * (1 + Math.abs(slopes[axis][at])));
                }
            }
        }
    }

    private static void same(Lab readable, double l, double a, double b) {
        assertEquals(readable.lightness(), l, SAME);
        assertEquals(readable.a(), a, SAME);
        assertEquals(readable.b(), b, SAME);
    }

    @Test
    void differenceOfRandomAndOfNearPairs() {
        Random random = new Random(92);
        int count = 20000;
        double[][] v = new double[6][count];
        for (int i = 0; i < count; i++) {
            double spread = i % 2 == 0 ? 60 : 3;
            v[0][i] = random.nextDouble() * 100;
            v[1][i] = random.nextGaussian() * spread;
            v[2][i] = random.nextGaussian() * spread;
            // Every third pair is near, down to a millionth.
            double near = Math.pow(10, -random.nextInt(7));
            boolean close = i % 3 == 0;
            v[3][i] = close ? v[0][i] + near * random.nextGaussian() : random.nextDouble() * 100;
            v[4][i] = close ? v[1][i] + near * random.nextGaussian() : random.nextGaussian() * spread;
            v[5][i] = close ? v[2][i] + near * random.nextGaussian() : random.nextGaussian() * spread;
        }
        compare(v, count);
    }

    /** Greys, equal colours, opposite hues, hues just over red, and sizes no paint has. */
    @Test
    void differenceOfAwkwardPairs() {
        double[] edge = {0, -0.0, 1e-12, -1e-12, 1e-3, -1e-3, 1, -1, 2.49, -2.49, 25, -25, 60, -60, 130};
        int n = edge.length;
        int count = n * n * n * n;
        double[][] v = new double[6][count];
        int i = 0;
        for (double a1 : edge) {
            for (double b1 : edge) {
                for (double a2 : edge) {
                    for (double b2 : edge) {
                        v[0][i] = 50 + i % 7;
                        v[1][i] = a1;
                        v[2][i] = b1;
                        v[3][i] = 50 + i % 3;
                        v[4][i] = a2;
                        v[5][i++] = b2;
                    }
                }
            }
        }
        compare(v, count);
    }

    /**
     * The formula itself has a small step where the mean hue passes red, 360 to 0 degrees: a mean hue that lies on it
     * falls to either side by the last bit of its inputs.
     */
    private static boolean onTheStep(double[][] v, int i) {
        double c1 = Math.hypot(v[1][i], v[2][i]);
        double c2 = Math.hypot(v[4][i], v[5][i]);
        double x = v[1][i] * c2 + v[4][i] * c1;
        double y = v[2][i] * c2 + v[5][i] * c1;
        return x > 0 && Math.abs(y) < 1e-12 * x && v[2][i] != v[5][i];
    }

    private static void compare(double[][] v, int count) {
        Ciede2000Batch batch = new Ciede2000Batch();
        double[] out = new double[count];
        batch.between(v[0], v[1], v[2], v[3], v[4], v[5], out, 0, count);
        for (int i = 0; i < count; i++) {
            double readable = Ciede2000.between(
                    new Lab(v[0][i], v[1][i], v[2][i], Viewing.D65_10),
                    new Lab(v[3][i], v[4][i], v[5][i], Viewing.D65_10));
            String which = v[0][i] + " " + v[1][i] + " " + v[2][i] + " / " + v[3][i] + " " + v[4][i] + " " + v[5][i];
            assertEquals(readable, out[i], onTheStep(v, i) ? STEP_AT_RED : SAME, which);
            if (i % 50 == 0) {
                assertEquals(
                        readable,
                        Ciede2000Batch.between(v[0][i], v[1][i], v[2][i], v[3][i], v[4][i], v[5][i]),
                        SAME,
                        which);
            }
        }
        double[] toFirst = new double[count];
        batch.toTarget(v[0][0], v[1][0], v[2][0], v[3], v[4], v[5], toFirst, 5, count - 5);
        for (int i = 5; i < count; i += 41) {
            assertEquals(
                    Ciede2000.between(
                            new Lab(v[0][0], v[1][0], v[2][0], Viewing.D65_10),
                            new Lab(v[3][i], v[4][i], v[5][i], Viewing.D65_10)),
                    toFirst[i],
                    SAME);
        }
        assertEquals(0, toFirst[0], 0);
    }

    @Test
    void screenCodes() {
        for (RgbSpace space : RgbSpace.values()) {
            int count = 50000;
            int[] packed = new int[count + 3];
            Random random = new Random(93);
            for (int i = 0; i < packed.length; i++) {
                packed[i] = i < 16 ? i * 0x010101 : random.nextInt();
            }
            double[] l = new double[count];
            double[] a = new double[count];
            double[] b = new double[count];
            RgbBatch.of(space).labs(packed, 3, count, l, a, b);
            for (int i = 0; i < count; i++) {
                int p = packed[i + 3];
                same(
                        space.decode((p >> 16 & 255) / 255.0, (p >> 8 & 255) / 255.0, (p & 255) / 255.0),
                        l[i],
                        a[i],
                        b[i]);
            }
        }
    }

    @Test
    void screenLightBeyondTheCodes() {
        double[] r = {1.2, -0.05, 0, 3};
        double[] g = {0.9, 0.4, 1e-6, -0.1};
        double[] b = {1.1, 0.2, -1e-7, 0.5};
        double[][] keep = {r.clone(), g.clone(), b.clone()};
        RgbBatch.of(RgbSpace.SRGB).labsOfLinear(r, g, b, 4);
        for (int i = 0; i < 4; i++) {
            same(
                    RgbSpace.SRGB.decode(
                            RgbSpace.toCode(keep[0][i]), RgbSpace.toCode(keep[1][i]), RgbSpace.toCode(keep[2][i])),
                    r[i],
                    g[i],
                    b[i]);
        }
    }
}
