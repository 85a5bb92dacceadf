package tintwright.colour;

/**
 * CIELAB of many screen codes on plain arrays: D65, 2 degree observer.
 *
 * <p>The same answers as {@link RgbSpace#decode} to 1e-9. May be shared between threads.
 */
public final class RgbBatch {
    private static final double LINEAR_BELOW = 216.0 / 24389.0;
    private static final double SLOPE = 24389.0 / 27.0;
    private static final double[] LINEAR = new double[256];

    static {
        for (int code = 0; code < 256; code++) {
            LINEAR[code] = RgbSpace.toLinear(code / 255.0);
        }
    }

    /** From linear red, green, blue to X, Y, Z over the white. */
    private final double[] m = new double[9];

    private RgbBatch(RgbSpace space) {
        double[][] toXyz = space.matrixToXyz();
        for (int row = 0; row < 3; row++) {
            double white = toXyz[row][0] + toXyz[row][1] + toXyz[row][2];
            for (int column = 0; column < 3; column++) {
                m[3 * row + column] = toXyz[row][column] / white;
            }
        }
    }

    public static RgbBatch of(RgbSpace space) {
        return new RgbBatch(space);
    }

    /**
     * @param packed pixels as {@code 0xRRGGBB}; what stands above the lowest 24 bits is ignored
     * @param from   first pixel
     * @param count  how many
     * @param l      L* is written at the pixel's index minus {@code from}; {@code a}, {@code b} likewise
     */
    public void labs(int[] packed, int from, int count, double[] l, double[] a, double[] b) {
        for (int i = 0; i < count; i++) {
            int pixel = packed[from + i];
            l[i] = LINEAR[pixel >> 16 & 255];
            a[i] = LINEAR[pixel >> 8 & 255];
            b[i] = LINEAR[pixel & 255];
        }
        labsOfLinear(l, a, b, count);
    }

    /**
     * In place: linear red, green, blue (0 to 1, no clipping) become L*, a*, b*.
     *
     * @param red   becomes L*
     * @param green becomes a*
     * @param blue  becomes b*
     */
    public void labsOfLinear(double[] red, double[] green, double[] blue, int count) {
        for (int i = 0; i < count; i++) {
            double x = response(m[0] * red[i] + m[1] * green[i] + m[2] * blue[i]);
            double y = response(m[3] * red[i] + m[4] * green[i] + m[5] * blue[i]);
            double z = response(m[6] * red[i] + m[7] * green[i] + m[8] * blue[i]);
            red[i] = 116 * y - 16;
            green[i] = 500 * (x - y);
            blue[i] = 200 * (y - z);
        }
    }

    private static double response(double ratio) {
        return ratio > LINEAR_BELOW ? Math.cbrt(ratio) : (SLOPE * ratio + 16) / 116;
    }
}
