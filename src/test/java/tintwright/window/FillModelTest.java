package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.fill.Lie;
import tintwright.fill.RepairKind;
import tintwright.units.UnitSystem;

/** The fill without a window. */
class FillModelTest {
    private static final class HandClock extends Clock {
        private Instant now = Instant.parse("2026-05-04T09:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private final HandClock clock = new HandClock();
    private final Desk desk = Desks.demo(clock);
    private final FillModel fill = desk.fill();

    private boolean addHoles() {
        return fill.add("cleat holes", RepairKind.COUNTERSUNK, Map.of("hole", "5", "top", "9", "countersink", "2",
                "depth", "6", "angle", " "), Lie.VERTICAL, "8", UnitSystem.METRIC);
    }

    @Test
    void aLineOfRepairsGivesBatchesAndUndoTakesItBack() {
        assertTrue(fill.planProperty().get().isEmpty());
        assertTrue(addHoles(), fill.problemProperty().get());
        assertTrue(fill.planProperty().get().orElseThrow().plan().gelCoatGrams() > 1);
        desk.shell().undo();
        assertTrue(fill.planProperty().get().isEmpty());
    }

    @Test
    void twoRepairsOfOneNameAreRefused() {
        assertTrue(addHoles());
        assertFalse(addHoles());
        assertTrue(fill.problemProperty().get().contains("own name"), fill.problemProperty().get());
    }

    @Test
    void whatCannotBeASizeIsRefusedInOneSentence() {
        assertFalse(fill.add("x", RepairKind.GOUGE, Map.of("length", "long", "width", "2", "depth", "1"), Lie.VERTICAL,
                "1", UnitSystem.METRIC));
        assertTrue(fill.problemProperty().get().contains("Length"), fill.problemProperty().get());
        assertFalse(fill.add("x", RepairKind.GOUGE, Map.of("length", "9", "width", "2", "depth", "1"), Lie.VERTICAL,
                "a few", UnitSystem.METRIC));
    }

    @Test
    void coldWeatherIsNamedInsteadOfAPlan() {
        assertTrue(addHoles());
        fill.weather("2 C", "60", UnitSystem.METRIC);
        assertTrue(fill.planProperty().get().isEmpty());
        assertFalse(fill.problemProperty().get().isBlank());
        fill.weather("22", "60", UnitSystem.METRIC);
        assertTrue(fill.planProperty().get().isPresent(), fill.problemProperty().get());
    }

    @Test
    void theTimersRunFromTheCatalyst() {
        assertTrue(addHoles());
        fill.catalysed(1);
        double first = fill.runningProperty().get().get(0).minutes();
        assertTrue(first > 0);
        clock.now = clock.now.plus(Duration.ofMinutes(5));
        fill.tick();
        assertEquals(first - 5, fill.runningProperty().get().get(0).minutes(), 1e-9);
        clock.now = clock.now.plus(Duration.ofMinutes((long) Math.ceil(first - 5)));
        fill.tick();
        assertTrue(fill.runningProperty().get().get(0).due());
        fill.stopTimers(1);
        assertTrue(fill.runningProperty().get().isEmpty());
    }

    @Test
    void theJobSheetIsWrittenForPaperAndPhone(@TempDir Path folder) throws Exception {
        assertTrue(addHoles());
        fill.writeSheet(folder.resolve("a.pdf"), UnitSystem.METRIC);
        fill.writeSheet(folder.resolve("a.html"), UnitSystem.METRIC);
        assertEquals("%PDF", new String(Files.readAllBytes(folder.resolve("a.pdf")), 0, 4));
        assertTrue(Files.readString(folder.resolve("a.html")).contains("cleat holes"));
    }
}
