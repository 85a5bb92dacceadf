package tintwright.reading;

import java.util.List;

/**
 * What was read at one place of a boat: the target to match.
 *
 * @param boat     name of the boat; may be empty
 * @param place    where on it, such as "port bow"
 * @param readings at least one
 * @param note     how the place has aged, how it was cleaned; may be empty
 */
public record PlaceReadings(String boat, String place, List<Reading> readings, String note) {
    public PlaceReadings {
        if (place == null || place.isBlank()) {
            throw new IllegalArgumentException("a target needs a place, such as \"port bow\"");
        }
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("the target \"" + place + "\" needs at least one reading");
        }
        readings = List.copyOf(readings);
    }

    /** @return true when a meter was held to it: whoever read it so can read another so too */
    public boolean metered() {
        return readings.stream()
                .anyMatch(each -> each.photo().isEmpty() && HullFamily.of(each).isEmpty());
    }
}
