package tintwright.colour;

/**
 * The CIEDE2000 colour difference.
 *
 * <p>Source: ISO/CIE 11664-6; Sharma, Wu, Dalal (2005), whose notes settle the hue steps.
 * About 1 is just seen edge to edge; range 0 to about 120.
 */
public final class Ciede2000 {
    /** The chroma about which the correction of redness fades and the rotation sets in. */
    private static final double MIDDLE_CHROMA = 25;

    private static final double COS_30 = cos(30);
    private static final double SIN_30 = cos(60);
    private static final double COS_6 = cos(6);
    private static final double SIN_6 = cos(84);
    private static final double COS_63 = cos(63);
    private static final double SIN_63 = cos(27);
    /** From hue 0 to this one, 128 degrees short of the blue at 275, the rotation is below 1e-10 of a degree. */
    private static final double COS_FAR_FROM_BLUE = cos(146.5);
    /** Length of the sum of two unit vectors below which their middle is not to be told from plain numbers. */
    private static final double NEARLY_OPPOSITE = 1e-3;

    private Ciede2000() {}

    /**
     * A difference and where it comes from, each part weighted as the eye weighs it.
     *
     * @param total     CIEDE2000
     * @param lightness second minus first in lightness, over its tolerance
     * @param chroma    second minus first in chroma, over its tolerance
     * @param hue       second minus first in hue, over its tolerance; positive is anticlockwise
     * @param rotation  what the rotation term adds to the square of the total
     */
    public record Parts(double total, double lightness, double chroma, double hue, double rotation) {}

    /** @return CIEDE2000 with unit weights */
    public static double between(Lab first, Lab second) {
        return parts(first, second).total();
    }

    /** @return CIEDE2000 with unit weights, with its parts */
    public static Parts parts(Lab first, Lab second) {
        return parts(first, second, 1, 1, 1);
    }

    /**
     * @param kL weight of lightness, above 0; 1 in the reference conditions
     * @param kC weight of chroma, above 0; 1 in the reference conditions
     * @param kH weight of hue, above 0; 1 in the reference conditions
     */
    public static Parts parts(Lab first, Lab second, double kL, double kC, double kH) {
        first.viewing().mustEqual(second.viewing());
        if (!(kL > 0 && kC > 0 && kH > 0)) {
            throw new IllegalArgumentException("kL, kC, kH must be above 0, were " + kL + ", " + kC + ", " + kH);
        }
        double meanChroma = (first.chroma() + second.chroma()) / 2;
        double g = 0.5 * (1 - Math.sqrt(seventh(meanChroma)));
        double a1 = first.a() * (1 + g);
        double a2 = second.a() * (1 + g);
        double c1 = Math.hypot(a1, first.b());
        double c2 = Math.hypot(a2, second.b());
        double h1 = hue(a1, first.b());
        double h2 = hue(a2, second.b());

        double dL = second.lightness() - first.lightness();
        double dC = c2 - c1;
        double dh = hueStep(h1, h2);
        double dH = 2 * Math.sqrt(c1) * Math.sqrt(c2) * Math.sin(Math.toRadians(dh / 2));

        double meanL = (first.lightness() + second.lightness()) / 2;
        double meanC = (c1 + c2) / 2;
        double meanH = meanHue(h1, h2);
        double fromMiddle = (meanL - 50) * (meanL - 50);
        double sL = 1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle);
        double sC = 1 + 0.045 * meanC;
        double t = 1
                - 0.17 * cos(meanH - 30)
                + 0.24 * cos(2 * meanH)
                + 0.32 * cos(3 * meanH + 6)
                - 0.20 * cos(4 * meanH - 63);
        double sH = 1 + 0.015 * meanC * t;
        double fromBlue = (meanH - 275) / 25;
        double turn = 30 * Math.exp(-fromBlue * fromBlue);
        double rT = -Math.sin(Math.toRadians(2 * turn)) * 2 * Math.sqrt(seventh(meanC));

