package tintwright.reading.photo.card;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import tintwright.reading.FilmState;

/**
 * Something in a photo whose colour is wanted.
 *
 * @param name    what it is called
 * @param purpose hull or chip
 * @param centre  where it lies
 * @param radius  pixels around the centre that show nothing else
 * @param film    wet or cured
 * @param parts   for a chip, what it was mixed from: parts by mass of each named stock; empty for a hull
 */
public record Spot(
        String name, Purpose purpose, PixelPoint centre, double radius, FilmState film, Map<String, Double> parts) {
    /** What a spot is for. */
    public enum Purpose {
        /** A place on the boat: what to match. */
        HULL,
        /** A mix of known parts: what the shelf learns from. */
        CHIP
    }

    public Spot {
        checkRadius(name, radius);
        parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        if (purpose == Purpose.HULL && !parts.isEmpty()) {
            throw new IllegalArgumentException(
                    "the spot \"" + name + "\" is on the hull and cannot have parts; make " + "it a chip");
        }
    }

    /** A cured place on the hull. */
    public static Spot hull(String name, double x, double y, double radius) {
        return new Spot(name, Purpose.HULL, new PixelPoint(x, y), radius, FilmState.CURED, Map.of());
    }

    /** The same spot elsewhere. */
    public Spot at(PixelPoint where) {
        return new Spot(name, purpose, where, radius, film, parts);
    }

    static void checkRadius(String name, double radius) {
        if (!(radius > 0 && radius < 100_000)) {
            throw new IllegalArgumentException("the radius of \"" + name + "\" must be above 0 pixels, was " + radius);
        }
    }
}
