package tintwright.window;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Shelf;

/**
 * What is on the bench: everything a person can change and undo, apart from the cup itself.
 *
 * @param boat      name of the boat
 * @param places    the places of the boat that were read; may be empty
 * @param place     index of the place in hand, or -1 when there is none
 * @param shelf     what stands on the shelf
 * @param grams     how much of the mix is wanted
 * @param scaleStep smallest step of the scale in grams
 * @param off       ids of tints that are not to be used
 * @param fill      what is to be filled
 */
record Job(String boat, List<PlaceReadings> places, int place, Shelf shelf, double grams, double scaleStep,
        Set<String> off, FillDraft fill) {
    Job {
        places = List.copyOf(places);
        off = Set.copyOf(off);
        if (place < -1 || place >= places.size()) {
            throw new IllegalArgumentException("place must be -1 to " + (places.size() - 1) + ", was " + place);
        }
    }

    Job at(int otherPlace) {
        return new Job(boat, places, otherPlace, shelf, grams, scaleStep, off, fill);
    }

    Job of(double otherGrams) {
        return new Job(boat, places, place, shelf, otherGrams, scaleStep, off, fill);
    }

    Job weighedBy(double otherStep) {
        return new Job(boat, places, place, shelf, grams, otherStep, off, fill);
    }

    Job using(String tint, boolean used) {
        Set<String> others = new TreeSet<>(off);
        if (used) {
            others.remove(tint);
        } else {
            others.add(tint);
        }
        return new Job(boat, places, place, shelf, grams, scaleStep, others, fill);
    }

    Job with(Shelf other) {
        return new Job(boat, places, place, other, grams, scaleStep, off, fill);
    }

    Job withPlaces(String otherBoat, List<PlaceReadings> others, int chosen) {
        return new Job(otherBoat, others, chosen, shelf, grams, scaleStep, off, fill);
    }

    Job filling(FillDraft other) {
        return new Job(boat, places, place, shelf, grams, scaleStep, off, other);
    }
}
