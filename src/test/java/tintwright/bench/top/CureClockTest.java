package tintwright.bench.top;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import tintwright.bench.top.CureClock.Phase;
import tintwright.bench.top.CureClock.Standing;
import tintwright.files.Demo;
import tintwright.fill.FillPlanner;
import tintwright.fill.catalyst.CureTimer;

class CureClockTest {
    private static final Instant START = Instant.parse("2026-05-09T14:00:00Z");
    private static final CureClock CLOCK = new CureClock(START, List.of(new CureTimer("tape off", 12, 45, "a jelly")));

    private static Standing after(double minutes) {
        return CLOCK.at(START.plusMillis(Math.round(minutes * 60_000))).get(0);
    }

    @Test
    void waitsThenLooksThenIsOverdue() {
        assertEquals(Phase.WAIT, after(0).phase());
        assertEquals(Duration.ofMinutes(12), after(0).left());
        assertEquals(Phase.WAIT, after(11.99).phase());
        assertEquals(Phase.LOOK, after(12).phase());
        assertEquals(Duration.ofMinutes(33), after(12).left());
        assertEquals(Phase.LOOK, after(45).phase());
        assertEquals(Phase.OVERDUE, after(46).phase());
        assertEquals(Duration.ofMinutes(1), after(46).left());
    }

    @Test
    void saysItInOneLine() {
        assertEquals("tape off: in 8 min", after(4.5).words());
        assertEquals(
                "tape off: look now - a jelly; expected within 15 min",
                after(30).words());
        assertEquals(
                "tape off: expected 3 h 0 min ago - a jelly", after(45 + 180).words());
    }

    /** Whatever the moment, a timer only ever moves forward. */
    @Test
    void neverStepsBack() {
        CureClock demo =
                new CureClock(START, FillPlanner.plan(Demo.fillOrder().job()).timers());
        for (int i = 0; i < demo.timers().size(); i++) {
            Phase before = Phase.WAIT;
            for (long minutes = 0; minutes < 3000; minutes += 7) {
                Phase now =
                        demo.at(START.plus(Duration.ofMinutes(minutes))).get(i).phase();
                assertTrue(now.compareTo(before) >= 0, demo.timers().get(i).cue() + " at " + minutes);
                before = now;
            }
            assertEquals(Phase.OVERDUE, before, demo.timers().get(i).cue());
        }
    }
}
