package tintwright.colour;

/**
 * CIE tristimulus values, with the light and observer they were made under; the perfect white has Y = 100.
 *
 * <p>Source: CIE 15:2018, clause 7.
 *
 * @param x       X, white about 95 to 116
 * @param y       Y, 0 to 100 for surfaces without fluorescence
 * @param z       Z, white about 28 to 113
 * @param viewing light and observer
 */
public record Xyz(double x, double y, double z, Viewing viewing) {
    public Xyz {
        if (!Double.isFinite(x + y + z)) {
            throw new IllegalArgumentException("X, Y, Z must be finite, were " + x + ", " + y + ", " + z);
        }
        if (viewing == null) {
            throw new IllegalArgumentException("X, Y, Z need the light and observer they were made under");
        }
    }

    /** @return X, Y, Z of a reflectance on any grid under a light */
    public static Xyz of(Spectrum reflectance, Viewing viewing) {
        return TristimulusWeights.of(viewing, reflectance.grid()).xyz(reflectance);
    }
}
