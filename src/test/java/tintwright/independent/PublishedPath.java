package tintwright.independent;

import java.util.List;
import tintwright.Reference;

/**
 * From a reflectance to a colour and from two colours to a difference, by the published tables and formulas and
 * without any class of the program: the path a doubter would take with a spreadsheet.
 *
 * <p>Source: ISO/CIE 11664-1 and 11664-2 (tables, read from the reference folder), ISO/CIE 11664-3 (sums at 1 nm;
 * the light is given every 5 nm and read along straight lines, as the reflectance every 10 nm), ISO/CIE 11664-4,
 * ISO/CIE 11664-6.
 */
final class PublishedPath {
    private static final int FIRST = 380;
    private static final int LAST = 780;

    private final double[][] matching = new double[3][LAST - FIRST + 1];
    private final double[] light = new double[LAST - FIRST + 1];

    /** D65 and the 10 degree observer; skips the calling test where the tables are absent. */
    PublishedPath() {
        for (String[] row : Reference.rows("cie/cie1964_10deg_cmf_1nm.csv")) {
            int nm = (int) Double.parseDouble(row[0]);
            for (int axis = 0; axis < 3 && nm >= FIRST && nm <= LAST; axis++) {
                matching[axis][nm - FIRST] = Double.parseDouble(row[axis + 1]);
            }
        }
        List<String[]> powers = Reference.rows("cie/illuminants_5nm_380_780.csv");
        for (int nm = FIRST; nm <= LAST; nm++) {
            int left = Math.min((nm - FIRST) / 5, powers.size() - 2);
            double part = (nm - FIRST) / 5.0 - left;
            light[nm - FIRST] = (1 - part) * Double.parseDouble(powers.get(left)[D65_COLUMN])
                    + part * Double.parseDouble(powers.get(left + 1)[D65_COLUMN]);
        }
    }

    private static final int D65_COLUMN = 3;

    /** @param reflectance 400 to 700 nm every 10 nm, held outside */
    double[] lab(double[] reflectance) {
        double[] colour = new double[3];
        double[] white = new double[3];
        for (int nm = FIRST; nm <= LAST; nm++) {
            double position = Math.max(0, Math.min(30, (nm - 400) / 10.0));
            int left = Math.min((int) position, 29);
            double value = reflectance[left] + (position - left) * (reflectance[left + 1] - reflectance[left]);
            for (int axis = 0; axis < 3; axis++) {
                double weight = light[nm - FIRST] * matching[axis][nm - FIRST];
                colour[axis] += weight * value;
                white[axis] += weight;
            }
        }
        double[] f = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            double t = colour[axis] / white[axis];
            f[axis] = t > Math.pow(24.0 / 116, 3) ? Math.pow(t, 1.0 / 3) : 841.0 / 108 * t + 16.0 / 116;
        }
        return new double[] {116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])};
    }

    /** CIEDE2000, written down as it is printed, in degrees. */
    static double difference(double[] one, double[] two) {
        double c = (Math.hypot(one[1], one[2]) + Math.hypot(two[1], two[2])) / 2;
        double g = 0.5 * (1 - Math.sqrt(Math.pow(c, 7) / (Math.pow(c, 7) + Math.pow(25, 7))));
        double a1 = (1 + g) * one[1];
        double a2 = (1 + g) * two[1];
        double c1 = Math.hypot(a1, one[2]);
        double c2 = Math.hypot(a2, two[2]);
        double h1 = hue(a1, one[2]);
        double h2 = hue(a2, two[2]);
        double dh = c1 * c2 == 0 ? 0 : h2 - h1;
        dh += dh > 180 ? -360 : dh < -180 ? 360 : 0;
        double hueDifference = 2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(dh / 2));
        double l = (one[0] + two[0]) / 2;
        double mc = (c1 + c2) / 2;
        double mh = c1 * c2 == 0
                ? h1 + h2
                : Math.abs(h1 - h2) <= 180 ? (h1 + h2) / 2 : h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
        double t = 1 - 0.17 * cos(mh - 30) + 0.24 * cos(2 * mh) + 0.32 * cos(3 * mh + 6) - 0.20 * cos(4 * mh - 63);
        double sl = 1 + 0.015 * (l - 50) * (l - 50) / Math.sqrt(20 + (l - 50) * (l - 50));
        double sc = 1 + 0.045 * mc;
        double sh = 1 + 0.015 * mc * t;
        double turn = 30 * Math.exp(-Math.pow((mh - 275) / 25, 2));
        double rt = -2
                * Math.sqrt(Math.pow(mc, 7) / (Math.pow(mc, 7) + Math.pow(25, 7)))
                * Math.sin(Math.toRadians(2 * turn));
        double dl = (two[0] - one[0]) / sl;
        double dc = (c2 - c1) / sc;
        double dH = hueDifference / sh;
        return Math.sqrt(dl * dl + dc * dc + dH * dH + rt * dc * dH);
    }

    private static double hue(double a, double b) {
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
