package tintwright.reading.photo;

/**
 * What the camera recorded at one patch or spot.
 *
 * @param light the robust mean
 * @param noise standard deviation of that mean on each channel
 * @param x     place in the frame, from its middle, in half diagonals; -1 to 1
 * @param y     place in the frame, from its middle, in half diagonals, downwards; -1 to 1
 */
record Sample(Rgb light, Rgb noise, double x, double y) {}
