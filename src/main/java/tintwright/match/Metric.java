package tintwright.match;

import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;

/**
 * CIEDE2000 for small steps around a colour: a triangular 3 by 3 matrix W so that the length of W times a step in
 * Lab is about its CIEDE2000.
 *
 * <p>Made by differences of the published formula itself, half a unit to each side.
 */
public final class Metric {
    /** A judgement of ours. */
    private static final double STEP = 0.5;

    private Metric() {}

    /** @return upper triangular W, rows of three */
    public static double[][] around(Lab colour) {
        double[][] g = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = i == j
                        ? square(colour, i, 1, i, 0)
                        : (square(colour, i, 1, j, 1) - square(colour, i, 1, j, -1)) / 4;
                g[i][j] = sum;
                g[j][i] = sum;
            }
        }
        // Cholesky from below, so that W is upper triangular with W'W = G.
        double w00 = Math.sqrt(g[0][0]);
        double w01 = g[0][1] / w00;
        double w02 = g[0][2] / w00;
        double w11 = Math.sqrt(Math.max(1e-6, g[1][1] - w01 * w01));
        double w12 = (g[1][2] - w01 * w02) / w11;
        double w22 = Math.sqrt(Math.max(1e-6, g[2][2] - w02 * w02 - w12 * w12));
        return new double[][] {{w00, w01, w02}, {0, w11, w12}, {0, 0, w22}};
    }

    /** CIEDE2000 squared across a step, per unit step squared. */
    private static double square(Lab c, int i, double di, int j, double dj) {
        double[] step = new double[3];
        step[i] += di * STEP / 2;
        step[j] += dj * STEP / 2;
        Lab one = new Lab(c.lightness() - step[0], c.a() - step[1], c.b() - step[2], c.viewing());
        Lab two = new Lab(c.lightness() + step[0], c.a() + step[1], c.b() + step[2], c.viewing());
        double d = Ciede2000.between(one, two);
        return d * d / (STEP * STEP);
    }
}
