package tintwright.reading.photo.sheet;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tintwright.reading.FilmState;

/**
 * What a person has laid on the sheet; with {@link #PAPER_ALONE} the paper must do.
 *
 * @param chips      in the numbered places
 * @param tapeLayers how many layers of white plumber's tape (PTFE) lie in their place; 0 for none
 * @param dab        of the cup, at the window's edge; empty when none lies there
 */
public record SheetContents(List<Chip> chips, int tapeLayers, Optional<Chip> dab) {
    public static final SheetContents PAPER_ALONE = new SheetContents(List.of(), 0, Optional.empty());

    /** Places of the numbered chips: from 1 to this. */
    public static final int PLACES = SheetLayout.A4.places().size();

    public SheetContents {
        chips = List.copyOf(chips);
        Set<Integer> taken = new HashSet<>();
        Set<String> names = new HashSet<>();
        for (Chip chip : chips) {
            if (chip.place() < 1 || chip.place() > PLACES) {
                throw new IllegalArgumentException("the sheet has places 1 to " + PLACES + "; \"" + chip.name()
                        + "\" was said to lie in place " + chip.place());
            }
            if (!taken.add(chip.place())) {
                throw new IllegalArgumentException(
                        "two chips are said to lie in place " + chip.place() + "; give each its own");
            }
            if (!names.add(chip.name()) || chip.name().equals(HULL)) {
                throw new IllegalArgumentException(
                        "two things on the sheet are called \"" + chip.name() + "\"; give each its own name");
            }
        }
        if (dab.isPresent() && !names.add(dab.get().name())) {
            throw new IllegalArgumentException(
                    "the dab and a chip are both called \"" + dab.get().name() + "\"; give each its own name");
        }
        if (tapeLayers < 0 || tapeLayers > 100) {
            throw new IllegalArgumentException("layers of tape must be 0 to 100, were " + tapeLayers);
        }
    }

    /** What the reading through the window is called. */
    public static final String HULL = "hull";

    /**
     * A chip, or the dab.
     *
     * @param place number of its place, from 1; 0 for the dab
     * @param name  what is written under it
     * @param parts what was weighed into it, grams by id; empty when that is not known
     * @param film  wet or cured
     */
    public record Chip(int place, String name, Map<String, Double> parts, FilmState film) {
        public Chip {
            if (name == null || name.isBlank()) {
                throw new IllegalArgumentException("every chip on the sheet needs a name");
            }
            parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        }
    }
}
