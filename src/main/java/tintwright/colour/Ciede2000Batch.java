package tintwright.colour;

import java.util.Arrays;

/**
 * CIEDE2000 of many pairs on plain arrays, nothing allocated after construction.
 *
 * <p>The same answers as {@link Ciede2000} to 1e-9, with unit weights (where the mean hue lies exactly on
 * red the formula has a step of its own, below 5e-4, and the last bit decides). All colours of a call belong to one light and
 * observer: the caller's arrays carry no such mark, so the caller must. Not for two threads at once.
 *
 * <p>How: no angle is ever computed. The mean hue is the direction of the sum of the two unit vectors; the weight of
 * hue comes from its multiple-angle identities; the bell around 275 degrees is a cosine series of the angle to it.
 * What is left are sums, products, quotients and square roots in short loops without branches, which the compiler
 * turns into vector instructions. The few pairs where a direction is not defined go the readable way.
 */
public final class Ciede2000Batch {
    private static final int BLOCK = 256;
    private static final double CHROMA_25_TO_7 = 6103515625.0;
    /** The weight of hue as a sum of cosines and sines of the mean hue and its multiples. */
    private static final double C1 = -0.17 * cos(30);

    private static final double S1 = -0.17 * sin(30);
    private static final double C2 = 0.24;
    private static final double C3 = 0.32 * cos(6);
    private static final double S3 = -0.32 * sin(6);
    private static final double C4 = -0.20 * cos(63);
    private static final double S4 = -0.20 * sin(63);
    private static final double COS_275 = cos(275);
    private static final double SIN_275 = sin(275);
    /** Below this share of its greatest length the sum of the two hue vectors no longer gives a direction. */
    private static final double OPPOSITE = 1e-8;

    private static final double SHORTEST = 1e-40;
    private static final double LONGEST = 1e60;
    /** Degree of the bell as a polynomial of the cosine; what is left out sums to less than 1e-12. */
    private static final int DEGREE = 25;

    private static final double[] BELL = bell();
    /** Twice the greatest turn, 60 degrees. */
    private static final double TURN = Math.toRadians(60);

    /** The sine's series: alternating one over 3, 5, 7 ... factorial. */
    private static final double SINE_1 = -1.0 / 6;

    private static final double SINE_2 = -SINE_1 / 20;
    private static final double SINE_3 = -SINE_2 / 42;
    private static final double SINE_4 = -SINE_3 / 72;
    private static final double SINE_5 = -SINE_4 / 110;
    private static final double SINE_6 = -SINE_5 / 156;
    private static final double SINE_7 = -SINE_6 / 210;

    private final double[] p = new double[BLOCK];
    private final double[] q = new double[BLOCK];
    private final double[] c1 = new double[BLOCK];
    private final double[] c2 = new double[BLOCK];
    private final double[] hue = new double[BLOCK];
    private final double[] chroma = new double[BLOCK];
    private final double[] mean = new double[BLOCK];
    private final double[] cosHue = new double[BLOCK];
    private final double[] sinHue = new double[BLOCK];
    private final double[] sound = new double[BLOCK];
    private final double[] x = new double[BLOCK];
    private final double[] y = new double[BLOCK];
    private final double[] z = new double[BLOCK];
    private final double[] u = new double[BLOCK];
    private final double[] v = new double[BLOCK];
    private final double[] l1 = new double[BLOCK];
    private final double[] a1 = new double[BLOCK];
    private final double[] b1 = new double[BLOCK];
    private final double[] l2 = new double[BLOCK];
    private final double[] a2 = new double[BLOCK];
    private final double[] b2 = new double[BLOCK];

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    /**
     * Coefficients of exp(-(angle / 25 degrees)^2) as a polynomial of the angle's cosine: its cosine series by sums
     * over the circle, then each cos(n angle) written out by Chebyshev's recurrence.
     */
    private static double[] bell() {
        int points = 720;
        double[] power = new double[DEGREE + 1];
        double[] before = new double[DEGREE + 1];
        double[] now = new double[DEGREE + 1];
        now[0] = 1;
        for (int n = 0; n <= DEGREE; n++) {
            double sum = 0;
            for (int k = -points / 2; k < points / 2; k++) {
                double degrees = 360.0 * k / points;
                double x = degrees / 25;
                sum += Math.exp(-x * x) * cos(n * degrees);
            }
            double[] next = new double[DEGREE + 1];
            for (int k = 0; k <= n; k++) {
                power[k] += (n == 0 ? 1 : 2) * sum / points * now[k];
            }
            for (int k = 0; k < DEGREE; k++) {
                next[k + 1] = (n == 0 ? 1 : 2) * now[k];
            }
            for (int k = 0; k <= DEGREE; k++) {
                next[k] -= before[k];
            }
            before = now;
            now = next;
        }
        return power;
    }