        double l = dL / (kL * sL);
        double c = dC / (kC * sC);
        double h = dH / (kH * sH);
        double rotation = rT * c * h;
        double total = Math.sqrt(Math.max(0, l * l + c * c + h * h + rotation));
        return new Parts(total, l, c, h, rotation);
    }

    /**
     * The total of plain numbers, all under one light and observer: they carry no such mark, so the caller must. The
     * same as {@link #between(Lab, Lab)} to 1e-9, in half the time: where pairs come in hundreds.
     *
     * <p>Hues stay unit vectors: their mean is the sum's direction, multiples of it follow from the double and triple
     * angle, and only where the rotation is felt at all is an angle made.
     */
    public static double between(double l1, double a1, double b1, double l2, double a2, double b2) {
        double meanChroma = (Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2;
        double stretch = 1.5 - 0.5 * Math.sqrt(seventh(meanChroma));
        double red1 = a1 * stretch;
        double red2 = a2 * stretch;
        double c1 = Math.sqrt(red1 * red1 + b1 * b1);
        double c2 = Math.sqrt(red2 * red2 + b2 * b2);
        double towardsRed = red1 * c2 + red2 * c1;
        double towardsYellow = b1 * c2 + b2 * c1;
        double sum = Math.sqrt(towardsRed * towardsRed + towardsYellow * towardsYellow);
        if (!(sum > NEARLY_OPPOSITE * c1 * c2)) {
            // A grey has no hue, and opposite hues have no mean: the long form knows what then holds.
            return between(new Lab(l1, a1, b1, Viewing.D65_10), new Lab(l2, a2, b2, Viewing.D65_10));
        }
        double cos = towardsRed / sum;
        double sin = towardsYellow / sum;
        double dH = 2 * (red1 * b2 - red2 * b1) / sum * Math.sqrt(c1 * c2);
        double meanC = (c1 + c2) / 2;
        double meanL = (l1 + l2) / 2;
        double fromMiddle = (meanL - 50) * (meanL - 50);
        double cos2 = 2 * cos * cos - 1;
        double sin2 = 2 * sin * cos;
        double cos3 = cos * (4 * cos * cos - 3);
        double sin3 = sin * (3 - 4 * sin * sin);
        double t = 1
                - 0.17 * (cos * COS_30 + sin * SIN_30)
                + 0.24 * cos2
                + 0.32 * (cos3 * COS_6 - sin3 * SIN_6)
                - 0.20 * ((2 * cos2 * cos2 - 1) * COS_63 + 2 * sin2 * cos2 * SIN_63);
        double l = (l2 - l1) / (1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle));
        double c = (c2 - c1) / (1 + 0.045 * meanC);
        double h = dH / (1 + 0.015 * meanC * t);
        double rotation = 0;
        if (!(sin >= 0 && cos > COS_FAR_FROM_BLUE)) {
            double fromBlue = (turned(Math.toDegrees(Math.atan2(sin, cos))) - 275) / 25;
            double turn = 30 * Math.exp(-fromBlue * fromBlue);
            rotation = -Math.sin(Math.toRadians(2 * turn)) * 2 * Math.sqrt(seventh(meanC)) * c * h;
        }
        return Math.sqrt(Math.max(0, l * l + c * c + h * h + rotation));
    }

    /** c^7 / (c^7 + 25^7), written so that no chroma overflows. */
    private static double seventh(double chroma) {
        double over = MIDDLE_CHROMA / chroma;
        return 1 / (1 + over * over * over * over * over * over * over);
    }

    /** Degrees from -180 to 180. */
    private static double hue(double a, double b) {
        // StrictMath: pair 14 of the published table lies on the 180 degree step, where one bit decides.
        return Math.toDegrees(StrictMath.atan2(b, a));
    }

    private static double turned(double hue) {
        return hue < 0 ? hue + 360 : hue;
    }

    /** A grey has no hue; any step will do for it, since dH carries its chroma, 0, and so does all that dH weighs. */
    private static double hueStep(double h1, double h2) {
        double step = turned(h2) - turned(h1);
        return step > 180 ? step - 360 : step < -180 ? step + 360 : step;
    }

    private static double meanHue(double h1, double h2) {
        if (Math.abs(turned(h1) - turned(h2)) <= 180) {
            return (turned(h1) + turned(h2)) / 2;
        }
        // One on each side of red: the sum of the signed angles is exact where the two mirror each other, so that
        // their mean is 0 degrees and not, by a last bit, 360.
        return turned((h1 + h2) / 2);
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
