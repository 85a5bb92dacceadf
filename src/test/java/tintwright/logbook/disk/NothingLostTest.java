package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

    /** What can still be read goes into the log; the file with the harm in it is kept for whoever can read more. */
    @Test
    void aHarmedFileOfWhatWaitsIsSetAsideAndNeverThrownAway() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        Files.writeString(log(), "not a folder");
        Path kept;
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("one"));
            kept = assertInstanceOf(Saved.Waiting.class, store.append("note", null, Folders.note("two")))
                    .keptIn()
                    .orElseThrow();
        }
        String harmed = Files.readString(kept).replace("one", "0ne");
        Files.writeString(kept, harmed);
        Files.delete(log());
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(
                    List.of(Trouble.Kind.DAMAGED),
                    store.troubles().stream().map(Trouble::kind).toList());
        }
        assertTrue(Files.readString(Folders.onlyFile(log())).contains("two"));
        assertFalse(Files.exists(kept));
        try (Stream<Path> aside = Files.list(kept.resolveSibling(Pen.SET_ASIDE))) {
            assertEquals(harmed, Files.readString(aside.toList().get(0)));
        }
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
        assertTrue(full > 2 << 20 && full < 2 << 21, "bytes " + full);
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("short"));
            assertEquals(5, Folders.count(store));
        }
        assertEquals(full, Files.size(log().resolve("anna-0001.jsonl")));
        assertTrue(Files.readString(log().resolve("anna-0002.jsonl")).contains("short"));
    }
}
