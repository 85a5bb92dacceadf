package tintwright.reading.photo.camera;

import tintwright.colour.Lab;
import tintwright.reading.photo.card.Sample;

/**
 * A reference patch as the camera recorded it, and the colour it is known to have.
 *
 * @param name   what the patch is called
 * @param sample the camera's record
 * @param colour the known colour
 * @param sigma  how far the known colour may be off, standard deviation on each axis, in CIEDE2000
 */
public record KnownSample(String name, Sample sample, Lab colour, double sigma) {}
