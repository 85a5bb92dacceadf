package tintwright.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tintwright.cup.DosePlannerTest.BLACK;
import static tintwright.cup.DosePlannerTest.BOW;
import static tintwright.cup.DosePlannerTest.KNOWN;
import static tintwright.cup.DosePlannerTest.NOW;
import static tintwright.cup.DosePlannerTest.UNKNOWN;
import static tintwright.cup.DosePlannerTest.WHITE;
import static tintwright.cup.DosePlannerTest.cup;
import static tintwright.cup.DosePlannerTest.read;
import static tintwright.cup.DosePlannerTest.started;
import static tintwright.cup.DosePlannerTest.weighed;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;

/** What a chip of the cup says, and what it cannot say. */
class CupReadingsTest {
    @Test
    void aReadingThatCannotBeThisCupIsToldApartFromOneThatCan() {
        CupSight sight = CupSight.of(KNOWN, started(KNOWN).add(NOW, weighed(BLACK, 0.25)));
        assertTrue(ReadingCheck.cannotBe(sight, (Deed.Read) read(sight, 0)).isEmpty());
        assertTrue(ReadingCheck.cannotBe(sight, (Deed.Read) read(sight, -2)).isEmpty());
        String why = ReadingCheck.cannotBe(sight, (Deed.Read) read(sight, 15)).orElseThrow();
        assertTrue(why.contains("cannot be this cup") && why.contains("nothing was learned"), why);
        assertTrue(
                ReadingCheck.cannotBe(CupSight.of(KNOWN, cup()), (Deed.Read) read(sight, 0))
                        .isPresent(),
                "nothing is in the cup");
        CupSight vague = CupSight.of(UNKNOWN, started(UNKNOWN).add(NOW, weighed(BLACK, 0.25)));
        assertTrue(
                ReadingCheck.cannotBe(vague, (Deed.Read) read(vague, 8)).isEmpty(),
                "who knows little must believe much");
    }

    @Test
    void aReadingThatDoesNotCountTeachesNothing() {
        Cup cup = started(KNOWN).add(NOW, weighed(BLACK, 0.25));
        Deed.Read strange = (Deed.Read) read(CupSight.of(KNOWN, cup), 15);
        Cup kept = cup.add(NOW, new Deed.Read(strange.reading(), Optional.empty(), false));
        assertEquals(CupSight.of(KNOWN, cup).colour(), CupSight.of(KNOWN, kept).colour());
        assertEquals(1, kept.state().samples().size());
    }

    @Test
    void theBiasOfAPhotoCancelsWhenTheHullStandsInIt() {
        Viewing light = Viewing.D65_10;
        Lab hullRead = new Lab(65, -7, 5, light);
        Covariance wide = Covariance.same(3);
        PlaceReadings hull = new PlaceReadings(
                "",
                "bow",
                List.of(new ColourReading(
                        hullRead,
                        Covariance.same(0.3),
                        BOW.readings().get(0).geometry(),
                        FilmState.CURED,
                        Optional.of(new ColourReading.PhotoBias("photo 1", wide)))),
                "");
        Cup cup = Cup.empty("bow", hull, 100, 0.01, WHITE).add(NOW, weighed(WHITE, 60));
        // Near the hull a dab tells more than the white alone: the first doses are as safe as the doubt allows.
        Cup begun = cup;
        Plan first = DosePlanner.plan(CupSight.of(KNOWN, begun));
        assertInstanceOf(Plan.Doses.class, first);
        while (first instanceof Plan.Doses doses) {
            assertTrue(doses.after().chanceTooDark() < 0.03, doses.toString());
            for (Dose dose : doses.doses()) {
                begun = begun.add(NOW, dose.deed());
            }
            first = DosePlanner.plan(CupSight.of(KNOWN, begun));
        }
        assertTrue(first instanceof Plan.TakeChip chip && chip.besideHull(), first.toString());
        // The second photo is off by (4, 3, -3): both chip and hull show it.
        Lab white = CupSight.of(KNOWN, cup).colour().orElseThrow();
        ColourReading.PhotoBias second = new ColourReading.PhotoBias("photo 2", wide);
        ColourReading chip = new ColourReading(
                new Lab(white.lightness() + 4, white.a() + 3, white.b() - 3, light),
                Covariance.same(0.3),
                BOW.readings().get(0).geometry(),
                FilmState.CURED,
                Optional.of(second));
        ColourReading beside = new ColourReading(
                new Lab(62 + 4, -9 + 3, 3 - 3, light),
                Covariance.same(0.3),
                BOW.readings().get(0).geometry(),
                FilmState.CURED,
                Optional.of(second));
        CupSight sight = CupSight.of(KNOWN, cup.add(NOW, new Deed.Read(chip, Optional.of(beside), true)));
        assertEquals(
                0,
                Ciede2000.between(new Lab(62, -9, 3, light), sight.hull()),
                0.3,
                "the hull as it is, not as the photo showed it");
        assertFalse(DosePlanner.plan(sight) instanceof Plan.TakeChip);
    }

