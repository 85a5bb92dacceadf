package tintwright.colour;

/**
 * A colour in CIELAB, with the light and observer it is stated for.
 *
 * <p>Source: ISO/CIE 11664-4 (the 1976 L*a*b* space).
 *
 * @param lightness L*, 0 (black) to 100 (the white)
 * @param a         red (+) to green (-), no unit, about -130 to 130
 * @param b         yellow (+) to blue (-), no unit, about -130 to 130
 * @param viewing   light and observer
 */
public record Lab(double lightness, double a, double b, Viewing viewing) {
    /** Below this ratio to the white the cube root becomes a straight line: (6/29)^3. */
    private static final double LINEAR_BELOW = 216.0 / 24389.0;
    /** Slope of that straight line: (29/3)^3. */
    private static final double SLOPE = 24389.0 / 27.0;

    public Lab {
        if (!Double.isFinite(lightness + a + b)) {
            throw new IllegalArgumentException("L*, a*, b* must be finite, were " + lightness + ", " + a + ", " + b);
        }
        if (viewing == null) {
            throw new IllegalArgumentException("L*, a*, b* need the light and observer they are stated for");
        }
    }

    public static Lab of(Xyz colour) {
        Xyz white = colour.viewing().white();
        double x = response(colour.x() / white.x());
        double y = response(colour.y() / white.y());
        double z = response(colour.z() / white.z());
        return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z), colour.viewing());
    }

    /** @return the colour of a reflectance on any grid under a light */
    public static Lab of(Spectrum reflectance, Viewing viewing) {
        return of(Xyz.of(reflectance, viewing));
    }

    /** @return the tristimulus values of this colour */
    public Xyz toXyz() {
        Xyz white = viewing.white();
        double y = (lightness + 16) / 116;
        return new Xyz(white.x() * ratio(y + a / 500), white.y() * ratio(y), white.z() * ratio(y - b / 200), viewing);
    }

    /** @return L*, a*, b* */
    public double[] axes() {
        return new double[] {lightness, a, b};
    }

    /** @return C*, the distance from grey */
    public double chroma() {
        return Math.hypot(a, b);
    }

    /** @return h, degrees from red (0) through yellow (90), green (180), blue (270), 0 up to 360; 0 for grey */
    public double hueDegrees() {
        double degrees = Math.toDegrees(Math.atan2(b, a));
        double turned = degrees < 0 ? degrees + 360 : degrees;
        return turned < 360 ? turned : 0;
    }

    private static double response(double ratio) {
        return ratio > LINEAR_BELOW ? Math.cbrt(ratio) : (SLOPE * ratio + 16) / 116;
    }

    private static double ratio(double response) {
        double cube = response * response * response;
        return cube > LINEAR_BELOW ? cube : (116 * response - 16) / SLOPE;
    }
}
