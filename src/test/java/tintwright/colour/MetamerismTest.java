package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.colour.Metamerism.Correction;

class MetamerismTest {
    private static Spectrum moved(Spectrum spectrum, double factor, double plus) {
        double[] values = spectrum.toArray();
        for (int i = 0; i < values.length; i++) {
            values[i] = values[i] * factor + plus;
        }
        return Spectrum.of(spectrum.grid(), values);
    }

    @Test
    void eachCorrectionTakesOutItsOwnKindOfMismatch() {
        Random random = new Random(101);
        for (int i = 0; i < 200; i++) {
            Spectrum standard = Spectra.random(random);
            assertEquals(0, Metamerism.index(standard, standard, Viewing.D65_10, Viewing.A_10), 1e-9);
            Spectrum thinner = moved(standard, 0.9, 0);
            assertEquals(0, Metamerism.index(standard, thinner, Viewing.D65_10, Viewing.A_10), 1e-9);
            Spectrum glossier = moved(standard, 1, 0.01);
            Metamerism.Shift shift =
                    Metamerism.shift(standard, glossier, Viewing.D65_10, Viewing.FL11_10, Correction.ADDITIVE);
            assertEquals(0, shift.index(), 1e-9);
            assertTrue(shift.underFirst() > 0);
            assertTrue(Metamerism.shift(standard, glossier, Viewing.D65_10, Viewing.FL11_10, Correction.NONE)
                            .index()
                    > 0);
        }
    }

    @Test
    void aPairOfTheSameColourAndAnotherCurveComesApartUnderLampLight() {
        Random random = new Random(102);
        int apart = 0;
        for (int i = 0; i < 100; i++) {
            Spectrum rough = Spectra.random(random);
            Spectrum smooth = SmoothReflectance.of(Lab.of(rough, Viewing.D65_10));
            Metamerism.Shift shift =
                    Metamerism.shift(rough, smooth, Viewing.D65_10, Viewing.A_10, Correction.MULTIPLICATIVE);
            assertEquals(0, shift.underFirst(), 1e-5);
            // With no mismatch to correct the index is the plain difference under the other light.
            assertEquals(
                    Ciede2000.between(Lab.of(rough, Viewing.A_10), Lab.of(smooth, Viewing.A_10)), shift.index(), 1e-5);
            assertEquals(shift.index(), Metamerism.index(rough, smooth, Viewing.D65_10, Viewing.A_10));
            if (shift.index() > 0.3) {
                apart++;
            }
        }
        assertTrue(apart > 20, apart + " of 100");
    }

    @Test
    void refusesAChangeOfObserverAndABlackSample() {
        Spectrum grey = Spectra.flat(0.5);
        assertThrows(IllegalArgumentException.class, () -> Metamerism.index(grey, grey, Viewing.D65_10, Viewing.D50_2));
        assertThrows(
                IllegalArgumentException.class,
                () -> Metamerism.index(grey, Spectra.flat(0), Viewing.D65_10, Viewing.A_10));
    }
}
