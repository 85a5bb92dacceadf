package tintwright.reading.photo.card;

/**
 * A place in a photo as a person sees it, upright.
 *
 * @param x pixels from the left edge
 * @param y pixels from the top edge
 */
public record PixelPoint(double x, double y) {
    public PixelPoint {
        if (!Double.isFinite(x + y)) {
            throw new IllegalArgumentException("a place in the photo must be two numbers, was " + x + ", " + y);
        }
    }

    /** @return pixels from here to there */
    public double distance(PixelPoint there) {
        return Math.hypot(there.x - x, there.y - y);
    }
}
