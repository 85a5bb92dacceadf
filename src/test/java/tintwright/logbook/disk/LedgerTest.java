package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class LedgerTest {
    /** Files are read in one order here and another there; what they say together may not depend on it. */
    @Test
    void entriesInAnyOrderAndAnyNumberOfTimesSayTheSame() {
        List<Entry> entries = manyEntries();
        UUID boat = entries.get(0).id();
        String first = state(entries, boat);
        Random random = new Random(11);
        for (int round = 0; round < 200; round++) {
            List<Entry> shuffled = new ArrayList<>(entries);
            shuffled.addAll(entries.subList(0, 30));
            Collections.shuffle(shuffled, random);
            assertEquals(first, state(shuffled, boat), "round " + round);
        }
    }

    @Test
    void aClashIsNamedAndSettledAlikeEverywhere() {
        UUID id = new EntryIds(Folders.NOON, new SplittableRandom(1)).next();
        Entry one = Entry.of(id, Folders.NOON.instant(), "note", null, null, Folders.note("one"));
        Entry two = Entry.of(id, Folders.NOON.instant(), "note", null, null, Folders.note("two"));
        assertEquals(state(List.of(one, two), id), state(List.of(two, one), id));
        Ledger ledger = new Ledger();
        ledger.add(one, "a.jsonl");
        ledger.add(two, "b.jsonl");
        assertEquals(Trouble.Kind.CLASH, ledger.clashes().get(0).kind());
        assertEquals("b.jsonl", ledger.clashes().get(0).file());
    }

    @Test
    void namesGrowAlsoWhenManyAreGivenInOneMillisecondAndTheClockStandsStill() {
        EntryIds ids = new EntryIds(Folders.NOON, new SplittableRandom(3));
        UUID last = ids.next();
        for (int i = 0; i < 20_000; i++) {
            UUID next = ids.next();
            assertTrue(EntryIds.ORDER.compare(next, last) > 0);
            assertTrue(next.toString().compareTo(last.toString()) > 0, "as text too");
            assertEquals(7, next.version());
            assertEquals(2, next.variant());
            last = next;
        }
    }

    private static List<Entry> manyEntries() {
        SplittableRandom random = new SplittableRandom(8);
        EntryIds ids = new EntryIds(Folders.NOON, random);
        List<Entry> entries = new ArrayList<>();
        List<UUID> roots = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            UUID id = ids.next();
            boolean corrects = !roots.isEmpty() && random.nextInt(2) == 0;
            UUID root = corrects ? roots.get(random.nextInt(roots.size())) : null;
            String kind = corrects && random.nextInt(4) == 0 ? Entry.WITHDRAWN : "note";
            entries.add(Entry.of(
                    id,
                    Folders.NOON.instant(),
                    kind,
                    roots.isEmpty() ? null : roots.get(0),
                    root,
                    Folders.note("word " + i)));
            if (!corrects) {
                roots.add(id);
            }
        }
        return entries;
    }

    private static String state(List<Entry> entries, UUID boat) {
        Ledger ledger = new Ledger();
        entries.forEach(entry -> ledger.add(entry, "any.jsonl"));
        return ledger.current().sorted(Ledger.BY_ID).map(Entry::body).collect(Collectors.joining(" "))
                + " of the boat "
                + ledger.currentOf(boat).stream().map(Entry::body).toList()
                + " all " + ledger.allOf(boat).stream().map(Entry::body).toList();
    }
}
