package tintwright.match;

import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.reading.ColourReading.PhotoBias;
import tintwright.reading.Covariance;

/**
 * What to hit: the colour of a place on a hull, and how sure that is.
 *
 * @param name        what the person calls the place
 * @param colour      its colour, with the light and observer it is judged under
 * @param covariance  how far the true colour may lie from it
 * @param geometry    with or without gloss; the mix is foretold the same way
 * @param reflectance its spectrum on the inner grid, when an instrument gave one
 * @param photo       what it has in common with chips of the shelf; empty when none stood in its photo
 */
public record Target(
        String name,
        Lab colour,
        Covariance covariance,
        Geometry geometry,
        Optional<Spectrum> reflectance,
        Optional<InPhoto> photo) {
    /**
     * A hull that was read in one photo with chips of the shelf: what is still unsure of the camera is unsure in both,
     * so a mix made by those chips and the hull are off together.
     *
     * @param bias how that photo errs
     * @param own  how far the reading may be off by itself
     */
    public record InPhoto(PhotoBias bias, Covariance own) {}

    public Target {
        reflectance = reflectance.map(r -> r.resampled(Grid.INSIDE));
    }

    /** A target that has nothing in common with the shelf. */
    public Target(String name, Lab colour, Covariance covariance, Geometry geometry, Optional<Spectrum> reflectance) {
        this(name, colour, covariance, geometry, reflectance, Optional.empty());
    }
}
