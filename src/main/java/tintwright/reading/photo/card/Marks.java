package tintwright.reading.photo.card;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What is where in a photo.
 *
 * @param cards       cards of known colours
 * @param known       single things of known colour
 * @param spots       what is to be read
 * @param linearCodes the photo's codes are in proportion to light, whatever the file says
 * @param cardOnHull  a person says that the cards lie on the hull in the light of the spots, whatever the ground
 *                    between them looks like
 */
public record Marks(
        List<PlacedCard> cards, List<KnownPatch> known, List<Spot> spots, boolean linearCodes, boolean cardOnHull) {
    public static final Marks NONE = new Marks(List.of(), List.of(), List.of(), false);

    /** Marks of which nobody said where the cards lie. */
    public Marks(List<PlacedCard> cards, List<KnownPatch> known, List<Spot> spots, boolean linearCodes) {
        this(cards, known, spots, linearCodes, false);
    }

    public Marks {
        cards = List.copyOf(cards);
        known = List.copyOf(known);
        spots = List.copyOf(spots);
        Set<String> names = new HashSet<>();
        for (Spot spot : spots) {
            if (!names.add(spot.name())) {
                throw new IllegalArgumentException("two spots are called \"" + spot.name() + "\"; give each its name");
            }
        }
    }

    /** The same, with the person's word on where the cards lie. */
    public Marks withCardOnHull(boolean said) {
        return new Marks(cards, known, spots, linearCodes, said);
    }
}
