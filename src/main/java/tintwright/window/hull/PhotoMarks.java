package tintwright.window.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.PlacedCard;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.reading.photo.card.Spot;

/**
 * The marks while a hand moves them: the corners may stand crossed for a moment, which {@link Marks} never are.
 *
 * @param card    the card
 * @param corners its four outer corners, or none while no card is placed
 * @param spots   what is to be read
 * @param rest    what else the marks file held: single patches of known colour, further cards
 */
record PhotoMarks(ReferenceCard card, List<PixelPoint> corners, List<Spot> spots, Marks rest) {
    PhotoMarks {
        corners = List.copyOf(corners);
        spots = List.copyOf(spots);
    }

    static PhotoMarks none(ReferenceCard card) {
        return new PhotoMarks(card, List.of(), List.of(), Marks.NONE);
    }

    /** Takes marks from a file: its first card becomes the one to move. */
    static PhotoMarks of(Marks marks, ReferenceCard otherwise) {
        if (marks.cards().isEmpty()) {
            return new PhotoMarks(otherwise, List.of(), marks.spots(), marks);
        }
        PlacedCard first = marks.cards().get(0);
        return new PhotoMarks(
                first.card(),
                first.corners(),
                marks.spots(),
                new Marks(
                        marks.cards().subList(1, marks.cards().size()),
                        marks.known(),
                        List.of(),
                        marks.linearCodes(),
                        marks.cardOnHull()));
    }

    PhotoMarks withCard(ReferenceCard other) {
        return new PhotoMarks(other, corners, spots, rest);
    }

    PhotoMarks withCorners(List<PixelPoint> moved) {
        return new PhotoMarks(card, moved, spots, rest);
    }

    PhotoMarks withCorner(int index, PixelPoint to) {
        List<PixelPoint> moved = new ArrayList<>(corners);
        moved.set(index, to);
        return withCorners(moved);
    }

    PhotoMarks withSpots(List<Spot> changed) {
        return new PhotoMarks(card, corners, changed, rest);
    }

    PhotoMarks withSpot(int index, Spot changed) {
        List<Spot> all = new ArrayList<>(spots);
        all.set(index, changed);
        return withSpots(all);
    }

    PhotoMarks withCardOnHull(boolean said) {
        return new PhotoMarks(card, corners, spots, rest.withCardOnHull(said));
    }

    /** @return the card where it lies; empty while none is placed or its corners are crossed */
    Optional<PlacedCard> placed() {
        try {
            return corners.size() == 4 ? Optional.of(new PlacedCard(card, corners)) : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** @throws IllegalArgumentException when the corners are crossed; the message says where */
    Marks whole() {
        List<PlacedCard> cards = new ArrayList<>();
        if (corners.size() == 4) {
            cards.add(new PlacedCard(card, corners));
        }
        cards.addAll(rest.cards());
        return new Marks(cards, rest.known(), spots, rest.linearCodes(), rest.cardOnHull());
    }
}
