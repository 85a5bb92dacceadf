package tintwright.cup;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;

/**
 * A cup and its whole story. Nothing written is ever taken out: undoing and correcting are entries about entries,
 * and what holds is worked out anew from all of them.
 *
 * @param name        what is written on the cup
 * @param hull        the place to match, as read
 * @param wantedGrams how much is wanted in the end, 1 to 100000 g
 * @param scaleStep   smallest step of the scale in grams, 0.0001 to 10
 * @param base        id of the white
 * @param entries     in the order they were written
 */
public record Cup(
        String name, PlaceReadings hull, double wantedGrams, double scaleStep, String base, List<CupEntry> entries) {
    /** @throws IllegalArgumentException for masses that cannot be, or an entry about an entry that is not there */
    public Cup {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("a cup needs a name");
        }
        if (!(wantedGrams >= 1 && wantedGrams <= Checks.MOST)) {
            throw new IllegalArgumentException("the batch must be 1 to 100000 g, was " + wantedGrams + " g");
        }
        Checks.step(scaleStep);
        if (base == null || base.isBlank()) {
            throw new IllegalArgumentException("a cup needs a base: name the white that goes into it");
        }
        entries = List.copyOf(entries);
        Map<String, Deed> before = new HashMap<>();
        for (CupEntry entry : entries) {
            check(entry, before);
            if (before.put(entry.id(), entry.deed()) != null) {
                throw new IllegalArgumentException(
                        "two entries of the cup are called \"" + entry.id() + "\": give one of them another id");
            }
        }
    }

    private static void check(CupEntry entry, Map<String, Deed> before) {
        if (entry.deed() instanceof Deed.Undone undone && !before.containsKey(undone.entry())) {
            throw new IllegalArgumentException(
                    "entry \"" + entry.id() + "\" undoes \"" + undone.entry() + "\", which is not written before it");
        }
        if (entry.deed() instanceof Deed.Corrected corrected) {
            Deed old = before.get(corrected.entry());
            if (old == null || old instanceof Deed.Undone || old instanceof Deed.Corrected) {
                throw new IllegalArgumentException("entry \"" + entry.id() + "\" corrects \"" + corrected.entry()
                        + "\", which is no weighing, reading or the like written before it");
            }
        }
    }

    /** @return a cup with nothing in it */
    public static Cup empty(String name, PlaceReadings hull, double wantedGrams, double scaleStep, String base) {
        return new Cup(name, hull, wantedGrams, scaleStep, base, List.of());
    }

    /** @return this cup after one more deed */
    public Cup add(Instant at, Deed deed) {
        int number = entries.size() + 1;
        Set<String> taken = new HashSet<>();
        entries.forEach(entry -> taken.add(entry.id()));
        while (taken.contains("e" + number)) {
            number++;
        }
        List<CupEntry> more = new ArrayList<>(entries);
        more.add(new CupEntry("e" + number, at, deed));
        return new Cup(name, hull, wantedGrams, scaleStep, base, more);
    }

    /** @return the entry called so */
    public Optional<CupEntry> entry(String id) {
        return entries.stream().filter(e -> e.id().equals(id)).findFirst();
    }

    /** @return ids of entries that do not hold, because a later one that holds undoes them */
    private Set<String> undone() {
        Set<String> dead = new HashSet<>();
        for (int i = entries.size() - 1; i >= 0; i--) {
            CupEntry entry = entries.get(i);
            if (!dead.contains(entry.id()) && entry.deed() instanceof Deed.Undone undone) {
                dead.add(undone.entry());
            }
        }
        return dead;
    }

    /** @return what was really done to the cup, in its order: undone entries left out, corrected ones put right */
    public List<CupEntry> standing() {
        Set<String> dead = undone();
        Map<String, Deed> right = new HashMap<>();
        for (CupEntry entry : entries) {
            if (entry.deed() instanceof Deed.Corrected corrected && !dead.contains(entry.id())) {
                right.put(corrected.entry(), corrected.deed());
            }
        }
        List<CupEntry> standing = new ArrayList<>();
        for (CupEntry entry : entries) {
            boolean about = entry.deed() instanceof Deed.Undone || entry.deed() instanceof Deed.Corrected;
            if (!about && !dead.contains(entry.id())) {
                standing.add(new CupEntry(entry.id(), entry.at(), right.getOrDefault(entry.id(), entry.deed())));
            }
        }
        return standing;
    }

    /** @return the last entry that holds and that undoing would take back; empty when there is none */
    public Optional<CupEntry> lastToUndo() {
        Set<String> dead = undone();
        for (int i = entries.size() - 1; i >= 0; i--) {
            CupEntry entry = entries.get(i);
            if (!dead.contains(entry.id()) && !(entry.deed() instanceof Deed.Undone)) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    /** @return this cup with its last entry taken back; the same cup when there is none */
    public Cup undo(Instant at) {
        return lastToUndo().map(last -> add(at, new Deed.Undone(last.id()))).orElse(this);
    }

    /** @return this cup with one entry taken back, however old */
    public Cup undo(String entry, Instant at) {
        return add(at, new Deed.Undone(entry));
    }

    /** @return the undoing that redoing would take back: the last that holds with nothing done since */
    public Optional<CupEntry> lastToRedo() {
        Set<String> dead = undone();
        for (int i = entries.size() - 1; i >= 0; i--) {
            CupEntry entry = entries.get(i);
            if (entry.deed() instanceof Deed.Undone undone) {
                if (!dead.contains(entry.id()) && !isUndoing(undone.entry())) {
                    return Optional.of(entry);
                }
            } else if (!dead.contains(entry.id())) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private boolean isUndoing(String id) {
        return entry(id).orElseThrow().deed() instanceof Deed.Undone;
    }

    /** @return this cup with the last undoing taken back; the same cup when nothing was undone since the last deed */
    public Cup redo(Instant at) {
        return lastToRedo().map(last -> add(at, new Deed.Undone(last.id()))).orElse(this);
    }

    /** @return this cup with one entry put right, however old: "that was 0.31, not 0.13" */
    public Cup correct(String entry, Deed really, Instant at) {
        return add(at, new Deed.Corrected(entry, really));
    }

    /** @return the place to match with all that was read of it: at first, and by a meter beside chips of the cup */
    public PlaceReadings hullAsRead() {
        List<Reading> readings = new ArrayList<>(hull.readings());
        for (CupEntry entry : standing()) {
            if (entry.deed() instanceof Deed.Read read && read.hullByMeter()) {
                readings.add(read.hull().orElseThrow());
            }
        }
        return new PlaceReadings(hull.boat(), hull.place(), readings, hull.note());
    }

    /** @return true for a hull that a meter read once: a cup near it would be chased below the error of that reading */
    public boolean hullReadOnce() {
        PlaceReadings all = hullAsRead();
        return all.readings().size() == 1 && all.metered();
    }

    /** @return the letdowns of a tint that were stirred for this cup, 1 in so many */
    public Set<Integer> stirred(String part) {
        Set<Integer> ratios = new HashSet<>();
        for (CupEntry entry : standing()) {
            if (entry.deed() instanceof Deed.LetDown down && down.part().equals(part)) {
                ratios.add(down.oneIn());
            }
        }
        return ratios;
    }

    /** @return what is in the cup now */
    public CupState state() {
        return CupState.of(this);
    }
}
