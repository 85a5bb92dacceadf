package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class SmoothReflectanceTest {
    @Test
    void hasTheColourItWasAskedFor() {
        Random random = new Random(20);
        for (Viewing viewing : new Viewing[] {Viewing.D65_10, Viewing.D50_2, Viewing.A_10}) {
            for (int i = 0; i < 100; i++) {
                Lab wanted = Lab.of(Spectra.random(random), viewing);
                SmoothReflectance.Fit fit = SmoothReflectance.fit(wanted);
                assertTrue(fit.miss() < 1e-6, wanted + " missed by " + fit.miss());
                assertEquals(0, Cie76.between(wanted, Lab.of(fit.reflectance(), viewing)), 1e-6);
            }
        }
    }

    @Test
    void greyGivesAFlatCurve() {
        Spectrum flat = SmoothReflectance.of(Lab.of(Spectra.flat(0.37), Viewing.D65_10));
        for (int i = 0; i < flat.grid().count(); i++) {
            assertEquals(0.37, flat.at(i), 1e-9);
        }
    }

    @Test
    void saysHowFarItMissesAColourThatNoSurfaceHas() {
        SmoothReflectance.Fit fit = SmoothReflectance.fit(new Lab(50, 150, 0, Viewing.D65_10));
        assertTrue(fit.miss() > 1);
        assertEquals(
                0,
                Ciede2000.parts(new Lab(50, 150, 0, Viewing.D65_10), fit.reached())
                        .hue(),
                0.05);
        // It goes as far that way as a reflectance can: a little less is had exactly, a little more is missed.
        double chroma = fit.reached().chroma();
        assertEquals(0, fit.reached().b(), 1e-4);
        assertTrue(SmoothReflectance.fit(red(0.999 * chroma)).miss() < 1e-6);
        assertTrue(SmoothReflectance.fit(red(1.001 * chroma)).miss() > 1e-3);
        SmoothReflectance.Fit white = SmoothReflectance.fit(new Lab(101, 0, 0, Viewing.D65_10));
        assertEquals(99.5, white.reached().lightness(), 1e-6);
        SmoothReflectance.Fit black = SmoothReflectance.fit(new Lab(-0.3, 0.1, 0.1, Viewing.D65_10));
        assertEquals(0.5, black.reached().lightness(), 1e-6);
    }

    @Test
    void isSmootherThanTheCurveTheColourCameFrom() {
        Random random = new Random(21);
        for (int i = 0; i < 100; i++) {
            Spectrum rough = Spectra.random(random);
            Spectrum smooth = SmoothReflectance.of(Lab.of(rough, Viewing.D65_10));
            assertTrue(roughness(smooth) <= roughness(rough) + 1e-9);
        }
    }

    private static Lab red(double chroma) {
        return new Lab(50, chroma, 0, Viewing.D65_10);
    }

    private static double roughness(Spectrum spectrum) {
        double sum = 0;
        for (int i = 1; i < spectrum.grid().count(); i++) {
            double step = logit(spectrum.at(i)) - logit(spectrum.at(i - 1));
            sum += step * step;
        }
        return sum;
    }

    private static double logit(double r) {
        return Math.log(r / (1 - r));
    }
}
