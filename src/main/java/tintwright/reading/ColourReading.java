package tintwright.reading;

import java.util.List;
import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;

/**
 * A reading that holds only a colour: from a colorimeter or from a photo.
 *
 * @param lab        the colour with its light and observer
 * @param covariance how far it may be off by chance, without what all readings of its photo share
 * @param geometry   with or without gloss
 * @param film       wet or cured
 * @param photo      the photo it was read from: readings of one photo share one unknown bias; empty otherwise
 */
public record ColourReading(
        Lab lab, Covariance covariance, Geometry geometry, FilmState film, Optional<PhotoBias> photo)
        implements Reading {
    /** Repeatability of a pocket colorimeter on each axis; common practice, no source. */
    public static final double USUAL_NOISE = 0.3;

    /**
     * What all readings of one photo share.
     *
     * @param photo      name of the photo
     * @param covariance how wide the shared error is, in Lab units
     * @param directions of the shared error, each to be taken times one unit normal that all readings of the photo have
     *                   in common: what is learned of one tells of the others. Empty when the error is taken to be the
     *                   same for all of them
     */
    public record PhotoBias(String photo, Covariance covariance, List<Direction> directions) {
        public PhotoBias {
            directions = List.copyOf(directions);
        }

        /** An error that is the same for all readings of the photo. */
        public PhotoBias(String photo, Covariance covariance) {
            this(photo, covariance, List.of());
        }

        /** @return an error along these directions */
        public static PhotoBias along(String photo, List<Direction> directions) {
            Covariance sum = Covariance.same(0);
            for (Direction one : directions) {
                sum = sum.plus(one.covariance());
            }
            return new PhotoBias(photo, sum, directions);
        }
    }

    /**
     * One way in which the readings of a photo are off together.
     *
     * @param lightness change of L* for one standard deviation
     * @param a         change of a*
     * @param b         change of b*
     */
    public record Direction(double lightness, double a, double b) {
        /** @return three directions that make up this covariance, one after the other (Cholesky) */
        public static List<Direction> of(Covariance covariance) {
            double l = Math.sqrt(covariance.ll());
            double la = l > 0 ? covariance.la() / l : 0;
            double lb = l > 0 ? covariance.lb() / l : 0;
            double a = Math.sqrt(Math.max(0, covariance.aa() - la * la));
            double ab = a > 0 ? (covariance.ab() - la * lb) / a : 0;
            double b = Math.sqrt(Math.max(0, covariance.bb() - lb * lb - ab * ab));
            return List.of(new Direction(l, la, lb), new Direction(0, a, ab), new Direction(0, 0, b));
        }

        Covariance covariance() {
            return new Covariance(lightness * lightness, lightness * a, lightness * b, a * a, a * b, b * b);
        }
    }

    @Override
    public Optional<Lab> colour(Viewing viewing) {
        return lab.viewing().equals(viewing) ? Optional.of(lab) : Optional.empty();
    }

    @Override
    public Viewing judgedUnder() {
        return lab.viewing();
    }

    @Override
    public Covariance scatter(Viewing viewing) {
        if (!lab.viewing().equals(viewing)) {
            throw new IllegalArgumentException(
                    "this colour was read under " + lab.viewing() + ", so nothing is known of it under " + viewing);
        }
        return covariance;
    }
}
