package tintwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.demo.MeteredShop;
import tintwright.shelf.Chip;

class SharedFileTest {
    private static final Instant NOW = Instant.parse("2026-05-31T09:12:00Z");

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void begin() throws FileProblem {
        file = folder.resolve("cup.json");
        CupFile.at(file).create(cup());
    }

    private static Cup cup() {
        return Cup.empty("bow 1", MeteredShop.places().get(0), 100, 0.01, "plain-white");
    }

    private static SharedFile.Changed<Cup, String> dosed(Cup there, double grams) {
        return new SharedFile.Changed<>(there.add(NOW, new Deed.Weighed("plain-white", grams, 0.01)), "done");
    }

    private List<Double> doses() throws FileProblem {
        return CupFile.read(file).entries().stream()
                .map(entry -> ((Deed.Weighed) entry.deed()).grams())
                .toList();
    }

    @Test
    void aChangeThatNoLockSawIsKeptBesideOurs() throws FileProblem {
        boolean[] first = {true};
        String said = CupFile.at(file).change(there -> {
            if (first[0]) {
                first[0] = false;
                // As a program that keeps folders in step would: past every lock.
                TextFile.write(file, CupFile.text(dosed(there, 1).value()));
            }
            return dosed(there, 2);
        });
        assertEquals("done", said);
        assertEquals(List.of(1.0, 2.0), doses());
    }

    @Test
    void whatIsAlwaysBeingChangedIsToldAndNotWritten() {
        int[] times = {0};
        FileProblem told = assertThrows(
                FileProblem.class,
                () -> CupFile.at(file).change(there -> {
                    TextFile.write(file, CupFile.text(dosed(there, ++times[0]).value()));
                    return dosed(there, 99);
                }));
        assertTrue(told.getMessage().contains("nothing was written"), told.getMessage());
        assertTrue(assertThrowsNothing(this::doses).stream().noneMatch(grams -> grams == 99));
    }

    private static <T> T assertThrowsNothing(java.util.concurrent.Callable<T> call) {
        try {
            return call.call();
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void whatIsRefusedIsNotWritten() throws IOException {
        String before = Files.readString(file);
        assertThrows(
                IllegalArgumentException.class,
                () -> CupFile.at(file).change(there -> {
                    throw new IllegalArgumentException("a colour that is not a number");
                }));
        assertEquals(before, Files.readString(file));
    }

    @Test
    void aNewFileReplacesNone() {
        FileProblem told =
                assertThrows(FileProblem.class, () -> CupFile.at(file).create(cup()));
        assertTrue(told.getMessage().contains("is there already and was left as it was"), told.getMessage());
    }

    @Test
    void aLinkIsWrittenThrough() throws Exception {
        Path real = Files.createDirectory(folder.resolve("real")).resolve("cup.json");
        Files.move(file, real);
        link(file, real);
        CupFile.at(file).change(there -> dosed(there, 3));
        assertTrue(Files.isSymbolicLink(file), "still a link");
        assertEquals(1, CupFile.read(real).entries().size());
    }

    @Test
    void aLinkToNothingIsRefused() throws Exception {
        Path dangling = folder.resolve("dangling.json");
        link(dangling, folder.resolve("nowhere.json"));
        FileProblem told =
                assertThrows(FileProblem.class, () -> CupFile.at(dangling).create(cup()));
        assertTrue(told.getMessage().contains("a link to a file that is not there"), told.getMessage());
        assertFalse(Files.exists(folder.resolve("nowhere.json")));
    }

    private static void link(Path from, Path to) throws IOException {
        try {
            Files.createSymbolicLink(from, to);
        } catch (UnsupportedOperationException e) {
            assumeTrue(false, "no links here");
        }
    }

    @Test
    void theDraftOfAProcessThatDiedIsClearedAway() throws Exception {
        Files.writeString(folder.resolve(".cup.json.0000.draft"), "half");
        Files.writeString(folder.resolve(".other.json.0000.draft"), "another's");
        CupFile.at(file).change(there -> dosed(there, 4));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(
                    List.of(".other.json.0000.draft", "cup.json"),
                    left.map(path -> path.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void aDraftThatCannotBeClearedAwayStopsNobody() throws Exception {
        // A folder with something in it cannot be deleted, like a file that another program holds open elsewhere.
        Files.writeString(
                Files.createDirectory(folder.resolve(".cup.json.0000.draft")).resolve("held"), "half");
        CupFile.at(file).change(there -> dosed(there, 4));
        assertEquals(List.of(4.0), doses());
    }

    @Test
    void theDraftsOfAFileBehindALinkAreClearedAway() throws Exception {
        Path real = Files.createDirectory(folder.resolve("real")).resolve("cup.json");
        Files.move(file, real);
        link(file, real);
        Path draft = Files.writeString(real.resolveSibling(".cup.json.0000.draft"), "half");
        CupFile.at(file).change(there -> dosed(there, 4));
        assertFalse(Files.exists(draft));
    }

    @Test
    void whatCouldNotBeOpenedAgainIsNotWritten() throws Exception {
        Path shelf = folder.resolve("shelf.json");
        ShelfFile.at(shelf).create(MeteredShop.shelf());
        String before = Files.readString(shelf);
        Chip like = MeteredShop.shelf().chips().get(0);
        List<Chip> many = IntStream.rangeClosed(0, 10_000)
                .mapToObj(i -> new Chip("chip " + i, like.parts(), like.readings(), like.madeOn(), like.note()))
                .toList();
        FileProblem told = assertThrows(
                FileProblem.class,
                () -> ShelfFile.at(shelf).change(there -> new SharedFile.Changed<>(there.withChips(many), true)));
        assertTrue(told.getMessage().contains("10001 chips, at most 10000"), told.getMessage());
        assertEquals(before, Files.readString(shelf));
    }

    @Test
    void whoHeldTheValueLongIsToldWhenTheTwoCannotBothStand() throws Exception {
        Cup before = CupFile.read(file);
        CupFile.at(file).change(there -> dosed(there, 5));
        String there = Files.readString(file);
        FileProblem told = assertThrows(
                FileProblem.class,
                () -> CupFile.at(file)
                        .keep(java.util.Optional.of(before), dosed(before, 6).value(), (b, t, m) -> {
                            throw FileProblem.unusable("the two cannot both stand");
                        }));
        assertEquals("the two cannot both stand", told.getMessage());
        assertEquals(there, Files.readString(file));
    }
}
