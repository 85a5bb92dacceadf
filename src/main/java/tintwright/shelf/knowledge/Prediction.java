package tintwright.shelf.knowledge;

import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.reading.Covariance;

/**
 * The cured colour expected of a mix.
 *
 * @param reflectance as an instrument would read it, on the inner grid
 * @param lab         its colour under the light asked for
 * @param covariance  how far the true colour may lie from it, from what is not known of the parts
 */
public record Prediction(Spectrum reflectance, Lab lab, Covariance covariance) {}
