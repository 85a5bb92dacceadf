package tintwright.reading;

import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;

/**
 * A reading by a spectrophotometer.
 *
 * @param reflectance as read, surface included
 * @param noise       standard deviation of one reflectance, 0 to 0.2; 0.002 for a good pocket instrument
 * @param geometry    with or without gloss
 * @param film        wet or cured
 */
public record SpectralReading(Spectrum reflectance, double noise, Geometry geometry, FilmState film)
        implements Reading {
    /** Repeatability of a pocket instrument on a repair; common practice, no source. */
    public static final double USUAL_NOISE = 0.002;

    public SpectralReading {
        if (!(noise >= 0 && noise <= 0.2)) {
            throw new IllegalArgumentException("noise of a reflectance must be 0 to 0.2, was " + noise);
        }
    }

    @Override
    public Optional<Lab> colour(Viewing viewing) {
        return Optional.of(Lab.of(reflectance, viewing));
    }
}
