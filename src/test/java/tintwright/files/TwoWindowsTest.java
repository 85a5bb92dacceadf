package tintwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.CureTimer;
import tintwright.fill.catalyst.NotedTime;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.Spot;

/** Two windows that hold one small file in hand for long: what both put in stays, what clashes is told. */
class TwoWindowsTest {
    private static final Instant NOON = Instant.parse("2026-05-31T12:00:00Z");
    private static final CureTimer GEL = new CureTimer("stop spreading", 12, 18, "strings");
    private static final CureTimer TAPE = new CureTimer("tape off", 20, 30, "tacky");

    @TempDir
    private Path folder;

    private static NotedTime gelled(double minutes) {
        return new NotedTime(20, new CatalystShare(2, Basis.MASS), OptionalDouble.of(minutes), OptionalDouble.empty());
    }

    private static ClocksFile.Catalysed cup(int batch, CureTimer... timers) {
        return new ClocksFile.Catalysed(
                Optional.of("Tarrowmere, port bow"), batch, "holes", NOON.plusSeconds(batch), List.of(timers));
    }

    @Test
    void timesThatBothNotedAreBothKept() throws FileProblem {
        Path file = folder.resolve("noted-times.json");
        NotedTimesFile.keep(file, List.of(), List.of(gelled(14)));
        List<NotedTime> first = NotedTimesFile.read(file);
        NotedTimesFile.keep(file, first, List.of(gelled(14), gelled(15)));
        List<NotedTime> mine = List.of(gelled(14), gelled(16));
        NotedTimesFile.keep(file, first, mine);
        assertEquals(List.of(gelled(14), gelled(15), gelled(16)), NotedTimesFile.read(file));
        // And again, though this window never saw what the other one noted.
        NotedTimesFile.keep(file, mine, List.of(gelled(16), gelled(17)));
        assertEquals(List.of(gelled(15), gelled(16), gelled(17)), NotedTimesFile.read(file));
    }

    @Test
    void clocksThatBothStartedRunOnAndWhatEitherSawDoneIsDone() throws FileProblem {
        Path file = folder.resolve("cure.json");
        List<ClocksFile.Catalysed> first = List.of(cup(1, GEL, TAPE));
        ClocksFile.keep(file, List.of(), first);
        ClocksFile.keep(file, first, List.of(cup(1, TAPE), cup(2, GEL)));
        List<ClocksFile.Catalysed> mine = List.of(cup(1, GEL, TAPE), cup(3, GEL));
        ClocksFile.keep(file, first, mine);
        assertEquals(List.of(cup(1, TAPE), cup(2, GEL), cup(3, GEL)), ClocksFile.read(file));
        ClocksFile.keep(file, mine, List.of(cup(1, GEL)));
        assertEquals(List.of(cup(2, GEL)), ClocksFile.read(file), "each saw one of the two timers done");
    }

    @Test
    void marksThatClashAreToldAndTheFirstStand() throws Exception {
        Path file = MarksFile.beside(folder.resolve("bow.jpg"));
        MarksFile.keep(file, Marks.NONE, marked("bow"));
        String there = Files.readString(file);
        FileProblem told = assertThrows(FileProblem.class, () -> MarksFile.keep(file, Marks.NONE, marked("stern")));
        assertTrue(told.getMessage().contains("another window marked this photo otherwise"), told.getMessage());
        assertEquals(1, told.getMessage().lines().count());
        assertEquals(there, Files.readString(file));
        MarksFile.keep(file, Marks.NONE, marked("bow"));
        MarksFile.keep(file, marked("bow"), marked("keel"));
        assertEquals("keel", MarksFile.read(file).spots().get(0).name());
    }

    private static Marks marked(String spot) {
        return new Marks(List.of(), List.of(), List.of(Spot.hull(spot, 100, 100, 40)), false);
    }

    @Test
    void ofTwoFirstStartsTheSecondIsTold() throws Exception {
        Path file = folder.resolve("noted-times.json");
        SharedFile<String> shared =
                SharedFile.of(file, root -> root.at("said").text(), said -> "{\"said\": \"" + said + "\"}\n");
        shared.keep(Optional.empty(), "one", (before, theirs, mine) -> mine);
        FileProblem told = assertThrows(
                FileProblem.class, () -> shared.keep(Optional.empty(), "two", (before, theirs, mine) -> mine));
        assertTrue(told.getMessage().contains("another window has made"), told.getMessage());
        assertEquals("one", shared.read());
        try (Stream<Path> all = Files.list(folder)) {
            assertEquals(List.of(file), all.toList());
        }
    }
}
