package tintwright.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of Kubelka (1948), J. Opt. Soc. Am. 38, 448-457, and of plain absorption. */
class FiniteFilmTest {
    @Test
    void aThickFilmForgetsItsGround() {
        Random random = new Random(32);
        for (int i = 0; i < 300; i++) {
            double k = Math.exp(random.nextGaussian() * 2);
            double s = Math.exp(random.nextGaussian());
            double opaque = KubelkaMunk.reflectance(k / s);
            assertEquals(
                    opaque, FiniteFilm.reflectance(k, s, 1e3 / Math.sqrt(k * (k + 2 * s)), random.nextDouble()), 1e-12);
        }
    }

    @Test
    void aClearGlazeOnlyDarkensItsGround() {
        // S = 0: the light crosses the film twice on each of its two ways through K.
        assertEquals(0.6 * Math.exp(-2 * 0.3 * 1.5), FiniteFilm.reflectance(0.3, 0, 1.5, 0.6), 1e-14);
    }

    @Test
    void aFilmThatOnlyScattersLosesNoLight() {
        assertEquals(1, FiniteFilm.reflectance(0, 2, 3, 1), 1e-14);
        // Kubelka (1948): R = S X / (1 + S X) over perfect black.
        assertEquals(6.0 / 7, FiniteFilm.reflectance(0, 2, 3, 0), 1e-14);
    }

    @Test
    void laysLikeLayers() {
        // A film of thickness 2 is a film of 1 over a film of 1.
        Random random = new Random(33);
        for (int i = 0; i < 300; i++) {
            double k = Math.exp(random.nextGaussian() * 2 - 1);
            double s = Math.exp(random.nextGaussian());
            double ground = random.nextDouble();
            double once = FiniteFilm.reflectance(k, s, 1, FiniteFilm.reflectance(k, s, 1, ground));
            assertEquals(FiniteFilm.reflectance(k, s, 2, ground), once, 1e-12);
        }
    }

    @Test
    void noFilmShowsItsGround() {
        assertEquals(0.4, FiniteFilm.reflectance(0, 0, 5, 0.4), 1e-15);
        assertEquals(0.4, FiniteFilm.reflectance(1, 2, 0, 0.4), 0);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> FiniteFilm.reflectance(-1, 1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> FiniteFilm.reflectance(1, 1, 1, 1.2));
    }
}
