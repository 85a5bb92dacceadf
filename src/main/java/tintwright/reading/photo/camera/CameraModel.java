package tintwright.reading.photo.camera;

import tintwright.colour.Adaptation;
import tintwright.colour.Matrix3;
import tintwright.colour.RgbSpace;
import tintwright.colour.Viewing;
import tintwright.colour.Xyz;
import tintwright.reading.photo.card.Sample;

/**
 * From what a camera wrote back to the colour that stood before it, as one smooth function of forty unknowns.
 *
 * <p>A phone balances, mixes, bends and mixes again; this undoes it in the reverse order: a mix of the channels
 * near the identity, an offset (flare, black level), a common tone curve (power and a chain of straight pieces in
 * the coded scale) that may differ a little between channels, a gain on each channel, a light that changes over the
 * frame, a 3 by 3 mix, and the square-root products of Finlayson, Mackiewicz and Hurlbert (2015), IEEE Trans. Image
 * Process. 24, 1460-1470, which do not change with exposure. At all-zero unknowns it is plain sRGB. Every mix
 * keeps grey grey: grey belongs to gains and curves.
 */
public final class CameraModel {
    /** Not a figure, nor are those below: where each kind of unknown begins in their list. */
    static final int GAIN = 0;

    static final int LIGHT = 3;
    static final int POWER = 6;
    static final int CHANNEL_POWER = 7;
    static final int OFFSET = 9;
    static final int FIRST_MIX = 12;
    static final int MIX = 18;
    static final int ROOTS = 24;
    static final int BEND = 33;
    /** Where the tone curve's straight pieces meet, on the coded scale; a judgement of ours. */
    static final double[] KNOTS = {0, 0.15, 0.3, 0.5, 0.7, 0.85, 1.0};

    static final int UNKNOWNS = BEND + KNOTS.length;

    /** A judgement of ours: linear light below this bends into an exponential, so that black has a logarithm; a quarter of an 8-bit
     * code in the straight part of sRGB. */
    private static final double FLOOR = 1e-3;

    /** The exponent of sRGB (IEC 61966-2-1), and, in those below, the straight part of L* (CIE 015:2018, clause 8). */
    private static final double CODE = 1 / 2.4;

    private static final double LINEAR_BELOW = 216.0 / 24389.0;
    private static final double SLOPE = 24389.0 / 27.0;

    private final double[][] toXyz;

