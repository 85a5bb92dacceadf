package tintwright.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.demo.MeteredShop;
import tintwright.files.Demo;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.knowledge.Knowledge;

class DosePlannerTest {
    static final Instant NOW = Instant.parse("2026-05-31T09:00:00Z");
    static final String WHITE = "plain-white";
    static final String BLACK = "soot-black";
    static final PlaceReadings BOW = MeteredShop.places().get(0);
    static final Knowledge KNOWN = Knowledge.of(MeteredShop.shelf());
    static final Knowledge UNKNOWN = Knowledge.of(MeteredShop.shelf().withChips(List.of()));

    static Cup cup() {
        return Cup.empty("bow", BOW, 100, 0.01, WHITE);
    }

    static Deed weighed(String part, double grams) {
        return new Deed.Weighed(part, grams, 0.01);
    }

    /** A chip that reads just what the best estimate foretells of the cup, moved by a little. */
    static Deed read(CupSight sight, double lighter) {
        Lab lab = sight.colour().orElseThrow();
        return new Deed.Read(
                new ColourReading(
                        new Lab(lab.lightness() + lighter, lab.a(), lab.b(), lab.viewing()),
                        Covariance.same(0.3),
                        sight.target().geometry(),
                        FilmState.CURED,
                        Optional.empty()),
                Optional.empty(),
                true);
    }

    static Cup started(Knowledge shelf) {
        Plan.Start start = (Plan.Start) DosePlanner.plan(CupSight.of(shelf, cup()));
        return cup().add(NOW, weighed(WHITE, start.white())).add(NOW, new Deed.Held(start.reserve()));
    }

    private static Cup dosed(Cup cup, Plan.Doses plan) {
        Cup after = cup;
        for (Dose dose : plan.doses()) {
            after = after.add(NOW, dose.deed());
        }
        return after;
    }

    @Test
    void neverHoldsBackLessThanAThirdOfTheWhite() {
        for (Knowledge shelf : List.of(KNOWN, UNKNOWN)) {
            Plan.Start start = (Plan.Start) DosePlanner.plan(CupSight.of(shelf, cup()));
            double share = start.reserve() / (start.white() + start.reserve());
            assertTrue(share > 1 / 3.0 - 1e-3 && share < 0.81, "share " + share);
            assertTrue(start.white() + start.reserve() < 100, "tints need room too");
        }
    }

    @Test
    void unknownTintsGetASmallerFirstDoseThanKnownOnes() {
        Plan.Doses known = (Plan.Doses) DosePlanner.plan(CupSight.of(KNOWN, started(KNOWN)));
        Plan.Doses unknown = (Plan.Doses) DosePlanner.plan(CupSight.of(UNKNOWN, started(UNKNOWN)));
        assertTrue(known.share() > 0.7, "share " + known.share());
        assertTrue(unknown.share() < known.share() - 0.1, "share " + unknown.share());
        assertTrue(unknown.after().chanceTooDark() <= 0.03, unknown.after().toString());
        assertTrue(unknown.after().lab().lightness() > known.after().lab().lightness() + 1);
    }

    @Test
    void valueComesFirst() {
        Plan.Doses plan = (Plan.Doses) DosePlanner.plan(CupSight.of(KNOWN, started(KNOWN)));
        assertEquals(BLACK, plan.doses().get(0).part());
    }

    @Test
    void asksForAChipWhenTheDosesAreInAndForMoreAfterIt() {
        Cup cup = started(KNOWN);
        Cup full = dosed(cup, (Plan.Doses) DosePlanner.plan(CupSight.of(KNOWN, cup)));
        // What rounding left may be worth one more dose, never two.
        if (DosePlanner.plan(CupSight.of(KNOWN, full)) instanceof Plan.Doses rest) {
            full = dosed(full, rest);
        }
        assertInstanceOf(Plan.TakeChip.class, DosePlanner.plan(CupSight.of(KNOWN, full)));
        Cup read = full.add(NOW, read(CupSight.of(KNOWN, full), 1.5));
        Plan.Doses more = (Plan.Doses) DosePlanner.plan(CupSight.of(KNOWN, read));
        assertTrue(more.fillUp(), "a cup that was read and is safe gets the rest of its white");
        assertEquals(WHITE, more.doses().get(0).part());
        Cup end = dosed(read, more);
        assertEquals(100, end.state().mass(), 0.3);
        Cup last = end.add(NOW, read(CupSight.of(KNOWN, end), 0));
        assertInstanceOf(Plan.Stop.class, DosePlanner.plan(CupSight.of(KNOWN, last)));
    }

