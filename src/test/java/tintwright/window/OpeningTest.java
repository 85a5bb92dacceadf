package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.ShopLog;
import tintwright.fill.Lie;
import tintwright.fill.RepairKind;
import tintwright.units.UnitSystem;

/** A window that is closed, or killed, and opened again on the same home folder; without a stage. */
class OpeningTest {
    private static final Instant NOON = Instant.parse("2026-05-09T12:00:00Z");

    @TempDir
    Path home;

    private Desk open(boolean own, Instant now) {
        Clock clock = Clock.fixed(now, ZoneOffset.UTC);
        return Opening.fetch(home, own, Desks::learn).desk(Runnable::run, Runnable::run, clock,
                () -> ShopLog.demo(clock));
    }

    @Test
    void theClocksOfCatalysedCupsRunOn() {
        Desk before = open(false, NOON);
        assertTrue(before.fill().add("holes", RepairKind.HOLE, Map.of("hole", "6", "depth", "6"), Lie.VERTICAL, "4",
                UnitSystem.METRIC), before.fill().problemProperty().get());
        before.fill().catalysed(1);
        assertFalse(before.fill().timers().runningProperty().get().isEmpty());

        Desk after = open(false, NOON.plus(Duration.ofMinutes(7)));
        assertTrue(after.fill().timers().isRunning(1), "the cup cures whether the window is open or not");
        assertTrue(after.fill().nextProperty().get().running());
        before.fill().timers().tick();
        assertEquals(before.fill().timers().runningProperty().get().get(0).words(),
                after.fill().timers().runningProperty().get().get(0).words());

        after.fill().stopTimers(1);
        assertFalse(open(false, NOON.plus(Duration.ofMinutes(9))).fill().timers().isRunning(1),
                "what was stopped stays stopped");
    }

    @Test
    void theTwoBenchesDoNotTouchEachOther() {
        Desk demo = open(false, NOON);
        demo.plan().scaleStep(0.1);
        Desk own = open(true, NOON);
        assertEquals("", own.job().now().boat());
        own.job().change(before -> before.of(77));
        assertEquals(0.1, open(false, NOON).job().now().scaleStep());
        assertEquals(150, open(false, NOON).job().now().grams());
        assertEquals(77, open(true, NOON).job().now().grams());
    }

    @Test
    void aBenchThatCannotBeReadIsSaidAndLeftAsItIs() throws Exception {
        open(true, NOON).job().change(before -> before.of(77));
        Path shelf = home.resolve("bench").resolve("shelf.json");
        Files.writeString(shelf, "{");
        Desk desk = open(true, NOON);
        assertTrue(desk.shell().noticeProperty().get().contains("shelf.json"), desk.shell().noticeProperty().get());
        assertEquals("{", Files.readString(shelf));
    }
}
