package tintwright.reading.photo.file;

/**
 * A photo made small enough to look at, upright, in sRGB.
 */
public final class Preview {
    private final int width;
    private final int height;
    private final int[] argb;
    private final double scale;

    Preview(int width, int height, int[] argb, double scale) {
        this.width = width;
        this.height = height;
        this.argb = argb;
        this.scale = scale;
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** @return a copy of the pixels, row by row from the top left, opaque {@code 0xFFRRGGBB} */
    public int[] argb() {
        return argb.clone();
    }

    /** @return one pixel, {@code 0xFFRRGGBB} */
    public int at(int x, int y) {
        return argb[y * width + x];
    }

    /** @return pixels of the preview for each pixel of the photo, at most 1 */
    public double scale() {
        return scale;
    }
}
