package tintwright.shelf.knowledge;

import java.util.List;
import java.util.Optional;
import tintwright.reading.ColourReading;
import tintwright.reading.Reading;

/**
 * What the readings of one photo have in common, as unit normals and how each moves one reading.
 *
 * @param name     of the photo, and of the kind of its error: a photo may hold readings of both kinds
 * @param loadings rows L*, a*, b*, a column for each unknown
 */
record SharedError(String name, double[][] loadings) {

    /** @return what a reading shares with the others of its photo; empty when it comes from none */
    static Optional<SharedError> of(Reading reading) {
        return reading.photo().map(SharedError::of);
    }

    static SharedError of(ColourReading.PhotoBias photo) {
        List<ColourReading.Direction> directions = photo.directions();
        if (directions.isEmpty()) {
            Factor factor = Factor.of(Observation.positive(photo.covariance()));
            double[][] same = new double[3][3];
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    same[i][j] = factor.at(i, j);
                }
            }
            return new SharedError(photo.photo(), same);
        }
        double[][] along = new double[3][directions.size()];
        for (int k = 0; k < directions.size(); k++) {
            along[0][k] = directions.get(k).lightness();
            along[1][k] = directions.get(k).a();
            along[2][k] = directions.get(k).b();
        }
        return new SharedError(photo.photo() + " along", along);
    }

    /** @return of two of one photo the one with more unknowns: the first of them are those of the other */
    static SharedError larger(SharedError one, SharedError other) {
        return other.size() > one.size() ? other : one;
    }

    /** @return how many unknowns it has */
    int size() {
        return loadings[0].length;
    }

    /** @return L*, a*, b* that these values of the unknowns add to the reading */
    double[] times(double[] unknowns) {
        double[] out = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            for (int k = 0; k < unknowns.length; k++) {
                out[axis] += loadings[axis][k] * unknowns[k];
            }
        }
        return out;
    }
}
