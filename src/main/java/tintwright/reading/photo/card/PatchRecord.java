package tintwright.reading.photo.card;

/**
 * What a camera recorded in one region.
 *
 * @param sample  robust mean, its noise, its place
 * @param pixels  pixels of the photo inside
 * @param clipped share of pixels with a channel at the top of its range
 * @param black   share of pixels with a channel at 0
 * @param glare   share of pixels much brighter than the rest
 * @param uneven  spread of the brightness within the region, over the brightness
 */
public record PatchRecord(Sample sample, int pixels, double clipped, double black, double glare, double uneven) {
    /** A region with more clipped pixels than this says nothing about its colour. */
    static final double CLIPPED = 0.05;

    private static final double BLACK = 0.3;

    public boolean isClipped() {
        return clipped > CLIPPED;
    }

    public boolean isBlack() {
        return black > BLACK;
    }
}
