package tintwright.optics;

import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Spectrum;

/** A paint as a film: K and S at every wavelength, per unit of thickness, and its boundary to air. */
public final class Film {
    private final Grid grid;
    private final double[] absorption;
    private final double[] scattering;
    private final Surface surface;

    /**
     * @param grid       the wavelengths
     * @param absorption K, 0 or more, one for each wavelength
     * @param scattering S, 0 or more, one for each wavelength
     * @param surface    the boundary to air
     */
    public Film(Grid grid, double[] absorption, double[] scattering, Surface surface) {
        if (absorption.length != grid.count() || scattering.length != grid.count()) {
            throw new IllegalArgumentException("expected K and S at " + grid.count() + " wavelengths, " + grid
                    + ", got " + absorption.length + " and " + scattering.length);
        }
        this.grid = grid;
        this.absorption = absorption.clone();
        this.scattering = scattering.clone();
        this.surface = surface;
    }

    /**
     * @param ground    internal reflectance of the grey ground, 0 to 1
     * @param thickness of the film, 0 or more
     * @return what an instrument reads of this film over that ground
     */
    public Spectrum over(double ground, double thickness, Geometry geometry) {
        double[] read = new double[grid.count()];
        for (int i = 0; i < read.length; i++) {
            double internal = FiniteFilm.reflectance(absorption[i], scattering[i], thickness, ground);
            read[i] = surface.measured(internal, geometry);
        }
        return Spectrum.of(grid, read);
    }
}
