package tintwright.logbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.logbook.disk.EntryIds;
import tintwright.logbook.disk.Ledger;

/**
 * The colours of the log nearest to one colour.
 *
 * @param found         nearest first
 * @param notComparable how many colours were read under another light or observer, and so cannot be compared
 */
public record Nearest(List<Found> found, int notComparable) {
    /** What a new match can start from. */
    private static final Set<String> STARTS = Set.of("cup", "chip", "leftover");

    /**
     * One of them.
     *
     * @param id     the entry
     * @param deltaE CIEDE2000 to the colour asked for
     */
    public record Found(UUID id, double deltaE) {}

    public Nearest {
        found = List.copyOf(found);
    }

    static Nearest to(Lab colour, int most, Ledger ledger) {
        List<Found> found = new ArrayList<>();
        int[] others = new int[1];
        ledger.current()
                .filter(entry -> STARTS.contains(entry.kind()))
                .forEach(entry -> entry.colour().ifPresent(there -> {
                    if (there.isUnder(colour.viewing())) {
                        found.add(new Found(
                                Ledger.rootOf(entry),
                                Ciede2000.between(
                                        colour.lightness(),
                                        colour.a(),
                                        colour.b(),
                                        there.lightness(),
                                        there.a(),
                                        there.b())));
                    } else {
                        others[0]++;
                    }
                }));
        found.sort(Comparator.comparingDouble(Found::deltaE).thenComparing(Found::id, EntryIds.ORDER));
        return new Nearest(found.subList(0, Math.min(most, found.size())), others[0]);
    }
}
