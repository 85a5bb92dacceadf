package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of the two ways to read between readings (CIE 167:2005, CIE 15:2018 7.2.3, ASTM E2022). */
class InterpolationTest {
    private static final Grid GRID = new Grid(400, 20, 16);

    private static double[] polynomial(Random random, int degree, double[] coefficients) {
        for (int k = 0; k <= degree; k++) {
            coefficients[k] = random.nextGaussian();
        }
        double[] values = new double[GRID.count()];
        for (int i = 0; i < values.length; i++) {
            values[i] = value(coefficients, degree, GRID.nm(i));
        }
        return values;
    }

    private static double value(double[] coefficients, int degree, double nm) {
        double t = (nm - 550) / 150;
        double sum = 0;
        for (int k = degree; k >= 0; k--) {
            sum = sum * t + coefficients[k];
        }
        return sum;
    }

    @Test
    void lagrangeReturnsCubicsInsideAndQuadraticsAtTheEnds() {
        Random random = new Random(41);
        double[] c = new double[6];
        for (int round = 0; round < 100; round++) {
            double[] cubic = polynomial(random, 3, c);
            for (double nm = 420; nm <= 680; nm += 1.7) {
                assertEquals(value(c, 3, nm), Interpolation.at(GRID, cubic, nm), 1e-12);
            }
            double[] square = polynomial(random, 2, c);
            for (double nm = 400; nm <= 700; nm += 1.7) {
                assertEquals(value(c, 2, nm), Interpolation.at(GRID, square, nm), 1e-12);
            }
        }
    }

    @Test
    void theSmoothCurveReturnsQuarticsEverywhere() {
        Random random = new Random(42);
        double[] c = new double[6];
        for (int round = 0; round < 100; round++) {
            double[] quartic = polynomial(random, 4, c);
            for (double nm = 440; nm <= 660; nm += 1.7) {
                assertEquals(value(c, 4, nm), Interpolation.smooth(GRID, quartic, nm), 1e-12);
            }
        }
    }

    /** The readings supposed beyond an end, as in CIE 167:2005: exact for a straight line, not for a bent one. */
    @Test
    void theSmoothCurveReturnsStraightLinesUpToItsEnds() {
        Random random = new Random(43);
        double[] c = new double[6];
        for (int round = 0; round < 100; round++) {
            double[] line = polynomial(random, 1, c);
            for (double nm = 400; nm <= 700; nm += 1.7) {
                assertEquals(value(c, 1, nm), Interpolation.smooth(GRID, line, nm), 1e-12);
            }
        }
    }

    @Test
    void theSmoothCurveMeetsItsReadingsWithoutAKink() {
        Random random = new Random(44);
        double[] values = new double[GRID.count()];
        for (int i = 0; i < values.length; i++) {
            values[i] = random.nextDouble();
        }
        double h = 0.01;
        for (int i = 1; i < values.length - 1; i++) {
            double nm = GRID.nm(i);
            assertEquals(values[i], Interpolation.smooth(GRID, values, nm), 1e-14);
            double left = (3 * values[i]
                            - 4 * Interpolation.smooth(GRID, values, nm - h)
                            + Interpolation.smooth(GRID, values, nm - 2 * h))
                    / (2 * h);
            double right = (-3 * values[i]
                            + 4 * Interpolation.smooth(GRID, values, nm + h)
                            - Interpolation.smooth(GRID, values, nm + 2 * h))
                    / (2 * h);
            assertEquals(left, right, 1e-6, "slope at " + nm);
        }
    }

    @Test
    void outsideTheReadingsTheEndIsHeld() {
        Spectrum spectrum = Spectrum.of(new Grid(420, 10, 7), 0.1, 0.2, 0.3, 0.3, 0.4, 0.6, 0.7);
        Spectrum wide = spectrum.resampled(Grid.INSIDE);
        assertEquals(0.1, wide.at(0), 0);
        assertEquals(0.7, wide.at(30), 0);
        assertEquals(0.3, wide.at(4), 1e-15);
    }

    @Test
    void aHandfulOfReadingsStillGivesACurve() {
        Spectrum few = Spectrum.of(new Grid(400, 20, 3), 0.1, 0.4, 0.5);
        assertEquals(0.275, few.resampled(new Grid(400, 10, 5)).at(1), 1e-15);
        Spectrum two = Spectrum.of(new Grid(400, 20, 2), 0.1, 0.3);
        assertEquals(0.2, two.resampled(new Grid(400, 10, 3)).at(1), 1e-15);
    }

    /** Six readings have one stretch in their middle that rests on nothing supposed; there the curve is Sprague's. */
    @Test
    void sixReadingsAreEnoughForTheSmoothCurve() {
        Grid six = new Grid(400, 20, 6);
        double[] quartic = new double[6];
        for (int i = 0; i < 6; i++) {
            quartic[i] = Math.pow(i, 4);
        }
        assertEquals(Math.pow(2.5, 4), Interpolation.smooth(six, quartic, 450), 1e-12);
    }

    @Test
    void theWeightsDoNotDependOnWhatTheirArrayHeld() {
        double[] used = {7, 7, 7, 7};
        assertEquals(0, Interpolation.weights(new Grid(400, 20, 3), 400, used));
        assertArrayEquals(new double[] {1, 0, 0, 0}, used);
        Interpolation.weights(new Grid(400, 20, 3), 410, used);
        assertEquals(0, used[3]);
    }

    @Test
    void twentyNanometreReadingsOfASmoothPaintKeepItsColour() {
        Random random = new Random(45);
        for (int i = 0; i < 200; i++) {
            Spectrum fine = Spectra.random(random);
            Spectrum coarse = fine.resampled(Grid.between(400, 700, 20));
            assertTrue(Ciede2000.between(Lab.of(fine, Viewing.D65_10), Lab.of(coarse, Viewing.D65_10)) < 0.05);
            assertTrue(Ciede2000.between(
                            Lab.of(fine, Viewing.D65_10), Lab.of(coarse.resampled(Grid.INSIDE), Viewing.D65_10))
                    < 0.01);
        }
    }
}
