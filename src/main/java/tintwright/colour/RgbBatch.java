package tintwright.colour;

/**
 * CIELAB of many screen codes on plain arrays: D65, 2 degree observer.
 *
 * <p>The same answers as {@link RgbSpace#decode} to 1e-9. May be shared between threads; each call allocates a few
 * blocks of working space, whatever the count.
 *
 * <p>How: 256 linear values from a table; the cube root from one square root, a polynomial and two steps of Halley;
 * the straight line near black joined to it by arithmetic instead of a branch. The loops are short, run from 0 and
 * write one array each, so that the compiler turns them into vector instructions.
 */
public final class RgbBatch {
    private static final int BLOCK = 256;
    private static final double LINEAR_BELOW = 216.0 / 24389.0;
    private static final double SLOPE = 24389.0 / 27.0;
    private static final double LINE = SLOPE / 116;
    /** Brighter than any code of these screens; beyond it the first guess of the cube root is not to be trusted. */
    private static final double BRIGHTEST = 1.1;

    private static final double[] LINEAR = new double[256];
    /** First guess of the cube root: a polynomial of the square root. */
    private static final double[] GUESS = guess();

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

    /** Through seven Chebyshev points of the range, by Newton's divided differences written out as powers. */
    private static double[] guess() {
        int points = 7;
        double low = Math.sqrt(LINEAR_BELOW);
        double high = Math.sqrt(BRIGHTEST);
        double[] at = new double[points];
        double[] difference = new double[points];
        for (int k = 0; k < points; k++) {
            at[k] = (low + high) / 2 + (high - low) / 2 * Math.cos(Math.PI * (k + 0.5) / points);
            difference[k] = Math.cbrt(at[k] * at[k]);
        }
        for (int order = 1; order < points; order++) {
            for (int k = points - 1; k >= order; k--) {
                difference[k] = (difference[k] - difference[k - 1]) / (at[k] - at[k - order]);
            }
        }
        double[] power = new double[points];
        for (int k = points - 1; k >= 0; k--) {
            for (int i = points - 1; i > 0; i--) {
                power[i] = power[i - 1] - at[k] * power[i];
            }
            power[0] = difference[k] - at[k] * power[0];
        }
        return power;
    }

    /**
     * @param packed pixels as {@code 0xRRGGBB}; what stands above the lowest 24 bits is ignored
     * @param from   first pixel
     * @param count  how many
     * @param l      L* is written at the pixel's index minus {@code from}; {@code a}, {@code b} likewise
     */
    public void labs(int[] packed, int from, int count, double[] l, double[] a, double[] b) {
        double[][] work = new double[6][BLOCK];
        for (int at = 0; at < count; at += BLOCK) {
            int n = Math.min(BLOCK, count - at);
            for (int i = 0; i < n; i++) {
                int pixel = packed[from + at + i];
                work[0][i] = LINEAR[pixel >> 16 & 255];
                work[1][i] = LINEAR[pixel >> 8 & 255];
                work[2][i] = LINEAR[pixel & 255];
            }
            block(work, n);
            System.arraycopy(work[0], 0, l, at, n);
            System.arraycopy(work[1], 0, a, at, n);
            System.arraycopy(work[2], 0, b, at, n);
        }
    }

    /**
     * In place: linear red, green, blue (0 to 1, no clipping) become L*, a*, b*.
     *
     * @param red   becomes L*
     * @param green becomes a*
     * @param blue  becomes b*
     */
    public void labsOfLinear(double[] red, double[] green, double[] blue, int count) {
        double[][] work = new double[6][BLOCK];
        for (int at = 0; at < count; at += BLOCK) {
            int n = Math.min(BLOCK, count - at);
            System.arraycopy(red, at, work[0], 0, n);
            System.arraycopy(green, at, work[1], 0, n);
            System.arraycopy(blue, at, work[2], 0, n);
            block(work, n);
            for (int i = 0; i < n; i++) {
                plainWhereBright(red, green, blue, at + i, work, i);
            }
            System.arraycopy(work[0], 0, red, at, n);
            System.arraycopy(work[1], 0, green, at, n);
            System.arraycopy(work[2], 0, blue, at, n);
        }
    }

