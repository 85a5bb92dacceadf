package tintwright.shelf;

import java.util.ArrayList;
import java.util.List;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;

/** Any reading as one colour with all its doubts: what a chip can be judged by, whatever read it. */
record Reading3(Lab lab, Covariance covariance, Geometry geometry) {
    /** A spectrum with the usual noise repeats to about this in Lab; common practice, no source. */
    private static final double SPECTRAL_NOISE = 0.25;

    static List<Reading3> of(Chip chip) {
        List<Reading3> list = new ArrayList<>();
        for (Reading reading : chip.readings()) {
            Covariance wet = Covariance.same(reading.film() == FilmState.WET ? 2.5 : 0);
            if (reading instanceof ColourReading colour) {
                Covariance shared =
                        colour.photo().map(ColourReading.PhotoBias::covariance).orElse(Covariance.same(0));
                list.add(new Reading3(
                        colour.lab(), colour.covariance().plus(shared).plus(wet), colour.geometry()));
            } else {
                list.add(new Reading3(
                        reading.colour(Viewing.D65_10).orElseThrow(),
                        Covariance.same(SPECTRAL_NOISE).plus(wet),
                        reading.geometry()));
            }
        }
        return list;
    }
}
