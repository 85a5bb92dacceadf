package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;

/** Against EJML, a general-purpose library of linear algebra. */
class Matrix3Test {
    private static final double ROUNDING = 1e-9;

    private final Random random = new Random(31);

    private double[][] any() {
        double[][] m = new double[3][3];
        for (double[] row : m) {
            for (int column = 0; column < 3; column++) {
                row[column] = random.nextGaussian();
            }
        }
        return m;
    }

    private static void same(SimpleMatrix expected, double[][] found) {
        double scale = 1 + expected.elementMaxAbs();
        for (int row = 0; row < 3; row++) {
            assertArrayEquals(expected.rows(row, row + 1).getDDRM().getData(), found[row], ROUNDING * scale);
        }
    }

    @Test
    void doesWhatALibraryDoes() {
        for (int round = 0; round < 200; round++) {
            double[][] a = any();
            double[][] b = any();
            double[][] c = any();
            SimpleMatrix m = new SimpleMatrix(a);
            SimpleMatrix n = new SimpleMatrix(b);
            SimpleMatrix o = new SimpleMatrix(c);
            same(m.mult(n), Matrix3.times(a, b));
            same(m.mult(n).mult(m.transpose()), Matrix3.sandwich(a, b));
            same(m.mult(n).mult(o.transpose()), Matrix3.sandwich(a, b, c));
            assertArrayEquals(
                    m.mult(new SimpleMatrix(3, 1, true, b[0])).getDDRM().getData(), Matrix3.times(a, b[0]), ROUNDING);
            if (Math.abs(m.determinant()) > 1e-3) {
                same(m.invert(), Matrix3.inverse(a));
            }
        }
    }

    @Test
    void refusesThreeDirectionsInOnePlane() {
        double[][] flat = {{1, 2, 3}, {4, 5, 6}, {5, 7, 9}};
        assertEquals(
                "three directions that lie in one plane cannot be turned round",
                assertThrows(IllegalArgumentException.class, () -> Matrix3.inverse(flat))
                        .getMessage());
        double[][] nothing = {{1, 2, Double.NaN}, {4, 5, 6}, {5, 7, 10}};
        assertThrows(IllegalArgumentException.class, () -> Matrix3.inverse(nothing));
    }
}
