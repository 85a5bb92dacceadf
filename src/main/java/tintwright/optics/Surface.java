package tintwright.optics;

import tintwright.colour.Geometry;

/**
 * The boundary between air and resin: what it mirrors outside, and what it throws back inside.
 *
 * <p>Source: Saunderson (1942), J. Opt. Soc. Am. 32, 727-736.
 *
 * @param outside k1, share of the incoming light mirrored at the surface, 0 to below 1; 0.04 for index 1.5
 * @param inside  k2, share of the outgoing light thrown back into the film, 0 to below 1; 0.60 for index 1.5
 */
public record Surface(double outside, double inside) {
    /** A cured polyester, index about 1.5. */
    public static final Surface RESIN = new Surface(0.04, 0.60);

    public Surface {
        if (!(outside >= 0 && outside < 1 && inside >= 0 && inside < 1)) {
            throw new IllegalArgumentException("surface shares must be 0 to below 1, were " + outside + ", " + inside);
        }
    }

    /** @return what an instrument reads from this internal reflectance (0 to 1) */
    public double measured(double internal, Geometry geometry) {
        double through = (1 - outside) * (1 - inside) * internal / (1 - inside * internal);
        return geometry == Geometry.SPECULAR_INCLUDED ? outside + through : through;
    }

    /**
     * What an instrument reads of many films that hide: {@link #measured} of {@link KubelkaMunk#reflectance} in one
     * division.
     *
     * @param k        absorption of each
     * @param s        scattering of each, above 0
     * @param readings filled with a reading of each
     */
    public void measureFilms(double[] k, double[] s, Geometry geometry, double[] readings) {
        double mirror = geometry == Geometry.SPECULAR_INCLUDED ? outside : 0;
        double through = (1 - outside) * (1 - inside);
        double back = 1 - inside;
        for (int i = 0; i < readings.length; i++) {
            double absorbs = k[i];
            double scatters = s[i];
            double root = Math.sqrt(absorbs * (absorbs + 2 * scatters));
            readings[i] = mirror + through * scatters / (back * scatters + absorbs + root);
        }
    }

    /** @return the internal reflectance behind a reading; below 0 or above 1 when noise took the reading there */
    public double internal(double measured, Geometry geometry) {
        double through = geometry == Geometry.SPECULAR_INCLUDED ? measured - outside : measured;
        return through / ((1 - outside) * (1 - inside) + inside * through);
    }

    /** @return the slope of {@link #measured} at this internal reflectance, the same for both geometries */
    public double slope(double internal) {
        double rest = 1 - inside * internal;
        return (1 - outside) * (1 - inside) / (rest * rest);
    }
}
