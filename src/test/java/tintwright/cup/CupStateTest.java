package tintwright.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.ColourReading.PhotoBias;
import tintwright.reading.Covariance;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Parts;

/** How far the masses of a cup may be off, by the law that variances add, and what counts as judged. */
class CupStateTest {
    private static final Instant NOW = Instant.parse("2026-05-31T09:00:00Z");
    private static final double SAME = 1e-12;
    private static final Deed LOOK = seen(Optional.of(Depth.SAME));
    private static final Deed CANNOT_TELL = seen(Optional.empty());

    private static Deed seen(Optional<Depth> depth) {
        return new Deed.Seen(new EyeVerdict(depth, Optional.empty(), Amount.NOT_SAID, FilmState.CURED));
    }

    private static Cup cup(Deed... deeds) {
        Cup cup = CupHistoryTest.empty();
        for (Deed deed : deeds) {
            cup = cup.add(NOW, deed);
        }
        return cup;
    }

    private static Deed weighed(String part, double grams) {
        return new Deed.Weighed(part, grams, 0.01);
    }

    private static Deed read(boolean counts) {
        return new Deed.Read(CupHistoryTest.reading(60, 0, 0), Optional.empty(), counts);
    }

    private static Deed photo(boolean counts) {
        return new Deed.Read(inPhoto(), Optional.of(inPhoto()), counts);
    }

    private static ColourReading inPhoto() {
        return new ColourReading(
                new Lab(60, 0, 0, Viewing.D65_10),
                Covariance.same(0.3),
                Geometry.SPECULAR_INCLUDED,
                FilmState.CURED,
                Optional.of(new PhotoBias("p", Covariance.same(0.5))));
    }

    @Test
    void errorsOfWeighingAddBySquares() {
        CupState state = cup(weighed("white", 60), weighed("white", 20), weighed("soot", 1))
                .state();
        assertEquals(0.01 * Math.sqrt(2), state.off().get("white"), SAME);
        assertEquals(0.01, state.off().get("soot"), SAME);
    }

    /** A fiftieth in the letdown's own strength beside its weighing; three drops stray as one does, times their root. */
    @Test
    void letdownsAndDropsAreOffByMoreThanTheScale() {
        CupState state = cup(new Deed.LetDown("soot", 10, 2, 0.01), new Deed.Dropped("brick", 3, 0.04))
                .state();
        assertEquals(Math.hypot(0.001, 0.004), state.off().get("soot"), SAME);
        assertEquals(0.01, state.off().get("white"), SAME);
        assertEquals(0.12, state.grams().get("brick"), SAME);
        assertEquals(0.04 * 0.15 * Math.sqrt(3), state.off().get("brick"), SAME);
        CupState found = cup(new Deed.Found(Parts.of(Map.of("white", 40.0, "soot", 2.0)), 0.1))
                .state();
        assertEquals(4, found.off().get("white"), SAME);
        assertEquals(0.2, found.off().get("soot"), SAME);
    }

    @Test
    void pouringOffTakesItsShareOfTheErrorsToo() {
        CupState half = cup(weighed("white", 60), new Deed.SetAside(30, "rest")).state();
        assertEquals(0.005, half.off().get("white"), SAME);
        assertEquals(0.005, half.unread().get("white"), SAME);
        CupState none = cup(weighed("white", 60), new Deed.SetAside(60, "all")).state();
        assertEquals(Optional.empty(), none.parts());
        assertEquals(Map.of(), none.off());
        assertFalse(none.unjudged());
        assertEquals(60, none.aside().get(0).parts().total(), SAME);
        assertEquals(List.of(), cup(new Deed.SetAside(1, "nothing")).state().aside());
    }

    @Test
    void whatIsLeftOfTheReserveIsNothingBelowHalfAStep() {
        assertEquals(
                0,
                cup(new Deed.Held(30), new Deed.Weighed("white", 29.996, 0.01))
                        .state()
                        .reserve());
        assertEquals(
                0.006,
                cup(new Deed.Held(30), new Deed.Weighed("white", 29.994, 0.01))
                        .state()
                        .reserve(),
                SAME);
        assertEquals(30, cup(new Deed.Held(30), weighed("soot", 1)).state().reserve());
    }

