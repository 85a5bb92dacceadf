package tintwright.colour;

/** The published formulas, line by line as printed: what the fast forms are measured against. */
final class PlainPort {
    private PlainPort() {}

    /** Sharma, Wu, Dalal (2005), equations 2 to 22, unit weights. */
    static double ciede2000(double l1, double a1, double b1, double l2, double a2, double b2) {
        double c1 = Math.sqrt(a1 * a1 + b1 * b1);
        double c2 = Math.sqrt(a2 * a2 + b2 * b2);
        double mean = (c1 + c2) / 2;
        double g = 0.5 * (1 - Math.sqrt(Math.pow(mean, 7) / (Math.pow(mean, 7) + Math.pow(25, 7))));
        double ap1 = (1 + g) * a1;
        double ap2 = (1 + g) * a2;
        double cp1 = Math.sqrt(ap1 * ap1 + b1 * b1);
        double cp2 = Math.sqrt(ap2 * ap2 + b2 * b2);
        double hp1 = hue(ap1, b1);
        double hp2 = hue(ap2, b2);
        double dl = l2 - l1;
        double dc = cp2 - cp1;
        double dh = 0;
        double meanH = hp1 + hp2;
        if (cp1 * cp2 != 0) {
            dh = hp2 - hp1;
            if (dh > 180) {
                dh -= 360;
            } else if (dh < -180) {
                dh += 360;
            }
            if (Math.abs(hp1 - hp2) <= 180) {
                meanH = (hp1 + hp2) / 2;
            } else if (hp1 + hp2 < 360) {
                meanH = (hp1 + hp2 + 360) / 2;
            } else {
                meanH = (hp1 + hp2 - 360) / 2;
            }
        }
        double dhp = 2 * Math.sqrt(cp1 * cp2) * Math.sin(Math.toRadians(dh / 2));
        double meanL = (l1 + l2) / 2;
        double meanC = (cp1 + cp2) / 2;
        double t = 1
                - 0.17 * Math.cos(Math.toRadians(meanH - 30))
                + 0.24 * Math.cos(Math.toRadians(2 * meanH))
                + 0.32 * Math.cos(Math.toRadians(3 * meanH + 6))
                - 0.20 * Math.cos(Math.toRadians(4 * meanH - 63));
        double turn = 30 * Math.exp(-Math.pow((meanH - 275) / 25, 2));
        double rc = 2 * Math.sqrt(Math.pow(meanC, 7) / (Math.pow(meanC, 7) + Math.pow(25, 7)));
        double sl = 1 + 0.015 * Math.pow(meanL - 50, 2) / Math.sqrt(20 + Math.pow(meanL - 50, 2));
        double sc = 1 + 0.045 * meanC;
        double sh = 1 + 0.015 * meanC * t;
        double rt = -Math.sin(Math.toRadians(2 * turn)) * rc;
        return Math.sqrt(
                Math.pow(dl / sl, 2) + Math.pow(dc / sc, 2) + Math.pow(dhp / sh, 2) + rt * (dc / sc) * (dhp / sh));
    }

    private static double hue(double a, double b) {
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** IEC 61966-2-1 and ISO/CIE 11664-4 for one pixel; the matrix is that of the primaries. */
    static void srgbToLab(int packed, double[] matrix, double[] white, double[] lab) {
        double r = linear((packed >> 16 & 255) / 255.0);
        double g = linear((packed >> 8 & 255) / 255.0);
        double b = linear((packed & 255) / 255.0);
        double x = response((matrix[0] * r + matrix[1] * g + matrix[2] * b) / white[0]);
        double y = response((matrix[3] * r + matrix[4] * g + matrix[5] * b) / white[1]);
        double z = response((matrix[6] * r + matrix[7] * g + matrix[8] * b) / white[2]);
        lab[0] = 116 * y - 16;
        lab[1] = 500 * (x - y);
        lab[2] = 200 * (y - z);
    }

    private static double linear(double code) {
        return code <= 0.04045 ? code / 12.92 : Math.pow((code + 0.055) / 1.055, 2.4);
    }

    private static double response(double ratio) {
        return ratio > 216.0 / 24389 ? Math.cbrt(ratio) : (24389.0 / 27 * ratio + 16) / 116;
    }
}