    /**
     * @param l1    L* of the first colours; {@code a1}, {@code b1} likewise
     * @param l2    L* of the second colours; {@code a2}, {@code b2} likewise
     * @param out   filled with the differences from index {@code from} on
     * @param from  first index in all the arrays
     * @param count how many pairs
     */
    public void between(
            double[] l1,
            double[] a1,
            double[] b1,
            double[] l2,
            double[] a2,
            double[] b2,
            double[] out,
            int from,
            int count) {
        for (int at = from; at < from + count; at += BLOCK) {
            int n = Math.min(BLOCK, from + count - at);
            System.arraycopy(l1, at, this.l1, 0, n);
            System.arraycopy(a1, at, this.a1, 0, n);
            System.arraycopy(b1, at, this.b1, 0, n);
            second(l2, a2, b2, at, n);
            block(out, at, n);
        }
    }

    /** One colour against many: {@code out[i]} is the difference between the target and colour number i. */
    public void toTarget(
            double l, double a, double b, double[] l2, double[] a2, double[] b2, double[] out, int from, int count) {
        Arrays.fill(l1, l);
        Arrays.fill(a1, a);
        Arrays.fill(b1, b);
        for (int at = from; at < from + count; at += BLOCK) {
            int n = Math.min(BLOCK, from + count - at);
            second(l2, a2, b2, at, n);
            block(out, at, n);
        }
    }

    private void second(double[] l, double[] a, double[] b, int at, int n) {
        System.arraycopy(l, at, l2, 0, n);
        System.arraycopy(a, at, a2, 0, n);
        System.arraycopy(b, at, b2, 0, n);
    }

    /** One pair. */
    public static double between(double l1, double a1, double b1, double l2, double a2, double b2) {
        return Ciede2000.total(l1, a1, b1, l2, a2, b2);
    }

    /** The pairs stand in the blocks' own arrays, so that every loop runs from 0: only then is each one vectorised. */
    private void block(double[] out, int at, int n) {
        correctRedness(n);
        directions(n);
        hueStep(n);
        tolerances(n);
        bell(n);
        rotation(n);
        total(n);
        for (int i = 0; i < n; i++) {
            if (!(sound[i] > 0 && sound[i] < LONGEST)) {
                z[i] = between(l1[i], a1[i], b1[i], l2[i], a2[i], b2[i]);
            }
        }
        System.arraycopy(z, 0, out, at, n);
    }

    /** a' of both colours, in p and q. */
    private void correctRedness(int n) {
        double[] a1 = this.a1;
        double[] b1 = this.b1;
        double[] a2 = this.a2;
        double[] b2 = this.b2;
        double[] p = this.p;
        double[] q = this.q;
        double[] c1 = this.c1;
        double[] c2 = this.c2;
        double[] u = this.u;
        double[] v = this.v;
        length(a1, b1, n, c1);
        length(a2, b2, n, c2);
        for (int i = 0; i < n; i++) {
            u[i] = 0.5 * (c1[i] + c2[i]);
        }
        seventh(u, n, v);
        for (int i = 0; i < n; i++) {
            p[i] = a1[i] * (1.5 - 0.5 * v[i]);
        }
        for (int i = 0; i < n; i++) {
            q[i] = a2[i] * (1.5 - 0.5 * v[i]);
        }
    }

