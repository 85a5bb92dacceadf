package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogStoreTest {
    @TempDir
    Path tmp;

    private Path log() {
        return tmp.resolve("log");
    }

    @Test
    void whatWasWrittenIsThereWhenOpenedAgain() {
        ThisBench bench = Folders.bench(tmp, "anna");
        String before;
        try (LogStore store = Folders.open(log(), bench)) {
            UUID boat = store.append("boat", null, Folders.note("Tarrowmere, \u00fcber \u6d77"))
                    .entry()
                    .id();
            store.append("note", boat, Folders.note("a touch warm"));
            before = Folders.state(store);
        }
        try (LogStore again = Folders.open(log(), bench)) {
            assertEquals(before, Folders.state(again));
            assertEquals(List.of(), again.troubles());
        }
    }

    @Test
    void anotherRunGoesOnInTheSameFile() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        for (int run = 0; run < 3; run++) {
            try (LogStore store = Folders.open(log(), bench)) {
                store.append("note", null, Folders.note("run " + run));
            }
        }
        assertEquals("anna-0001.jsonl", Folders.onlyFile(log()).getFileName().toString());
        assertEquals(4, Files.readAllLines(Folders.onlyFile(log())).size());
        assertFalse(Files.exists(log().resolve(Pen.SET_ASIDE)), "nothing was torn");
    }

    @Test
    void aSecondWindowWritesAFileOfItsOwnAndBothSeeBoth() {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore first = Folders.open(log(), bench);
                LogStore second =
                        new LogStore(log(), bench, Disk.REAL, Folders.NOON, new SplittableRandom(99), entry -> {})) {
            for (int i = 0; i < 5; i++) {
                first.append("note", null, Folders.note("first " + i));
                second.append("note", null, Folders.note("second " + i));
            }
            first.refresh();
            second.refresh();
            assertEquals(10, Folders.count(first));
            assertEquals(Folders.state(first), Folders.state(second));
            assertEquals(List.of(), first.troubles());
            assertTrue(Files.exists(log().resolve("anna-0002.jsonl")));
        }
    }

    @Test
    void aCorrectionCountsAndTheFirstWordStays() {
        try (LogStore store = Folders.open(log(), Folders.bench(tmp, "anna"))) {
            UUID note = store.append("note", null, Folders.note("port")).entry().id();
            UUID second = store.replace(note, "note", Folders.note("starboard"))
                    .entry()
                    .id();
            store.replace(second, "note", Folders.note("stern"));
            assertEquals(
                    Folders.note("stern"),
                    store.ask(ledger -> ledger.current(note)).orElseThrow().body());
            assertEquals(3, store.ask(ledger -> ledger.history(note)).size());
            store.replace(note, Entry.WITHDRAWN, "{}");
            assertTrue(store.ask(ledger -> ledger.current(note)).isEmpty());
            assertEquals(4, Folders.count(store));
        }
    }

    @Test
    void aCorrectionCountsThoughTheClockWasSetBack() {
        ThisBench bench = Folders.bench(tmp, "anna");
        UUID note;
        try (LogStore store = Folders.open(log(), bench)) {
            note = store.append("note", null, Folders.note("port")).entry().id();
        }
        Clock yesterday = Clock.offset(Folders.NOON, Duration.ofDays(-1));
        try (LogStore store = new LogStore(log(), bench, Disk.REAL, yesterday, new SplittableRandom(1), entry -> {})) {
            store.replace(note, "note", Folders.note("stern"));
            assertEquals(
                    Folders.note("stern"),
                    store.ask(ledger -> ledger.current(note)).orElseThrow().body());
        }
    }

    @Test
    void aTornLastLineIsSetAsideAndReported() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("whole"));
        }
        Path file = Folders.onlyFile(log());
        String torn = "{\"crc\":\"00000000\",\"n\":2,\"id\":\"0";
        Files.writeString(file, torn, StandardOpenOption.APPEND);

        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(1, Folders.count(store));
            assertEquals(
                    List.of(Trouble.Kind.TORN),
                    store.troubles().stream().map(Trouble::kind).toList());
            assertInstanceOf(Saved.OnDisk.class, store.append("note", null, Folders.note("next")));
        }
        try (LogStore store = Folders.open(log(), bench);
                Stream<Path> aside = Files.list(log().resolve("set-aside"))) {
            assertEquals(2, Folders.count(store));
            assertEquals(List.of(), store.troubles());
            assertEquals(torn, Files.readString(aside.toList().get(0)));
        }
    }

    @Test
    void aLastLineThatOnlyLacksItsEndIsTaken() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("one"));
        }
        Path file = Folders.onlyFile(log());
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(bytes, bytes.length - 1));
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(1, Folders.count(store));
            store.append("note", null, Folders.note("two"));
        }
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(2, Folders.count(store));
            assertEquals(List.of(), store.troubles());
        }
    }

    @Test
    void aDamagedFileIsLeftAloneAndAnotherIsBegun() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("one"));
            store.append("note", null, Folders.note("two"));
        }
        Path file = Folders.onlyFile(log());
        byte[] harmed = Files.readString(file).replace("one", "One").getBytes(StandardCharsets.UTF_8);
        Files.write(file, harmed);
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("three"));
            assertEquals(2, Folders.count(store));
            Trouble named = store.troubles().get(0);
            assertEquals("anna-0001.jsonl", named.file());
            assertEquals(2, named.line());
            assertEquals(Trouble.Kind.DAMAGED, named.kind());
        }
        assertEquals(new String(harmed, StandardCharsets.UTF_8), Files.readString(file));
        assertTrue(Files.exists(log().resolve("anna-0002.jsonl")));
    }

    @Test
    void lineEndsOfAnotherSystemDoNoHarm() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("one"));
        }
        Path file = Folders.onlyFile(log());
        Files.writeString(file, Files.readString(file).replace("\n", "\r\n"));
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(1, Folders.count(store));
            assertEquals(List.of(), store.troubles());
        }
    }

    @Test
    void aLineTakenOutIsNoticed() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = Folders.open(log(), bench)) {
            for (int i = 0; i < 4; i++) {
                store.append("note", null, Folders.note("n" + i));
            }
        }
        Path file = Folders.onlyFile(log());
        List<String> lines = Files.readAllLines(file);
        Files.writeString(file, String.join("\n", lines.get(0), lines.get(1), lines.get(4)) + "\n");
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(Trouble.Kind.MISSING, store.troubles().get(0).kind());
            assertTrue(store.troubles().get(0).what().startsWith("2 lines"));
        }
    }

    @Test
    void aNewerVersionIsOnlyReadAndTheWorkIsKept() throws IOException {
        Files.createDirectories(log());
        byte[] header = new Header(2, "tomorrow", Folders.NOON.instant()).line();
        Files.write(log().resolve("tomorrow-0001.jsonl"), header);
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = Folders.open(log(), bench)) {
            assertTrue(store.isReadOnly());
            Saved saved = store.append("note", null, Folders.note("kept"));
            String why = assertInstanceOf(Saved.Waiting.class, saved).sentence();
            assertTrue(why.contains("newer Tintwright"), why);
        }
        assertFalse(Files.exists(log().resolve("anna-0001.jsonl")));
        Files.write(log().resolve("tomorrow-0001.jsonl"), new Header(1, "tomorrow", Folders.NOON.instant()).line());
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(1, Folders.count(store));
        }
        assertTrue(Files.readString(log().resolve("anna-0001.jsonl")).contains("kept"));
    }

    @Test
    void aBodyThatIsNoObjectOnOneLineIsRefused() {
        try (LogStore store = Folders.open(log(), Folders.bench(tmp, "anna"))) {
            assertThrows(IllegalArgumentException.class, () -> store.append("note", null, "{\"a\":\n1}"));
            assertThrows(IllegalArgumentException.class, () -> store.append("note", null, "[1]"));
            assertThrows(IllegalArgumentException.class, () -> store.append("note", null, "{"));
            assertThrows(IllegalArgumentException.class, () -> store.append("note", null, "{},\"kind\":{}"));
            assertThrows(
                    IllegalArgumentException.class,
                    () -> store.append("note", null, Folders.note("x".repeat(Line.LONGEST))));
            assertEquals(0, Folders.count(store));
        }
    }

    @Test
    void theFolderOfOneMachineIsAnotherBenchOnAnother() throws LogFailure {
        RandomGenerator random = new SplittableRandom(5);
        ThisBench here = ThisBench.at(tmp.resolve("home"), List.of("workbench", "card"), random);
        assertEquals(here, ThisBench.at(tmp.resolve("home"), List.of("workbench", "card"), random));
        assertFalse(here.id()
                .equals(ThisBench.at(tmp.resolve("home"), List.of("laptop"), random)
                        .id()));
    }

    @Test
    void aFileThatIsJustBeingSyncedIsNotReportedGone() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("one"));
        }
        Path file = Folders.onlyFile(log());
        Path away = tmp.resolve("away.jsonl");
        Files.move(file, away);
        Instant moved = Files.getLastModifiedTime(log()).toInstant();
        assertEquals(List.of(Trouble.Kind.ARRIVING), troublesAt(bench, moved.plusSeconds(5)));
        assertEquals(List.of(Trouble.Kind.MISSING), troublesAt(bench, moved.plusSeconds(90)));
        Files.move(away, file);
        assertEquals(List.of(), troublesAt(bench, moved.plusSeconds(5)));
    }

    /** A window that only reads, and an hour in which files come and go. */
    @Test
    void whatAReaderSawIsMissedOnceItIsGoneAndNamedOnce() throws IOException {
        ThisBench reader = Folders.bench(tmp, "reader");
        Path away = tmp.resolve("away.jsonl");
        try (LogStore window = opened(reader)) {
            try (LogStore store = Folders.open(log(), Folders.bench(tmp, "anna"))) {
                store.append("note", null, Folders.note("one"));
            }
            window.refresh();
            assertEquals(List.of(), window.troubles());
            Path file = Folders.onlyFile(log());
            Files.move(file, away);
            window.refresh();
            assertEquals(
                    List.of("anna-0001.jsonl MISSING"),
                    window.troubles().stream()
                            .map(trouble -> trouble.file() + " " + trouble.kind())
                            .toList());
            assertEquals(1, Folders.count(window), "this window knows it still");
            Files.move(away, file);
            window.refresh();
            assertEquals(List.of(), window.troubles());
        }
        Path file = Folders.onlyFile(log());
        Files.move(file, away);
        try (LogStore window = opened(reader)) {
            assertEquals(Trouble.Kind.MISSING, window.troubles().get(0).kind(), "what a look brought is remembered");
        }
        ThisBench visitor = Folders.bench(tmp, "visitor");
        Files.move(away, file);
        opened(visitor).close();
        Files.delete(file);
        try (LogStore window = opened(visitor)) {
            assertEquals(1, window.troubles().size(), "and so is what was there from the start");
            assertTrue(window.troubles().get(0).what().contains("and is gone"));
            window.acceptLosses();
            assertEquals(List.of(), window.troubles());
        }
        try (LogStore window = opened(visitor)) {
            assertEquals(List.of(), window.troubles());
        }
    }

    @Test
    void whatIsAcceptedAsLostIsAllThatIsForgotten() throws IOException {
        for (String name : List.of("anna", "bert")) {
            try (LogStore store = opened(Folders.bench(tmp, name))) {
                store.append("note", null, Folders.note("of " + name));
            }
        }
        ThisBench reader = Folders.bench(tmp, "reader");
        opened(reader).close();
        Files.delete(log().resolve("anna-0001.jsonl"));
        try (LogStore window = opened(reader)) {
            window.acceptLosses();
        }
        Files.delete(log().resolve("bert-0001.jsonl"));
        try (LogStore window = opened(reader)) {
            assertEquals(
                    List.of("bert-0001.jsonl"),
                    window.troubles().stream().map(Trouble::file).toList());
        }
    }

    @Test
    void aFolderThatIsGoneIsNotArriving() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = opened(bench)) {
            store.append("note", null, Folders.note("one"));
            store.refresh();
            Files.move(log(), tmp.resolve("unplugged"));
            store.refresh();
            assertEquals(
                    List.of(Trouble.Kind.MISSING),
                    store.troubles().stream().map(Trouble::kind).toList());
        }
    }

    @Test
    void anOlderCopyThatThenVanishesIsNamedOnce() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        byte[] older;
        try (LogStore store = opened(bench)) {
            store.append("note", null, Folders.note("one"));
            older = Files.readAllBytes(Folders.onlyFile(log()));
            store.append("note", null, Folders.note("two"));
        }
        Files.write(Folders.onlyFile(log()), older);
        try (LogStore window = opened(bench)) {
            assertEquals(1, window.troubles().size());
            assertTrue(window.troubles().get(0).what().startsWith("the file ends here and had 3 lines"));
            window.refresh();
            assertEquals(1, window.troubles().size());
            Files.delete(Folders.onlyFile(log()));
            window.refresh();
            assertEquals(1, window.troubles().size(), window.troubles().toString());
        }
    }

    private LogStore opened(ThisBench bench) {
        return Folders.open(log(), bench);
    }

    private List<Trouble.Kind> troublesAt(ThisBench bench, Instant moment) {
        Clock clock = Clock.fixed(moment, ZoneOffset.UTC);
        try (LogStore store = new LogStore(log(), bench, Disk.REAL, clock, new SplittableRandom(9), entry -> {})) {
            return store.troubles().stream().map(Trouble::kind).toList();
        }
    }
}
