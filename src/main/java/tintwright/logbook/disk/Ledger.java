package tintwright.logbook.disk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What all files together say. Entries may come in any order, any number of times; the outcome is the same:
 * of an entry and all that correct it, the one with the latest name counts.
 */
public final class Ledger {
    static final Comparator<Entry> BY_ID = (a, b) -> EntryIds.ORDER.compare(a.id(), b.id());

    private final Map<UUID, Entry> all = new HashMap<>();
    private final Map<UUID, Entry> latest = new HashMap<>();
    private final Map<UUID, Collection<UUID>> ofBoat = new HashMap<>();
    private final Map<UUID, Trouble> clashes = new LinkedHashMap<>();

    /** @return whether it was news */
    boolean add(Entry entry, String file) {
        Entry known = all.get(entry.id());
        if (known != null) {
            return !known.saysTheSameAs(entry) && settle(known, entry, file);
        }
        enter(entry);
        return true;
    }

    /** Two entries under one name cannot happen by themselves; should they, every bench must choose the same. */
    private boolean settle(Entry known, Entry entry, String file) {
        clashes.put(
                entry.id(),
                new Trouble(
                        file,
                        0,
                        Trouble.Kind.CLASH,
                        "the " + entry.kind() + " written at " + entry.at() + " (" + entry.id()
                                + ") stands in the log twice and differs; both stay on disk"));
        if (entry.compareContent(known) < 0) {
            all.remove(known.id());
            UUID root = rootOf(known);
            latest.remove(root);
            enter(entry);
            all.values().stream().filter(other -> rootOf(other).equals(root)).forEach(this::consider);
            return true;
        }
        return false;
    }

    private void enter(Entry entry) {
        all.put(entry.id(), entry);
        consider(entry);
        entry.boat()
                .ifPresent(boat ->
                        ofBoat.computeIfAbsent(boat, b -> new LinkedHashSet<>()).add(rootOf(entry)));
    }

    private void consider(Entry entry) {
        latest.merge(rootOf(entry), entry, (a, b) -> BY_ID.compare(a, b) >= 0 ? a : b);
    }

    /** @return the name of the first word that this entry is, or corrects */
    public static UUID rootOf(Entry entry) {
        return entry.replaces().orElse(entry.id());
    }

    /** @return the entry of this name, whether it still counts or not */
    public Optional<Entry> find(UUID id) {
        return Optional.ofNullable(all.get(id));
    }

    /** @return what counts today under the name of the first word; empty if taken back or unknown */
    public Optional<Entry> current(UUID root) {
        return Optional.ofNullable(latest.get(root)).filter(Ledger::stands);
    }

    private static boolean stands(Entry entry) {
        return !entry.kind().equals(Entry.WITHDRAWN);
    }

    /** @return everything that counts today, in no order */
    public Stream<Entry> current() {
        return latest.values().stream().filter(Ledger::stands);
    }

    /** @return what counts today of one boat, oldest first word first */
    public List<Entry> currentOf(UUID boat) {
        return ofBoat.getOrDefault(boat, List.of()).stream()
                .sorted(EntryIds.ORDER)
                .map(latest::get)
                .filter(Ledger::stands)
                .filter(entry -> entry.boat().filter(boat::equals).isPresent())
                .toList();
    }

    /**
     * Quicker than {@link #currentOf}, for a first look.
     *
     * @return false when surely none of what counts today of a boat passes
     */
    public boolean mayHold(UUID boat, Predicate<Entry> test) {
        return ofBoat.getOrDefault(boat, List.of()).stream().map(latest::get).anyMatch(test)
                || current(boat).filter(test).isPresent();
    }

    /** @return every word ever written of one boat, oldest first */
    public List<Entry> allOf(UUID boat) {
        return all.values().stream()
                .filter(entry -> entry.boat().filter(boat::equals).isPresent())
                .sorted(BY_ID)
                .toList();
    }

    /** @return an entry and all that correct it, oldest first */
    public List<Entry> history(UUID root) {
        return all.values().stream()
                .filter(entry -> rootOf(entry).equals(root))
                .sorted(BY_ID)
                .toList();
    }

    Collection<Entry> all() {
        return all.values();
    }

    List<Trouble> clashes() {
        return new ArrayList<>(clashes.values());
    }
}
