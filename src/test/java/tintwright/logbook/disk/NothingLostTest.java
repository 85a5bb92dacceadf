package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where an entry could get lost between the log folder, the place where it waits and what others write. */
class NothingLostTest {
    @TempDir
    Path tmp;

    private final FaultyDisk disk = new FaultyDisk();

    private Path log() {
        return tmp.resolve("log");
    }

    /** Somebody wrote into our file while it was open: what is there stays, and our entry goes where it can be read. */
    @Test
    void whatAnotherProgramAddsToOurFileIsNotWrittenOver() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        Path file;
        try (LogStore store = Folders.open(log(), bench)) {
            assertFalse(store.isReadOnly());
            store.append("note", null, Folders.note("one"));
            file = Folders.onlyFile(log());
            Files.writeString(file, "no line of ours\n", StandardOpenOption.APPEND);
            assertInstanceOf(Saved.OnDisk.class, store.append("note", null, Folders.note("two")));
        }
        assertTrue(Files.readString(file).endsWith("no line of ours\n"));
        try (LogStore store = Folders.open(log(), Folders.bench(tmp, "reader"))) {
            assertEquals(2, Folders.count(store));
        }
    }

    /** Two notes wait. @return the file they wait in */
    private Path waiting(ThisBench bench) throws IOException {
        Files.writeString(log(), "not a folder");
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("one"));
            return assertInstanceOf(Saved.Waiting.class, store.append("note", null, Folders.note("two")))
                    .keptIn()
                    .orElseThrow();
        }
    }

    private static List<String> aside(Path kept) throws IOException {
        Path folder = kept.resolveSibling(Pen.SET_ASIDE);
        if (!Files.exists(folder)) {
            return List.of();
        }
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                texts.add(Files.readString(file));
            }
        }
        return texts;
    }

    @Test
    void whatWaitedIsClearedAwayOnceTheLogHasIt() throws IOException {
        Path unplugged = tmp.resolve("unplugged");
        try (LogStore store = Folders.open(log(), Folders.bench(tmp, "anna"))) {
            for (int round = 0; round < 2; round++) {
                store.append("note", null, Folders.note("before"));
                Files.move(log(), unplugged);
                Files.writeString(log(), "not a folder");
                Path kept = assertInstanceOf(Saved.Waiting.class, store.append("note", null, Folders.note("during")))
                        .keptIn()
                        .orElseThrow();
                Files.delete(log());
                Files.move(unplugged, log());
                assertInstanceOf(Saved.OnDisk.class, store.append("note", null, Folders.note("after")));
                assertEquals(List.of(), store.waiting());
                assertFalse(Files.exists(kept));
                assertEquals(List.of(), aside(kept));
                assertEquals(List.of(), store.troubles());
            }
        }
        try (LogStore reader = Folders.open(log(), Folders.bench(tmp, "reader"))) {
            assertEquals(6, Folders.count(reader));
        }
    }

    /** What can still be read goes into the log; the file with the harm in it is kept for whoever can read more. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aHarmedFileOfWhatWaitsIsSetAsideAndNeverThrownAway(boolean torn) throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        Path kept = waiting(bench);
        String whole = Files.readString(kept);
        String harmed = torn ? whole + "{\"crc\":\"0" : whole.replace("one", "0ne");
        Files.writeString(kept, harmed);
        Files.delete(log());
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(
                    List.of(torn ? Trouble.Kind.TORN : Trouble.Kind.DAMAGED),
                    store.troubles().stream().map(Trouble::kind).toList());
        }
        assertTrue(Files.readString(Folders.onlyFile(log())).contains("two"));
        assertFalse(Files.exists(kept));
        assertEquals(List.of(harmed), aside(kept));
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(List.of(), store.troubles(), "what is set aside is not read again");
        }
    }

    /** The harm was only in reading it: the entry that was not read must not go when the others are cleared away. */
    @Test
    void whatWasHarmedWhenItWasReadIsKeptThoughItIsWholeAgain() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        Path kept = waiting(bench);
        String whole = Files.readString(kept);
        Files.writeString(kept, whole.replace("one", "0ne"));
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(1, store.waiting().size());
            Files.writeString(kept, whole);
            assertTrue(store.tryWaiting().isPresent(), "the log still refuses");
            Files.delete(log());
            assertEquals(Optional.empty(), store.tryWaiting());
        }
        assertEquals(List.of(whole), aside(kept));
    }

    /** The program ended after the log took what waited and before the waiting file was cleared away. */
    @Test
    void whatWaitsAndStandsInTheLogAlreadyIsNotWrittenTwice() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        Path kept = waiting(bench);
        byte[] waiting = Files.readAllBytes(kept);
        Files.delete(log());
        Folders.open(log(), bench).close();
        assertFalse(Files.exists(kept));
        Files.write(kept, waiting);
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(List.of(), aside(kept), "nothing in it was harmed");
            assertEquals(List.of(), store.waiting());
            assertEquals(2, Folders.count(store));
            store.append("note", null, Folders.note("three"));
        }
        assertEquals(4, Files.readAllLines(Folders.onlyFile(log())).size());
    }

    @Test
    void whatComesFromElsewhereWaitsTooAndIsCountedOnce() {
        ThisBench bench = Folders.bench(tmp, "anna");
        List<Entry> theirs;
        try (LogStore there = Folders.open(tmp.resolve("theirs"), Folders.bench(tmp, "bert"))) {
            theirs = List.of(
                    there.append("note", null, Folders.note("one")).entry(),
                    there.append("note", null, Folders.note("two")).entry());
        }
        try (LogStore store = Folders.open(log(), bench, disk)) {
            store.append("note", null, Folders.note("ours"));
            disk.fail(FaultyDisk.Fault.FORCE, "No space left on device");
            LogStore.Adopted refused = store.adopt(theirs);
            assertEquals(2, refused.added());
            assertTrue(refused.waiting().orElseThrow().contains("is full"), refused.toString());
            assertEquals(theirs, store.waiting());
            assertEquals(new LogStore.Adopted(0, Optional.empty()), store.adopt(theirs));
            disk.heal();
        }
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(3, Folders.count(store));
            assertEquals(List.of(), store.waiting());
        }
    }

    /** Long entries, so that few of them fill a file: 2 MiB, as {@link Pen} closes one. */
    @Test
    void aFullFileIsClosedAndAnotherBegun() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        String million = Folders.note("x".repeat(1_000_000));
        try (LogStore store = Folders.open(log(), bench)) {
            for (int i = 0; i < 4; i++) {
                assertInstanceOf(Saved.OnDisk.class, store.append("note", null, million));
            }
        }
        long full = Files.size(log().resolve("anna-0001.jsonl"));
        assertTrue(full > 2 << 20 && full < 3_100_000, "bytes " + full);
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("short"));
            assertEquals(5, Folders.count(store));
        }
        assertEquals(full, Files.size(log().resolve("anna-0001.jsonl")));
        assertTrue(Files.readString(log().resolve("anna-0002.jsonl")).contains("short"));
    }
}
