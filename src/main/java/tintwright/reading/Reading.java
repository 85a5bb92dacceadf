package tintwright.reading;

import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;

/** One thing measured once: a spectrum, or only its colour under one light. */
public sealed interface Reading permits SpectralReading, ColourReading {
    /** Wet or cured. */
    FilmState film();

    /** Whether the gloss of the surface is in it. */
    Geometry geometry();

    /**
     * The colour under a light.
     *
     * @return empty for a colour-only reading made under another light or observer
     */
    Optional<Lab> colour(Viewing viewing);

    /**
     * The light and observer its colour is told for where nobody asks for others: for a colour-only reading the only
     * ones it has, for a spectrum daylight and 10 degrees, which come first in every judgement here.
     */
    Viewing judgedUnder();

    /**
     * How far {@link #colour} may be off by chance, without what all readings of one photo share.
     *
     * @throws IllegalArgumentException for a colour-only reading made under another light or observer
     */
    Covariance scatter(Viewing viewing);

    /** The photo it was read from: readings of one photo share one unknown bias; empty otherwise. */
    Optional<ColourReading.PhotoBias> photo();

    /** All that one reading alone may be off by: its scatter, and its photo's bias where it has one. */
    default Covariance doubt(Viewing viewing) {
        Covariance scatter = scatter(viewing);
        return photo().map(bias -> scatter.plus(bias.covariance())).orElse(scatter);
    }
}
