package tintwright.colour;

import java.util.Arrays;

/**
 * Spectral reflectance factors on a regular grid.
 *
 * <p>Values lie between -0.02 (noise of an instrument near black) and 1.5 (fluorescent or glossy samples).
 */
public final class Spectrum {
    /** Lowest value an honest instrument shows near black. */
    public static final double LEAST = -0.02;
    /** Highest value a fluorescent or glossy sample shows. */
    public static final double MOST = 1.5;

    private final Grid grid;
    private final double[] values;

    private Spectrum(Grid grid, double[] values) {
        this.grid = grid;
        this.values = values;
    }

    /**
     * @param grid   the wavelengths
     * @param values reflectance factors, 0 to 1 (allowed -0.02 to 1.5), one for each wavelength
     */
    public static Spectrum of(Grid grid, double... values) {
        if (values.length != grid.count()) {
            throw new IllegalArgumentException(
                    "expected " + grid.count() + " reflectances, " + grid + ", got " + values.length);
        }
        for (int i = 0; i < values.length; i++) {
            if (!(values[i] >= LEAST && values[i] <= MOST)) {
                throw new IllegalArgumentException(
                        "reflectance must be -0.02 to 1.5, was " + values[i] + " at " + grid.nm(i) + " nm");
            }
        }
        return new Spectrum(grid, values.clone());
    }

    public Grid grid() {
        return grid;
    }

    /** @return reflectance at wavelength number {@code index} of the grid */
    public double at(int index) {
        return values[index];
    }

    /** @return a copy of the reflectances, in the order of the grid */
    public double[] toArray() {
        return values.clone();
    }

    /**
     * The same reflectance on another grid.
     *
     * <p>Between readings the curve of Sprague, which the standard recommends for regular grids (Lagrange's with
     * fewer than six readings); outside the measured range the end value is held.
     * Source: CIE 167:2005; CIE 15:2018, 7.2.3 and 7.2.2 (outside the range).
     */
    public Spectrum resampled(Grid wanted) {
        if (wanted.equals(grid)) {
            return this;
        }
        double[] out = new double[wanted.count()];
        for (int i = 0; i < out.length; i++) {
            out[i] = Math.max(LEAST, Math.min(MOST, Interpolation.smooth(grid, values, wanted.nm(i))));
        }
        return new Spectrum(wanted, out);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Spectrum that && grid.equals(that.grid) && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return 31 * grid.hashCode() + Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return "Spectrum " + grid + " " + Arrays.toString(values);
    }
}
