package tintwright.cup;

import java.time.Instant;

/**
 * One line in the story of a cup.
 *
 * @param id   unique in its cup
 * @param at   when it was written, given from outside
 * @param deed what was done
 */
public record CupEntry(String id, Instant at, Deed deed) {
    public CupEntry {
        if (id == null || id.isBlank()) {
            throw new IllegalArgumentException("an entry needs an id");
        }
    }
}