    private void plainWhereBright(double[] red, double[] green, double[] blue, int from, double[][] work, int to) {
        double x = m[0] * red[from] + m[1] * green[from] + m[2] * blue[from];
        double y = m[3] * red[from] + m[4] * green[from] + m[5] * blue[from];
        double z = m[6] * red[from] + m[7] * green[from] + m[8] * blue[from];
        if (!(x < BRIGHTEST && y < BRIGHTEST && z < BRIGHTEST)) {
            work[0][to] = 116 * plain(y) - 16;
            work[1][to] = 500 * (plain(x) - plain(y));
            work[2][to] = 200 * (plain(y) - plain(z));
        }
    }

    private static double plain(double ratio) {
        return ratio > LINEAR_BELOW ? Math.cbrt(ratio) : (SLOPE * ratio + 16) / 116;
    }

    /** Rows 0, 1, 2 of the work hold linear red, green, blue and then L*, a*, b*. */
    private void block(double[][] work, int n) {
        double[] x = work[3];
        double[] y = work[4];
        double[] z = work[5];
        sum(work[0], work[1], work[2], n, m[0], m[1], m[2], x);
        sum(work[0], work[1], work[2], n, m[3], m[4], m[5], y);
        sum(work[0], work[1], work[2], n, m[6], m[7], m[8], z);
        response(x, work[0], work[1], work[2], n);
        response(y, work[0], work[1], work[2], n);
        response(z, work[0], work[1], work[2], n);
        scaled(y, 116, 16, work[0], n);
        between(x, y, 500, work[1], n);
        between(y, z, 200, work[2], n);
    }

    private static void sum(
            double[] r, double[] g, double[] b, int n, double byR, double byG, double byB, double[] out) {
        for (int i = 0; i < n; i++) {
            out[i] = byR * r[i] + byG * g[i] + byB * b[i];
        }
    }

    private static void scaled(double[] from, double by, double less, double[] out, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = by * from[i] - less;
        }
    }

    private static void between(double[] from, double[] less, double by, double[] out, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = by * (from[i] - less[i]);
        }
    }

    /** In place: the ratio to the white becomes CIELAB's response; the other three arrays are working space. */
    private static void response(double[] ratio, double[] root, double[] near, double[] nearer, int n) {
        for (int i = 0; i < n; i++) {
            root[i] = Math.sqrt(notBelowTheLine(ratio[i]));
        }
        double k0 = GUESS[0];
        double k1 = GUESS[1];
        double k2 = GUESS[2];
        double k3 = GUESS[3];
        double k4 = GUESS[4];
        double k5 = GUESS[5];
        double k6 = GUESS[6];
        for (int i = 0; i < n; i++) {
            double s = root[i];
            near[i] = (((((k6 * s + k5) * s + k4) * s + k3) * s + k2) * s + k1) * s + k0;
        }
        for (int i = 0; i < n; i++) {
            double wanted = notBelowTheLine(ratio[i]);
            double cube = near[i] * near[i] * near[i];
            nearer[i] = near[i] * (cube + 2 * wanted) / (2 * cube + wanted);
        }
        for (int i = 0; i < n; i++) {
            double wanted = notBelowTheLine(ratio[i]);
            double cube = nearer[i] * nearer[i] * nearer[i];
            near[i] = nearer[i] * (cube + 2 * wanted) / (2 * cube + wanted);
        }
        for (int i = 0; i < n; i++) {
            // Above the join the second term is 0; below it the root stands still and the line goes on.
            ratio[i] = near[i] + LINE * (ratio[i] - notBelowTheLine(ratio[i]));
        }
    }

    /** The greater of the ratio and the join, without a branch. */
    private static double notBelowTheLine(double ratio) {
        return 0.5 * (ratio + LINEAR_BELOW + Math.abs(ratio - LINEAR_BELOW));
    }
}
