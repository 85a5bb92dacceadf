package tintwright.reading;

import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
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

    @Override
    public Viewing judgedUnder() {
        return Viewing.D65_10;
    }

    /**
     * The one way from noise in reflectance to doubt in L*, a*, b*: J J' times the variance of one reflectance, J the
     * slopes of the colour against each. Noise of two wavelengths is taken as independent, so that it averages out in
     * a colour: 0.002 is 0.1 Lab units on white, some tenths on black.
     *
     * <p>Source: JCGM 100:2008, 5.1.2 (law of propagation of uncertainty; from memory), for three quantities at once.
     */
    @Override
    public Covariance scatter(Viewing viewing) {
        int count = reflectance.grid().count();
        double[][] slope = new double[3][count];
        LabBatch.of(viewing, reflectance.grid()).labAndSlopes(reflectance.toArray(), new double[3], slope);
        double[][] sum = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int w = 0; w < count; w++) {
                    sum[i][j] += slope[i][w] * slope[j][w] * noise * noise;
                }
            }
        }
        return Covariance.of(sum);
    }

    @Override
    public Optional<ColourReading.PhotoBias> photo() {
        return Optional.empty();
    }
}
