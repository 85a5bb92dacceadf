package tintwright.optics;

/**
 * Two-constant theory of an opaque film.
 *
 * <p>Source: Kubelka and Munk (1931), Z. tech. Phys. 12, 593-601; Kubelka (1948), J. Opt. Soc. Am. 38, 448.
 * All reflectances here are internal: take the surface off first, see {@link Surface}.
 */
public final class KubelkaMunk {
    private KubelkaMunk() {}

    /**
     * @param ratio K/S, absorption over scattering, 0 or more
     * @return internal reflectance of a film that hides, above 0, at most 1
     */
    public static double reflectance(double ratio) {
        // The reciprocal form of 1 + q - sqrt(q^2 + 2q): no cancellation for near-blacks.
        return 1 / (1 + ratio + Math.sqrt(ratio * (ratio + 2)));
    }

    /**
     * @param reflectance internal reflectance of a film that hides, above 0, at most 1
     * @return K/S, 0 or more
     */
    public static double ratio(double reflectance) {
        if (!(reflectance > 0 && reflectance <= 1)) {
            throw new IllegalArgumentException(
                    "internal reflectance must be above 0 and at most 1, was " + reflectance);
        }
        return (1 - reflectance) * (1 - reflectance) / (2 * reflectance);
    }
}
