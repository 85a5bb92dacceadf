package tintwright.reading.photo.file;

import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import tintwright.colour.Adaptation;
import tintwright.colour.Matrix3;
import tintwright.colour.RgbSpace;

/**
 * What a photo's red, green and blue codes mean: a curve for each channel and the primaries.
 *
 * <p>Source: ICC.1:2022, the matrix and tone-curve profiles (tags rXYZ to bTRC; types curveType and
 * parametricCurveType). Colours are carried to linear sRGB without clipping.
 */
public final class RgbProfile {
    /** The white of the profile connection space; ICC.1:2022, 7.2.16. */
    private static final double[] D50 = {0.9642, 1.0, 0.8249};

    private static final int[] COLORANT = {
        ICC_Profile.icSigRedColorantTag, ICC_Profile.icSigGreenColorantTag, ICC_Profile.icSigBlueColorantTag
    };
    private static final int[] CURVE = {
        ICC_Profile.icSigRedTRCTag, ICC_Profile.icSigGreenTRCTag, ICC_Profile.icSigBlueTRCTag
    };
    /** The types "curv" and "para"; ICC.1:2022, 10.6 and 10.18. */
    private static final int TABULATED = 0x63757276;

    /** The signature 'para', ICC.1:2022, 10.18. */
    private static final int PARAMETRIC = 0x70617261;

    public static final RgbProfile SRGB = new RgbProfile("sRGB", curve(RgbSpace::toLinear), identity());
    /** Codes in proportion to light. */
    public static final RgbProfile LINEAR = new RgbProfile("linear codes", curve(c -> c), identity());

    private final String name;
    private final DoubleUnaryOperator[] curves;
    private final double[][] toSrgb;

    private RgbProfile(String name, DoubleUnaryOperator[] curves, double[][] toSrgb) {
        this.name = name;
        this.curves = curves;
        this.toSrgb = toSrgb;
    }

    private static DoubleUnaryOperator[] curve(DoubleUnaryOperator one) {
        return new DoubleUnaryOperator[] {one, one, one};
    }

    private static double[][] identity() {
        return new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    }

    /** @param exponent light = code to this power, as a PNG file states it by its inverse */
    static RgbProfile power(double exponent) {
        return new RgbProfile(
                "gamma " + Math.round(exponent * 100) / 100.0, curve(c -> Math.pow(c, exponent)), identity());
    }

    /** @return the profile; empty when it is damaged or of a kind that is not understood */
    static Optional<RgbProfile> parse(byte[] icc) {
        try {
            ICC_Profile profile = ICC_Profile.getInstance(icc);
            if (profile.getColorSpaceType() != ColorSpace.TYPE_RGB || profile.getPCSType() != ColorSpace.TYPE_XYZ) {
                return Optional.empty();
            }
            double[][] primaries = new double[3][3];
            DoubleUnaryOperator[] curves = new DoubleUnaryOperator[3];
            for (int k = 0; k < 3; k++) {
                byte[] xyz = profile.getData(COLORANT[k]);
                byte[] trc = profile.getData(CURVE[k]);
                if (xyz == null || trc == null) {
                    return Optional.empty();
                }
                for (int axis = 0; axis < 3; axis++) {
                    primaries[axis][k] = fixed(ByteBuffer.wrap(xyz), 8 + 4 * axis);
                }
                curves[k] = curve(ByteBuffer.wrap(trc));
                if (curves[k] == null) {
                    return Optional.empty();
                }
            }
            double white = primaries[1][0] + primaries[1][1] + primaries[1][2];
            if (!(Math.abs(white - 1) < 0.05)) {
                return Optional.empty();
            }
            double[][] toSrgb = Matrix3.times(Matrix3.inverse(srgbToConnection()), primaries);
            return Optional.of(new RgbProfile(nameOf(toSrgb), curves, toSrgb));
        } catch (IndexOutOfBoundsException | IllegalArgumentException | CMMException e) {
            return Optional.empty();
        }
    }

