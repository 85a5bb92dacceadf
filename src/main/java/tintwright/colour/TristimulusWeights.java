package tintwright.colour;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Weights that turn reflectances on a grid into X, Y, Z by a sum.
 *
 * <p>Made from the 5 nm products of light and observer, 380 to 780 nm: the reflectance between the grid's
 * wavelengths is the Lagrange interpolation of CIE 15:2018, 7.2.3, and beyond its ends the end value is held;
 * because both are linear, they fold into one weight for each wavelength of the grid. Normalised so that the
 * perfect white has Y = 100. Source: ASTM E308 and E2022.
 */
public final class TristimulusWeights {
    private static final Map<Key, TristimulusWeights> MADE = new ConcurrentHashMap<>();

    private record Key(Viewing viewing, Grid grid) {}

    private final Viewing viewing;
    private final Grid grid;
    private final double[][] weight;
    private final Xyz white;

    private TristimulusWeights(Viewing viewing, Grid grid) {
        this.viewing = viewing;
        this.grid = grid;
        this.weight = new double[3][grid.count()];
        double[] total = new double[3];
        double[] lagrange = new double[4];
        Grid table = Illuminant.TABLE;
        for (int i = 0; i < table.count(); i++) {
            int nm = table.nm(i);
            int first = Interpolation.weights(grid, nm, lagrange);
            for (int axis = 0; axis < 3; axis++) {
                double product = viewing.light().power(nm) * viewing.observer().matching(axis, nm);
                total[axis] += product;
                for (int k = 0; k < 4; k++) {
                    if (lagrange[k] != 0) {
                        weight[axis][first + k] += product * lagrange[k];
                    }
                }
            }
        }
        double scale = 100 / total[1];
        for (double[] axis : weight) {
            for (int i = 0; i < axis.length; i++) {
                axis[i] *= scale;
            }
        }
        this.white = new Xyz(total[0] * scale, 100, total[2] * scale, viewing);
    }

    /** @return the weights for a light, an observer and a grid; made once and kept */
    public static TristimulusWeights of(Viewing viewing, Grid grid) {
        return MADE.computeIfAbsent(new Key(viewing, grid), key -> new TristimulusWeights(viewing, grid));
    }

    /** @return the perfect white, Y = 100 */
    public Xyz white() {
        return white;
    }

    /** @return a copy of the weights: rows X, Y, Z, one column for each wavelength */
    public double[][] toArray() {
        return new double[][] {weight[0].clone(), weight[1].clone(), weight[2].clone()};
    }

    /** @param reflectance on this grid */
    public Xyz xyz(Spectrum reflectance) {
        if (!reflectance.grid().equals(grid)) {
            throw new IllegalArgumentException("expected reflectances " + grid + ", got " + reflectance.grid());
        }
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < grid.count(); i++) {
            double r = reflectance.at(i);
            x += weight[0][i] * r;
            y += weight[1][i] * r;
            z += weight[2][i] * r;
        }
        return new Xyz(x, y, z, viewing);
    }
}
