package tintwright.match;

import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;

/**
 * What to hit: the colour of a place on a hull, and how sure that is.
 *
 * @param name        what the person calls the place
 * @param colour      its colour, with the light and observer it is judged under
 * @param covariance  how far the true colour may lie from it
 * @param geometry    with or without gloss; the mix is foretold the same way
 * @param reflectance its spectrum on the inner grid, when an instrument gave one
 */
public record Target(
        String name, Lab colour, Covariance covariance, Geometry geometry, Optional<Spectrum> reflectance) {
    public Target {
        reflectance = reflectance.map(r -> r.resampled(Grid.INSIDE));
    }

    /** @return the target of one reading; a spectrum is judged under D65 and the 10 degree observer */
    public static Target of(String name, Reading reading) {
        if (reading instanceof ColourReading colour) {
            Covariance all = colour.covariance()
                    .plus(colour.photo()
                            .map(ColourReading.PhotoBias::covariance)
                            .orElse(Covariance.same(0)));
            return new Target(name, colour.lab(), all, colour.geometry(), Optional.empty());
        }
        SpectralReading spectral = (SpectralReading) reading;
        Spectrum inside = spectral.reflectance().resampled(Grid.INSIDE);
        return new Target(
                name,
                Lab.of(inside, Viewing.D65_10),
                noise(inside, spectral.noise()),
                spectral.geometry(),
                Optional.of(inside));
    }

    private static Covariance noise(Spectrum reflectance, double deviation) {
        int n = Grid.INSIDE.count();
        double[][] slope = new double[3][n];
        LabBatch.of(Viewing.D65_10, Grid.INSIDE).labAndSlopes(reflectance.toArray(), new double[3], slope);
        double[][] sum = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int w = 0; w < n; w++) {
                    sum[i][j] += slope[i][w] * slope[j][w] * deviation * deviation;
                }
            }
        }
        return Covariance.of(sum);
    }
}
