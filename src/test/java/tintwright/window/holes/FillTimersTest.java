package tintwright.window.holes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.HandClock;
import tintwright.bench.top.CureClock;
import tintwright.fill.catalyst.CureTimer;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairKind;
import tintwright.units.UnitSystem;
import tintwright.window.Desk;
import tintwright.window.Desks;
import tintwright.window.frame.Step;

/** The times of cups with catalyst in them, without a window. */
class FillTimersTest {
    private final HandClock clock = HandClock.standing("2026-05-04T09:00:00Z");
    private final Desk desk = Desks.demo(clock);
    private final FillModel fill = desk.fill();

    private boolean addHoles() {
        return fill.add(
                "cleat holes",
                RepairKind.COUNTERSUNK,
                Map.of("hole", "5", "top", "9", "countersink", "2", "depth", "6", "angle", " "),
                Lie.VERTICAL,
                "8",
                UnitSystem.METRIC);
    }

    @Test
    void theTimesRunFromTheCatalystAndAreSaidWhereverOneIs() {
        assertTrue(addHoles());
        fill.catalysed(1);
        desk.shell().stepProperty().set(Step.LOG);
        CureTimer first =
                fill.planProperty().get().orElseThrow().plan().timers().get(0);
        assertEquals("stop spreading", cue(0).cue());
        assertEquals(CureClock.Phase.WAIT, cue(0).phase());
        String caption = desk.shell().captionProperty(Step.FILL).get();
        assertTrue(caption.matches("\\d+ min left"), caption);
        assertTrue(cue(0).figure().matches("\\d+ min \\d+ s left"), cue(0).figure());
        clock.move(Duration.ofMillis((long) (first.fromMinutes() * 60_000) - 90_000));
        fill.timers().tick();
        assertEquals("1 min 30 s left", cue(0).figure());
        assertEquals("", desk.shell().noticeProperty().get());
        clock.move(Duration.ofMinutes(2));
        fill.timers().tick();
        assertEquals("now", cue(0).figure());
        assertTrue(
                desk.shell().noticeProperty().get().contains("stop spreading"),
                desk.shell().noticeProperty().get());
        assertEquals("Done: stop spreading", fill.nextProperty().get().button());
        fill.doNext();
        assertEquals("tape off", cue(0).cue());
        fill.stopTimers(fill.timers().inHand(1));
        assertTrue(fill.timers().runningProperty().get().isEmpty());
        assertTrue(fill.nextProperty().get().button().contains("batch 1"));
    }

    /** While somebody is busy with another cup, what is about to gel stands in the strip, and says when. */
    @Test
    void aCupThatIsAboutToGelIsInTheStripAtEveryStation() {
        assertTrue(addHoles());
        fill.catalysed(1);
        CureTimer first =
                fill.planProperty().get().orElseThrow().plan().timers().get(0);
        clock.move(Duration.ofMillis((long) (first.fromMinutes() * 60_000) - 270_000));
        fill.timers().tick();
        String at = clock.instant().plusSeconds(270).toString().substring(11, 16);
        for (Step step : Step.values()) {
            desk.shell().stepProperty().set(step);
            String strip = desk.shell().nowProperty().get();
            assertTrue(
                    strip.contains("stop spreading: 4 min 30 s left") && strip.contains("until " + at),
                    step + ": " + strip);
        }
        desk.shell().stepProperty().set(Step.SHELF);
        desk.shell().doNow();
        assertEquals(Step.FILL, desk.shell().stepProperty().get());
        desk.shell().stepProperty().set(Step.CUP);
        clock.move(Duration.ofMinutes(5));
        fill.timers().tick();
        assertEquals("To the holes", desk.shell().nowButtonProperty().get());
        desk.shell().say("Copied as text.");
        assertTrue(
                desk.shell().noticeProperty().get().contains("stop spreading: look now"),
                desk.shell().noticeProperty().get());
        assertTrue(desk.shell().noticeStaysProperty().get());
        desk.shell().say("");
        assertEquals("", desk.shell().noticeProperty().get());
        clock.move(Duration.ofHours(1));
        fill.timers().tick();
        assertTrue(
                desk.shell().noticeProperty().get().contains("tape off"),
                desk.shell().noticeProperty().get());
        fill.timers().done(1, "tape off");
        assertFalse(desk.shell().noticeProperty().get().contains("tape off"), "what is done is no longer warned of");
    }

    private FillTimers.Cue cue(int index) {
        return fill.timers().runningProperty().get().get(0).cues().get(index);
    }

    @Test
    void whatWasCatalysedStillRunsWhenTheWindowIsOpenedAgain(@TempDir Path folder) throws Exception {
        KeptTimers kept = new KeptTimers(folder.resolve("bench").resolve("cure.json"));
        fill.keepTimers(kept);
        assertTrue(addHoles());
        fill.catalysed(1);
        clock.move(Duration.ofMinutes(5));
        Desk again = Desks.demo(clock);
        again.fill().keepTimers(kept);
        fill.timers().tick();
        assertEquals(
                fill.timers().runningProperty().get(),
                again.fill().timers().runningProperty().get());
        assertTrue(again.fill().nextProperty().get().running());
        again.fill().stopTimers(again.fill().timers().inHand(1));
        assertTrue(kept.fetch("").isEmpty());
        Files.writeString(folder.resolve("bench").resolve("cure.json"), "clocks=two");
        Desk broken = Desks.demo(clock);
        broken.fill().keepTimers(kept);
        assertTrue(broken.shell().noticeProperty().get().contains("cure.json"));
    }

    /** Batches are numbered anew at each place: one that cures at the bow is not begun at the quarter. */
    @Test
    void aBatchThatCuresAtOnePlaceIsNotBegunAtAnother(@TempDir Path folder) throws Exception {
        KeptTimers kept = new KeptTimers(folder.resolve("cure.json"));
        fill.keepTimers(kept);
        assertTrue(addHoles());
        fill.catalysed(1);
        int here = desk.job().now().place();
        desk.job().change(job -> job.withPlaces(job.boat(), job.places(), 1 - here));
        assertTrue(addHoles());
        assertFalse(fill.timers().clocks().containsKey(1), "nothing was catalysed here");
        assertEquals(Map.of(), fill.timers().clocks());
        var elsewhere = fill.timers().runningProperty().get().get(0);
        assertTrue(elsewhere.name().startsWith("Batch 1 of Tarrowmere, "), elsewhere.name());
        fill.catalysed(1);
        assertEquals(2, fill.timers().runningProperty().get().size(), "both cure");
        assertEquals(2, kept.fetch("").size());
        desk.job().change(job -> job.withPlaces(job.boat(), job.places(), here));
        fill.stopTimers(fill.timers().inHand(1));
        assertEquals(1, kept.fetch("").size(), "the other one cures on");
    }
}
