package tintwright.reading.photo.card;

import tintwright.reading.photo.file.Rgb;

/**
 * What the camera recorded at one patch or spot.
 *
 * @param light the robust mean
 * @param noise standard deviation of that mean on each channel
 * @param x     place in the frame, from its middle, in half diagonals; -1 to 1
 * @param y     place in the frame, from its middle, in half diagonals, downwards; -1 to 1
 */
public record Sample(Rgb light, Rgb noise, double x, double y) {}
