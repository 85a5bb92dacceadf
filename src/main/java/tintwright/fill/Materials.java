package tintwright.fill;

import java.util.OptionalDouble;

/**
 * What is filled with.
 *
 * @param densities    grams per millilitre of everything mixed
 * @param waxed        true when the gel coat holds wax and cures dry in air
 * @param hidingFilmMm film of the neat gel coat that hides, mm, from the optics; empty while nobody knows
 */
public record Materials(Densities densities, boolean waxed, OptionalDouble hidingFilmMm) {
    public Materials {
        hidingFilmMm.ifPresent(mm -> Sizes.aboveZero("hiding film", mm, 3, "mm"));
    }
}
