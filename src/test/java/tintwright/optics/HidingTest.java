package tintwright.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;

class HidingTest {
    private static final Geometry GEOMETRY = Geometry.SPECULAR_INCLUDED;

    private static Film grey(double k, double s) {
        double[] absorption = new double[31];
        double[] scattering = new double[31];
        Arrays.fill(absorption, k);
        Arrays.fill(scattering, s);
        return new Film(Grid.INSIDE, absorption, scattering, Surface.RESIN);
    }

    @Test
    void theCardsReadWhatTheStandardAsksFor() {
        Spectrum white = grey(0.1, 1).over(Hiding.WHITE_CARD, 0, GEOMETRY);
        Spectrum black = grey(0.1, 1).over(Hiding.BLACK_CARD, 0, GEOMETRY);
        assertEquals(0.80, white.at(0), 1e-12);
        assertEquals(0.05, black.at(30), 1e-12);
    }

    @Test
    void theThicknessFoundHidesAndAThinnerOneDoesNot() {
        for (double wanted : new double[] {0.3, 1, 3}) {
            Film film = grey(0.02, 4);
            double thickness = Hiding.thickness(film, wanted, 100, GEOMETRY, Viewing.D65_10)
                    .orElseThrow();
            assertEquals(wanted, Hiding.difference(film, thickness, GEOMETRY, Viewing.D65_10), 1e-9);
            assertTrue(Hiding.difference(film, thickness * 0.99, GEOMETRY, Viewing.D65_10) > wanted);
            // K and S twice as strong hide in half the film.
            assertEquals(
                    thickness / 2,
                    Hiding.thickness(grey(0.04, 8), wanted, 100, GEOMETRY, Viewing.D65_10)
                            .orElseThrow(),
                    1e-9);
        }
    }

    @Test
    void saysWhenNoAllowedFilmHides() {
        assertTrue(Hiding.thickness(grey(0.001, 0.01), 1, 2, GEOMETRY, Viewing.D65_10)
                .isEmpty());
        assertThrows(
                IllegalArgumentException.class, () -> Hiding.thickness(grey(0.1, 1), 0, 2, GEOMETRY, Viewing.D65_10));
        assertThrows(
                IllegalArgumentException.class, () -> Hiding.thickness(grey(0.1, 1), 1, 0, GEOMETRY, Viewing.D65_10));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Film(Grid.INSIDE, new double[3], new double[31], Surface.RESIN));
    }
}
