package tintwright.colour;

/**
 * Lab of reflectances on the inner grid, on plain arrays, with the slope of each axis: what searching and
 * learning call thousands of times. Gives the same answers as {@link Lab#of(Spectrum, Viewing)}.
 *
 * <p>Safe to share between threads; allocates nothing in its calls.
 */
public final class LabProjection {
    private static final double LINEAR_BELOW = 216.0 / 24389.0;
    private static final double SLOPE = 24389.0 / 27.0;

    private final Viewing viewing;
    private final double[] x;
    private final double[] y;
    private final double[] z;

    private LabProjection(Viewing viewing) {
        this.viewing = viewing;
        TristimulusWeights weights = TristimulusWeights.of(viewing, Grid.INSIDE);
        double[][] w = weights.toArray();
        Xyz white = weights.white();
        this.x = scaled(w[0], white.x());
        this.y = scaled(w[1], white.y());
        this.z = scaled(w[2], white.z());
    }

    private static double[] scaled(double[] weights, double white) {
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= white;
        }
        return weights;
    }

    public static LabProjection of(Viewing viewing) {
        return new LabProjection(viewing);
    }

    public Viewing viewing() {
        return viewing;
    }

    /**
     * @param reflectance 31 values as an instrument reads them
     * @param lab         filled with L*, a*, b*
     */
    public void lab(double[] reflectance, double[] lab) {
        double sx = 0;
        double sy = 0;
        double sz = 0;
        for (int i = 0; i < x.length; i++) {
            sx += x[i] * reflectance[i];
            sy += y[i] * reflectance[i];
            sz += z[i] * reflectance[i];
        }
        double fx = response(sx);
        double fy = response(sy);
        double fz = response(sz);
        lab[0] = 116 * fy - 16;
        lab[1] = 500 * (fx - fy);
        lab[2] = 200 * (fy - fz);
    }

    /**
     * The colour and its slopes.
     *
     * @param reflectance 31 values as an instrument reads them
     * @param lab         filled with L*, a*, b*
     * @param slope       filled with three rows of 31: change of L*, a*, b* per unit of reflectance
     */
    public void slopes(double[] reflectance, double[] lab, double[][] slope) {
        double sx = 0;
        double sy = 0;
        double sz = 0;
        for (int i = 0; i < x.length; i++) {
            sx += x[i] * reflectance[i];
            sy += y[i] * reflectance[i];
            sz += z[i] * reflectance[i];
        }
        double fx = response(sx);
        double fy = response(sy);
        double fz = response(sz);
        lab[0] = 116 * fy - 16;
        lab[1] = 500 * (fx - fy);
        lab[2] = 200 * (fy - fz);
        double gx = responseSlope(sx, fx);
        double gy = responseSlope(sy, fy);
        double gz = responseSlope(sz, fz);
        for (int i = 0; i < x.length; i++) {
            double dx = gx * x[i];
            double dy = gy * y[i];
            double dz = gz * z[i];
            slope[0][i] = 116 * dy;
            slope[1][i] = 500 * (dx - dy);
            slope[2][i] = 200 * (dy - dz);
        }
    }

    private static double response(double ratio) {
        return ratio > LINEAR_BELOW ? Math.cbrt(ratio) : (SLOPE * ratio + 16) / 116;
    }

    private static double responseSlope(double ratio, double response) {
        return ratio > LINEAR_BELOW ? 1 / (3 * response * response) : SLOPE / 116;
    }
}
