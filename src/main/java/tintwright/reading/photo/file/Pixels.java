package tintwright.reading.photo.file;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;

/**
 * A decoded part of a photo: the file's own codes, addressed by upright places of the whole photo.
 */
public final class Pixels {
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
    /** The bytes themselves, when they lie pixel after pixel: most photos, and several times faster to look up. */
    private final byte[] bytes;

    private final int[] band = new int[3];
    private final int pixelLength;
    private final int rowLength;

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
        if (palette == null
                && largest == 255
                && raster.getSampleModel() instanceof PixelInterleavedSampleModel layout
                && raster.getDataBuffer() instanceof DataBufferByte data
                && data.getNumBanks() == 1) {
            this.bytes = data.getData();
            this.pixelLength = layout.getPixelStride();
            this.rowLength = layout.getScanlineStride();
            int start = data.getOffset()
                    - raster.getSampleModelTranslateY() * rowLength
                    - raster.getSampleModelTranslateX() * pixelLength;
            for (int k = 0; k < 3; k++) {
                band[k] = start + layout.getBandOffsets()[k];
            }
        } else {
            this.bytes = null;
            this.pixelLength = 0;
            this.rowLength = 0;
        }
    }

    /** @return the largest code: 255 or 65535, or what the file's depth allows */
    public int largest() {
        return largest;
    }

    /** @return every how many pixels of the photo one is kept */
    public int step() {
        return step;
    }

    /**
     * @param x    upright column of the whole photo
     * @param y    upright row of the whole photo
     * @param code red, green, blue codes come here
     * @return false when the place lies outside this part
     */
    public boolean codes(int x, int y, int[] code) {
        if (x < 0 || y < 0 || x >= width || y >= height) {
            return false;
        }
        int column = orientation.storedColumn(x, y, width, height) - left;
        int row = orientation.storedRow(x, y, width, height) - top;
        if (column < 0 || row < 0 || column / step >= raster.getWidth() || row / step >= raster.getHeight()) {
            return false;
        }
        stored(column / step, row / step, code);
        return true;
    }

    /** Codes of a kept pixel by its stored place. */
    private void stored(int column, int row, int[] code) {
        if (bytes != null) {
            int at = row * rowLength + column * pixelLength;
            code[0] = bytes[at + band[0]] & 255;
            code[1] = bytes[at + band[1]] & 255;
            code[2] = bytes[at + band[2]] & 255;
        } else if (palette != null) {
            int rgb = palette.getRGB(column, row);
            code[0] = rgb >> 16 & 255;
            code[1] = rgb >> 8 & 255;
            code[2] = rgb & 255;
        } else {
            raster.getPixel(column, row, pixel);
            System.arraycopy(pixel, 0, code, 0, 3);
        }
    }

    /** Takes the codes of one stored row: red, green, blue of each kept pixel in turn. */
    interface Row {
        void take(int row, int length, int[] codes);
    }

    /** Hands over every stored row, top to bottom. */
    void eachRow(Row taker) {
        int length = raster.getWidth();
        int bands = raster.getNumBands();
        int[] all = new int[length * Math.max(3, bands)];
        int[] codes = new int[3 * length];
        for (int row = 0; row < raster.getHeight(); row++) {
            if (palette != null) {
                int[] rgb = palette.getRGB(0, row, length, 1, null, 0, length);
                for (int i = 0; i < length; i++) {
                    codes[3 * i] = rgb[i] >> 16 & 255;
                    codes[3 * i + 1] = rgb[i] >> 8 & 255;
                    codes[3 * i + 2] = rgb[i] & 255;
                }
            } else {
                raster.getPixels(0, row, length, 1, all);
                for (int i = 0; i < length; i++) {
                    codes[3 * i] = all[bands * i];
                    codes[3 * i + 1] = all[bands * i + 1];
                    codes[3 * i + 2] = all[bands * i + 2];
                }
            }
            taker.take(row, length, codes);
        }
    }

    /** @return upright column of the whole photo, of a kept pixel by its place in the stored part */
    int uprightX(int column, int row) {
        return orientation.uprightX(left + column * step, top + row * step, width, height);
    }

    /** @return upright row of the whole photo, of a kept pixel by its place in the stored part */
    int uprightY(int column, int row) {
        return orientation.uprightY(left + column * step, top + row * step, width, height);
    }

    /**
     * The green codes of every so many pixels, upright: what shapes are looked for in. Only for a whole photo.
     *
     * @param every 1 for all kept pixels, 2 for every second along each side
     * @return row after row, {@link #greyWidth} times {@link #greyHeight} bytes, 0 to 255
     */
    public byte[] greys(int every) {
        int across = greyWidth(every);
        int down = greyHeight(every);
        byte[] out = new byte[across * down];
        int columns = raster.getWidth() / every;
        int rows = raster.getHeight() / every;
        int shift = Math.max(0, 32 - Integer.numberOfLeadingZeros(largest) - 8);
        int[] code = new int[3];
        for (int row = 0; row < rows; row++) {
            int from = row * every * rowLength + band[1];
            // The upright place of a stored pixel, and how it moves along the stored row.
            int at = orientation.uprightY(0, row, across, down) * across + orientation.uprightX(0, row, across, down);
            int along = columns < 2
                    ? 0
                    : orientation.uprightY(1, row, across, down) * across
                            + orientation.uprightX(1, row, across, down)
                            - at;
            for (int column = 0; column < columns; column++, at += along) {
                if (bytes != null) {
                    out[at] = bytes[from + column * every * pixelLength];
                } else {
                    stored(column * every, row * every, code);
                    out[at] = (byte) (code[1] >> shift);
                }
            }
        }
        return out;
    }

    /** @return columns of {@link #greys} */
    public int greyWidth(int every) {
        return (orientation.swapped() ? raster.getHeight() : raster.getWidth()) / every;
    }

    /** @return rows of {@link #greys} */
    public int greyHeight(int every) {
        return (orientation.swapped() ? raster.getWidth() : raster.getHeight()) / every;
    }
}
