package tintwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.cup.Deed;
import tintwright.files.Demo;
import tintwright.window.Desks;

/** Steps that were chosen before something new was seen of the cup. */
class StepsAheadTest {
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");

    private final CupBench begun = CupBench.start(
                    Desks.learn(Demo.shelf()), "bow", Demo.places().get(0), 150, 0.01, Optional.empty())
            .asPlanned(NOW);
    private final Deed tint = new Deed.Weighed("soot-black", 0.1, 0.01);
    private final Deed white = new Deed.Weighed(begun.cup().base(), 10, 0.01);

    @Test
    void aTintIsPlannedAnewWithWhatWasSeen() {
        assertEquals(List.of(), begun.still(List.of(tint, white)));
        assertEquals(List.of(), begun.still(List.of(new Deed.LetDown("soot-black", 20, 1, 0.01))));
        assertEquals(List.of(), begun.still(List.of()));
    }

    @Test
    void aWayBackThatWasBegunIsGoneOnWith() {
        assertEquals(List.of(white, tint), begun.still(List.of(white, tint)));
        Deed off = new Deed.SetAside(50, "rest");
        assertEquals(List.of(off, tint), begun.still(List.of(off, tint)));
    }
}
