package tintwright.optics;

/**
 * Two-constant theory of a film that may let its ground show through.
 *
 * <p>Source: Kubelka and Munk (1931), Z. tech. Phys. 12, 593-601; Kubelka (1948), J. Opt. Soc. Am. 38, 448-457.
 * All reflectances here are internal, 0 to 1: take the surface off first, see {@link Surface}.
 * K and S are per unit of thickness, in whatever unit the thickness is given.
 */
public final class FiniteFilm {
    /** Below this K times S term the film absorbs so little that the series is exact to the last bit. */
    private static final double SMALL = 1e-4;

    private FiniteFilm() {}

    /**
     * Reflectance of a film on a ground.
     *
     * @param absorption K per unit of thickness, 0 or more
     * @param scattering S per unit of thickness, 0 or more
     * @param thickness  0 or more
     * @param ground     internal reflectance of what lies below, 0 to 1
     * @return internal reflectance, 0 to 1
     */
    public static double reflectance(double absorption, double scattering, double thickness, double ground) {
        if (!(absorption >= 0 && scattering >= 0 && thickness >= 0)) {
            throw new IllegalArgumentException(
                    "K, S and thickness must be 0 or more, were " + absorption + ", " + scattering + ", " + thickness);
        }
        if (!(ground >= 0 && ground <= 1)) {
            throw new IllegalArgumentException("internal reflectance of the ground must be 0 to 1, was " + ground);
        }
        if (thickness == 0) {
            return ground;
        }
        double u = attenuation(absorption, scattering, thickness);
        double sum = absorption + scattering;
        if (u + sum - ground * scattering == 0) {
            return ground;
        }
        return (scattering + ground * (u - sum)) / (u + sum - ground * scattering);
    }

    /** b S coth(b S X) with b S = sqrt(K (K + 2 S)); tends to 1/X as K vanishes. */
    private static double attenuation(double absorption, double scattering, double thickness) {
        double beta = Math.sqrt(absorption * (absorption + 2 * scattering));
        double depth = beta * thickness;
        if (depth < SMALL) {
            return (1 + depth * depth / 3) / thickness;
        }
        return beta / Math.tanh(depth);
    }
}
