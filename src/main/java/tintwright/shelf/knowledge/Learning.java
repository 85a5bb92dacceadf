package tintwright.shelf.knowledge;

import java.util.List;

/**
 * Maximum a posteriori over the unknowns by Gauss-Newton, each observation weighted by a Student t so that one
 * bad chip cannot drag the rest; the curvature at the end is the Laplace approximation of how sure it is.
 *
 * <p>Source: Bishop (2006), Pattern Recognition and Machine Learning, 4.4 (Laplace), 2.3.7 (Student t);
 * Nocedal and Wright (2006), Numerical Optimization, 10.3 (Gauss-Newton).
 */
final class Learning {
    /** Degrees of freedom of the Student t: few, so that a chip far off counts little; a judgement of ours. */
    private static final double FREEDOM = 5;
    /** A reading that counts less than this is looked at again from another start; a judgement of ours. */
    static final double DOUBTED = 0.5;

    /** A bound on work, a judgement of ours. */
    private static final int MOST_STEPS = 40;

    /** A bound on work, a judgement of ours. */
    private static final int MOST_HALVINGS = 6;
    /** A step shorter than this, in prior standard deviations, ends the search. */
    private static final double STILL = 1e-4;

    private final List<Observation> observations;
    private final Unknowns unknowns;
    /** How much each reading counts, 0 to 1. */
    private final double[] weight;

    private final Envelope envelope;

    private double[] z;
    /** Where the observations stand; never changed once it was looked at. */
    private double[] evaluated;

    private double cost;
    private boolean tails;
    private Factor curvature;

    Learning(Unknowns unknowns, List<Observation> observations) {
        this.unknowns = unknowns;
        this.observations = observations;
        this.weight = new double[observations.size()];
        this.envelope = new Envelope(unknowns.sharedLast(), observations);
    }

    /**
     * Gaussian first, from there with tails; where a chip then counts little, also with tails from the start, and
     * what costs less is kept.
     *
     * @param start where to begin, or null for the middle of the prior
     */
    Learning run(double[] start) {
        double[] first = start == null ? new double[unknowns.count()] : start;
        search(first, false);
        search(z, true);
        boolean doubted = false;
        for (double w : weight) {
            doubted |= w < DOUBTED;
        }
        if (doubted) {
            double[] best = z;
            double least = cost;
            search(first, true);
            if (least <= cost) {
                z = best;
            }
        }
        evaluate(z);
        cost = cost(z);
        curvature = factor(envelope, new double[unknowns.count()]);
        return this;
    }

    private void search(double[] from, boolean withTails) {
        tails = withTails;
        z = from;
        evaluate(z);
        cost = cost(z);
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] direction = direction();
            double longest = 0;
            for (double d : direction) {
                longest = Math.max(longest, Math.abs(d));
            }
            if (longest < STILL) {
                break;
            }
            double length = Math.min(1, 2.5 / longest);
            boolean better = false;
            for (int half = 0; half <= MOST_HALVINGS && !better; half++) {
                double[] next = z.clone();
                for (int i = 0; i < next.length; i++) {
                    next[i] += length * direction[i];
                }
                evaluate(next);
                double nextCost = cost(next);
                better = nextCost < cost;
                if (better) {
                    z = next;
                    boolean done = cost - nextCost < 1e-6 * (1 + cost);
                    cost = nextCost;
                    if (done) {
                        return;
                    }
                }
                length /= 3;
            }
            if (!better) {
                evaluate(z);
                return;
            }
        }
    }

    private void evaluate(double[] at) {
        if (at != evaluated) {
            Unknowns.Curves curves = unknowns.curves(at);
            observations.forEach(observation -> observation.evaluate(at, curves));
            evaluated = at;
        }
        for (int i = 0; i < observations.size(); i++) {
            Observation observation = observations.get(i);
            weight[i] = tails && !observation.isSure()
                    ? Math.min(1, (FREEDOM + observation.size()) / (FREEDOM + observation.misfit()))
                    : 1;
        }
    }

    /** Minus log posterior: the prior, and for each observation a Student t that is Gaussian near its middle. */
    private double cost(double[] at) {
        double sum = 0;
        for (double v : at) {
            sum += v * v / 2;
        }
        for (Observation observation : observations) {
            double misfit = observation.misfit();
            sum += tails && !observation.isSure() ? cost(observation.size(), misfit) : misfit / 2;
        }
        return sum;
    }

    /** Gaussian while the weight is 1, logarithmic beyond; both meet with the same slope. */
    private static double cost(double size, double misfit) {
        return misfit <= size
                ? misfit / 2
                : size / 2 + (FREEDOM + size) / 2 * Math.log((FREEDOM + misfit) / (FREEDOM + size));
    }

    private double[] direction() {
        double[] gradient = new double[unknowns.count()];
        Factor factor = factor(envelope, gradient);
        for (int i = 0; i < gradient.length; i++) {
            gradient[i] -= z[i];
        }
        double[] step = envelope.inRows(gradient);
        factor.forward(step);
        factor.backward(step);
        return envelope.ofUnknowns(step);
    }

    /** Of the prior and weight * J'J of every reading; adds weight * J'r to the gradient. */
    private Factor factor(Envelope order, double[] gradient) {
        double[][] rows = order.identity();
        for (int o = 0; o < observations.size(); o++) {
            Observation observation = observations.get(o);
            observation.differentiate();
            order.add(products(observation, weight[o], gradient), observation.columns(), rows);
        }
        return order.factor(rows);
    }

    /** The lower triangle of weight * J'J over an observation's columns; adds weight * J'r to the gradient. */
    private static double[][] products(Observation observation, double weight, double[] gradient) {
        int[] columns = observation.columns();
        int n = columns.length;
        double[][] square = new double[n][n];
        double[] column = new double[observation.size()];
        for (int a = 0; a < n; a++) {
            for (int row = 0; row < column.length; row++) {
                column[row] = observation.slope[row][a] * weight;
                gradient[columns[a]] += column[row] * observation.residual[row];
            }
            RowSum.add(square[a], a + 1, column, observation.slope, column.length);
        }
        return square;
    }

    /** @return ln of the probability of all that was seen, whatever the unknowns are (Laplace), up to a constant */
    double evidence() {
        return -cost - curvature.logDeterminant() / 2;
    }

    double[] best() {
        return z;
    }

    /**
     * Turns a direction over the unknowns into one whose products with others so turned are covariances.
     *
     * @return in an order of its own
     */
    double[] whitened(double[] direction) {
        double[] out = envelope.inRows(direction);
        curvature.forward(out);
        return out;
    }

    /** @return the factor of the curvature with the unknowns as they come: what draws are made with */
    Factor forDraws() {
        return factor(new Envelope(Envelope.asTheyCome(z.length), observations), new double[z.length]);
    }

    double weight(int observation) {
        return weight[observation];
    }
}
