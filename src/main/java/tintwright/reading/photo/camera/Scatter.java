package tintwright.reading.photo.camera;

import java.util.List;
import org.ejml.data.DMatrixRMaj;

/**
 * How references scatter about any {@link CameraModel}: what the model cannot bend to, which neighbours in colour
 * share, and each one's own noise, in steps the eye weighs alike.
 */
final class Scatter {
    final CameraModel model;
    final List<KnownSample> known;
    /** {@link EyeMetric} at each reference. */
    final double[][][] eye;
    /** Covariance of the references, 3 rows for each. */
    final DMatrixRMaj noise;

    final DMatrixRMaj inverse;

    /** @param at unknowns at which noise in the light is carried over to colour */
    Scatter(CameraModel model, List<KnownSample> known, double[] at) {
        this.model = model;
        this.known = known;
        this.eye = new double[known.size()][][];
        for (int i = 0; i < eye.length; i++) {
            eye[i] = EyeMetric.at(known.get(i).colour());
        }
        this.noise = noiseAt(at);
        this.inverse = CorrectionFit.inverse(noise);
    }

    private DMatrixRMaj noiseAt(double[] at) {
        int n = known.size();
        DMatrixRMaj v = new DMatrixRMaj(3 * n, 3 * n);
        double[] lab = new double[3];
        double[][] byLight = new double[3][3];
        for (int i = 0; i < n; i++) {
            KnownSample one = known.get(i);
            for (int j = 0; j < n; j++) {
                double k = CorrectionFit.near(
                        one.colour().lightness(), one.colour().a(), one.colour().b(), known.get(j));
                for (int axis = 0; axis < 3; axis++) {
                    v.set(3 * i + axis, 3 * j + axis, k);
                }
            }
            model.colour(at, one.sample(), lab, null, byLight);
            double[][] own = CorrectionFit.noiseInEyeSteps(eye[i], byLight, one.sample());
            for (int r = 0; r < 3; r++) {
                for (int c = 0; c < 3; c++) {
                    v.add(3 * i + r, 3 * i + c, own[r][c] + (r == c ? one.sigma() * one.sigma() : 0));
                }
            }
        }
        return v;
    }
}