    @Test
    void allThatMayGoInBeforeALookGoesInAtOnce() {
        Knowledge demo = Knowledge.of(Demo.shelf());
        Cup cup = Cup.empty("bow", Demo.places().get(0), 150, 0.01, WHITE);
        Plan.Start start = (Plan.Start) DosePlanner.plan(CupSight.of(demo, cup));
        Cup begun = cup.add(NOW, weighed(WHITE, start.white())).add(NOW, new Deed.Held(start.reserve()));
        Plan.Doses doses = (Plan.Doses) DosePlanner.plan(CupSight.of(demo, begun));
        assertTrue(
                doses.doses().stream().allMatch(dose -> dose.letDown().isEmpty()),
                "weighed straight: " + doses.doses());
        assertInstanceOf(Plan.TakeChip.class, DosePlanner.plan(CupSight.of(demo, dosed(begun, doses))));
    }

    @Test
    void aCupWithoutWhiteIsToldSo() {
        Cup cup = cup().add(NOW, weighed(BLACK, 0.3));
        assertInstanceOf(Plan.NoWhite.class, DosePlanner.plan(CupSight.of(KNOWN, cup)));
        assertThrows(IllegalArgumentException.class, () -> Ways.of(CupSight.of(KNOWN, cup)));
    }

    @Test
    void aDoseUnderTwentyStepsIsALetdownRoundedDown() {
        Dose straight = Dose.tint(BLACK, 0.2049, 0.01, 0.04, Set.of()).orElseThrow();
        assertEquals(new Deed.Weighed(BLACK, 0.2, 0.01), straight.deed());
        Dose ten = Dose.tint(BLACK, 0.1234, 0.01, 0.04, Set.of()).orElseThrow();
        assertEquals(new Deed.LetDown(BLACK, 10, 1.23, 0.01), ten.deed());
        assertEquals(0.123, ten.grams(), 1e-12);
        assertEquals(3, ten.drops().orElseThrow().count());
        Dose.LetDownMix mix = ten.letDown().orElseThrow();
        assertEquals(9, mix.baseGrams() / mix.tintGrams(), 1e-9);
        assertTrue(mix.tintGrams() >= ten.grams(), "enough for the dose");
        assertEquals(
                new Deed.LetDown(BLACK, 20, 0.24, 0.01),
                Dose.tint(BLACK, 0.0123, 0.01, 0.04, Set.of()).orElseThrow().deed());
        assertEquals(
                new Deed.LetDown(BLACK, 50, 0.3, 0.01),
                Dose.tint(BLACK, 0.0061, 0.01, 0.04, Set.of()).orElseThrow().deed());
        assertEquals(
                new Deed.LetDown(BLACK, 10, 0.06, 0.01),
                Dose.tint(BLACK, 0.0061, 0.01, 0.04, Set.of(10)).orElseThrow().deed(),
                "the letdown that stands there");
        assertEquals(
                new Deed.LetDown(BLACK, 50, 0.1, 0.01),
                Dose.tint(BLACK, 0.002, 0.01, 0.04, Set.of(10)).orElseThrow().deed(),
                "too little of it to weigh");
        assertEquals(Optional.empty(), Dose.tint(BLACK, 0.0001, 0.01, 0.04, Set.of()));
        assertTrue(
                Dose.tint(BLACK, 0.0123, 0.01, 0.04, Set.of())
                        .orElseThrow()
                        .drops()
                        .isEmpty(),
                "under a drop");
    }

    private static Cup tooDark() {
        Cup cup = started(KNOWN);
        Cup full = dosed(cup, (Plan.Doses) DosePlanner.plan(CupSight.of(KNOWN, cup)));
        Cup dark = full.add(NOW, weighed(BLACK, 5 * full.state().grams().get(BLACK)));
        return dark.add(NOW, read(CupSight.of(KNOWN, dark), 0));
    }