    /** Two grams of a cup of twenty with a tenth of soot, and the same amount again in the pot alone. */
    @Test
    void aTrialDabIsMadeInItsOwnPotAndLeavesTheCup() {
        Deed.Trial trial = new Deed.Trial(2, List.of(weighed("soot", 0.2)));
        Deed.Trial more = new Deed.Trial(2, List.of(weighed("soot", 0.4)));
        CupState state = cup(
                        weighed("white", 18),
                        weighed("soot", 2),
                        new Deed.Seen(
                                new EyeVerdict(
                                        Optional.of(Depth.SAME), Optional.empty(), Amount.NOT_SAID, FilmState.CURED),
                                Optional.of(trial),
                                List.of(more)))
                .state();
        assertEquals(16, state.mass(), SAME);
        assertEquals(1.6, state.grams().get("soot"), SAME);
        CupState.Look look = state.looks().get(0);
        assertEquals(1.8, look.parts().grams("white"), SAME);
        assertEquals(0.4, look.parts().grams("soot"), SAME);
        assertEquals(0.001, look.dab().off().get("white"), SAME);
        assertEquals(Math.hypot(0.001, 0.01), look.dab().off().get("soot"), SAME);
        assertEquals(0.6, look.farther().get(0).parts().grams("soot"), SAME);
        assertEquals(1, look.farther().size());
    }

    @Test
    void aDoseIsUnjudgedUntilAChipCountsOrAnEyeTells() {
        assertFalse(CupHistoryTest.empty().state().unjudged());
        assertTrue(cup(weighed("white", 60)).state().unjudged());
        assertTrue(cup(weighed("white", 60), CANNOT_TELL).state().unjudged());
        assertFalse(cup(weighed("white", 60), LOOK).state().unjudged());
        assertTrue(cup(weighed("white", 60), LOOK, weighed("soot", 1)).state().unjudged());
        assertTrue(cup(weighed("white", 60), read(false)).state().unjudged());
        assertFalse(cup(weighed("white", 60), read(true)).state().unjudged());
        assertFalse(cup(weighed("white", 60)).state().judged());
        assertFalse(cup(weighed("white", 60), read(false), CANNOT_TELL).state().judged());
        assertTrue(cup(weighed("white", 60), read(true)).state().judged());
        assertTrue(cup(weighed("white", 60), LOOK, weighed("soot", 1)).state().judged());
    }

    @Test
    void theWhiteAloneJudgesNoTint() {
        assertFalse(cup(weighed("white", 60), read(true), LOOK, weighed("soot", 1))
                .state()
                .tintWasJudged());
        assertTrue(cup(weighed("white", 60), weighed("soot", 1), read(true))
                .state()
                .tintWasJudged());
        assertTrue(cup(weighed("white", 60), weighed("soot", 1), LOOK).state().tintWasJudged());
        assertFalse(cup(weighed("white", 60), weighed("soot", 1), read(false), CANNOT_TELL)
                .state()
                .tintWasJudged());
    }

    @Test
    void theLastChipThatCountsIsTheLast() {
        CupState state = cup(weighed("white", 60), read(true), weighed("soot", 1), read(true), read(false))
                .state();
        assertEquals("e4", state.lastSample().orElseThrow().entry());
        assertEquals(Optional.empty(), cup(read(true)).state().lastSample(), "of an empty cup");
    }

