package tintwright.colour;

import java.util.Arrays;

/**
 * Corresponding colours under another white, by a diagonal scaling of cone-like responses.
 *
 * <p>Source: BRADFORD: Lam (1985), the linear form of ICC.1:2022 annex E. CAT16: Li and others (2017),
 * Color Res. Appl. 42, 703-718, with full adaptation.
 */
public enum Adaptation {
    BRADFORD(new double[][] {{0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}}),
    CAT16(new double[][] {
        {0.401288, 0.650173, -0.051461}, {-0.250268, 1.204414, 0.045854}, {-0.002079, 0.048952, 0.953127}
    });

    private static final double SMALLEST_WHITE = 1e-12;

    private final double[][] toCones;
    private final double[][] fromCones;

    Adaptation(double[][] toCones) {
        this.toCones = toCones;
        this.fromCones = Matrix3.inverse(toCones);
    }

    /** @return a copy of the matrix from X, Y, Z to cone-like responses */
    double[][] responses() {
        return new double[][] {toCones[0].clone(), toCones[1].clone(), toCones[2].clone()};
    }

    /** @return the colour that looks under {@code wanted} as this one does under its own light */
    public Xyz adapt(Xyz colour, Viewing wanted) {
        if (colour.viewing().equals(wanted)) {
            return colour;
        }
        double[] out =
                Matrix3.times(matrix(colour.viewing(), wanted), new double[] {colour.x(), colour.y(), colour.z()});
        return new Xyz(out[0], out[1], out[2], wanted);
    }

    /** @return the 3 by 3 matrix that carries X, Y, Z from one white to the other */
    public double[][] matrix(Viewing from, Viewing to) {
        Xyz source = from.white();
        Xyz target = to.white();
        return matrix(
                new double[] {source.x(), source.y(), source.z()}, new double[] {target.x(), target.y(), target.z()});
    }

    /** @return the 3 by 3 matrix that carries X, Y, Z from one white, given as X, Y, Z, to another */
    public double[][] matrix(double[] fromWhite, double[] toWhite) {
        double[] have = Matrix3.times(toCones, fromWhite);
        double[] want = Matrix3.times(toCones, toWhite);
        double[][] scaled = new double[3][3];
        for (int row = 0; row < 3; row++) {
            if (!(have[row] > SMALLEST_WHITE && want[row] > SMALLEST_WHITE && Double.isFinite(want[row]))) {
                throw new IllegalArgumentException("a white must have X, Y, Z above 0, were "
                        + Arrays.toString(fromWhite) + " and " + Arrays.toString(toWhite));
            }
            for (int column = 0; column < 3; column++) {
                scaled[row][column] = toCones[row][column] * want[row] / have[row];
            }
        }
        return Matrix3.times(fromCones, scaled);
    }
}
