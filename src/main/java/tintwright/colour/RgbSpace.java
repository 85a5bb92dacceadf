package tintwright.colour;

/**
 * Red, green and blue of a screen: primaries with a D65 white and the sRGB transfer curve.
 *
 * <p>Source: IEC 61966-2-1 (sRGB, with the exact curve through 0.04045); SMPTE EG 432-1 primaries with the same
 * curve and white for Display P3. The matrices follow from the primaries' chromaticities.
 */
public enum RgbSpace {
    SRGB(0.64, 0.33, 0.30, 0.60, 0.15, 0.06),
    DISPLAY_P3(0.680, 0.320, 0.265, 0.690, 0.150, 0.060);

    /** A code this far outside 0 to 1 still rounds to the nearest of 255 steps. */
    private static final double HALF_A_STEP = 0.5 / 255;

    private static final double WHITE_X = 0.3127;
    private static final double WHITE_Y = 0.3290;

    private final double[][] toXyz;
    private final double[][] fromXyz;

    RgbSpace(double rx, double ry, double gx, double gy, double bx, double by) {
        double[][] primaries = {
            {rx / ry, gx / gy, bx / by}, {1, 1, 1}, {(1 - rx - ry) / ry, (1 - gx - gy) / gy, (1 - bx - by) / by}
        };
        double[] power = Matrix3.times(Matrix3.inverse(primaries), white());
        toXyz = new double[3][3];
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                toXyz[row][column] = primaries[row][column] * power[column];
            }
        }
        fromXyz = Matrix3.inverse(toXyz);
    }

    private static double[] white() {
        return new double[] {WHITE_X / WHITE_Y, 1, (1 - WHITE_X - WHITE_Y) / WHITE_Y};
    }

    /**
     * A screen colour.
     *
     * @param red     coded red, 0 to 1 after clipping
     * @param green   coded green, 0 to 1 after clipping
     * @param blue    coded blue, 0 to 1 after clipping
     * @param inGamut false when the screen cannot show the colour and the nearest codes stand in for it
     */
    public record Code(double red, double green, double blue, boolean inGamut) {}

    /** @return the codes that show this colour to an eye adapted to the screen's white (Bradford) */
    public Code encode(Lab colour) {
        Xyz adapted = toScreenWhite(colour.toXyz());
        double[] linear =
                Matrix3.times(fromXyz, new double[] {adapted.x() / 100, adapted.y() / 100, adapted.z() / 100});
        boolean inGamut = true;
        double[] code = new double[3];
        for (int i = 0; i < 3; i++) {
            double c = toCode(linear[i]);
            inGamut &= c >= -HALF_A_STEP && c <= 1 + HALF_A_STEP;
            code[i] = Math.max(0, Math.min(1, c));
        }
        return new Code(code[0], code[1], code[2], inGamut);
    }

    /** @return the colour of these codes (0 to 1), for D65 and the 2 degree observer */
    public Lab decode(double red, double green, double blue) {
        double[] xyz = Matrix3.times(toXyz, new double[] {toLinear(red), toLinear(green), toLinear(blue)});
        double[] standard = white();
        Xyz ours = Viewing.D65_2.white();
        // The standard's white is rounded to four digits; its grey must still be our grey.
        return Lab.of(
                new Xyz(xyz[0] / standard[0] * ours.x(), 100 * xyz[1], xyz[2] / standard[2] * ours.z(), Viewing.D65_2));
    }

    private Xyz toScreenWhite(Xyz colour) {
        Xyz adapted = Adaptation.BRADFORD.adapt(colour, Viewing.D65_2);
        double[] standard = white();
        Xyz ours = Viewing.D65_2.white();
        return new Xyz(
                adapted.x() / ours.x() * standard[0] * 100,
                adapted.y(),
                adapted.z() / ours.z() * standard[2] * 100,
                Viewing.D65_2);
    }

    /** @return a copy of the matrix from linear red, green, blue (0 to 1) to X, Y, Z (white Y = 1) */
    public double[][] matrixToXyz() {
        return new double[][] {toXyz[0].clone(), toXyz[1].clone(), toXyz[2].clone()};
    }

    /** @return linear light for a code; odd about 0, so that codes outside 0 to 1 make sense */
    public static double toLinear(double code) {
        double size = Math.abs(code);
        return Math.copySign(size <= 0.04045 ? size / 12.92 : Math.pow((size + 0.055) / 1.055, 2.4), code);
    }

    /** @return code for linear light; odd about 0 */
    public static double toCode(double linear) {
        double size = Math.abs(linear);
        return Math.copySign(size <= 0.0031308 ? 12.92 * size : 1.055 * Math.pow(size, 1 / 2.4) - 0.055, linear);
    }
}
