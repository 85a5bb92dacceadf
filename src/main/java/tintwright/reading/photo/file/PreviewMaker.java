package tintwright.reading.photo.file;

import tintwright.colour.RgbSpace;

/**
 * Makes a {@link Preview}: the means of whole blocks of pixels, in linear light.
 */
final class PreviewMaker {
    /** A bound on work, a judgement of ours. */
    private static final int CODES = 4096;

    private static final byte[] TO_CODE = new byte[CODES + 1];

    static {
        for (int i = 0; i <= CODES; i++) {
            TO_CODE[i] = (byte) Math.round(255 * RgbSpace.toCode(i / (double) CODES));
        }
    }

    private PreviewMaker() {}

    static Preview make(PhotoFile photo, Pixels pixels, int longestSide) {
        int width = photo.width();
        int height = photo.height();
        int block = Math.max(1, (int) Math.ceil(Math.max(width, height) / (double) longestSide));
        block = Math.max(block, pixels.step());
        int outWidth = Math.max(1, width / block);
        int outHeight = Math.max(1, height / block);
        float[][] sum = new float[3][outWidth * outHeight];
        int[] count = new int[outWidth * outHeight];
        float[][] light = new float[3][];
        for (int k = 0; k < 3; k++) {
            light[k] = photo.profile().table(k, pixels.largest());
        }
        int step = block;
        pixels.eachRow((row, length, codes) -> {
            for (int i = 0; i < length; i++) {
                int x = pixels.uprightX(i, row) / step;
                int y = pixels.uprightY(i, row) / step;
                if (x < outWidth && y < outHeight) {
                    int at = y * outWidth + x;
                    for (int k = 0; k < 3; k++) {
                        sum[k][at] += light[k][codes[3 * i + k]];
                    }
                    count[at]++;
                }
            }
        });
        int[] argb = new int[outWidth * outHeight];
        double[] mean = new double[3];
        for (int i = 0; i < argb.length; i++) {
            int n = Math.max(1, count[i]);
            for (int k = 0; k < 3; k++) {
                mean[k] = sum[k][i] / n;
            }
            Rgb rgb = photo.profile().toSrgb(mean);
            argb[i] = 0xFF000000 | code(rgb.red()) << 16 | code(rgb.green()) << 8 | code(rgb.blue());
        }
        return new Preview(outWidth, outHeight, argb, 1.0 / block);
    }

    private static int code(double light) {
        return TO_CODE[(int) Math.round(Math.max(0, Math.min(1, light)) * CODES)] & 255;
    }
}
