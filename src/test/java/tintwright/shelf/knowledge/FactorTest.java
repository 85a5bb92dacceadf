package tintwright.shelf.knowledge;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Beside EJML, which knows nothing of rows that begin late. */
class FactorTest {
    private static final Random CHANCE = new Random(5);

    /** Blocks of five that meet only in the last seven rows; rows before {@code n}, so any number of them. */
    private static double[][] arrow(int n) {
        double[][] m = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                if (i / 5 == j / 5 || i >= n - 7) {
                    m[i][j] = CHANCE.nextDouble() - 0.5;
                    m[j][i] = m[i][j];
                }
            }
            m[i][i] = n;
        }
        return m;
    }

    private static int[] first(double[][] m) {
        int[] first = new int[m.length];
        for (int i = 0; i < first.length; i++) {
            while (m[i][first[i]] == 0) {
                first[i]++;
            }
        }
        return first;
    }

    private static double[] numbers(int n) {
        return CHANCE.doubles(n).map(x -> x - 0.5).toArray();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 7, 8, 30, 61})
    void isTheFactorOfALibraryForWholeRowsAndForRowsThatBeginLate(int n) {
        double[][] m = arrow(n);
        int[] first = first(m);
        double[][] rows = Factor.identity(first);
        for (int i = 0; i < n; i++) {
            for (int j = first[i]; j <= i; j++) {
                rows[i][j - first[i]] = m[i][j];
            }
        }
        Factor late = Factor.inPlace(rows, first);
        Factor whole = Factor.of(m);
        CholeskyDecomposition_F64<DMatrixRMaj> theirs = DecompositionFactory_DDRM.chol(n, true);
        DMatrixRMaj matrix = new DMatrixRMaj(m);
        theirs.decompose(matrix.copy());
        DMatrixRMaj lower = theirs.getT(null);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                assertEquals(lower.get(i, j), late.at(i, j), 1e-12);
                assertEquals(lower.get(i, j), whole.at(i, j), 1e-12);
            }
        }
        assertEquals(Math.log(CommonOps_DDRM.det(matrix)), late.logDeterminant(), 1e-9);
        double[] x = numbers(n);
        DMatrixRMaj b = new DMatrixRMaj(n, 1);
        CommonOps_DDRM.mult(matrix, new DMatrixRMaj(n, 1, true, x), b);
        double[] solved = b.data.clone();
        late.forward(solved);
        late.backward(solved);
        assertArrayEquals(x, solved, 1e-12);
    }

    @Test
    void refusesWhatIsNoCovariance() {
        double[][] m = arrow(9);
        m[6][6] = -1;
        assertThrows(IllegalStateException.class, () -> Factor.of(m));
    }

    /** Squared lengths of what was turned are those over the whole covariance: Rasmussen and Williams (2006), A.2. */
    @Test
    void errorsThatAreTurnedAreIndependentAndOfDeviationOne() {
        double[] variance = {0.4, 0.1, 0.9, 0.25, 0.5};
        double[][] shared = {{0.5, 0.2, -0.1, 0.8, 0.3}, {0.1, 0.1, 0.1, 0.1, 0.1}, {0, -2, 0, 1, 0}};
        DMatrixRMaj covariance = CommonOps_DDRM.diag(variance);
        for (double[] error : shared) {
            DMatrixRMaj v = new DMatrixRMaj(5, 1, true, error);
            CommonOps_DDRM.multAddTransB(v, v, covariance);
        }
        DMatrixRMaj inverse = new DMatrixRMaj(5, 5);
        CommonOps_DDRM.invert(covariance, inverse);
        double[][] rows = new double[5][3];
        double[] difference = numbers(5);
        for (int i = 0; i < 5; i++) {
            rows[i][0] = difference[i];
            rows[i][1] = CHANCE.nextDouble();
            rows[i][2] = 9;
        }
        DMatrixRMaj before = new DMatrixRMaj(rows);
        DMatrixRMaj half = new DMatrixRMaj(5, 3);
        CommonOps_DDRM.mult(inverse, before, half);
        DMatrixRMaj products = new DMatrixRMaj(3, 3);
        CommonOps_DDRM.multTransA(before, half, products);
        Whitening whitening = Whitening.of(variance, shared);
        whitening.turn(difference);
        whitening.turn(rows, 2);
        for (int a = 0; a < 2; a++) {
            for (int b = 0; b < 2; b++) {
                double sum = 0;
                for (double[] row : rows) {
                    sum += row[a] * row[b];
                }
                assertEquals(products.get(a, b), sum, 1e-12);
            }
        }
        for (int i = 0; i < 5; i++) {
            assertEquals(rows[i][0], difference[i], 1e-12);
            assertEquals(9, rows[i][2], "a column beyond those asked for");
        }
    }
}
