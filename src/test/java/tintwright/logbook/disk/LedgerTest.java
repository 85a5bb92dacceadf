package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
        boolean secondCounts = two.compareContent(one) < 0;
        assertTrue(ledger.add(one, "a.jsonl"));
        assertFalse(ledger.add(one, "copy.jsonl"), "no news");
        assertEquals(secondCounts, ledger.add(two, "b.jsonl"));
        assertEquals(secondCounts ? two : one, ledger.current(id).orElseThrow());
        assertEquals(!secondCounts, addedAfter(two, one));
        assertEquals(Trouble.Kind.CLASH, ledger.clashes().get(0).kind());
        assertEquals("b.jsonl", ledger.clashes().get(0).file());
    }

    private static boolean addedAfter(Entry first, Entry second) {
        Ledger ledger = new Ledger();
        ledger.add(first, "a.jsonl");
        return ledger.add(second, "b.jsonl");
    }

    /** Two entries under one name that correct different first words: only one of these is corrected in the end. */
    @Test
    void whatAClashNoLongerCorrectsStandsAgain() {
        EntryIds ids = new EntryIds(Folders.NOON, new SplittableRandom(2));
        Entry port = note(ids.next(), null, "port");
        Entry stern = note(ids.next(), null, "stern");
        UUID name = ids.next();
        List<Entry> all = new ArrayList<>(
                List.of(port, stern, note(name, port.id(), "of port"), note(name, stern.id(), "of stern")));
        String first = state(all, port.id());
        assertEquals(1, Stream.of("of port", "of stern").filter(first::contains).count(), first);
        Random random = new Random(12);
        for (int round = 0; round < 24; round++) {
            Collections.shuffle(all, random);
            assertEquals(first, state(all, port.id()), "round " + round);
        }
    }

    private static Entry note(UUID id, UUID replaces, String text) {
        return Entry.of(id, Folders.NOON.instant(), "note", null, replaces, Folders.note(text));
    }

    @Test
    void whatCountsOfABoatIsTheLatestWordOfEach() {
        EntryIds ids = new EntryIds(Folders.NOON, new SplittableRandom(4));
        UUID boat = ids.next();
        UUID other = ids.next();
        Ledger ledger = new Ledger();
        UUID first = write(ledger, ids, boat, null, "note", "first");
        write(ledger, ids, other, null, "note", "of another boat");
        UUID second = write(ledger, ids, boat, null, "note", "second");
        write(ledger, ids, boat, first, "note", "first, put right");
        UUID third = write(ledger, ids, boat, null, "note", "third");
        write(ledger, ids, boat, second, Entry.WITHDRAWN, "");
        write(ledger, ids, other, third, "note", "third, of another boat after all");
        assertEquals(List.of("first, put right"), texts(ledger.currentOf(boat)));
        assertEquals(List.of("of another boat", "third, of another boat after all"), texts(ledger.currentOf(other)));
        assertEquals(List.of(), ledger.currentOf(ids.next()));
        assertEquals(List.of("first", "second", "first, put right", "third", ""), texts(ledger.allOf(boat)));
        assertEquals(List.of("first", "first, put right"), texts(ledger.history(first)));
        assertEquals(Optional.empty(), ledger.current(second));
        assertEquals(3, ledger.current().count());
    }

    private static UUID write(Ledger ledger, EntryIds ids, UUID boat, UUID replaces, String kind, String text) {
        Entry entry = Entry.of(ids.next(), Folders.NOON.instant(), kind, boat, replaces, Folders.note(text));
        ledger.add(entry, "any.jsonl");
        return entry.id();
    }

    private static List<String> texts(List<Entry> entries) {
        return entries.stream()
                .map(entry -> entry.body().replaceAll(".*:\"(.*)\"}", "$1"))
                .toList();
    }

    /** RFC 9562, A.6: the example of a version 7 name, given on 22 February 2022 at 14:22:22 five hours west. */
    @Test
    void aNameTellsWhenItWasGiven() {
        assertEquals(
                Instant.parse("2022-02-22T19:22:22Z").toEpochMilli(),
                EntryIds.millis(UUID.fromString("017f22e2-79b0-7cc3-98c4-dc0c0c07398f")));
        EntryIds ids = new EntryIds(Folders.NOON, new SplittableRandom(3));
        assertEquals(Folders.NOON.millis(), EntryIds.millis(ids.next()));
        UUID last = ids.next();
        for (int i = 2; i < 20_000; i++) {
            last = ids.next();
        }
        assertThrows(IllegalArgumentException.class, () -> ids.nextAfter(new UUID(0xffffffffffffL << 16, 0)));
        // Twelve bits count 4096 names, from a random one on: so many milliseconds are borrowed and no more.
        long borrowed = EntryIds.millis(last) - Folders.NOON.millis();
        assertTrue(borrowed == 4 || borrowed == 5, "borrowed " + borrowed);
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
