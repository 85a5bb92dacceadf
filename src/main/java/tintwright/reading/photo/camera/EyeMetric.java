package tintwright.reading.photo.camera;

import tintwright.colour.Lab;
import tintwright.colour.Matrix3;
import tintwright.reading.Covariance;

/**
 * CIEDE2000 close to one colour: a 3 by 3 matrix that turns a small step in L*, a*, b* into steps the eye weighs
 * alike, so that the length of the result is about the CIEDE2000 of the step (without the rotation term).
 *
 * <p>Source: the weighting functions of ISO/CIE 11664-6, at the colour itself.
 */
public final class EyeMetric {
    /** 25^7, the chroma at which a neutral's redness is corrected by half; 25 to the seventh power, ISO/CIE 11664-6:2014, 4. */
    private static final double CHROMA_25_TO_7 = 6103515625.0;
    /** 90th percentile of the standard normal distribution. */
    private static final double NORMAL_90 = 1.2815515655446004;

    private EyeMetric() {}

    /** @return rows: lightness, chroma, hue; columns: L*, a*, b* */
    static double[][] at(double lightness, double a, double b) {
        double chroma = Math.hypot(a, b);
        double c7 = Math.pow(chroma, 7);
        double stretch = 1 + 0.5 * (1 - Math.sqrt(c7 / (c7 + CHROMA_25_TO_7)));
        double a1 = a * stretch;
        double c1 = Math.hypot(a1, b);
        double fromMiddle = (lightness - 50) * (lightness - 50);
        double sL = 1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle);
        double sC = 1 + 0.045 * c1;
        double hue = Math.atan2(b, a1);
        double t = 1
                - 0.17 * Math.cos(hue - Math.PI / 6)
                + 0.24 * Math.cos(2 * hue)
                + 0.32 * Math.cos(3 * hue + Math.PI / 30)
                - 0.20 * Math.cos(4 * hue - 63 * Math.PI / 180);
        double sH = 1 + 0.015 * c1 * t;
        double cos = Math.cos(hue);
        double sin = Math.sin(hue);
        return new double[][] {{1 / sL, 0, 0}, {0, stretch * cos / sC, sin / sC}, {0, -stretch * sin / sH, cos / sH}};
    }

    static double[][] at(Lab colour) {
        return at(colour.lightness(), colour.a(), colour.b());
    }

    /** @return the CIEDE2000 that a reading with this covariance stays within nine times out of ten */
    public static double nineInTen(Lab colour, Covariance covariance) {
        double[][] eye = at(colour);
        double[][] c = Matrix3.sandwich(eye, covariance.toArray());
        double mean = c[0][0] + c[1][1] + c[2][2];
        if (mean <= 0) {
            return 0;
        }
        double spread = 0;
        for (double[] row : c) {
            for (double v : row) {
                spread += v * v;
            }
        }
        // Satterthwaite's matching chi-square and the Wilson-Hilferty cube for its 90 % point.
        double freedom = mean * mean / spread;
        double h = 2 / (9 * freedom);
        double cube = 1 - h + NORMAL_90 * Math.sqrt(h);
        return Math.sqrt(mean * cube * cube * cube);
    }
}
