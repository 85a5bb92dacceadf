package tintwright.shelf.knowledge;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import tintwright.colour.Grid;

/**
 * A Gaussian over one curve (ln K or ln S at 31 wavelengths): its middle and a low-rank basis, so that
 * middle + basis times independent unit normals has the wanted covariance.
 *
 * <p>The covariance is a sum of: strength (the whole curve up or down), a shift of its edges along the
 * wavelengths, and shape, smooth over about 60 nm with a finer part over about 20 nm. Karhunen-Loeve truncation
 * keeps what matters. Source: Rasmussen and Williams (2006), Gaussian Processes for Machine Learning, chapters 2
 * and 4 (squared exponential covariance).
 */
final class CurvePrior {
    private static final int N = Grid.INSIDE.count();
    /** Correlation length of the shape, nm; a judgement of ours. */
    private static final double SMOOTH_NM = 60;
    /** Correlation length of its finer part, nm, and the share of variance that is fine; a judgement of ours. */
    private static final double FINE_NM = 20;

    /** A judgement of ours. */
    private static final double FINE_SHARE = 0.15;
    /** Directions with less variance than this (a hundredth in ln) are left out; small beside all that it is held against, a judgement of ours. */
    private static final double LEAST_VARIANCE = 1e-4;

    private final double[] middle;
    private final double[][] basis;

    private CurvePrior(double[] middle, double[][] basis) {
        this.middle = middle;
        this.basis = basis;
    }

    /**
     * @param middle   expected curve, 31 values
     * @param strength standard deviation of the whole curve, in ln
     * @param shape    standard deviation of the shape at each wavelength, in ln
     * @param shiftNm  standard deviation of the place of its edges, nm
     */
    static CurvePrior of(double[] middle, double strength, double[] shape, double shiftNm) {
        return new CurvePrior(middle.clone(), basis(middle, strength, shape, shiftNm, LEAST_VARIANCE));
    }

    /**
     * The same without the middle.
     *
     * @param least variance of a direction that is still kept
     * @return rows: wavelengths; columns: directions, largest first, each times its standard deviation
     */
    static double[][] basis(double[] middle, double strength, double[] shape, double shiftNm, double least) {
        double[] slope = new double[N];
        for (int i = 0; i < N; i++) {
            int left = Math.max(0, i - 1);
            int right = Math.min(N - 1, i + 1);
            slope[i] = (middle[right] - middle[left]) / ((right - left) * Grid.INSIDE.stepNm());
        }
        DMatrixRMaj covariance = new DMatrixRMaj(N, N);
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                double apart = (i - j) * Grid.INSIDE.stepNm();
                double smooth = (1 - FINE_SHARE) * Math.exp(-apart * apart / (2 * SMOOTH_NM * SMOOTH_NM))
                        + FINE_SHARE * Math.exp(-apart * apart / (2 * FINE_NM * FINE_NM));
                covariance.set(
                        i,
                        j,
                        strength * strength + shape[i] * shape[j] * smooth + slope[i] * slope[j] * shiftNm * shiftNm);
            }
        }
        return principal(covariance, least);
    }

    private static double[][] principal(DMatrixRMaj covariance, double least) {
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(N, true, true);
        if (!eigen.decompose(covariance)) {
            throw new IllegalStateException("the prior of a curve has no eigenvectors");
        }
        Integer[] order = new Integer[N];
        int rank = 0;
        for (int i = 0; i < N; i++) {
            order[i] = i;
            rank += eigen.getEigenvalue(i).getReal() > least ? 1 : 0;
        }
        java.util.Arrays.sort(
                order,
                java.util.Comparator.comparingDouble(
                        i -> -eigen.getEigenvalue(i).getReal()));
        double[][] basis = new double[N][rank];
        for (int k = 0; k < rank; k++) {
            DMatrixRMaj vector = eigen.getEigenVector(order[k]);
            double size = Math.sqrt(eigen.getEigenvalue(order[k]).getReal());
            for (int i = 0; i < N; i++) {
                basis[i][k] = vector.get(i) * size;
            }
        }
        return basis;
    }

    double middle(int wavelength) {
        return middle[wavelength];
    }

    /** @return the basis at one wavelength; not to be changed */
    double[] basis(int wavelength) {
        return basis[wavelength];
    }

    int rank() {
        return basis[0].length;
    }

    /** @return standard deviation of the curve at a wavelength, in ln */
    double deviation(int wavelength) {
        double sum = 0;
        for (double b : basis[wavelength]) {
            sum += b * b;
        }
        return Math.sqrt(sum);
    }
}