    private static String nameOf(double[][] toSrgb) {
        double off = 0;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                off = Math.max(off, Math.abs(toSrgb[i][j] - (i == j ? 1 : 0)));
            }
        }
        return off < 0.01 ? "sRGB primaries, by its profile" : "its own primaries, by its profile";
    }

    private static double[][] srgbToConnection() {
        double[][] m = RgbSpace.SRGB.matrixToXyz();
        double[] white = Matrix3.times(m, new double[] {1, 1, 1});
        return Matrix3.times(Adaptation.BRADFORD.matrix(white, D50), m);
    }

    private static double fixed(ByteBuffer in, int at) {
        return in.getInt(at) / 65536.0;
    }

    private static DoubleUnaryOperator curve(ByteBuffer in) {
        if (in.getInt(0) == TABULATED) {
            int count = in.getInt(8);
            if (count == 0) {
                return c -> c;
            }
            if (count == 1) {
                double gamma = (in.getShort(12) & 0xFFFF) / 256.0;
                return c -> Math.pow(c, gamma);
            }
            if (count < 0 || count > 65536) {
                return null;
            }
            double[] table = new double[count];
            for (int i = 0; i < count; i++) {
                table[i] = (in.getShort(12 + 2 * i) & 0xFFFF) / 65535.0;
            }
            return c -> between(table, c);
        }
        if (in.getInt(0) == PARAMETRIC) {
            int kind = in.getShort(8);
            int[] lengths = {1, 3, 4, 5, 7};
            if (kind < 0 || kind > 4) {
                return null;
            }
            double[] p = new double[7];
            for (int i = 0; i < lengths[kind]; i++) {
                p[i] = fixed(in, 12 + 4 * i);
            }
            return parametric(kind, p);
        }
        return null;
    }

    private static double between(double[] table, double code) {
        double at = Math.max(0, Math.min(1, code)) * (table.length - 1);
        int left = Math.min((int) at, table.length - 2);
        return table[left] + (at - left) * (table[left + 1] - table[left]);
    }

    /** ICC.1:2022, table 68; p holds g, a, b, c, d, e, f. */
    private static DoubleUnaryOperator parametric(int kind, double[] p) {
        return switch (kind) {
            case 0 -> x -> Math.pow(x, p[0]);
            case 1 -> x -> x >= -p[2] / p[1] ? Math.pow(p[1] * x + p[2], p[0]) : 0;
            case 2 -> x -> x >= -p[2] / p[1] ? Math.pow(p[1] * x + p[2], p[0]) + p[3] : p[3];
            case 3 -> x -> x >= p[4] ? Math.pow(p[1] * x + p[2], p[0]) : p[3] * x;
            default -> x -> x >= p[4] ? Math.pow(p[1] * x + p[2], p[0]) + p[5] : p[3] * x + p[6];
        };
    }

    /** @return light for each code of a channel, 0 to {@code largest} */
    public float[] table(int channel, int largest) {
        float[] table = new float[largest + 1];
        for (int code = 0; code <= largest; code++) {
            table[code] = (float) curves[channel].applyAsDouble(code / (double) largest);
        }
        return table;
    }

    /** @return linear sRGB of linear light on this profile's primaries */
    public Rgb toSrgb(double[] light) {
        return Rgb.of(Matrix3.times(toSrgb, light));
    }

    /** @return standard deviations carried over, the channels independent */
    public Rgb noiseToSrgb(double[] sigma) {
        double[] out = new double[3];
        for (int i = 0; i < 3; i++) {
            double sum = 0;
            for (int j = 0; j < 3; j++) {
                sum += toSrgb[i][j] * toSrgb[i][j] * sigma[j] * sigma[j];
            }
            out[i] = Math.sqrt(sum);
        }
        return Rgb.of(out);
    }

    String name() {
        return name;
    }
}