    @Test
    void wetReadingsAskForACuredChip() {
        Cup cup = started(KNOWN).add(NOW, weighed(BLACK, 0.25));
        Reading cured = ((Deed.Read) read(CupSight.of(KNOWN, cup), 0)).reading();
        ColourReading wet = new ColourReading(
                ((ColourReading) cured).lab(), Covariance.same(0.3), cured.geometry(), FilmState.WET, Optional.empty());
        CupSight sight = CupSight.of(KNOWN, cup.add(NOW, new Deed.Read(wet, Optional.empty(), true)));
        assertFalse(sight.wetShiftKnown());
        Cup well = sight.cup();
        for (int i = 0; i < 6; i++) {
            well = well.add(NOW, new Deed.Read(wet, Optional.empty(), true));
        }
        assertFalse(CupSight.of(KNOWN, well).wetShiftKnown(), "however often it is read wet, no pair was read");
        double[][] unread = KNOWN.wetShift();
        assertTrue(unread[0][0] > 0.5, "wet gel coat looks lighter than cured: " + unread[0][0]);
        List<String> words =
                sight.deeds(DosePlanner.plan(sight), List.of(), false).lines();
        assertTrue(words.get(words.size() - 1).contains("read a cured chip before filling"), words.toString());
        // The wet chip and its cured pair of the same cup teach the shift.
        Cup pair = sight.cup()
                .add(NOW, new Deed.Read(cured, Optional.empty(), true))
                .add(NOW, new Deed.Read(wet, Optional.empty(), true));
        assertFalse(words.toString().contains("earlier pairs"), "no pair was read: " + words);
        Cup pairs = pair;
        for (int i = 0; i < 12; i++) {
            pairs = pairs.add(NOW, new Deed.Read(cured, Optional.empty(), true))
                    .add(NOW, new Deed.Read(wet, Optional.empty(), true));
        }
        CupSight known = CupSight.of(KNOWN, pairs);
        List<String> after =
                known.deeds(DosePlanner.plan(known), List.of(), false).lines();
        assertTrue(after.toString().contains("worked out from earlier pairs"), after.toString());
        assertTrue(
                CupSight.of(KNOWN, pair).knowledge().wetShift()[0][1]
                        < sight.knowledge().wetShift()[0][1],
                "a pair teaches");
    }

    @Test
    void anUnknownCupIsExplainedByItsLikelyContents() {
        Parts parts = Parts.of(Map.of(WHITE, 80.0, BLACK, 0.2, "ink-blue", 0.15));
        Lab lab = KNOWN.colour(parts, Viewing.D65_10, tintwright.colour.Geometry.SPECULAR_INCLUDED);
        Reading reading = new ColourReading(
                lab,
                Covariance.same(0.3),
                tintwright.colour.Geometry.SPECULAR_INCLUDED,
                FilmState.CURED,
                Optional.empty());
        List<UnknownCup.Contents> likely = UnknownCup.likely(KNOWN, reading, 80, WHITE);
        double chances = 0;
        for (UnknownCup.Contents contents : likely) {
            chances += contents.chance();
            assertEquals(80, contents.parts().total(), 1e-6);
        }
        assertTrue(chances > 0.5 && chances <= 1 + 1e-9, "chances " + chances);
        Lab found = KNOWN.colour(likely.get(0).parts(), Viewing.D65_10, tintwright.colour.Geometry.SPECULAR_INCLUDED);
        assertTrue(Ciede2000.between(found, lab) < 0.7, "explains " + Ciede2000.between(found, lab));
        assertTrue(
                likely.stream()
                        .anyMatch(c ->
                                c.parts().grams().keySet().equals(parts.grams().keySet())),
                likely.toString());
    }
}
