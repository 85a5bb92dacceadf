package tintwright.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import tintwright.reading.Reading;

/**
 * A cup that was set aside.
 *
 * @param id       unique on the shelf
 * @param name     what the person wrote on the cup
 * @param parts    what is in it, grams by id; their sum is how much is left
 * @param readings what was read from it; may be empty
 * @param setAside day it was set aside, when known
 */
public record Leftover(String id, String name, Parts parts, List<Reading> readings, Optional<LocalDate> setAside) {
    public Leftover {
        Names.check("leftover", id, name);
        readings = List.copyOf(readings);
    }
}
