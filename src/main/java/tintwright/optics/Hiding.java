package tintwright.optics;

import java.util.OptionalDouble;
import tintwright.colour.Ciede2000;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;

/**
 * How well a film covers what is under it.
 *
 * <p>The two grounds are those of ISO 6504-3; the measure is the eye's, CIEDE2000, not that standard's ratio of Y.
 */
public final class Hiding {
    /** Internal reflectance of a black card that reads 5 % in air (ISO 6504-3 asks for at most 5; from memory). */
    public static final double BLACK_CARD = Surface.RESIN.internal(0.05, Geometry.SPECULAR_INCLUDED);
    /** Internal reflectance of a white card that reads 80 % in air (ISO 6504-3 asks for 80 +- 2; from memory). */
    public static final double WHITE_CARD = Surface.RESIN.internal(0.80, Geometry.SPECULAR_INCLUDED);

    private static final int HALVINGS = 60;

    private Hiding() {}

    /** @return CIEDE2000 between the film over the black and over the white card */
    public static double difference(Film film, double thickness, Geometry geometry, Viewing viewing) {
        return Ciede2000.between(
                Lab.of(film.over(BLACK_CARD, thickness, geometry), viewing),
                Lab.of(film.over(WHITE_CARD, thickness, geometry), viewing));
    }

    /**
     * The thinnest film over which black and white ground differ by no more than a given CIEDE2000.
     *
     * @param wanted  CIEDE2000, above 0; 1 is just seen edge to edge
     * @param thickest the thickest film to consider
     * @return the thickness in the film's unit; empty when even {@code thickest} does not hide so well
     */
    public static OptionalDouble thickness(
            Film film, double wanted, double thickest, Geometry geometry, Viewing viewing) {
        if (!(wanted > 0)) {
            throw new IllegalArgumentException("the difference to hide to must be above 0, was " + wanted);
        }
        if (!(thickest > 0 && thickest < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the thickest film must be above 0, was " + thickest);
        }
        if (difference(film, thickest, geometry, viewing) > wanted) {
            return OptionalDouble.empty();
        }
        double shows = 0;
        double hides = thickest;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (shows + hides) / 2;
            if (difference(film, middle, geometry, viewing) > wanted) {
                shows = middle;
            } else {
                hides = middle;
            }
        }
        return OptionalDouble.of(hides);
    }
}
