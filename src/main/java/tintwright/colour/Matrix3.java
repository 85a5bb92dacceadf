package tintwright.colour;

/** Dense 3 by 3 algebra on rows of a plain array: too small for a library's overhead. */
public final class Matrix3 {
    private Matrix3() {}

    public static double[] times(double[][] m, double[] v) {
        return new double[] {
            m[0][0] * v[0] + m[0][1] * v[1] + m[0][2] * v[2],
            m[1][0] * v[0] + m[1][1] * v[1] + m[1][2] * v[2],
            m[2][0] * v[0] + m[2][1] * v[1] + m[2][2] * v[2]
        };
    }

    public static double[][] times(double[][] a, double[][] b) {
        double[][] out = new double[3][3];
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                out[row][column] = a[row][0] * b[0][column] + a[row][1] * b[1][column] + a[row][2] * b[2][column];
            }
        }
        return out;
    }

    /** @return m c m' */
    public static double[][] sandwich(double[][] m, double[][] c) {
        return sandwich(m, c, m);
    }

    /** @return m c n' */
    public static double[][] sandwich(double[][] m, double[][] c, double[][] n) {
        double[][] mc = times(m, c);
        double[][] out = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                out[i][j] = mc[i][0] * n[j][0] + mc[i][1] * n[j][1] + mc[i][2] * n[j][2];
            }
        }
        return out;
    }

    /** @throws IllegalArgumentException when the rows lie in one plane */
    public static double[][] inverse(double[][] m) {
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
