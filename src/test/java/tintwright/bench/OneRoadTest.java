package tintwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.cup.Cup;
import tintwright.cup.CupSight;
import tintwright.demo.MeteredShop;
import tintwright.match.Aim;
import tintwright.match.Target;
import tintwright.reading.ColourReading;
import tintwright.reading.ColourReading.PhotoBias;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;
import tintwright.shelf.knowledge.Knowledge;

/** Match and cup aim at the same colour, whatever the place was read with, and refuse the same places. */
class OneRoadTest {
    private static final Knowledge SHELF = Knowledge.of(MeteredShop.shelf());
    private static final String WHITE = MeteredShop.shelf().bases().get(0).id();

    private static Reading spectrum(double reflectance) {
        double[] values = new double[Grid.INSIDE.count()];
        Arrays.fill(values, reflectance);
        return new SpectralReading(
                Spectrum.of(Grid.INSIDE, values), 0.002, Geometry.SPECULAR_INCLUDED, FilmState.CURED);
    }

    private static Reading colour(Viewing viewing, FilmState film) {
        return new ColourReading(
                new Lab(60, -1, 2, viewing), Covariance.same(0.3), Geometry.SPECULAR_INCLUDED, film, Optional.empty());
    }

    private static PlaceReadings place(Reading... readings) {
        return new PlaceReadings("Tarrowmere", "bow", List.of(readings), "");
    }

    private static Target ofMatch(PlaceReadings place) {
        return Aim.of(place).target();
    }

    private static Target ofCup(PlaceReadings place) {
        return CupSight.of(SHELF, Cup.empty("bow 1", place, 150, 0.01, WHITE)).target();
    }

    @Test
    void aSpectrumAndAColourUnderAnotherLightMakeACupToo() {
        PlaceReadings place = place(spectrum(0.28), colour(Viewing.D50_2, FilmState.CURED));
        assertEquals(Viewing.D50_2, ofMatch(place).colour().viewing());
        CupBench cup = CupBench.start(SHELF, "bow 1", place, 150, 0.01, Optional.empty());
        assertEquals("Nothing is in the cup yet.", cup.verdict());
    }

    @Test
    void aWetHullMakesNoCupEither() {
        PlaceReadings wet = place(colour(Viewing.D65_10, FilmState.WET));
        assertThrows(IllegalArgumentException.class, () -> ofMatch(wet));
        String why = assertThrows(
                        IllegalArgumentException.class,
                        () -> CupBench.start(SHELF, "bow 1", wet, 150, 0.01, Optional.empty()))
                .getMessage();
        assertTrue(why.contains("wet film"), why);
    }

    @Test
    void matchAndCupAimAtTheSameColour() {
        Random random = new Random(15);
        int agreed = 0;
        int refused = 0;
        for (int i = 0; i < 500; i++) {
            PlaceReadings place = anyPlace(random);
            Target match;
            try {
                match = ofMatch(place);
            } catch (IllegalArgumentException e) {
                String cup = assertThrows(IllegalArgumentException.class, () -> ofCup(place), () -> "" + place)
                        .getMessage();
                assertEquals(e.getMessage(), cup);
                refused++;
                continue;
            }
            Target cup = ofCup(place);
            assertEquals(match.colour(), cup.colour(), () -> "" + place);
            assertEquals(match.covariance(), cup.covariance());
            assertEquals(match.geometry(), cup.geometry());
            assertEquals(
                    match.reflectance().map(Spectrum::toArray).map(Arrays::toString),
                    cup.reflectance().map(Spectrum::toArray).map(Arrays::toString));
            agreed++;
        }
        assertTrue(agreed > 100 && refused > 100, agreed + " agreed, " + refused + " refused");
    }

    private static PlaceReadings anyPlace(Random random) {
        List<Reading> readings = new ArrayList<>();
        Geometry geometry = Geometry.values()[random.nextInt(2)];
        Viewing usual = List.of(Viewing.D65_10, Viewing.D50_2, Viewing.A_10).get(random.nextInt(3));
        int count = 1 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            boolean odd = random.nextInt(12) == 0;
            FilmState film = odd ? FilmState.WET : FilmState.CURED;
            Geometry gloss = random.nextInt(25) == 0 ? Geometry.values()[random.nextInt(2)] : geometry;
            if (random.nextInt(3) == 0) {
                double[] values = new double[Grid.INSIDE.count()];
                for (int w = 0; w < values.length; w++) {
                    values[w] = 0.3 + 0.01 * random.nextGaussian();
                }
                readings.add(new SpectralReading(Spectrum.of(Grid.INSIDE, values), 0.002, gloss, film));
            } else {
                Viewing viewing = random.nextInt(12) == 0 ? Viewing.D65_10 : usual;
                Lab lab = new Lab(61 + random.nextGaussian(), random.nextGaussian(), random.nextGaussian(), viewing);
                Optional<PhotoBias> photo = random.nextBoolean()
                        ? Optional.of(new PhotoBias("p" + random.nextInt(2), Covariance.same(2)))
                        : Optional.empty();
                readings.add(new ColourReading(lab, Covariance.same(0.1 + random.nextDouble()), gloss, film, photo));
            }
        }
        return new PlaceReadings("Tarrowmere", "bow", readings, "");
    }
}
