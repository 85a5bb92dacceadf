package tintwright.reading.photo;

import tintwright.colour.Lab;

/**
 * A reference patch as the camera recorded it, and the colour it is known to have.
 *
 * @param name   what the patch is called
 * @param sample the camera's record
 * @param colour the known colour
 * @param sigma  how far the known colour may be off, standard deviation on each axis, in CIEDE2000
 */
record KnownSample(String name, Sample sample, Lab colour, double sigma) {}
