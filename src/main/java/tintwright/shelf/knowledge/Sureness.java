package tintwright.shelf.knowledge;

import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;

/** How sure a colour is, from the curvature of what was learned. */
final class Sureness {
    private final Unknowns unknowns;
    private final Learning learning;
    private final double[] best;
    private final Unknowns.Curves curves;

    Sureness(Unknowns unknowns, Learning learning, double[] best, Unknowns.Curves curves) {
        this.unknowns = unknowns;
        this.learning = learning;
        this.best = best;
        this.curves = curves;
    }

    /** @return the cured colour of a mix, and how sure that is */
    Prediction predict(Observation mix, Viewing viewing) {
        double[] reflectance = mix.film(best, curves);
        double[][] whitened = whitenedSlope(mix);
        Spectrum spectrum = Spectrum.of(Grid.INSIDE, reflectance);
        Covariance sure = Covariance.of(products(whitened, whitened)).plus(Covariance.of(mix.theoryInLab()));
        return new Prediction(spectrum, Lab.of(spectrum, viewing), sure);
    }

    /**
     * @param mixed the mix whose colour is asked for
     * @param made  the chip that might be made
     * @return how sure the mix would be once the chip had been read by an instrument
     */
    Covariance after(Observation mixed, Observation made) {
        double[][] ofMix = whitenedSlope(mixed);
        double[][] ofChip = whitenedSlope(made);
        double[][] read = products(ofChip, ofChip);
        double[][] theory = made.theoryInLab();
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                read[i][j] += theory[i][j];
            }
            read[i][i] += ColourReading.USUAL_NOISE * ColourReading.USUAL_NOISE;
        }
        Factor factor = Factor.of(read);
        double[][] shared = products(ofMix, ofChip);
        for (double[] row : shared) {
            factor.forward(row);
        }
        double[][] left = products(ofMix, ofMix);
        double[][] gained = products(shared, shared);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                left[i][j] -= gained[i][j];
            }
            left[i][i] = Math.max(0, left[i][i]);
        }
        return Covariance.of(left).plus(Covariance.of(mixed.theoryInLab()));
    }

    /** @return standard deviation of what lies in this direction of the unknowns */
    double deviation(double[] direction) {
        double sum = 0;
        for (double d : learning.whitened(direction)) {
            sum += d * d;
        }
        return Math.sqrt(sum);
    }

    /** Slope of L*, a*, b* against all unknowns, over the factor of the curvature: its products are covariances. */
    private double[][] whitenedSlope(Observation mix) {
        double[][] slope = mix.labSlope(best, curves);
        double[][] whitened = new double[3][unknowns.count()];
        for (int axis = 0; axis < 3; axis++) {
            for (int c = 0; c < mix.columns().length; c++) {
                whitened[axis][mix.columns()[c]] = slope[axis][c];
            }
            whitened[axis] = learning.whitened(whitened[axis]);
        }
        return whitened;
    }

    static double[][] products(double[][] left, double[][] right) {
        double[][] out = new double[left.length][right.length];
        for (int i = 0; i < left.length; i++) {
            for (int j = 0; j < right.length; j++) {
                for (int p = 0; p < left[i].length; p++) {
                    out[i][j] += left[i][p] * right[j][p];
                }
            }
        }
        return out;
    }
}
