package tintwright.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import tintwright.reading.Reading;

/**
 * A small cured sample of known parts, and what was read from it.
 *
 * @param id       unique on the shelf
 * @param parts    what was weighed into it, grams by id of base, tint or leftover
 * @param readings what was read from it, at least one
 * @param madeOn   day it was made, when known
 * @param note     how it was drawn down: film, ground, anything worth knowing; may be empty
 */
public record Chip(String id, Parts parts, List<Reading> readings, Optional<LocalDate> madeOn, String note) {
    public Chip {
        if (id == null || id.isBlank()) {
            throw new IllegalArgumentException("a chip needs an id");
        }
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("chip \"" + id + "\" needs at least one reading");
        }
        readings = List.copyOf(readings);
    }
}
