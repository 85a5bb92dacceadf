package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The form on plain arrays gives the answers of the readable form, to 1e-9. */
class LabBatchTest {
    private static final double SAME = 1e-9;

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
            double[][] slopes = new double[3][31];
            double[] one = new double[3];
            for (int s = 0; s < samples; s++) {
                double[] own = Arrays.copyOfRange(reflectances, 31 * s, 31 * s + 31);
                Lab readable = Lab.of(Spectrum.of(Grid.INSIDE, own), viewing);
                batch.lab(reflectances, 31 * s, one, 0);
                same(readable, one[0], one[1], one[2]);
                one = new double[3];
                batch.labAndSlopes(own, one, slopes);
                same(readable, one[0], one[1], one[2]);
                double[] fromItsOwn = new double[3];
                batch.lab(own, fromItsOwn);
                same(readable, fromItsOwn[0], fromItsOwn[1], fromItsOwn[2]);
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

    @Test
    void manyColoursAtOnce() {
        Random random = new Random(92);
        double[][] byWavelength = new double[31][40];
        for (double[] row : byWavelength) {
            for (int i = 0; i < row.length; i++) {
                row[i] = random.nextDouble() * (i % 3 == 0 ? 0.01 : 1.1);
            }
        }
        LabBatch batch = LabBatch.of(Viewing.D65_10, Grid.INSIDE);
        double[][] labs = new double[40][3];
        batch.labs(byWavelength, labs);
        for (int i = 0; i < labs.length; i++) {
            int colour = i;
            double[] own =
                    Arrays.stream(byWavelength).mapToDouble(row -> row[colour]).toArray();
            same(Lab.of(Spectrum.of(Grid.INSIDE, own), Viewing.D65_10), labs[i][0], labs[i][1], labs[i][2]);
        }
    }

    @Test
    void movesAlongAChangeAsTheSlopesSay() {
        Random random = new Random(93);
        LabBatch batch = LabBatch.of(Viewing.FL11_10, Grid.INSIDE);
        double[][] slopes = new double[3][31];
        double[] steep = new double[3];
        double[] moves = new double[3];
        for (int sample = 0; sample < 100; sample++) {
            double dark = sample % 3 == 0 ? 0.01 : 1.1;
            double[] own = random.doubles(31).map(r -> r * dark).toArray();
            double[] change = random.doubles(31).map(r -> r - 0.5).toArray();
            batch.labAndSlopes(own, new double[3], slopes);
            batch.lab(own, new double[3], steep);
            batch.along(change, steep, moves);
            for (int axis = 0; axis < 3; axis++) {
                double sum = 0;
                for (int w = 0; w < 31; w++) {
                    sum += slopes[axis][w] * change[w];
                }
                assertEquals(sum, moves[axis], SAME * (1 + Math.abs(sum)));
            }
        }
    }

    private static void same(Lab readable, double l, double a, double b) {
        assertEquals(readable.lightness(), l, SAME);
        assertEquals(readable.a(), a, SAME);
        assertEquals(readable.b(), b, SAME);
    }
}
