package tintwright.reading.photo.camera;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The part of a joint covariance that all its colours have in common.
 */
final class SharedError {
    /** With one colour alone nothing shows what it would share; most of a correction's error is common; a judgement of ours. */
    private static final double ALONE = 0.7;

    private SharedError() {}

    /** @return the mean of the blocks off the diagonal, without negative directions, times {@code scale} */
    static double[][] of(DMatrixRMaj joint, double scale) {
        int m = joint.numRows / 3;
        double[][] sum = new double[3][3];
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < m; j++) {
                double weight = m == 1 ? ALONE * scale : i == j ? 0 : scale / (m * (m - 1.0));
                for (int r = 0; r < 3; r++) {
                    for (int c = 0; c < 3; c++) {
                        sum[r][c] += weight * (joint.get(3 * i + r, 3 * j + c) + joint.get(3 * i + c, 3 * j + r)) / 2;
                    }
                }
            }
        }
        return positive(sum);
    }

    /** @return the nearest symmetric matrix without negative directions */
    static double[][] positive(double[][] m) {
        DMatrixRMaj a = new DMatrixRMaj(3, 3);
        for (int r = 0; r < 3; r++) {
            for (int c = 0; c < 3; c++) {
                a.set(r, c, (m[r][c] + m[c][r]) / 2);
            }
        }
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(3, true, true);
        if (!eigen.decompose(a)) {
            throw new IllegalStateException("a covariance has no main directions");
        }
        double[][] out = new double[3][3];
        for (int k = 0; k < 3; k++) {
            double value = Math.max(0, eigen.getEigenvalue(k).getReal());
            DMatrixRMaj v = eigen.getEigenVector(k);
            for (int r = 0; r < 3; r++) {
                for (int c = 0; c < 3; c++) {
                    out[r][c] += value * v.get(r) * v.get(c);
                }
            }
        }
        return out;
    }
}
