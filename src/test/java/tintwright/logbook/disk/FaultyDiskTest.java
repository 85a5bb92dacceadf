package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

class FaultyDiskTest {
    @TempDir
    Path tmp;

    private final FaultyDisk disk = new FaultyDisk();

    private Path log() {
        return tmp.resolve("log");
    }

    @ParameterizedTest
    @EnumSource(mode = Mode.EXCLUDE, names = "NONE")
    void whatTheDiskRefusesIsKeptAndWrittenLater(FaultyDisk.Fault fault) {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = Folders.open(log(), bench, disk)) {
            store.append("note", null, Folders.note("before"));
            disk.fail(fault, "No space left on device");
            if (fault == FaultyDisk.Fault.OPEN) {
                store.close();
            }
            Saved.Waiting waiting =
                    assertInstanceOf(Saved.Waiting.class, store.append("note", null, Folders.note("during")));
            assertTrue(waiting.sentence().contains("is full. Make room"), waiting.sentence());
            assertEquals(2, Folders.count(store));
            assertEquals(1, store.waiting().size());
            disk.heal();
            assertInstanceOf(Saved.OnDisk.class, store.append("note", null, Folders.note("after")));
            assertEquals(List.of(), store.waiting());
        }
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(3, Folders.count(store));
            assertEquals(List.of(), store.troubles());
        }
    }

    @Test
    void whatWaitsSurvivesTheEndOfTheProgram() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        // A file where the folder should be: nothing can be written, not even by an administrator.
        Files.writeString(log(), "not a folder");
        try (LogStore store = Folders.open(log(), bench)) {
            Saved.Waiting waiting =
                    assertInstanceOf(Saved.Waiting.class, store.append("note", null, Folders.note("kept")));
            assertTrue(waiting.sentence().contains("is a file, not a folder"), waiting.sentence());
            assertTrue(Files.readString(waiting.keptIn().orElseThrow()).contains("kept"));
        }
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(1, store.waiting().size());
            assertEquals(1, Folders.count(store));
        }
        Files.delete(log());
        Folders.open(log(), bench).close();
        assertTrue(Files.readString(Folders.onlyFile(log())).contains("kept"));
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(List.of(), store.waiting());
            assertEquals(1, Folders.count(store));
        }
    }

    @Test
    void aShareThatVanishesIsNamedAndTheWorkWaitsForIt() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        Path share = tmp.resolve("share");
        Files.createDirectories(share);
        Path folder = share.resolve("log");
        try (LogStore store = Folders.open(folder, bench)) {
            store.append("note", null, Folders.note("one"));
            Files.move(folder, tmp.resolve("unplugged"));
            Files.delete(share);
            Files.writeString(share, "an empty mount point that takes no folders");
            assertInstanceOf(Saved.Waiting.class, store.append("note", null, Folders.note("two")));
            store.refresh();
            assertTrue(
                    store.troubles().stream()
                            .anyMatch(trouble -> trouble.kind() == Trouble.Kind.MISSING
                                    || trouble.kind() == Trouble.Kind.UNREADABLE),
                    store.troubles().toString());
            assertEquals(2, Folders.count(store));
            Files.delete(share);
            Files.createDirectories(share);
            Files.move(tmp.resolve("unplugged"), folder);
            assertInstanceOf(Saved.OnDisk.class, store.append("note", null, Folders.note("three")));
        }
        try (LogStore store = Folders.open(folder, bench)) {
            assertEquals(3, Folders.count(store));
            assertEquals(List.of(), store.troubles());
        }
    }

    /** A program that copies files has put another file, with the same lines, in place of the one that is open. */
    @Test
    void aFileSwappedUnderTheOpenWindowIsNotWrittenIntoTheVoid() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("one"));
            Path file = Folders.onlyFile(log());
            Files.move(Files.copy(file, tmp.resolve("copy")), file, StandardCopyOption.REPLACE_EXISTING);
            assertInstanceOf(Saved.OnDisk.class, store.append("note", null, Folders.note("two")));
            assertInstanceOf(Saved.OnDisk.class, store.append("note", null, Folders.note("three")));
        }
        try (LogStore store = Folders.open(log(), Folders.bench(tmp, "reader"))) {
            assertEquals(3, Folders.count(store));
        }
    }

    /** An older copy of our file came back: to go on in it would clash with the newer one, should that return. */
    @Test
    void aFileOfOursThatWasPutBackToAnOlderCopyIsLeftAlone() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("one"));
        }
        Path file = Folders.onlyFile(log());
        byte[] older = Files.readAllBytes(file);
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("two"));
        }
        byte[] newer = Files.readAllBytes(file);
        Files.write(file, older);
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("three"));
            assertEquals(Trouble.Kind.MISSING, store.troubles().get(0).kind());
        }
        Files.write(file, newer);
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(3, Folders.count(store));
            assertEquals(List.of(), store.troubles());
        }
    }

    /** Where a share was, there is now an empty folder on this machine's own disk. */
    @Test
    void nothingIsWrittenIntoTheEmptyFolderThatAVanishedShareLeaves() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("one"));
        }
        Files.move(log(), tmp.resolve("unplugged"));
        Files.createDirectories(log());
        try (LogStore store = Folders.open(log(), bench)) {
            Saved.Waiting waiting =
                    assertInstanceOf(Saved.Waiting.class, store.append("note", null, Folders.note("two")));
            assertTrue(waiting.sentence().contains("Connect the disk"), waiting.sentence());
        }
        try (Stream<Path> inside = Files.list(log())) {
            assertEquals(List.of(), inside.toList());
        }
        Files.delete(log());
        Files.move(tmp.resolve("unplugged"), log());
        Folders.open(log(), bench).close();
        try (LogStore store = Folders.open(log(), bench)) {
            assertEquals(2, Folders.count(store));
            assertEquals(List.of(), store.waiting());
            assertEquals(List.of(), store.troubles());
        }
    }

    @Test
    void aLogThatIsGoneForGoodCanBeBegunAgain() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        try (LogStore store = Folders.open(log(), bench)) {
            store.append("note", null, Folders.note("one"));
        }
        Files.delete(Folders.onlyFile(log()));
        try (LogStore store = Folders.open(log(), bench)) {
            assertInstanceOf(Saved.Waiting.class, store.append("note", null, Folders.note("two")));
            store.acceptLosses();
            assertInstanceOf(Saved.OnDisk.class, store.append("note", null, Folders.note("three")));
            assertEquals(List.of(), store.waiting());
        }
    }

    @Test
    void aFolderThatMayNotBeWrittenIsSaidClearly() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        Files.createDirectories(log());
        assumeTrue(Files.getFileStore(log()).supportsFileAttributeView("posix"));
        Files.setPosixFilePermissions(log(), PosixFilePermissions.fromString("r-xr-xr-x"));
        assumeTrue(!Files.isWritable(log()), "an administrator may write anywhere");
        try (LogStore store = Folders.open(log(), bench)) {
            String said = assertInstanceOf(Saved.Waiting.class, store.append("note", null, Folders.note("x")))
                    .sentence();
            assertTrue(said.contains("may not be written to"), said);
        }
    }

    @Test
    void afterAPowerCutEveryAcknowledgedEntryIsThere() throws IOException {
        SplittableRandom random = new SplittableRandom(7);
        FaultyDisk.Fault[] faults = FaultyDisk.Fault.values();
        for (int round = 0; round < 60; round++) {
            Path folder = tmp.resolve("power-" + round);
            ThisBench bench = Folders.bench(tmp.resolve("homes-" + round), "anna");
            FaultyDisk mains = new FaultyDisk();
            Set<UUID> acknowledged = new HashSet<>();
            LogStore store = Folders.open(folder, bench, mains);
            for (int i = 0; i < 20; i++) {
                mains.fail(
                        random.nextInt(4) == 0 ? faults[random.nextInt(faults.length)] : FaultyDisk.Fault.NONE,
                        "Input/output error");
                Saved saved = store.append("note", null, Folders.note("n" + i));
                if (saved instanceof Saved.OnDisk
                        || ((Saved.Waiting) saved).keptIn().isPresent()) {
                    acknowledged.add(saved.entry().id());
                }
            }
            mains.losePower(random);
            mains.fail(FaultyDisk.Fault.OPEN, "the power is out");
            store.close();
            try (LogStore after = Folders.open(folder, bench)) {
                Set<UUID> there =
                        after.ask(ledger -> ledger.all().stream().map(Entry::id).collect(Collectors.toSet()));
                assertTrue(there.containsAll(acknowledged), "round " + round);
            }
        }
    }
}
