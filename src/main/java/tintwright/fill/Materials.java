package tintwright.fill;

import java.util.OptionalDouble;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Mix;
import tintwright.fill.repair.Sizes;

/**
 * What is filled with.
 *
 * @param densities    grams per millilitre of everything mixed
 * @param waxed        true when the gel coat holds wax and cures dry in air
 * @param waxedPaste   true when the gel paste does
 * @param hidingFilmMm film of the neat gel coat that hides, mm, from the optics; empty while nobody knows
 * @param seal         what keeps the air from the last coat
 */
public record Materials(
        Densities densities, boolean waxed, boolean waxedPaste, OptionalDouble hidingFilmMm, Seal seal) {
    /** What keeps the air, which leaves gel coat tacky, from a last coat without wax of its own. */
    public enum Seal {
        /** Wax solution stirred into the last coat. */
        WAX,
        /** Plastic film or sprayed PVA over it. */
        FILM
    }

    public Materials {
        hidingFilmMm.ifPresent(mm -> Sizes.aboveZero("hiding film", mm, 3, "mm"));
    }

    /** Paste without wax, and wax in the last coat. */
    public Materials(Densities densities, boolean waxed, OptionalDouble hidingFilmMm) {
        this(densities, waxed, false, hidingFilmMm, Seal.WAX);
    }

    /** @return whether this mix holds wax by itself */
    boolean waxes(Mix mix) {
        return waxed || waxedPaste && mix.paste() > 0;
    }
}
