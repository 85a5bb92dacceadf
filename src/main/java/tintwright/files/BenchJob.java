package tintwright.files;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.fill.FillOrder;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Shelf;

/**
 * What is on a bench: everything of the job in hand that is kept, whichever face works on it.
 *
 * @param boat      name of the boat; may be empty
 * @param places    the places of the boat that were read; may be empty
 * @param place     index of the place in hand, or -1 when there is none
 * @param shelf     what stands on the shelf
 * @param grams     how much of the mix is wanted
 * @param scaleStep smallest step of the scale in grams
 * @param off       ids of tints that are not to be used
 * @param fill      what is to be filled; empty when nothing was typed there
 * @param cup       the cup in hand; empty before one is begun
 * @param ahead     what is still to be done of the way back that was chosen, in order; mostly empty
 */
public record BenchJob(
        String boat,
        List<PlaceReadings> places,
        int place,
        Shelf shelf,
        double grams,
        double scaleStep,
        Set<String> off,
        Optional<Fill> fill,
        Optional<Cup> cup,
        List<Deed> ahead) {
    /**
     * @param order     the repairs and all that was typed with them
     * @param repairs   false when the list is empty still and its one repair only holds the place
     * @param baseHides film of the base that hides, mm, as typed
     */
    public record Fill(FillOrder order, boolean repairs, OptionalDouble baseHides) {}

    public BenchJob {
        places = List.copyOf(places);
        off = Set.copyOf(new TreeSet<>(off));
        ahead = List.copyOf(ahead);
        if (place < -1 || place >= places.size()) {
            throw new IllegalArgumentException("place must be -1 to " + (places.size() - 1) + ", was " + place);
        }
        if (!ahead.isEmpty() && cup.isEmpty()) {
            throw new IllegalArgumentException("deeds that are still ahead need a cup");
        }
    }
}
