package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What is refused at the door, and in which words. */
class SpectrumTest {
    private static final Grid THREE = new Grid(400, 10, 3);

    private static String refused(double... values) {
        return assertThrows(IllegalArgumentException.class, () -> Spectrum.of(THREE, values))
                .getMessage();
    }

    @Test
    void reflectanceOutsideWhatAnInstrumentShows() {
        assertEquals("reflectance must be -0.02 to 1.5, was 1.6 at 410 nm", refused(0.1, 1.6, 0.2));
        assertEquals("reflectance must be -0.02 to 1.5, was -0.03 at 400 nm", refused(-0.03, 0.6, 0.2));
        assertTrue(refused(0.1, 0.2, Double.NaN).contains("NaN at 420 nm"));
        assertEquals(-0.02, Spectrum.of(THREE, -0.02, 1.5, 0).at(0), 0);
    }

    @Test
    void unequalLengths() {
        assertEquals("expected 3 reflectances, 400 to 420 nm every 10 nm, got 2", refused(0.1, 0.2));
    }

    @Test
    void irregularOrUnsortedWavelengths() {
        assertThrows(IllegalArgumentException.class, () -> new Grid(400, 25, 10));
        assertThrows(IllegalArgumentException.class, () -> new Grid(400, 0, 10));
        assertThrows(IllegalArgumentException.class, () -> new Grid(400, 10, 1));
        assertThrows(IllegalArgumentException.class, () -> Grid.between(700, 400, 10));
        assertThrows(IllegalArgumentException.class, () -> Grid.between(400, 705, 10));
        assertThrows(IllegalArgumentException.class, () -> new Grid(199, 10, 10));
        assertThrows(IllegalArgumentException.class, () -> new Grid(2501, 10, 10));
        assertThrows(IllegalArgumentException.class, () -> new Grid(400, 10, 2501));
        assertEquals(
                "wavelengths 400 to 400 nm cannot be walked in steps of 10 nm",
                assertThrows(IllegalArgumentException.class, () -> Grid.between(400, 400, 10))
                        .getMessage());
    }

    @Test
    void aGridReachesFromEndToEnd() {
        assertEquals(new Grid(401, 10, 3), Grid.between(401, 421, 10));
        assertEquals(2500, new Grid(200, 1, 2301).lastNm());
        assertEquals(4999, new Grid(2500, 1, 2500).lastNm());
    }

    @Test
    void namesThatAreNoLight() {
        String why = assertThrows(IllegalArgumentException.class, () -> Illuminant.named("D60"))
                .getMessage();
        assertTrue(why.contains("LED-B3") && why.contains("\"D60\""), why);
        assertThrows(IllegalArgumentException.class, () -> Illuminant.daylight(3999));
        assertThrows(IllegalArgumentException.class, () -> Illuminant.daylight(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Illuminant.named("D2K"));
        assertThrows(IllegalArgumentException.class, () -> Observer.ofDegrees(5));
    }

    @Test
    void whitesOfZero() {
        assertThrows(
                IllegalArgumentException.class,
                () -> Adaptation.BRADFORD.matrix(new double[] {0, 0, 0}, new double[] {96, 100, 82}));
        assertThrows(
                IllegalArgumentException.class,
                () -> Adaptation.BRADFORD.matrix(new double[] {96, 100, 82}, new double[] {0, 0, 0}));
        assertThrows(
                IllegalArgumentException.class,
                () -> Adaptation.CAT16.matrix(new double[] {96, 100, 82}, new double[] {Double.NaN, 1, 1}));
    }

    @Test
    void doesNotShareItsArray() {
        double[] mine = {0.1, 0.2, 0.3};
        Spectrum spectrum = Spectrum.of(THREE, mine);
        mine[0] = 9;
        spectrum.toArray()[1] = 9;
        assertEquals(Spectrum.of(THREE, 0.1, 0.2, 0.3), spectrum);
    }

    @Test
    void isEqualWhenGridAndReflectancesAre() {
        Spectrum spectrum = Spectrum.of(THREE, 0.1, 0.2, 0.3);
        assertEquals(Spectrum.of(THREE, 0.1, 0.2, 0.3).hashCode(), spectrum.hashCode());
        assertNotEquals(Spectrum.of(THREE, 0.1, 0.2, 0.4), spectrum);
        assertNotEquals(Spectrum.of(new Grid(410, 10, 3), 0.1, 0.2, 0.3), spectrum);
        assertSame(spectrum, spectrum.resampled(THREE));
        assertEquals("Spectrum 400 to 420 nm every 10 nm [0.1, 0.2, 0.3]", spectrum.toString());
    }

    @Test
    void aSumWantsItsOwnGrid() {
        assertThrows(
                IllegalArgumentException.class,
                () -> TristimulusWeights.of(Viewing.D65_10, Grid.INSIDE).xyz(Spectrum.of(THREE, 0.1, 0.2, 0.3)));
    }
}
