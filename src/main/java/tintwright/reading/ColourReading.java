package tintwright.reading;

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
     */
    public record PhotoBias(String photo, Covariance covariance) {}

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
