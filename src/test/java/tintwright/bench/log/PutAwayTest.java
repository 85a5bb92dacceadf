package tintwright.bench.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import org.junit.jupiter.api.Test;
import tintwright.colour.Viewing;
import tintwright.reading.FilmState;
import tintwright.shelf.Shelf;
import tintwright.window.Desk;
import tintwright.window.Desks;

/** A cup that is done leaves what it taught. */
class PutAwayTest {
    private final Desk desk = Desks.demo(Clock.systemUTC());

    private static double left(Shelf shelf, String id) {
        return shelf.item(id).orElseThrow().stock().gramsLeft().orElseThrow();
    }

    @Test
    void itsChipsTeachItsGramsAreGoneAndUndoBringsAllOfItBack() {
        Shelf before = desk.job().now().shelf();
        desk.cup().begin();
        desk.cup().accept();
        desk.cup().alsoWeighed("soot-black", "0.4");
        assertTrue(desk.cup().read("75", "-1", "1", Viewing.D65_10, FilmState.CURED));
        double white = desk.job().now().cup().orElseThrow().state().white();
        desk.cup().putAway();
        Shelf after = desk.job().now().shelf();
        assertEquals(before.chips().size() + 1, after.chips().size());
        assertEquals(left(before, "soot-black") - 0.4, left(after, "soot-black"), 1e-9);
        assertEquals(left(before, "plain-white") - white, left(after, "plain-white"), 1e-6);
        assertTrue(desk.job().now().cup().isEmpty());
        desk.shell().undo();
        assertEquals(before, desk.job().now().shelf());
        assertTrue(desk.job().now().cup().isPresent());
    }

    @Test
    void whatWasPouredOffStandsOnTheShelfUnderItsName() {
        Shelf before = desk.job().now().shelf();
        desk.cup().begin();
        desk.cup().accept();
        desk.cup().alsoWeighed("soot-black", "2");
        tintwright.cup.Cup cup = desk.job().now().cup().orElseThrow();
        Shelf after = PutAway.of(
                before,
                cup.add(
                        java.time.Instant.parse("2026-11-30T09:00:00Z"),
                        new tintwright.cup.Deed.SetAside(40, "bow rest")),
                java.time.LocalDate.of(2026, 5, 4));
        assertEquals(
                40,
                after.leftovers().stream()
                        .filter(each -> each.name().equals("bow rest"))
                        .findFirst()
                        .orElseThrow()
                        .parts()
                        .total(),
                1e-6);
        assertEquals(left(before, "soot-black") - 2, left(after, "soot-black"), 1e-9);
    }
}
