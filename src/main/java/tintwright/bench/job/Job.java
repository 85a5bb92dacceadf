package tintwright.bench.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import tintwright.bench.log.PutAway;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Shelf;

/**
 * What is on a bench, whichever face works on it: everything a person can change and undo, and all that is kept.
 *
 * @param boat      name of the boat
 * @param places    the places of the boat that were read; may be empty
 * @param place     index of the place in hand, or -1 when there is none
 * @param shelf     what stands on the shelf
 * @param grams     how much of the mix is wanted
 * @param scaleStep smallest step of the scale in grams
 * @param off       ids of tints that are not to be used
 * @param fill      what is to be filled there and at the other places
 * @param cup       the cup in hand; empty before one is begun
 * @param ahead     what is still to be done of the way back that was chosen, in order; mostly empty
 */
public record Job(
        String boat,
        List<PlaceReadings> places,
        int place,
        Shelf shelf,
        double grams,
        double scaleStep,
        Set<String> off,
        FillDraft fill,
        Optional<Cup> cup,
        List<Deed> ahead) {
    public Job {
        places = List.copyOf(places);
        off = Set.copyOf(off);
        ahead = List.copyOf(ahead);
        if (place < -1 || place >= places.size()) {
            throw new IllegalArgumentException("place must be -1 to " + (places.size() - 1) + ", was " + place);
        }
        if (!ahead.isEmpty() && cup.isEmpty()) {
            throw new IllegalArgumentException("deeds that are still ahead need a cup");
        }
    }

    public Job at(int otherPlace) {
        return withPlaces(boat, places, otherPlace);
    }

    public Job of(double otherGrams) {
        return new Job(boat, places, place, shelf, otherGrams, scaleStep, off, fill, cup, ahead);
    }

    public Job weighedBy(double otherStep) {
        return new Job(boat, places, place, shelf, grams, otherStep, off, fill, cup, ahead);
    }

    public Job using(String tint, boolean used) {
        Set<String> others = new TreeSet<>(off);
        if (used) {
            others.remove(tint);
        } else {
            others.add(tint);
        }
        return new Job(boat, places, place, shelf, grams, scaleStep, others, fill, cup, ahead);
    }

    /** Another shelf. A cup that holds what does not stand there is not the cup in hand any more; undo brings it back. */
    public Job with(Shelf other) {
        Set<String> stillThere = new TreeSet<>(off);
        stillThere.removeIf(id -> other.tint(id).isEmpty());
        boolean fits = cup.isEmpty()
                || other.base(cup.get().base()).isPresent()
                        && cup.get().state().parts().stream()
                                .allMatch(parts -> parts.grams().keySet().stream()
                                        .allMatch(id -> other.base(id).isPresent()
                                                || other.tint(id).isPresent()
                                                || other.leftover(id).isPresent()));
        return new Job(
                boat,
                places,
                place,
                other,
                grams,
                scaleStep,
                stillThere,
                fill,
                fits ? cup : Optional.empty(),
                fits ? ahead : List.of());
    }

    /**
     * Other places, or another of them in hand: each has its own holes. When they are those of another boat she starts
     * clean: no hole and no cup of the last one.
     */
    public Job withPlaces(String otherBoat, List<PlaceReadings> others, int chosen) {
        boolean same = otherBoat.equals(boat);
        return new Job(
                otherBoat,
                others,
                chosen,
                shelf,
                grams,
                scaleStep,
                same ? off : Set.of(),
                same ? fill.going(name(places, place), name(others, chosen)) : FillDraft.NONE.inTheShopOf(fill),
                same ? cup : Optional.empty(),
                same ? ahead : List.of());
    }

    private static Optional<String> name(List<PlaceReadings> places, int index) {
        return index < 0 ? Optional.empty() : Optional.of(places.get(index).place());
    }

    public Job filling(FillDraft other) {
        return new Job(boat, places, place, shelf, grams, scaleStep, off, other, cup, ahead);
    }

    public Job mixing(Optional<Cup> other) {
        return new Job(boat, places, place, shelf, grams, scaleStep, off, fill, other, List.of());
    }

    /** The cup in hand is done: its chips teach the shelf, the tubs hold less, and what was poured off stands there. */
    public Job cupDone(LocalDate day) {
        return cup.map(done -> with(PutAway.of(shelf, done, day)).mixing(Optional.empty()))
                .orElse(this);
    }

    public Job after(Cup changed, List<Deed> stillToDo) {
        return new Job(boat, places, place, shelf, grams, scaleStep, off, fill, Optional.of(changed), stillToDo);
    }
}
