package tintwright.window.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import tintwright.bench.log.BoatLog;
import tintwright.colour.Viewing;
import tintwright.logbook.Page;
import tintwright.reading.FilmState;
import tintwright.window.Desk;
import tintwright.window.Desks;

/** The log as it is shown, without a window. */
class LogModelTest {
    private final Desk desk = Desks.demo(Clock.systemUTC());
    private final LogModel log = desk.log();

    private LogModel.Shown now() {
        return log.shownProperty().get();
    }

    private BoatLog.Line mixOne() {
        desk.cup().begin();
        for (int i = 0;
                i < 7
                        && desk.cup()
                                .inHandProperty()
                                .get()
                                .orElseThrow()
                                .deeds()
                                .now()
                                .deed()
                                .isPresent();
                i++) {
            desk.cup().accept();
        }
        desk.cup().alsoWeighed("soot-black", "0.6");
        desk.cup().read("57.6", "-8.2", "1.5", Viewing.D65_10, FilmState.CURED);
        // Only a mix that is no longer there is a chip of its own.
        desk.cup().alsoWeighed("bark-brown", "0.4");
        String name = desk.job().now().cup().orElseThrow().name();
        log.doneWithCup();
        assertTrue(desk.job().now().cup().isEmpty(), "done is put away");
        return now().entries().stream()
                .filter(line -> line.cup() && line.title().contains(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aChipIsNamedAfterItsCupAndShowsWhatItRead() {
        BoatLog.Line cup = mixOne();
        BoatLog.Line chip = now().entries().stream()
                .filter(line -> line.title().startsWith("Chip") && line.words().contains("57.6"))
                .findFirst()
                .orElseThrow(() -> new AssertionError(now().entries()));
        assertTrue(chip.words().startsWith("greyish green (L*"), "words before numbers: " + chip.words());
        assertTrue(chip.colour().isPresent());
        assertTrue(chip.title().contains(cup.title().substring("Cup ".length())), chip.title());
        assertTrue(
                now().entries().stream()
                        .noneMatch(line -> (line.title() + " " + line.words()).matches("(?s).*\\be[0-9]+\\b.*")),
                now().entries().toString());
    }

    @Test
    void aCupSaysWhatItsLastChipLookedLike() {
        desk.cup().begin();
        desk.cup().accept();
        desk.cup().alsoWeighed("soot-black", "0.6");
        desk.cup().read("57.6", "-8.2", "1.5", Viewing.D65_10, FilmState.CURED);
        log.doneWithCup();
        assertTrue(
                now().entries().stream()
                        .anyMatch(line -> line.cup() && line.words().contains("Its last chip: greyish green (L* 57.6")),
                now().entries().toString());
    }

    @Test
    void doneAndTakenBackAndDoneAgainWritesNothingTwice() {
        mixOne();
        int entries = now().entries().size();
        desk.shell().undo();
        assertTrue(desk.job().now().cup().isPresent(), "undo brings the cup back");
        log.doneWithCup();
        assertEquals(entries, now().entries().size(), now().entries().toString());
    }

    @Test
    void aPlaceThatIsReadAndNotWrittenDownSaysSo() {
        desk.hull()
                .newPlace("transom", "80", "-2.0", "6.5", Viewing.D65_10, tintwright.colour.Geometry.SPECULAR_EXCLUDED);
        desk.cup().begin();
        desk.cup().accept();
        LogModel.PlaceLine transom = now().places().stream()
                .filter(line -> line.name().equals("transom"))
                .findFirst()
                .orElseThrow();
        assertEquals("1 reading, not written down here yet", transom.read());
        log.writeReadings();
        transom = now().places().stream()
                .filter(line -> line.name().equals("transom"))
                .findFirst()
                .orElseThrow();
        assertEquals("Light greyish yellow green", transom.read());
        assertTrue(transom.figures().contains("L* 80.0"), transom.figures());
    }

    @Test
    void aVerdictIsSaidOnceAndCanBeChanged() {
        BoatLog.Line cup = mixOne();
        int entries = now().entries().size();
        log.judge(cup.id(), Page.Outcome.REDO, "");
        log.judge(cup.id(), Page.Outcome.REDO, "");
        log.judge(cup.id(), Page.Outcome.INVISIBLE, "");
        assertEquals(entries + 1, now().entries().size(), now().entries().toString());
        assertEquals(
                Optional.of(Page.Outcome.INVISIBLE),
                now().entries().stream()
                        .filter(line -> line.id().equals(cup.id()))
                        .findFirst()
                        .orElseThrow()
                        .verdict());
    }

    @Test
    void aVerdictNamesItsCupAndStandsOnIt() {
        BoatLog.Line cup = mixOne();
        assertEquals(Optional.empty(), cup.verdict());
        log.judge(cup.id(), Page.Outcome.SEEN_FROM_A_METRE, "");
        BoatLog.Line judged = now().entries().stream()
                .filter(line -> line.id().equals(cup.id()))
                .findFirst()
                .orElseThrow();
        assertEquals(Optional.of(Page.Outcome.SEEN_FROM_A_METRE), judged.verdict());
        String name = cup.title().substring("Cup ".length());
        assertTrue(
                now().entries().stream()
                        .anyMatch(line -> line.title().equals("The cup " + name + " came out seen from a metre")),
                now().entries().toString());
    }

    @Test
    void whatComesNearIsEachCupOnceAndNeverTheOneInHand() {
        BoatLog.Line inHand = mixOne();
        desk.shell().undo();
        List<LogModel.NearLine> near = now().near();
        assertFalse(near.isEmpty());
        Set<UUID> cups = new HashSet<>();
        for (LogModel.NearLine line : near) {
            line.cup().ifPresent(cup -> assertTrue(cups.add(cup), "twice: " + line.name()));
            assertFalse(line.cup().equals(Optional.of(inHand.id())), "the cup in hand: " + line.name());
        }
        LogModel.NearLine first =
                near.stream().filter(line -> line.cup().isPresent()).findFirst().orElseThrow();
        log.again(first.cup().orElseThrow(), "60");
        assertEquals("", log.problemProperty().get());
        assertTrue(
                log.againProperty().get().title().contains("60 g"),
                log.againProperty().get().title());
        assertTrue(
                log.againProperty().get().lines().stream().anyMatch(line -> line.contains("plain white")),
                log.againProperty().get().lines().toString());
    }
}
