package tintwright.bench.top;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class CupNamesTest {
    @Test
    void countsOnFromTheHighestNumberOfThePlace() {
        assertEquals("port bow 1", CupNames.next("port bow", List.of()));
        assertEquals(
                "port bow 4",
                CupNames.next(
                        "port bow",
                        List.of("port bow 1", "Port Bow 3 rest", "bow 7", "starboard bow 9", "port bow 2")));
    }

    @Test
    void namesOfOlderLogsTakeNoNumber() {
        assertEquals(
                "port bow 1",
                CupNames.next(
                        "port bow", List.of("port bow, 2026-11-25 12:02", "port bow, 2026-11-25 12:02, set aside 1")));
    }

    @Test
    void aPlaceThatEndsInANumberIsStillAPlace() {
        assertEquals("deck (port) 2 1", CupNames.next("deck (port) 2", List.of("deck (port) 2")));
        assertEquals("deck (port) 3", CupNames.next("deck (port)", List.of("deck (port) 2")));
    }
}
