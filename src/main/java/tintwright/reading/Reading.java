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
}
