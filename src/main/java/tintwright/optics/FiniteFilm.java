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
     * What a film is made of, per unit of thickness.
     *
     * @param absorption K, 0 or more
     * @param scattering S, 0 or more; infinite when the readings were alike over both grounds, so that only
     *                   {@link #ratio} is known
     * @param ratio      K/S, 0 or more
     */
    public record Constants(double absorption, double scattering, double ratio) {
        /** @return true when the film hid both grounds: only K/S could be found */
        public boolean hid() {
            return Double.isInfinite(scattering);
        }
    }

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

    /**
     * K and S of a film from its reflectance over two grounds.
     *
     * <p>With a = 1 + K/S and u = b coth(b S X) each reading is one linear equation,
     * a (R + G) + u (R - G) = 1 + R G, so two readings give both.
     *
     * @param overBlack reflectance over the dark ground, internal, above 0, below 1
     * @param black     reflectance of the dark ground, internal, 0 or more
     * @param overWhite reflectance over the light ground, internal, above 0, below 1
     * @param white     reflectance of the light ground, internal, above {@code black}, at most 1
     * @param thickness of the film, above 0
     * @return K and S per unit of thickness; noise that asks for a negative K gives K = 0
     */
    public static Constants constants(
            double overBlack, double black, double overWhite, double white, double thickness) {
        if (!(overBlack > 0 && overBlack < 1 && overWhite > 0 && overWhite < 1)) {
            throw new IllegalArgumentException("internal reflectance over black and over white must be above 0 and"
                    + " below 1, were " + overBlack + ", " + overWhite);
        }
        if (!(black >= 0 && white <= 1 && black < white)) {
            throw new IllegalArgumentException(
                    "the grounds must be 0 to 1, the black one darker, were " + black + ", " + white);
        }
        if (!(thickness > 0 && thickness < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("thickness must be above 0, was " + thickness);
        }
        double sum1 = overBlack + black;
        double step1 = overBlack - black;
        double one1 = 1 + overBlack * black;
        double sum2 = overWhite + white;
        double step2 = overWhite - white;
        double one2 = 1 + overWhite * white;
        double determinant = sum1 * step2 - sum2 * step1;
        double a = (one1 * step2 - one2 * step1) / determinant;
        double u = (sum1 * one2 - sum2 * one1) / determinant;
        if (!(overBlack < overWhite) || !Double.isFinite(a) || !(u > 0)) {
            double ratio = KubelkaMunk.ratio((overBlack + overWhite) / 2);
            return new Constants(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, ratio);
        }
        if (a <= 1) {
            return new Constants(0, 1 / (u * thickness), 0);
        }
        double b = Math.sqrt((a - 1) * (a + 1));
        double share = b / u;
        if (share >= 1) {
            return new Constants(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, a - 1);
        }
        double scattering = share < SMALL
                ? (1 + share * share / 3) / (u * thickness)
                : 0.5 * Math.log1p(2 * share / (1 - share)) / (b * thickness);
        return new Constants(scattering * (a - 1), scattering, a - 1);
    }
}
