package tintwright.reading.photo;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;

/**
 * A decoded part of a photo: the file's own codes, addressed by upright places of the whole photo.
 */
final class Pixels {
    private final Raster raster;
    private final BufferedImage palette;
    private final Orientation orientation;
    private final int width;
    private final int height;
    private final int left;
    private final int top;
    private final int step;
    private final int largest;
    private final int[] pixel = new int[8];

    /**
     * @param image       the decoded part
     * @param orientation how to turn it
     * @param width       upright width of the whole photo
     * @param height      upright height of the whole photo
     * @param left        first stored column of the part
     * @param top         first stored row of the part
     * @param step        every how many stored pixels one was kept
     */
    Pixels(BufferedImage image, Orientation orientation, int width, int height, int left, int top, int step) {
        this.raster = image.getRaster();
        this.palette = image.getRaster().getNumBands() < 3 ? image : null;
        this.orientation = orientation;
        this.width = width;
        this.height = height;
        this.left = left;
        this.top = top;
        this.step = step;
        this.largest = palette != null ? 255 : (1 << image.getColorModel().getComponentSize(0)) - 1;
    }

    /** @return the largest code: 255 or 65535, or what the file's depth allows */
    int largest() {
        return largest;
    }

    /** @return every how many pixels of the photo one is kept */
    int step() {
        return step;
    }

    /**
     * @param x    upright column of the whole photo
     * @param y    upright row of the whole photo
     * @param code red, green, blue codes come here
     * @return false when the place lies outside this part
     */
    boolean codes(int x, int y, int[] code) {
        if (x < 0 || y < 0 || x >= width || y >= height) {
            return false;
        }
        int column = orientation.storedColumn(x, y, width, height) - left;
        int row = orientation.storedRow(x, y, width, height) - top;
        if (column < 0 || row < 0 || column / step >= raster.getWidth() || row / step >= raster.getHeight()) {
            return false;
        }
        if (palette != null) {
            int rgb = palette.getRGB(column / step, row / step);
            code[0] = rgb >> 16 & 255;
            code[1] = rgb >> 8 & 255;
            code[2] = rgb & 255;
            return true;
        }
        raster.getPixel(column / step, row / step, pixel);
        System.arraycopy(pixel, 0, code, 0, 3);
        return true;
    }
}
