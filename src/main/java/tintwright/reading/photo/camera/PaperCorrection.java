package tintwright.reading.photo.camera;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.Covariance;
import tintwright.reading.photo.card.Sample;

/**
 * From a camera's record to colours through the paper of the sheet alone, or paper and tape. How all answers of the
 * photo may be off together is kept as directions of error that they share, so that whoever knows more of some of them
 * (chips of known recipe) learns of the others too.
 */
public final class PaperCorrection {
    /** With something of known colour in the photo the gains may be anything, in log light; a judgement of ours. */
    private static final double[] ANY_GAIN = {1.0, 0.5};
    /** A shared direction that moves every answer by less than this, in Lab units, is counted as each answer's own; a judgement of ours. */
    private static final double LEAST = 0.05;
    /** At most so many directions: the camera has hardly more ways to be off; a judgement of ours. */
    private static final int MOST = 16;

    private final CorrectionFit fit;
    private final Viewing viewing;

    private PaperCorrection(CorrectionFit fit, Viewing viewing) {
        this.fit = fit;
        this.viewing = viewing;
    }

    /** @param known paper, tape and whatever else has a known colour, at least one; stated for {@code viewing} */
    public static PaperCorrection learn(List<KnownSample> known, Viewing viewing) {
        CameraModel model = new CameraModel(viewing);
        double[] start = Correction.firstGains(model, known);
        Flexibility.expectBrightened(start);
        return new PaperCorrection(
                new CorrectionFit(model, known, Flexibility.PAPER, ANY_GAIN[0], ANY_GAIN[1], start, start), viewing);
    }

    /**
     * One colour.
     *
     * @param colour the colour
     * @param own    how wide its own error is
     * @param shared rows L*, a*, b*, columns the directions that all answers of the photo share, each to be taken times
     *               an unknown number that is a unit normal
     */
    public record Answer(Lab colour, Covariance own, double[][] shared) {}

    /** @return one answer for each sample */
    public List<Answer> apply(List<Sample> samples) {
        if (samples.isEmpty()) {
            return List.of();
        }
        DMatrixRMaj wide = Flexibility.PAPER.prior(ANY_GAIN[0], ANY_GAIN[1]);
        CorrectionFit.Predicted predicted = fit.predict(samples, wide);
        DMatrixRMaj joint = predicted.covariance();
        int n = joint.numRows;
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, true, true);
        if (!eigen.decompose(joint.copy())) {
            throw new IllegalStateException("the errors of a photo have no main directions");
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (eigen.getEigenvalue(i).getReal() > LEAST * LEAST * samples.size()) {
                order.add(i);
            }
        }
        order.sort(java.util.Comparator.comparingDouble(
                i -> -eigen.getEigenvalue(i).getReal()));
        List<Integer> kept = order.subList(0, Math.min(MOST, order.size()));
        List<Answer> out = new ArrayList<>();
        for (int i = 0; i < samples.size(); i++) {
            double[][] shared = new double[3][kept.size()];
            double[][] own = new double[3][3];
            for (int r = 0; r < 3; r++) {
                for (int k = 0; k < kept.size(); k++) {
                    int at = kept.get(k);
                    shared[r][k] = eigen.getEigenVector(at).get(3 * i + r)
                            * Math.sqrt(eigen.getEigenvalue(at).getReal());
                }
            }
            for (int r = 0; r < 3; r++) {
                for (int c = 0; c < 3; c++) {
                    own[r][c] = joint.get(3 * i + r, 3 * i + c);
                    for (int k = 0; k < kept.size(); k++) {
                        own[r][c] -= shared[r][k] * shared[c][k];
                    }
                }
            }
            double[][] positive = SharedError.positive(own);
            for (int r = 0; r < 3; r++) {
                for (int c = 0; c < 3; c++) {
                    positive[r][c] += predicted.own()[i][r][c];
                }
            }
            double[] lab = predicted.lab()[i];
            out.add(new Answer(new Lab(lab[0], lab[1], lab[2], viewing), Covariance.of(positive), shared));
        }
        return out;
    }
}
