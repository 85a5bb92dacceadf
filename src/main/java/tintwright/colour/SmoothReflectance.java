package tintwright.colour;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * The smoothest reflectance between 0 and 1 that has a given colour: a stand-in where only a colour was read.
 *
 * <p>Reflectance is written as the logistic curve of z, so it cannot leave 0 to 1; of all z that give the colour
 * the one with the least sum of squared steps is taken, by Newton's method on the Lagrange equations.
 * Source of the principle: Burns (2020), Color Res. Appl. 45, 8-21 (the hyperbolic tangent slope method; the logistic curve is the
 * same curve on another scale).
 */
public final class SmoothReflectance {
    private static final Grid GRID = Grid.INSIDE;
    private static final int COUNT = GRID.count();
    private static final int MOST_STEPS = 60;
    /** Longest step of one z in one round: beyond it the curve bends too much for a straight prediction. */
    private static final double LONGEST = 1.5;
    /** After a step this short the tristimulus values agree to its square: far below what a colour reading can hold. */
    private static final double SHORT = 1e-7;

    private static final int HALVINGS = 24;
    /** No pigmented film is blacker or whiter; the search for a reachable colour stays within. */
    private static final double DARKEST = 0.5;

    private static final double LIGHTEST = 99.5;

    private SmoothReflectance() {}

    /**
     * A spectrum and what became of the colour.
     *
     * @param reflectance 400 to 700 nm every 10 nm, each above 0 and below 1
     * @param reached     its colour, under the light of the wanted one
     * @param miss        CIEDE2000 to the wanted colour: 0 unless no reflectance between 0 and 1 has that colour
     */
    public record Fit(Spectrum reflectance, Lab reached, double miss) {}

    /** @return the smoothest reflectance with this colour; the nearest reachable one's where there is none */
    public static Spectrum of(Lab colour) {
        return fit(colour).reflectance();
    }

    /** @return as {@link #of}, and how near it came */
    public static Fit fit(Lab colour) {
        double[][] weight = weights(colour.viewing());
        double[] z = solve(weight, colour);
        if (z == null) {
            z = solveNearer(weight, colour);
        }
        double[] reflectance = new double[COUNT];
        for (int i = 0; i < COUNT; i++) {
            reflectance[i] = logistic(z[i]);
        }
        Spectrum spectrum = Spectrum.of(GRID, reflectance);
        Lab reached = Lab.of(spectrum, colour.viewing());
        return new Fit(spectrum, reached, Ciede2000.between(reached, colour));
    }

    /** Toward the grey of the same lightness until a reflectance exists: keeps the hue, gives up chroma. */
    private static double[] solveNearer(double[][] weight, Lab colour) {
        double lightness = Math.max(DARKEST, Math.min(LIGHTEST, colour.lightness()));
        double reachable = 0;
        double beyond = 1;
        double[] best = solve(weight, new Lab(lightness, 0, 0, colour.viewing()));
        if (best == null) {
            throw new IllegalStateException("no smooth grey of lightness " + lightness + " was found");
        }
        for (int i = 0; i < HALVINGS; i++) {
            double share = (reachable + beyond) / 2;
            double[] z = solve(weight, new Lab(lightness, share * colour.a(), share * colour.b(), colour.viewing()));
            if (z == null) {
                beyond = share;
            } else {
                reachable = share;
                best = z;
            }
        }
        return best;
    }

    private static double[] solve(double[][] weight, Lab colour) {
        Xyz xyz = colour.toXyz();
        Xyz white = colour.viewing().white();
        double[] wanted = {xyz.x() / white.x(), xyz.y() / white.y(), xyz.z() / white.z()};
        if (!(wanted[0] > 0 && wanted[1] > 0 && wanted[2] > 0 && wanted[1] < 1)) {
            return null;
        }
        double[] z = new double[COUNT];
        java.util.Arrays.fill(z, Math.log(wanted[1] / (1 - wanted[1])));
        double[] pull = new double[3];
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.lu(COUNT + 3);
        DMatrixRMaj matrix = new DMatrixRMaj(COUNT + 3, COUNT + 3);
        DMatrixRMaj right = new DMatrixRMaj(COUNT + 3, 1);
        DMatrixRMaj step = new DMatrixRMaj(COUNT + 3, 1);
        for (int round = 0; round < MOST_STEPS; round++) {
            fill(weight, wanted, z, pull, matrix, right);
            if (!solver.setA(matrix) || !(solver.quality() > 1e-300)) {
                return null;
            }
            solver.solve(right, step);
            double longest = 0;
            for (int i = 0; i < COUNT; i++) {
                longest = Math.max(longest, Math.abs(step.get(i, 0)));
            }
            if (!Double.isFinite(longest)) {
                return null;
            }
            double share = longest > LONGEST ? LONGEST / longest : 1;
            for (int i = 0; i < COUNT; i++) {
                z[i] += share * step.get(i, 0);
            }
            for (int axis = 0; axis < 3; axis++) {
                pull[axis] += share * step.get(COUNT + axis, 0);
            }
            if (longest < SHORT) {
                return z;
            }
        }
        return null;
    }

    /** Newton's equations for z and the three multipliers. */
    private static void fill(
            double[][] weight, double[] wanted, double[] z, double[] pull, DMatrixRMaj matrix, DMatrixRMaj right) {
        matrix.zero();
        double[] reached = new double[3];
        for (int i = 0; i < COUNT; i++) {
            double r = logistic(z[i]);
            double slope = r * (1 - r);
            double bend = slope * (1 - 2 * r);
            double force = 0;
            for (int axis = 0; axis < 3; axis++) {
                double w = weight[axis][i];
                reached[axis] += w * r;
                force += pull[axis] * w;
                matrix.set(i, COUNT + axis, w * slope);
                matrix.set(COUNT + axis, i, w * slope);
            }
            double left = i > 0 ? z[i] - z[i - 1] : 0;
            double rest = i < COUNT - 1 ? z[i] - z[i + 1] : 0;
            int neighbours = (i > 0 ? 1 : 0) + (i < COUNT - 1 ? 1 : 0);
            matrix.set(i, i, 2 * neighbours + force * bend);
            if (i > 0) {
                matrix.set(i, i - 1, -2);
            }
            if (i < COUNT - 1) {
                matrix.set(i, i + 1, -2);
            }
            right.set(i, 0, -(2 * (left + rest) + force * slope));
        }
        for (int axis = 0; axis < 3; axis++) {
            right.set(COUNT + axis, 0, wanted[axis] - reached[axis]);
        }
    }

    /** Weights over the white, rows X, Y, Z. */
    private static double[][] weights(Viewing viewing) {
        TristimulusWeights weights = TristimulusWeights.of(viewing, GRID);
        double[][] rows = weights.toArray();
        double[] white = {
            weights.white().x(), weights.white().y(), weights.white().z()
        };
        for (int axis = 0; axis < 3; axis++) {
            for (int i = 0; i < COUNT; i++) {
                rows[axis][i] /= white[axis];
            }
        }
        return rows;
    }

    private static double logistic(double z) {
        return 1 / (1 + Math.exp(-z));
    }
}
