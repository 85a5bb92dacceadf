package tintwright.bench.top;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DayTicksTest {
    private static final String BOW = "Tarrowmere, port bow";

    @TempDir
    Path folder;

    private DayTicks open() {
        DayTicks ticks = new DayTicks();
        ticks.keepIn(folder.resolve("day.json"));
        return ticks;
    }

    @Test
    void ticksOfTwoWindowsAreBothKeptAndOneThatIsTakenBackIsGone() throws Exception {
        DayTicks here = open();
        here.tick(BOW, "now: wash", true);
        DayTicks there = open();
        there.tick(BOW, "+5: sand", true);
        here.tick(BOW, "+9: mask", true);
        assertEquals(Set.of("now: wash", "+5: sand", "+9: mask"), open().of(BOW));
        here.tick(BOW, "now: wash", false);
        assertEquals(Set.of("+5: sand", "+9: mask"), open().of(BOW));
    }

    @Test
    void ofAnotherPlaceNothingIsTicked() throws Exception {
        DayTicks ticks = open();
        ticks.tick(BOW, "now: wash", true);
        ticks.tick("Tarrowmere, transom", "+5: sand", true);
        assertEquals(Set.of(), open().of(BOW));
        assertEquals(Set.of("+5: sand"), open().of("Tarrowmere, transom"));
    }

    @Test
    void aFileThatCannotBeReadIsPutAsideAndTicksAreKeptAgain() throws Exception {
        Path file = Files.writeString(folder.resolve("day.json"), "{ half of");
        open().tick(BOW, "now: wash", true);
        assertEquals(Set.of("now: wash"), open().of(BOW));
        assertTrue(Files.readString(file.resolveSibling("day.json-unreadable")).startsWith("{ half"));
    }
}
