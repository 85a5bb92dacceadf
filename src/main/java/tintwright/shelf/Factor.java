package tintwright.shelf;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;

/** Lower triangular Cholesky factor of a symmetric positive matrix: the one door to EJML for learning. */
final class Factor {
    private final double[] lower;
    private final int n;

    private Factor(double[] lower, int n) {
        this.lower = lower;
        this.n = n;
    }

    /** @throws IllegalStateException when the matrix is not positive definite, which a prior rules out */
    static Factor of(double[][] symmetric) {
        CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(symmetric.length, true);
        if (!cholesky.decompose(new DMatrixRMaj(symmetric))) {
            throw new IllegalStateException("a covariance is not positive definite");
        }
        return new Factor(cholesky.getT(null).data, symmetric.length);
    }

    /** Solves L x = b in place. */
    void forward(double[] b) {
        for (int i = 0; i < n; i++) {
            double sum = b[i];
            int row = i * n;
            for (int j = 0; j < i; j++) {
                sum -= lower[row + j] * b[j];
            }
            b[i] = sum / lower[row + i];
        }
    }

    /** Solves L' x = b in place. */
    void backward(double[] b) {
        for (int i = n - 1; i >= 0; i--) {
            double x = b[i] / lower[i * n + i];
            b[i] = x;
            for (int j = 0; j < i; j++) {
                b[j] -= lower[i * n + j] * x;
            }
        }
    }

    /** @return ln of the determinant of the matrix itself */
    double logDeterminant() {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += 2 * Math.log(lower[i * n + i]);
        }
        return sum;
    }

    double at(int row, int column) {
        return column > row ? 0 : lower[row * n + column];
    }
}
