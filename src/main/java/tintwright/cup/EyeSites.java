package tintwright.cup;

import java.util.Random;
import org.ejml.simple.SimpleEVD;
import org.ejml.simple.SimpleMatrix;

/**
 * From how likely each of many differences is to a reading of the difference: the normal observation that moves the
 * mean and the covariance of what was thought before to those of what is thought after.
 *
 * <p>Assumed-density filtering, by matching moments: Minka (2001), Expectation propagation for approximate Bayesian
 * inference, section 3.1 (from memory). Figures here that name no source are judgements of ours.
 */
final class EyeSites {
    private static final int DRAWS = 3000;
    /** Every second pair of draws lies so much wider, for answers that nobody expected. */
    private static final double WIDER = 2.5;

    private static final long SEED = 1931L;
    /** What is thought before is at least so wide on each axis, Lab units, for no model is sharper. */
    private static final double LEAST = 0.2;
    /** Where an answer leaves more than this of the spread before, it teaches nothing that way. */
    private static final double NOTHING = 0.999;
    /** And never less than this: draws are few. */
    private static final double LEAST_LEFT = 1e-4;

    private final SimpleMatrix mean;
    private final SimpleMatrix root;
    private final double[][] unit = new double[DRAWS][3];
    private final double[][] drawn = new double[DRAWS][3];
    private final double[] weight = new double[DRAWS];

    /**
     * A reading of a difference.
     *
     * @param mean       dab minus hull, L*, a*, b*
     * @param covariance rows and columns in that order
     */
    record Site(double[] mean, double[][] covariance) {}

    /** @param before equally likely differences, a row of L*, a*, b* each */
    EyeSites(double[][] before) {
        SimpleMatrix sum = new SimpleMatrix(3, 1);
        for (double[] one : before) {
            sum = sum.plus(1.0 / before.length, column(one));
        }
        mean = sum;
        SimpleMatrix spread = SimpleMatrix.identity(3).scale(LEAST * LEAST);
        for (double[] one : before) {
            SimpleMatrix off = column(one).minus(mean);
            spread = spread.plus(1.0 / before.length, off.mult(off.transpose()));
        }
        SimpleEVD<SimpleMatrix> parts = spread.eig();
        root = new SimpleMatrix(3, 3);
        for (int i = 0; i < 3; i++) {
            root.insertIntoThis(
                    0,
                    i,
                    parts.getEigenVector(i)
                            .scale(Math.sqrt(parts.getEigenvalue(i).getReal())));
        }
        Random random = new Random(SEED);
        for (int i = 0; i < DRAWS; i++) {
            double size = 0;
            for (int axis = 0; axis < 3; axis++) {
                unit[i][axis] = i % 2 == 1 ? -unit[i - 1][axis] : random.nextGaussian() * (i % 4 == 0 ? 1 : WIDER);
                size += unit[i][axis] * unit[i][axis];
            }
            // Density of what was thought before, over that of these draws.
            weight[i] = 2 / (1 + Math.exp(size / 2 * (1 - 1 / (WIDER * WIDER))) / (WIDER * WIDER * WIDER));
            SimpleMatrix there = mean.plus(root.mult(column(unit[i])));
            for (int axis = 0; axis < 3; axis++) {
                drawn[i][axis] = there.get(axis, 0);
            }
        }
    }

    private static SimpleMatrix column(double[] three) {
        return new SimpleMatrix(3, 1, true, three);
    }

    /** @return differences before the answer, a row of L*, a*, b* each */
    double[][] drawn() {
        return drawn;
    }

    /** @return how likely each of {@link #drawn()} was before the answer, 1 on the mean */
    double weight(int draw) {
        return weight[draw];
    }

    /** @param likelihood of the answers at each of {@link #drawn()}, any scale */
    Site site(double[] likelihood) {
        double[] chance = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            chance[i] = weight[i] * likelihood[i];
        }
        double total = 0;
        SimpleMatrix after = new SimpleMatrix(3, 1);
        for (int i = 0; i < DRAWS; i++) {
            total += chance[i];
            after = after.plus(chance[i], column(unit[i]));
        }
        after = after.scale(1 / total);
        SimpleMatrix spread = new SimpleMatrix(3, 3);
        for (int i = 0; i < DRAWS; i++) {
            SimpleMatrix off = column(unit[i]).minus(after);
            spread = spread.plus(chance[i] / total, off.mult(off.transpose()));
        }
        SimpleEVD<SimpleMatrix> ways = spread.eig();
        SimpleMatrix at = mean.copy();
        SimpleMatrix covariance = new SimpleMatrix(3, 3);
        for (int i = 0; i < 3; i++) {
            SimpleMatrix way = ways.getEigenVector(i);
            double left =
                    Math.max(LEAST_LEFT, Math.min(NOTHING, ways.getEigenvalue(i).getReal()));
            double precision = 1 / left - 1;
            SimpleMatrix real = root.mult(way);
            at = at.plus(way.dot(after) / left / precision, real);
            covariance = covariance.plus(1 / precision, real.mult(real.transpose()));
        }
        double[][] rows = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                rows[i][j] = covariance.get(i, j);
            }
        }
        return new Site(new double[] {at.get(0, 0), at.get(1, 0), at.get(2, 0)}, rows);
    }
}
