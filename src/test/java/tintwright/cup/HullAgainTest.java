package tintwright.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.demo.MeteredShop;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Parts;
import tintwright.shelf.knowledge.Knowledge;

/** A hull that a meter read once is read once more with the first chip, and the two count together. */
class HullAgainTest {
    private static final Instant NOW = Instant.parse("2026-06-02T09:00:00Z");
    private static final Knowledge SHELF = Knowledge.of(MeteredShop.shelf());
    private static final PlaceReadings HULL = new PlaceReadings("", "bow", List.of(read(80, -1, 4)), "");

    private static ColourReading read(double lightness, double a, double b) {
        return new ColourReading(
                new Lab(lightness, a, b, Viewing.D65_10),
                Covariance.same(ColourReading.USUAL_NOISE),
                Geometry.SPECULAR_INCLUDED,
                FilmState.CURED,
                Optional.empty());
    }

    /** White and all of the first doses. */
    private static Cup dosed() {
        Cup cup = Cup.empty("bow", HULL, 100, 0.01, "plain-white")
                .add(NOW, new Deed.Weighed("plain-white", 66, 0.01))
                .add(NOW, new Deed.Held(34));
        while (DosePlanner.plan(CupSight.of(SHELF, cup)) instanceof Plan.Doses doses) {
            for (Dose dose : doses.doses()) {
                cup = cup.add(NOW, dose.deed());
            }
        }
        return cup;
    }

    private static Cup read(Cup cup, Optional<ColourReading> hull) {
        Lab lab = CupSight.of(SHELF, cup).colourOf(Parts.of(cup.state().grams()));
        return cup.add(NOW, new Deed.Read(read(lab.lightness(), lab.a(), lab.b()), hull, true));
    }

    @Test
    void theHullIsAskedForWithTheChipUntilItWasReadTwice() {
        Cup cup = dosed();
        Plan.TakeChip plan = (Plan.TakeChip) DosePlanner.plan(CupSight.of(SHELF, cup));
        assertTrue(plan.besideHull(), "a hull that was read once");
        Cup twice = read(cup, Optional.of(read(80.6, -1.4, 4.2)));
        assertFalse(twice.hullReadOnce());
        assertTrue(read(cup, Optional.empty()).hullReadOnce());
    }

    @Test
    void bothReadingsCountForTheHullAndTheChipForTheCup() {
        Cup cup = dosed();
        CupSight once = CupSight.of(SHELF, read(cup, Optional.empty()));
        CupSight twice = CupSight.of(SHELF, read(cup, Optional.of(read(80.6, -1.4, 4.2))));
        assertEquals(80.3, twice.target().colour().lightness(), 1e-9);
        assertEquals(4.1, twice.target().colour().b(), 1e-9);
        assertTrue(twice.hullDoubt() < 0.85 * once.hullDoubt(), twice.hullDoubt() + " and " + once.hullDoubt());
        // What the hull is thought to be says nothing of the cup.
        assertEquals(
                once.colour().orElseThrow().lightness(),
                twice.colour().orElseThrow().lightness(),
                0.1);
        assertEquals(
                80,
                CupSight.of(SHELF, twice.cup().undo(NOW)).target().colour().lightness(),
                1e-9,
                "taken back with its chip");
    }

    @Test
    void aReadingThatIsNotLearnedFromDoesNotMoveTheHull() {
        Cup cup = dosed().add(NOW, new Deed.Read(read(20, 0, 0), Optional.of(read(70, 0, 0)), false));
        assertEquals(1, cup.hullAsRead().readings().size());
    }
}
