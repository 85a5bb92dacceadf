package tintwright.reading.photo;

/** Three by three algebra in plain arrays, where a library's matrix would cost more than the sum. */
final class Small {
    private Small() {}

    static double[] times(double[][] m, double[] v) {
        double[] out = new double[m.length];
        for (int i = 0; i < m.length; i++) {
            for (int j = 0; j < v.length; j++) {
                out[i] += m[i][j] * v[j];
            }
        }
        return out;
    }

    static double[][] times(double[][] a, double[][] b) {
        double[][] out = new double[a.length][b[0].length];
        for (int i = 0; i < a.length; i++) {
            for (int k = 0; k < b.length; k++) {
                double f = a[i][k];
                for (int j = 0; j < b[0].length; j++) {
                    out[i][j] += f * b[k][j];
                }
            }
        }
        return out;
    }

    /** @return m c m' */
    static double[][] sandwich(double[][] m, double[][] c) {
        return sandwich(m, c, m);
    }

    /** @return m c n' */
    static double[][] sandwich(double[][] m, double[][] c, double[][] n) {
        double[][] mc = times(m, c);
        double[][] out = new double[m.length][n.length];
        for (int i = 0; i < m.length; i++) {
            for (int j = 0; j < n.length; j++) {
                for (int k = 0; k < c.length; k++) {
                    out[i][j] += mc[i][k] * n[j][k];
                }
            }
        }
        return out;
    }

    static double[][] inverse(double[][] m) {
        double[][] out = new double[3][3];
        double determinant = 0;
        for (int i = 0; i < 3; i++) {
            determinant += m[0][i] * (m[1][(i + 1) % 3] * m[2][(i + 2) % 3] - m[1][(i + 2) % 3] * m[2][(i + 1) % 3]);
        }
        if (!(Math.abs(determinant) > 1e-15)) {
            throw new IllegalArgumentException("three directions that lie in one plane cannot be turned round");
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                out[j][i] = (m[(i + 1) % 3][(j + 1) % 3] * m[(i + 2) % 3][(j + 2) % 3]
                                - m[(i + 1) % 3][(j + 2) % 3] * m[(i + 2) % 3][(j + 1) % 3])
                        / determinant;
            }
        }
        return out;
    }
}
