package tintwright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;

class RepeatsTest {
    private static ColourReading colour(double l, double a, double b, double sigma, Optional<String> photo) {
        return new ColourReading(
                new Lab(l, a, b, Viewing.D65_10),
                Covariance.same(sigma),
                Geometry.SPECULAR_EXCLUDED,
                FilmState.CURED,
                photo.map(name -> new ColourReading.PhotoBias(name, Covariance.same(2))));
    }

    @Test
    void namesTheReadingThatDoesNotBelong() {
        Repeats.Combined combined = Repeats.combine(
                List.of(
                        colour(60, -9, 3, 0.3, Optional.empty()),
                        colour(60.2, -9.1, 3.1, 0.3, Optional.empty()),
                        colour(55, -7, 2, 0.3, Optional.empty()),
                        colour(59.9, -8.9, 2.9, 0.3, Optional.empty())),
                Viewing.D65_10);
        assertEquals(List.of(2), combined.leftOut());
        assertEquals(60.0333, combined.mean().lightness(), 0.0001);
    }

    @Test
    void ofTwoThatDifferItLeavesOutNeitherButIsLessSure() {
        Repeats.Combined agree = Repeats.combine(
                List.of(colour(60, -9, 3, 0.3, Optional.empty()), colour(60.1, -9, 3, 0.3, Optional.empty())),
                Viewing.D65_10);
        Repeats.Combined differ = Repeats.combine(
                List.of(colour(60, -9, 3, 0.3, Optional.empty()), colour(55, -9, 3, 0.3, Optional.empty())),
                Viewing.D65_10);
        assertEquals(List.of(), differ.leftOut());
        assertTrue(differ.covariance().ll() > 10 * agree.covariance().ll());
    }

    @Test
    void aDoubtfulPhotoHardlyCountsBesideAMeter() {
        ColourReading photo = new ColourReading(
                new Lab(55.1, 1.2, 1.3, Viewing.D65_10),
                Covariance.same(1),
                Geometry.SPECULAR_EXCLUDED,
                FilmState.CURED,
                Optional.of(new ColourReading.PhotoBias("bow", Covariance.same(6))));
        Repeats.Combined both =
                Repeats.combine(List.of(colour(71.2, -5, 2, 0.3, Optional.empty()), photo), Viewing.D65_10);
        // Inverse variances: 0.09 against 1 + 36.
        assertEquals(
                (71.2 / 0.09 + 55.1 / 37) / (1 / 0.09 + 1 / 37.0), both.mean().lightness(), 1e-9);
        assertTrue(
                both.covariance().ll() < 1,
                "the meter's sureness stays: " + both.covariance().ll());
    }

    @Test
    void twoThatCannotBothBeRightAreSaidToBeTorn() {
        assertTrue(Repeats.combine(
                        List.of(colour(60, -9, 3, 0.3, Optional.empty()), colour(57, -9, 3, 0.3, Optional.empty())),
                        Viewing.D65_10)
                .torn());
        assertFalse(Repeats.combine(
                        List.of(colour(60, -9, 3, 0.3, Optional.empty()), colour(60.6, -9, 3, 0.3, Optional.empty())),
                        Viewing.D65_10)
                .torn());
        assertFalse(
                Repeats.combine(
                                List.of(
                                        colour(60, -9, 3, 0.3, Optional.empty()),
                                        colour(57, -9, 3, 0.4, Optional.of("bow"))),
                                Viewing.D65_10)
                        .torn(),
                "a photo may be off by 2");
    }

    @Test
    void whatAPhotosReadingsShareDoesNotShrink() {
        List<Reading> one = new ArrayList<>();
        List<Reading> many = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            one.add(colour(60, -9, 3, 0.4, Optional.of("bow")));
            many.add(colour(60, -9, 3, 0.4, Optional.of("photo " + i)));
        }
        assertTrue(Repeats.combine(one, Viewing.D65_10).covariance().ll() >= 4);
        assertEquals(
                4.0 / 16, Repeats.combine(many, Viewing.D65_10).covariance().ll(), 0.01);
    }

    /** The stated 90 % ranges of L* hold the truth about nine times in ten, whatever noise is behind them. */
    @Test
    void isAsSureAsItOughtToBe() {
        Random chance = new Random(7);
        int held = 0;
        int runs = 400;
        double[] grey = new double[Grid.INSIDE.count()];
        for (int run = 0; run < runs; run++) {
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                for (int w = 0; w < grey.length; w++) {
                    grey[w] = 0.3 + 0.002 * chance.nextGaussian();
                }
                readings.add(new SpectralReading(
                        Spectrum.of(Grid.INSIDE, grey), 0.002, Geometry.SPECULAR_INCLUDED, FilmState.CURED));
            }
            Repeats.Combined combined = Repeats.combine(readings, Viewing.D65_10);
            java.util.Arrays.fill(grey, 0.3);
            double truth =
                    Lab.of(Spectrum.of(Grid.INSIDE, grey), Viewing.D65_10).lightness();
            held += Math.abs(combined.mean().lightness() - truth)
                            < 1.645 * Math.sqrt(combined.covariance().ll())
                    ? 1
                    : 0;
            assertTrue(combined.spectrum().isPresent());
            assertEquals(0.001, combined.noise(), 0.0004);
        }
        assertTrue(held > 0.85 * runs && held < 0.95 * runs, held + " of " + runs);
    }

    @Test
    void refusesWhatCannotBeCombined() {
        ColourReading wet = new ColourReading(
                new Lab(60, -9, 3, Viewing.D65_10),
                Covariance.same(0.3),
                Geometry.SPECULAR_EXCLUDED,
                FilmState.WET,
                Optional.empty());
        ColourReading cured = colour(60, -9, 3, 0.3, Optional.empty());
        assertThrows(IllegalArgumentException.class, () -> Repeats.combine(List.of(wet, cured), Viewing.D65_10));
        assertThrows(IllegalArgumentException.class, () -> Repeats.combine(List.of(cured), Viewing.A_10));
        assertThrows(IllegalArgumentException.class, () -> Repeats.combine(List.of(), Viewing.A_10));
    }
}