    /** @param viewing light and observer of the colours that come out */
    public CameraModel(Viewing viewing) {
        Xyz screen = Viewing.D65_2.white();
        double[][] adapt = Adaptation.BRADFORD.matrix(Viewing.D65_2, viewing);
        double[][] primaries = RgbSpace.SRGB.matrixToXyz();
        double[] rowSum = Matrix3.times(primaries, new double[] {1, 1, 1});
        double[] ours = {screen.x(), screen.y(), screen.z()};
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                primaries[i][j] *= ours[i] / rowSum[i];
            }
        }
        toXyz = Matrix3.times(adapt, primaries);
        double[] white = {
            viewing.white().x(), viewing.white().y(), viewing.white().z()
        };
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                toXyz[i][j] /= white[i];
            }
        }
    }

    /** @return the matrix from linear sRGB to X, Y, Z as shares of the white */
    public double[][] matrixToXyz() {
        return new double[][] {toXyz[0].clone(), toXyz[1].clone(), toXyz[2].clone()};
    }

    /**
     * The colour of a sample.
     *
     * @param t      the unknowns
     * @param lab    L*, a*, b* come here
     * @param slopes 3 by UNKNOWNS: the change of L*, a*, b* with each unknown comes here; may be null
     * @param byLight 3 by 3: the change of L*, a*, b* with the sample's linear red, green, blue; may be null
     */
    void colour(double[] t, Sample sample, double[] lab, double[][] slopes, double[][] byLight) {
        double[] c = {
            sample.light().red(), sample.light().green(), sample.light().blue()
        };
        double[] place = {sample.x(), sample.y(), sample.x() * sample.x() + sample.y() * sample.y()};
        double[][] first = mix(t, FIRST_MIX);
        double[] power = {
            1 + t[POWER] + t[CHANNEL_POWER],
            1 + t[POWER] - t[CHANNEL_POWER] - t[CHANNEL_POWER + 1],
            1 + t[POWER] + t[CHANNEL_POWER + 1]
        };
        double lighting = t[LIGHT] * place[0] + t[LIGHT + 1] * place[1] + t[LIGHT + 2] * place[2];
        double[] logLight = new double[3];
        double[] logSlope = new double[3]; // change of log u with the light after the offset
        double[] u = new double[3];
        int[] knot = new int[3];
        double[] part = new double[3];
        for (int k = 0; k < 3; k++) {
            double raw = first[k][0] * c[0] + first[k][1] * c[1] + first[k][2] * c[2] - t[OFFSET + k];
            double light = raw;
            double bend = 1;
            if (raw < FLOOR) {
                double below = Math.max(raw / FLOOR - 1, -5);
                light = FLOOR * Math.exp(below);
                bend = below > -5 ? light / FLOOR : 0;
            }
            double code = Math.pow(Math.min(light, 1.2), CODE);
            int left = 0;
            while (left < KNOTS.length - 2 && code > KNOTS[left + 1]) {
                left++;
            }
            double width = KNOTS[left + 1] - KNOTS[left];
            double along = Math.min((code - KNOTS[left]) / width, 1);
            knot[k] = left;
            part[k] = along;
            logLight[k] = Math.log(light);
            double tone = t[BEND + left] * (1 - along) + t[BEND + left + 1] * along;
            double toneSlope = along >= 1 ? 0 : (t[BEND + left + 1] - t[BEND + left]) / width * CODE * code / light;
            u[k] = Math.exp(Math.min(t[GAIN + k] + power[k] * logLight[k] + tone + lighting, 50));
            logSlope[k] = (power[k] / light + toneSlope) * bend;
        }
        double[] root = {Math.sqrt(u[0] * u[1]), Math.sqrt(u[1] * u[2]), Math.sqrt(u[0] * u[2])};
        double[] q = {root[0] - (u[0] + u[1]) / 2, root[1] - (u[1] + u[2]) / 2, root[2] - (u[0] + u[2]) / 2};
        double[][] second = mix(t, MIX);
        double[] out = Matrix3.times(second, u);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                out[i] += t[ROOTS + 3 * i + j] * q[j];
            }
        }
        double[] xyz = Matrix3.times(toXyz, out);
        double[] f = new double[3];
        double[] df = new double[3];
        for (int i = 0; i < 3; i++) {
            boolean straight = xyz[i] <= LINEAR_BELOW;
            f[i] = straight ? (SLOPE * xyz[i] + 16) / 116 : Math.cbrt(xyz[i]);
            df[i] = straight ? SLOPE / 116 : f[i] / (3 * xyz[i]);
        }
        lab[0] = 116 * f[1] - 16;
        lab[1] = 500 * (f[0] - f[1]);
        lab[2] = 200 * (f[1] - f[2]);
        if (slopes == null && byLight == null) {
            return;
        }

        double[][] byOut = new double[3][3]; // L*, a*, b* by the mixed channels
        for (int j = 0; j < 3; j++) {
            double x = df[0] * toXyz[0][j];
            double y = df[1] * toXyz[1][j];
            double z = df[2] * toXyz[2][j];
            byOut[0][j] = 116 * y;
            byOut[1][j] = 500 * (x - y);
            byOut[2][j] = 200 * (y - z);
        }
        double[][] outByLog = new double[3][3]; // mixed channels by log u
        for (int i = 0; i < 3; i++) {
            int r = ROOTS + 3 * i;
            outByLog[i][0] = second[i][0] * u[0] + t[r] * (root[0] - u[0]) / 2 + t[r + 2] * (root[2] - u[0]) / 2;
            outByLog[i][1] = second[i][1] * u[1] + t[r] * (root[0] - u[1]) / 2 + t[r + 1] * (root[1] - u[1]) / 2;
            outByLog[i][2] = second[i][2] * u[2] + t[r + 1] * (root[1] - u[2]) / 2 + t[r + 2] * (root[2] - u[2]) / 2;
        }
        double[][] byLog = Matrix3.times(byOut, outByLog);
        for (int row = 0; row < 3; row++) {
            double[] l = byLog[row];
            double[] byRaw = {l[0] * logSlope[0], l[1] * logSlope[1], l[2] * logSlope[2]};
            if (byLight != null) {
                for (int j = 0; j < 3; j++) {
                    byLight[row][j] = byRaw[0] * first[0][j] + byRaw[1] * first[1][j] + byRaw[2] * first[2][j];
                }
            }
            if (slopes == null) {
                continue;
            }
            double[] s = slopes[row];
            java.util.Arrays.fill(s, 0);
            double all = l[0] + l[1] + l[2];
            for (int k = 0; k < 3; k++) {
                s[GAIN + k] = l[k];
                s[LIGHT + k] = all * place[k];
                s[OFFSET + k] = -byRaw[k];
                s[BEND + knot[k]] += l[k] * (1 - part[k]);
                s[BEND + knot[k] + 1] += l[k] * part[k];
            }
            double[] lp = {l[0] * logLight[0], l[1] * logLight[1], l[2] * logLight[2]};
            s[POWER] = lp[0] + lp[1] + lp[2];
            s[CHANNEL_POWER] = lp[0] - lp[1];
            s[CHANNEL_POWER + 1] = lp[2] - lp[1];
            mixSlopes(s, FIRST_MIX, byRaw, c);
            mixSlopes(s, MIX, byOut[row], u);
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    s[ROOTS + 3 * i + j] = byOut[row][i] * q[j];
                }
            }
        }
    }

    /** A mix of channels whose rows sum to 1, from its six free numbers. */
    private static double[][] mix(double[] t, int at) {
        return new double[][] {
            {1 - t[at] - t[at + 1], t[at], t[at + 1]},
            {t[at + 2], 1 - t[at + 2] - t[at + 3], t[at + 3]},
            {t[at + 4], t[at + 5], 1 - t[at + 4] - t[at + 5]}
        };
    }

    private static void mixSlopes(double[] s, int at, double[] by, double[] v) {
        s[at] = by[0] * (v[1] - v[0]);
        s[at + 1] = by[0] * (v[2] - v[0]);
        s[at + 2] = by[1] * (v[0] - v[1]);
        s[at + 3] = by[1] * (v[2] - v[1]);
        s[at + 4] = by[2] * (v[0] - v[2]);
        s[at + 5] = by[2] * (v[1] - v[2]);
    }
}