    private static void length(double[] x, double[] y, int n, double[] out) {
        for (int i = 0; i < n; i++) {
            out[i] = Math.sqrt(x[i] * x[i] + y[i] * y[i]);
        }
    }

    /** The root of c^7 / (c^7 + 25^7). */
    private static void seventh(double[] chroma, int n, double[] out) {
        for (int i = 0; i < n; i++) {
            double c = chroma[i];
            double squared = c * c;
            double power = squared * squared * squared * c;
            out[i] = Math.sqrt(power / (power + CHROMA_25_TO_7));
        }
    }

    /** The direction of the mean hue, and where it is one; v becomes one over the length of the summed vectors. */
    private void directions(int n) {
        double[] b1 = this.b1;
        double[] b2 = this.b2;
        double[] p = this.p;
        double[] q = this.q;
        double[] c1 = this.c1;
        double[] c2 = this.c2;
        double[] cosHue = this.cosHue;
        double[] sinHue = this.sinHue;
        double[] sound = this.sound;
        double[] x = this.x;
        double[] y = this.y;
        double[] u = this.u;
        double[] v = this.v;
        length(p, b1, n, c1);
        length(q, b2, n, c2);
        for (int i = 0; i < n; i++) {
            x[i] = p[i] * c2[i] + q[i] * c1[i];
        }
        for (int i = 0; i < n; i++) {
            y[i] = b1[i] * c2[i] + b2[i] * c1[i];
        }
        for (int i = 0; i < n; i++) {
            u[i] = x[i] * x[i] + y[i] * y[i];
        }
        for (int i = 0; i < n; i++) {
            double product = c1[i] * c2[i];
            sound[i] = u[i] - OPPOSITE * product * product - SHORTEST;
        }
        for (int i = 0; i < n; i++) {
            v[i] = 1 / Math.sqrt(u[i]);
        }
        for (int i = 0; i < n; i++) {
            cosHue[i] = x[i] * v[i];
        }
        for (int i = 0; i < n; i++) {
            // Plus zero: a mean hue of exactly 0 degrees must not carry a minus sign.
            sinHue[i] = y[i] * v[i] + 0.0;
        }
    }

    /** The step of hue in two factors, x and y, and the mean chroma. */
    private void hueStep(int n) {
        double[] b1 = this.b1;
        double[] b2 = this.b2;
        double[] p = this.p;
        double[] q = this.q;
        double[] c1 = this.c1;
        double[] c2 = this.c2;
        double[] mean = this.mean;
        double[] x = this.x;
        double[] y = this.y;
        double[] v = this.v;
        for (int i = 0; i < n; i++) {
            double cross = p[i] * b2[i] - b1[i] * q[i];
            x[i] = 2 * cross * v[i];
        }
        for (int i = 0; i < n; i++) {
            y[i] = Math.sqrt(c1[i] * c2[i]);
        }
        for (int i = 0; i < n; i++) {
            mean[i] = 0.5 * (c1[i] + c2[i]);
        }
    }

    /** Steps of chroma and hue over their tolerances. */
    private void tolerances(int n) {
        double[] c1 = this.c1;
        double[] c2 = this.c2;
        double[] hue = this.hue;
        double[] chroma = this.chroma;
        double[] mean = this.mean;
        double[] cosHue = this.cosHue;
        double[] sinHue = this.sinHue;
        double[] x = this.x;
        double[] y = this.y;
        double[] u = this.u;
        double[] v = this.v;
        for (int i = 0; i < n; i++) {
            double c = cosHue[i];
            double even = (((8 * C4 * c + 4 * C3) * c + 2 * C2 - 8 * C4) * c + C1 - 3 * C3) * c + 1 - C2 + C4;
            double odd = ((8 * S4 * c + 4 * S3) * c - 4 * S4) * c + S1 - S3;
            u[i] = 1 + 0.015 * mean[i] * (even + sinHue[i] * odd);
        }
        for (int i = 0; i < n; i++) {
            v[i] = 1 / (u[i] * (1 + 0.045 * mean[i]));
        }
        for (int i = 0; i < n; i++) {
            hue[i] = x[i] * y[i] * v[i] * (1 + 0.045 * mean[i]);
        }
        for (int i = 0; i < n; i++) {
            chroma[i] = (c2[i] - c1[i]) * v[i] * u[i];
        }
    }

