package tintwright.reading.photo.sheet;

import boofcv.struct.image.GrayU8;
import java.awt.geom.AffineTransform;
import java.awt.image.AffineTransformOp;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Arrays;
import tintwright.reading.photo.file.Pixels;

/**
 * A photo in greys, upright, one byte for each pixel; what codes are looked for in.
 *
 * @param width  pixels
 * @param height pixels
 * @param values row after row, 0 to 255 as bytes
 * @param scale  pixels of the photo to one of this picture along each side
 */
record GreyPicture(int width, int height, byte[] values, double scale) {
    GreyPicture {
        if (values.length != (long) width * height) {
            throw new IllegalArgumentException(
                    "expected " + (long) width * height + " grey values, got " + values.length);
        }
    }

    /** @param every 1 for all pixels, 2 for every second along each side */
    static GreyPicture of(Pixels photo, int every) {
        return new GreyPicture(
                photo.greyWidth(every), photo.greyHeight(every), photo.greys(every), every * photo.step());
    }

    GrayU8 image() {
        GrayU8 image = new GrayU8();
        image.width = width;
        image.stride = width;
        image.height = height;
        image.data = values;
        return image;
    }

    int at(int x, int y) {
        return values[y * width + x] & 255;
    }

    /** @return every two by two pixels as one */
    GreyPicture halved() {
        int w = width / 2;
        int h = height / 2;
        byte[] out = new byte[w * h];
        for (int y = 0; y < h; y++) {
            int upper = 2 * y * width;
            int lower = upper + width;
            for (int x = 0; x < w; x++) {
                int sum = (values[upper + 2 * x] & 255)
                        + (values[upper + 2 * x + 1] & 255)
                        + (values[lower + 2 * x] & 255)
                        + (values[lower + 2 * x + 1] & 255);
                out[y * w + x] = (byte) (sum + 2 >> 2);
            }
        }
        return new GreyPicture(w, h, out, 2 * scale);
    }

    /** @return so many times as many pixels along each side, what lies between them drawn as cubic curves */
    GreyPicture enlarged(int times) {
        WritableRaster small = raster(width, height);
        small.setDataElements(0, 0, width, height, values);
        WritableRaster large = raster(times * width, times * height);
        new AffineTransformOp(AffineTransform.getScaleInstance(times, times), AffineTransformOp.TYPE_BICUBIC)
                .filter(small, large);
        return new GreyPicture(
                times * width, times * height, ((DataBufferByte) large.getDataBuffer()).getData(), scale / times);
    }

    private static WritableRaster raster(int width, int height) {
        return Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, width, height, 1, null);
    }

    /** @return the grey that this share of the pixels is darker than, from one row in eight */
    int percentile(double share) {
        int[] counts = new int[256];
        int all = 0;
        for (int y = 0; y < height; y += 8) {
            for (int x = 0; x < width; x++) {
                counts[at(x, y)]++;
                all++;
            }
        }
        int sum = 0;
        for (int grey = 0; grey < 256; grey++) {
            sum += counts[grey];
            if (sum > share * all) {
                return grey;
            }
        }
        return 255;
    }

    /** @return the change over two pixels that one place in a thousand passes, from one row in eight */
    int steepest() {
        int[] counts = new int[256];
        int all = 0;
        for (int y = 4; y < height; y += 8) {
            for (int x = 1; x + 1 < width; x++) {
                counts[Math.abs(at(x + 1, y) - at(x - 1, y))]++;
                all++;
            }
        }
        int left = all / 1000;
        for (int change = 255; change > 0; change--) {
            left -= counts[change];
            if (left < 0) {
                return change;
            }
        }
        return 0;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof GreyPicture that
                && width == that.width
                && height == that.height
                && scale == that.scale
                && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return width + " by " + height + " greys";
    }
}