    @Test
    void looksAndPhotosOfTheCupAsItIsAreCounted() {
        assertEquals(
                2,
                cup(weighed("white", 60), LOOK, weighed("soot", 1), LOOK, CANNOT_TELL, LOOK)
                        .state()
                        .looksAtThis());
        assertEquals(
                0, cup(weighed("white", 60), LOOK, weighed("soot", 1)).state().looksAtThis());
        Cup photographed = cup(weighed("white", 60), photo(true), weighed("soot", 1), photo(true), photo(false));
        assertEquals(1, photographed.state().photosOfThis());
        assertEquals(0, photographed.add(NOW, weighed("soot", 1)).state().photosOfThis());
        assertEquals(0, cup(weighed("white", 60), read(true)).state().photosOfThis());
        assertEquals(1, cup(weighed("white", 60), LOOK).state().looksAtThis());
        Deed byMeter =
                new Deed.Read(CupHistoryTest.reading(60, 0, 0), Optional.of(CupHistoryTest.reading(62, 0, 0)), true);
        assertEquals(0, cup(weighed("white", 60), byMeter).state().photosOfThis(), "a meter takes no photo");
    }

    private static void refused(Executable made) {
        assertThrows(IllegalArgumentException.class, made);
    }

    /** The ends of each range are in it, and nothing beyond. */
    @Test
    void whatCannotBeIsRefused() {
        refused(() -> weighed("soot", 0));
        refused(() -> weighed("soot", 100_001));
        refused(() -> new Deed.Weighed("soot", 1, 0));
        refused(() -> new Deed.Weighed("soot", 1, 11));
        refused(() -> new Deed.LetDown("soot", 10, 0, 0.01));
        refused(() -> new Deed.LetDown("soot", 10, 1, 0));
        refused(() -> new Deed.LetDown("soot", 1001, 1, 0.01));
        refused(() -> new Deed.Dropped("soot", 0, 0.04));
        refused(() -> new Deed.Dropped("soot", 1001, 0.04));
        refused(() -> new Deed.Dropped("soot", 1, 0));
        refused(() -> new Deed.Dropped("soot", 1, 1));
        refused(() -> new Deed.Held(-0.1));
        refused(() -> new Deed.SetAside(0, "rest"));
        refused(() -> new Deed.SetAside(1, " "));
        refused(() -> new Deed.Trial(0, List.of(weighed("soot", 1))));
        refused(() -> new Deed.Trial(1, List.of()));
        refused(() -> new Deed.Trial(1, List.of(new Deed.Held(1))));
        refused(() -> new Deed.Corrected("e1", new Deed.Undone("e1")));
        CupState ends = cup(
                        new Deed.Weighed("soot", 100_000, 10),
                        new Deed.Weighed("soot", 1, 0.0001),
                        new Deed.LetDown("soot", 2, 2, 0.01),
                        new Deed.LetDown("soot", 1000, 1000, 0.01),
                        new Deed.Dropped("brick", 1, 0.5),
                        new Deed.Dropped("brick", 1000, 0.5),
                        new Deed.Held(0))
                .state();
        assertEquals(100_003, ends.grams().get("soot"), SAME);
        assertEquals(500.5, ends.grams().get("brick"), SAME);
    }

    @Test
    void aCupIsRefusedThatNobodyCouldMix() {
        PlaceReadings hull = CupHistoryTest.empty().hull();
        refused(() -> Cup.empty(" ", hull, 100, 0.01, "white"));
        refused(() -> Cup.empty("cup", hull, 0.9, 0.01, "white"));
        refused(() -> Cup.empty("cup", hull, 100_001, 0.01, "white"));
        refused(() -> Cup.empty("cup", hull, 100, 0, "white"));
        refused(() -> Cup.empty("cup", hull, 100, 0.01, ""));
        assertEquals(1, Cup.empty("cup", hull, 1, 0.01, "white").wantedGrams());
        assertEquals(100_000, Cup.empty("cup", hull, 100_000, 0.01, "white").wantedGrams());
    }

    /** Somebody wrote the file by hand and called the only entry as the second would be. */
    @Test
    void anEntryNeverTakesTheNameOfAnother() {
        CupEntry byHand = new CupEntry("e2", NOW, weighed("white", 60));
        Cup cup = new Cup("cup", CupHistoryTest.empty().hull(), 100, 0.01, "white", List.of(byHand))
                .add(NOW, weighed("soot", 1));
        assertEquals("e3", cup.entries().get(1).id());
        refused(() -> new Cup("cup", cup.hull(), 100, 0.01, "white", List.of(byHand, byHand)));
    }
}