    /** u becomes the bell around 275 degrees. */
    private void bell(int n) {
        double[] p = this.p;
        double[] cosHue = this.cosHue;
        double[] sinHue = this.sinHue;
        double[] x = this.x;
        double[] z = this.z;
        double[] y = this.y;
        double[] u = this.u;
        for (int i = 0; i < n; i++) {
            p[i] = cosHue[i] * COS_275 + sinHue[i] * SIN_275;
        }
        polynomial(n, p, 13, x);
        polynomial(n, p, 0, y);
        for (int i = 0; i < n; i++) {
            double t = p[i];
            double t2 = t * t;
            double t4 = t2 * t2;
            z[i] = x[i] * t4 * t4 * t4 * t + y[i];
        }
        for (int i = 0; i < n; i++) {
            // The formula measures from 0 to 360 degrees: red to yellow is never near 275 from the other side.
            // Zero where cosine and sine are both positive or zero, else above zero.
            double outside = Math.abs(cosHue[i]) - cosHue[i] + Math.abs(sinHue[i]) - sinHue[i];
            u[i] = z[i] * outside / (outside + SHORTEST);
        }
    }

    /** Thirteen terms of the bell, from one power on. */
    private static void polynomial(int n, double[] cosine, int from, double[] out) {
        double k0 = BELL[from];
        double k1 = BELL[from + 1];
        double k2 = BELL[from + 2];
        double k3 = BELL[from + 3];
        double k4 = BELL[from + 4];
        double k5 = BELL[from + 5];
        double k6 = BELL[from + 6];
        double k7 = BELL[from + 7];
        double k8 = BELL[from + 8];
        double k9 = BELL[from + 9];
        double k10 = BELL[from + 10];
        double k11 = BELL[from + 11];
        double k12 = BELL[from + 12];
        for (int i = 0; i < n; i++) {
            double t = cosine[i];
            out[i] =
                    (((((((((((k12 * t + k11) * t + k10) * t + k9) * t + k8) * t + k7) * t + k6) * t + k5) * t + k4) * t
                                                                            + k3)
                                                                    * t
                                                            + k2)
                                                    * t
                                            + k1)
                                    * t
                            + k0;
        }
    }

    /** v becomes the factor of the rotation term. */
    private void rotation(int n) {
        double[] mean = this.mean;
        double[] x = this.x;
        double[] u = this.u;
        double[] v = this.v;
        seventh(mean, n, x);
        for (int i = 0; i < n; i++) {
            double turn = u[i] * TURN;
            double t = turn * turn;
            // The sine of at most 60 degrees, by its series.
            double series =
                    ((((((SINE_7 * t + SINE_6) * t + SINE_5) * t + SINE_4) * t + SINE_3) * t + SINE_2) * t + SINE_1) * t
                            + 1;
            v[i] = -2 * turn * series * x[i];
        }
    }

    private void total(int n) {
        double[] l1 = this.l1;
        double[] l2 = this.l2;
        double[] z = this.z;
        double[] hue = this.hue;
        double[] chroma = this.chroma;
        double[] u = this.u;
        double[] v = this.v;
        for (int i = 0; i < n; i++) {
            double fromMiddle = 0.5 * (l1[i] + l2[i]) - 50;
            double squared = fromMiddle * fromMiddle;
            double root = Math.sqrt(20 + squared);
            u[i] = (l2[i] - l1[i]) * root / (root + 0.015 * squared);
        }
        for (int i = 0; i < n; i++) {
            double c = chroma[i];
            double h = hue[i];
            z[i] = Math.sqrt(u[i] * u[i] + c * c + h * h + v[i] * c * h);
        }
    }
}
