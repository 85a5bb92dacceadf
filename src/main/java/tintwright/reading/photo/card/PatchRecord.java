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
 * @param cut     channels cut off at the top in more than a few of its pixels: left out by their wide noise
 */
public record PatchRecord(
        Sample sample, int pixels, double clipped, double black, double glare, double uneven, int cut) {
    /** A channel with more clipped pixels than this says nothing about the colour; a judgement of ours. */
    static final double CLIPPED = 0.05;

    /** A judgement of ours. */
    private static final double BLACK = 0.3;

    /** @return true when at most one channel is left: then nothing is read */
    public boolean isClipped() {
        return cut > 1;
    }

    public boolean isBlack() {
        return black > BLACK;
    }
}
