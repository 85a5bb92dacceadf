package tintwright.cup;

/** Arithmetic of matrices up to three by three, symmetric and positive definite. */
final class SmallMatrix {
    private SmallMatrix() {}

    static double determinant(double[][] m) {
        return switch (m.length) {
            case 1 -> m[0][0];
            case 2 -> m[0][0] * m[1][1] - m[0][1] * m[1][0];
            default ->
                m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
                        - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
                        + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
        };
    }

    static double[][] inverse(double[][] m) {
        int n = m.length;
        double d = determinant(m);
        double[][] out = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                out[j][i] = ((i + j) % 2 == 0 ? 1 : -1) * minor(m, i, j) / d;
            }
        }
        return out;
    }

    private static double minor(double[][] m, int row, int column) {
        int n = m.length - 1;
        if (n == 0) {
            return 1;
        }
        double[][] rest = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                rest[i][j] = m[i < row ? i : i + 1][j < column ? j : j + 1];
            }
        }
        return determinant(rest);
    }

    /** @return a' M b */
    static double form(double[] a, double[][] m, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < b.length; j++) {
                sum += a[i] * m[i][j] * b[j];
            }
        }
        return sum;
    }

    /** @return a' M a */
    static double form(double[] a, double[][] m) {
        return form(a, m, a);
    }
}
