package tintwright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;

/** Noise of reflectances carried into a colour, against noise that is really drawn. */
class SpectralReadingTest {
    private static final double NOISE = 0.002;
    private static final int DRAWS = 20_000;

    private static double[] paint(Grid grid, double low, double high) {
        double[] values = new double[grid.count()];
        for (int i = 0; i < values.length; i++) {
            values[i] = low + (high - low) * i / (values.length - 1);
        }
        return values;
    }

    private static SpectralReading reading(Grid grid, double[] values) {
        return new SpectralReading(Spectrum.of(grid, values), NOISE, Geometry.SPECULAR_INCLUDED, FilmState.CURED);
    }

    /** A standard deviation of so many draws is itself sure to 1 / sqrt(2 n), half a percent; 3 % is six of those. */
    @Test
    void isTheScatterOfColoursOfSpectraWithThatNoise() {
        for (Grid grid : new Grid[] {Grid.INSIDE, new Grid(380, 20, 19)}) {
            for (Viewing viewing : new Viewing[] {Viewing.D65_10, Viewing.A_10, Viewing.D50_2}) {
                double[] values = paint(grid, 0.1, 0.6);
                Random random = new Random(2);
                double[] sum = new double[3];
                double[][] squares = new double[3][3];
                for (int draw = 0; draw < DRAWS; draw++) {
                    double[] noisy = values.clone();
                    for (int i = 0; i < noisy.length; i++) {
                        noisy[i] += NOISE * random.nextGaussian();
                    }
                    Lab lab = Lab.of(Spectrum.of(grid, noisy), viewing);
                    double[] axes = {lab.lightness(), lab.a(), lab.b()};
                    for (int r = 0; r < 3; r++) {
                        sum[r] += axes[r] / DRAWS;
                        for (int c = 0; c < 3; c++) {
                            squares[r][c] += axes[r] * axes[c] / DRAWS;
                        }
                    }
                }
                double[][] said = reading(grid, values).scatter(viewing).toArray();
                for (int r = 0; r < 3; r++) {
                    for (int c = 0; c < 3; c++) {
                        double seen = squares[r][c] - sum[r] * sum[c];
                        assertEquals(seen, said[r][c], 0.03 * Math.sqrt(said[r][r] * said[c][c]), grid + " " + viewing);
                    }
                }
            }
        }
    }

    @Test
    void isATenthOnWhiteAndSomeTenthsOnBlack() {
        double white = size(reading(Grid.INSIDE, paint(Grid.INSIDE, 0.9, 0.9)));
        double black = size(reading(Grid.INSIDE, paint(Grid.INSIDE, 0.04, 0.04)));
        assertTrue(white > 0.05 && white < 0.15, "white " + white);
        assertTrue(black > 0.2 && black < 0.9, "black " + black);
    }

    private static double size(Reading reading) {
        Covariance c = reading.scatter(Viewing.D65_10);
        return Math.sqrt(c.ll() + c.aa() + c.bb());
    }

    @Test
    void aColourKnowsNothingUnderAnotherLight() {
        Reading lamp = new ColourReading(
                new Lab(60, 1, 2, Viewing.A_10),
                Covariance.same(0.3),
                Geometry.SPECULAR_INCLUDED,
                FilmState.CURED,
                Optional.of(new ColourReading.PhotoBias("p", Covariance.same(0.4))));
        assertEquals(0.25, lamp.doubt(lamp.judgedUnder()).aa(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> lamp.scatter(Viewing.D65_10));
    }
}
