package tintwright.match;

import java.util.Arrays;
import java.util.Random;
import tintwright.colour.Ciede2000;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.shelf.knowledge.Ensemble;
import tintwright.shelf.knowledge.Knowledge;

/**
 * How a mix comes out over all equally likely versions of the shelf and of the target: what is expected, and with
 * which chance it is close. Not for use by two threads at once.
 */
final class Odds {
    /** A seed, any would do. */
    private static final long SEED = 7L;

    /** A judgement of ours. */
    private static final int MOST_PARTS = 8;

    private final Ensemble ensemble;
    private final LabBatch projection;
    private final Target target;
    private final double[][] targets;
    private final double[] distance;
    private final double[][] lab;
    private final double[] mean = new double[3];
    private final double[][] slips;

    /**
     * @param grams     of the batch: a slip of the scale weighs more in a small one
     * @param scaleStep smallest step of the scale, grams: a coarse scale slips by more
     */
    Odds(Ensemble ensemble, Target target, double grams, double scaleStep) {
        this.ensemble = ensemble;
        this.target = target;
        this.projection = LabBatch.of(target.colour().viewing(), Grid.INSIDE);
        this.distance = new double[ensemble.size()];
        this.lab = new double[ensemble.size()][3];
        this.targets = draws(target, ensemble);
        Random random = new Random(SEED + 1);
        this.slips = normals(random, ensemble.size(), MOST_PARTS, Knowledge.weighingGrams(scaleStep) / grams);
    }

    private static double[][] normals(Random random, int rows, int columns, double deviation) {
        double[][] out = new double[rows][columns];
        for (double[] row : out) {
            for (int i = 0; i < columns; i++) {
                row[i] = deviation * random.nextGaussian();
            }
        }
        return out;
    }

    private static double[][] draws(Target target, Ensemble ensemble) {
        Random random = new Random(SEED);
        int count = ensemble.size();
        double[][] shared = shared(target, ensemble);
        double[][] lower = lower(target.photo()
                .map(Target.InPhoto::own)
                .orElse(target.covariance())
                .toArray());
        Lab c = target.colour();
        double[][] out = new double[count][];
        for (int i = 0; i < count; i++) {
            double[] n = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
            out[i] = new double[] {
                c.lightness() - shared[i][0] + lower[0][0] * n[0],
                c.a() - shared[i][1] + lower[1][0] * n[0] + lower[1][1] * n[1],
                c.b() - shared[i][2] + lower[2][0] * n[0] + lower[2][1] * n[1] + lower[2][2] * n[2]
            };
        }
        return out;
    }

    /** What the target's photo shows too high in each version, beyond what its chips have taught to take out. */
    private static double[][] shared(Target target, Ensemble ensemble) {
        double[][] out = new double[ensemble.size()][3];
        if (target.photo().isEmpty()) {
            return out;
        }
        double[][] bias = ensemble.bias(target.photo().get().bias());
        for (int axis = 0; axis < 3; axis++) {
            double mean = 0;
            for (double[] one : bias) {
                mean += one[axis] / out.length;
            }
            for (int i = 0; i < out.length; i++) {
                out[i][axis] = bias[i][axis] - mean;
            }
        }
        return out;
    }

    private static double[][] lower(double[][] m) {
        double[][] l = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = m[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                l[i][j] = i == j ? Math.sqrt(Math.max(0, sum)) : l[j][j] > 0 ? sum / l[j][j] : 0;
            }
        }
        return l;
    }

    /** Plays the mix in every version; the answers below are about the mix played last. */
    void play(int[] parts, double[] shares) {
        double[][] really = new double[parts.length][distance.length];
        double[] tinted = new double[distance.length];
        for (int i = 0; i < parts.length; i++) {
            boolean tint = ensemble.isTint(parts[i]);
            for (int v = 0; v < distance.length; v++) {
                really[i][v] = Math.max(0, shares[i] + (i < MOST_PARTS ? slips[v][i] : 0));
                tinted[v] += tint ? really[i][v] : 0;
            }
        }
        ensemble.colours(parts, really, tinted, projection, target.geometry(), lab);
        Arrays.fill(mean, 0);
        for (int v = 0; v < distance.length; v++) {
            for (int axis = 0; axis < 3; axis++) {
                mean[axis] += lab[v][axis] / distance.length;
            }
            distance[v] =
                    Ciede2000.between(targets[v][0], targets[v][1], targets[v][2], lab[v][0], lab[v][1], lab[v][2]);
        }
    }

    /** @return mean L*, a*, b*; overwritten by the next play */
    double[] meanColour() {
        return mean;
    }

    double expected() {
        double sum = 0;
        for (double d : distance) {
            sum += d;
        }
        return sum / distance.length;
    }

    double chanceWithin(double limit) {
        int hits = 0;
        for (double d : distance) {
            hits += d <= limit ? 1 : 0;
        }
        return hits / (double) distance.length;
    }

    /** @return the distance that this share of all versions stays within */
    double within(double share) {
        double[] sorted = distance.clone();
        Arrays.sort(sorted);
        return sorted[Math.min(sorted.length - 1, (int) Math.ceil(share * sorted.length) - 1)];
    }
}
