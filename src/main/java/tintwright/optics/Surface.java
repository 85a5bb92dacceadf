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
     * Turns K/S of a film that hides into what an instrument reads, at many wavelengths at once: {@link #measured} of
     * {@link KubelkaMunk#reflectance} in one division.
     */
    public void measureFilm(double[] ratio, Geometry geometry) {
        double mirror = geometry == Geometry.SPECULAR_INCLUDED ? outside : 0;
        double through = (1 - outside) * (1 - inside);
        for (int w = 0; w < ratio.length; w++) {
            double q = ratio[w];
            ratio[w] = mirror + through / (1 + q + Math.sqrt(q * (q + 2)) - inside);
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
