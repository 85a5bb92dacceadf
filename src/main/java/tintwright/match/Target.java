package tintwright.match;

import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.reading.Covariance;

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
}