    @Test
    void everyWayBackIsHonestAboutWhiteAndMass() {
        CupSight sight = CupSight.of(KNOWN, tooDark());
        CupState state = sight.state();
        assertInstanceOf(Plan.WayBack.class, DosePlanner.plan(sight));
        List<Way> ways = Ways.of(sight);
        assertTrue(ways.size() >= 3, ways.toString());
        for (Way way : ways) {
            assertTrue(way.after().expected() < 1, way.toString());
            assertTrue(way.after().chanceTooDark() <= 0.03, way.toString());
            assertEquals(Math.max(0, way.white() - state.reserve()), way.beyondReserve(), 0.011);
            assertEquals(Math.max(0, way.finalMass() - 100), way.beyondNeed(), 1e-9);
        }
        Way.Climb climb = ways.stream()
                .filter(Way.Climb.class::isInstance)
                .map(Way.Climb.class::cast)
                .findFirst()
                .orElseThrow();
        assertTrue(climb.beyondNeed() > 10, "six times the black needs more white than there is room for");
        List<Way.Split> splits = ways.stream()
                .filter(Way.Split.class::isInstance)
                .map(Way.Split.class::cast)
                .toList();
        assertEquals(2, splits.size(), "one within the reserve, one to the mass wanted");
        for (Way.Split split : splits) {
            assertEquals(state.mass(), split.keep() + split.setAside(), 1e-9);
            assertEquals(
                    climb.finalMass() / state.mass(),
                    split.finalMass() / split.keep(),
                    0.03,
                    "the same mix, only less of it");
        }
        assertEquals(0, splits.get(0).beyondReserve());
        assertTrue(splits.get(0).shortBy() > 0);
        assertEquals(100, splits.get(1).finalMass(), 1);
        assertEquals(0, splits.get(1).shortBy());
        Way.Fresh fresh = ways.stream()
                .filter(Way.Fresh.class::isInstance)
                .map(Way.Fresh.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals(100, fresh.finalMass(), 1);
        assertTrue(fresh.darkFirst() <= fresh.dark() + 1e-9 && fresh.darkFirst() > 0);
    }

    @Test
    void aSmallCupThatNeedsMoreWhiteThanIsLeftMayBeSplitWithinTheReserve() {
        Cup dark =
                cup().add(NOW, weighed(WHITE, 40)).add(NOW, new Deed.Held(20)).add(NOW, weighed(BLACK, 0.44));
        Cup seen = dark.add(NOW, read(CupSight.of(KNOWN, dark), 0));
        List<Way> ways = Ways.of(CupSight.of(KNOWN, seen));
        Way.Split within = assertInstanceOf(Way.Split.class, ways.get(0));
        assertEquals(0, within.beyondReserve(), 1e-9);
        assertTrue(within.white() < 20 && within.finalMass() >= 29, within.toString());
        Way.Climb whole = assertInstanceOf(Way.Climb.class, ways.get(1));
        assertTrue(whole.beyondReserve() > 0 && whole.finalMass() < 103, whole.toString());
    }

    @Test
    void whatTheSplitForetellsIsWhatTheCupThenShows() {
        CupSight sight = CupSight.of(KNOWN, tooDark());
        Way.Split split = Ways.of(sight).stream()
                .filter(Way.Split.class::isInstance)
                .map(Way.Split.class::cast)
                .findFirst()
                .orElseThrow();
        Cup after = sight.cup().add(NOW, new Deed.SetAside(split.setAside(), split.name()));
        for (Dose dose : split.doses()) {
            after = after.add(NOW, dose.deed());
        }
        Lab now = CupSight.of(KNOWN, after).colour().orElseThrow();
        assertEquals(0, Ciede2000.between(split.after().lab(), now), 0.02);
        assertEquals(split.finalMass(), after.state().mass(), 1e-6);
    }

    @Test
    void asCloseAsEyesCanTellSaysStopHere() {
        Cup read = started(KNOWN);
        for (int round = 0; round < 4 && !(DosePlanner.plan(CupSight.of(KNOWN, read)) instanceof Plan.Stop); round++) {
            if (DosePlanner.plan(CupSight.of(KNOWN, read)) instanceof Plan.Doses doses) {
                read = dosed(read, doses);
            }
            read = read.add(NOW, read(CupSight.of(KNOWN, read), 0));
        }
        List<Way> ways = Ways.of(CupSight.of(KNOWN, read));
        assertEquals(1, ways.size());
        assertInstanceOf(Way.StopHere.class, ways.get(0));
    }

    /** What one dose of several does to the colour: with all of them in, and with all but this one. */
    private static double effect(CupSight sight, List<Dose> doses, Dose dose) {
        List<Dose> without = doses.stream().filter(other -> other != dose).toList();
        return Ciede2000.between(
                sight.outlook(Dose.sum(sight, doses), 1).lab(),
                sight.outlook(Dose.sum(sight, without), 1).lab());
    }

    @Test
    void noDoseIsAskedForThatNobodyCouldSeeOrRead() {
        int planned = 0;
        for (double lighter : new double[] {-1, 0, 0.5, 1.1, 2}) {
            Cup cup = started(KNOWN);
            Cup full = dosed(cup, (Plan.Doses) DosePlanner.plan(CupSight.of(KNOWN, cup)));
            Cup read = full.add(NOW, read(CupSight.of(KNOWN, full), lighter));
            for (int turn = 0; turn < 4; turn++) {
                CupSight sight = CupSight.of(KNOWN, read);
                if (!(DosePlanner.plan(sight) instanceof Plan.Doses plan)) {
                    break;
                }
                for (Dose dose : plan.doses()) {
                    double effect = effect(sight, plan.doses(), dose);
                    assertTrue(
                            dose.part().equals(WHITE) || effect >= 0.15,
                            "chip " + lighter + " lighter, turn " + turn + ": " + dose + " changes " + effect);
                    planned++;
                }
                read = dosed(read, plan);
                read = read.add(NOW, read(CupSight.of(KNOWN, read), 0));
            }
        }
        assertTrue(planned > 10, "only " + planned + " doses were looked at");
    }

    @Test
    void whatTheWeightsAloneShowIsReadBeforeAnyWayBack() {
        Cup cup = started(KNOWN);
        Cup full = dosed(cup, (Plan.Doses) DosePlanner.plan(CupSight.of(KNOWN, cup)));
        // Perhaps half a gram of black went in; perhaps its figures were swapped when they were written.
        Cup dark = full.add(NOW, weighed(BLACK, 5 * full.state().grams().get(BLACK)));
        CupSight sight = CupSight.of(KNOWN, dark);
        assertInstanceOf(Plan.TakeChip.class, DosePlanner.plan(sight));
        List<String> words =
                sight.deeds(DosePlanner.plan(sight), List.of(), false).lines();
        assertTrue(
                String.join(" ", words).contains("look whether each weight was written as it was"), words.toString());
        Cup read = dark.add(NOW, read(sight, 0));
        assertInstanceOf(Plan.WayBack.class, DosePlanner.plan(CupSight.of(KNOWN, read)));
    }

    @Test
    void theReserveWaitsForAChipWithTintInIt() {
        Cup white = started(KNOWN);
        Cup read = white.add(NOW, read(CupSight.of(KNOWN, white), 0));
        Plan.Doses plan = (Plan.Doses) DosePlanner.plan(CupSight.of(KNOWN, read));
        assertFalse(plan.fillUp(), "a chip of the white alone tells nothing of the tints");
        assertTrue(
                plan.doses().stream().noneMatch(dose -> dose.part().equals(WHITE)),
                plan.doses().toString());
    }

    @Test
    void whiteInALetdownCountsAgainstTheReserve() {
        Cup cup = started(KNOWN);
        double reserve = cup.state().reserve();
        Cup after = cup.add(NOW, new Deed.LetDown(BLACK, 20, 2.0, 0.01));
        assertEquals(reserve - 1.9, after.state().reserve(), 1e-9);
    }

    @Test
    void theFirstDosesAreTheTintsOfTheRecipe() {
        for (PlaceReadings place : MeteredShop.places()) {
            Cup cup = Cup.empty("cup", place, 100, 0.01, WHITE);
            Plan.Start start = (Plan.Start) DosePlanner.plan(CupSight.of(KNOWN, cup));
            Cup begun = cup.add(NOW, weighed(WHITE, start.white())).add(NOW, new Deed.Held(start.reserve()));
            CupSight sight = CupSight.of(KNOWN, begun);
            if (!(DosePlanner.plan(sight) instanceof Plan.Doses doses)) {
                continue;
            }
            java.util.Set<String> wanted = new java.util.TreeSet<>(new tintwright.match.Matcher(KNOWN)
                    .match(new tintwright.match.Wish(
                            sight.target(), 100, 0.01, Set.of(), Optional.of(WHITE), Optional.empty()))
                    .best()
                    .exact()
                    .grams()
                    .keySet());
            wanted.remove(WHITE);
            java.util.Set<String> given = new java.util.TreeSet<>();
            doses.doses().forEach(dose -> given.add(dose.part()));
            assertTrue(wanted.containsAll(given), given + " of " + wanted);
            // What is missing is too little to be worth stirring in.
            if (doses.share() == 1) {
                assertTrue(doses.after().expected() < 1, place.place() + ": " + given + " of " + wanted);
            }
        }
    }
}
