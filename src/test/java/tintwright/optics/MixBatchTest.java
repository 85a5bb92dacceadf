package tintwright.optics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;

class MixBatchTest {
    private static final int STOCKS = 5;
    private final double[][] k = new double[STOCKS][31];
    private final double[][] s = new double[STOCKS][31];

    private MixBatch made(Random random, Geometry geometry) {
        for (int stock = 0; stock < STOCKS; stock++) {
            for (int i = 0; i < 31; i++) {
                k[stock][i] = Math.exp(random.nextGaussian() * 2 - 2);
                s[stock][i] = Math.exp(random.nextGaussian() * 0.5);
            }
        }
        return new MixBatch(k, s, Surface.RESIN, geometry, LabBatch.of(Viewing.D65_10, Grid.INSIDE));
    }

    @Test
    void isTheReadableWayFromAmountsToColour() {
        Random random = new Random(121);
        for (Geometry geometry : Geometry.values()) {
            MixBatch batch = made(random, geometry);
            double[] amounts = new double[100 * STOCKS];
            for (int i = 0; i < amounts.length; i++) {
                amounts[i] = i % 3 == 0 ? 0 : random.nextDouble();
            }
            double[] labs = new double[300];
            batch.labs(amounts, 100, labs);
            for (int m = 0; m < 100; m++) {
                double[] read = new double[31];
                for (int i = 0; i < 31; i++) {
                    double absorbs = 0;
                    double scatters = 0;
                    for (int stock = 0; stock < STOCKS; stock++) {
                        absorbs += amounts[m * STOCKS + stock] * k[stock][i];
                        scatters += amounts[m * STOCKS + stock] * s[stock][i];
                    }
                    read[i] = Surface.RESIN.measured(KubelkaMunk.reflectance(absorbs / scatters), geometry);
                }
                Lab readable = Lab.of(Spectrum.of(Grid.INSIDE, read), Viewing.D65_10);
                assertArrayEquals(
                        new double[] {readable.lightness(), readable.a(), readable.b()},
                        java.util.Arrays.copyOfRange(labs, 3 * m, 3 * m + 3),
                        1e-9);
            }
        }
    }

    @Test
    void onlyTheRatiosOfTheAmountsMatter() {
        MixBatch batch = made(new Random(122), Geometry.SPECULAR_INCLUDED);
        double[] once = new double[3];
        double[] tenfold = new double[3];
        batch.lab(new double[] {0.9, 0.05, 0, 0.03, 0.02}, 0, once, 0);
        batch.lab(new double[] {9, 0.5, 0, 0.3, 0.2}, 0, tenfold, 0);
        assertArrayEquals(once, tenfold, 1e-10);
        assertEquals(STOCKS, batch.stocks());
    }

    @Test
    void refusesUnequalLengths() {
        LabBatch colour = LabBatch.of(Viewing.D65_10, Grid.INSIDE);
        assertThrows(
                IllegalArgumentException.class,
                () -> new MixBatch(
                        new double[2][31], new double[1][31], Surface.RESIN, Geometry.SPECULAR_INCLUDED, colour));
        assertThrows(
                IllegalArgumentException.class,
                () -> new MixBatch(
                        new double[2][30], new double[2][31], Surface.RESIN, Geometry.SPECULAR_INCLUDED, colour));
    }
}
