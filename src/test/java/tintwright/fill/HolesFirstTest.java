package tintwright.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.CatalystMeasure;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.CatalystTable;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Finding;
import tintwright.fill.repair.Gouge;
import tintwright.fill.repair.Hull;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.PlainHole;
import tintwright.fill.repair.Published;
import tintwright.fill.repair.RepairLine;
import tintwright.fill.repair.SprayArea;
import tintwright.fill.repair.Triage;
import tintwright.units.UnitSystem;

/** What a repair really needs: what it is filled with, how little is mixed, which coat may follow which, what weather. */
class HolesFirstTest {
    private static final RepairLine GOUGE = new RepairLine("gouge", new Gouge(140, 12, 3), Lie.OVERHEAD, 1);
    private static final RepairLine ONE_HOLE = new RepairLine("one hole", new PlainHole(6, 6, 0), Lie.FACING_UP, 1);

    private static Hull gelCoat(double mm) {
        return new Hull(OptionalDouble.of(mm), OptionalDouble.empty());
    }

    private static List<Warning.Kind> kinds(FillPlan plan) {
        return plan.warnings().stream().map(Warning::kind).toList();
    }

    private static List<Deed> deeds(FillPlan plan) {
        return plan.day().steps().stream().map(Day.Step::deed).toList();
    }

    private static FillPlan waxed(boolean can, boolean paste) {
        Materials materials = new Materials(Densities.USUAL, can, paste, OptionalDouble.of(0.35), Materials.Seal.WAX);
        return FillPlanner.plan(Jobs.with(materials, new CatalystChoice.General()));
    }

    @Test
    void aGougeThroughTheGelCoatGetsLaminateFirstAndColourAsItsSkin() {
        FillPlan plan = FillPlanner.plan(Jobs.on(gelCoat(0.5), GOUGE));
        Triage triage = plan.amounts().get(0).triage();
        assertEquals(Triage.Below.LAMINATE, triage.below());
        assertEquals(0.5, triage.colourMm());
        assertEquals(
                "3 mm is through the 0.50 mm gel coat: mend the laminate first, then 0.50 mm of colour on top. Cut glass is "
                        + "work for a trained person.",
                triage.words(UnitSystem.METRIC).orElseThrow());
        // The top 0.5 mm of half an ellipsoid 3 mm deep: area times (d - d^3 / (3 D^2)).
        double skin = Math.PI / 4 * 140 * 12 * (0.5 - 0.125 / 27) / 1000;
        assertEquals(skin, triage.netMl(), 1e-9);
        assertEquals(Math.PI / 6 * 140 * 12 * 3 / 1000 - skin, triage.belowMl(), 1e-9);
        assertTrue(deeds(plan).indexOf(Deed.LAMINATE) < deeds(plan).indexOf(Deed.PRIME));
        assertTrue(deeds(plan).contains(Deed.LAMINATE));
        assertTrue(
                plan.before(UnitSystem.METRIC).stream().anyMatch(words -> words.startsWith("gouge: 3 mm is through")));
    }

    @ParameterizedTest
    @CsvSource({"0.4, NOTHING", "0.8, NOTHING", "0.9, PUTTY", "1.9, PUTTY", "2.1, LAMINATE"})
    void howDeepDecidesWhatGoesBelow(double depth, Triage.Below below) {
        RepairLine line = new RepairLine("gouge", new Gouge(60, 12, depth), Lie.VERTICAL, 1);
        assertEquals(below, Triage.of(line, gelCoat(0.5)).below());
        // Of a gel coat nobody measured only what is through the thickest usual one is surely through.
        RepairLine inAny = new RepairLine("gouge", new Gouge(60, 12, 1.1), Lie.VERTICAL, 1);
        assertEquals(Triage.Below.NOTHING, Triage.of(inAny, Hull.UNKNOWN).below());
    }

    @Test
    void whatIsSoftOpenOrCarriesLoadIsForATrainedPerson() {
        for (Finding finding : List.of(Finding.SOFT, Finding.CORE, Finding.STRUCTURE)) {
            RepairLine line = new RepairLine("nick", new Gouge(20, 5, 0.3), Lie.VERTICAL, 1, Set.of(finding));
            FillPlan plan = FillPlanner.plan(Jobs.on(gelCoat(0.5), line));
            assertTrue(
                    plan.amounts()
                            .get(0)
                            .triage()
                            .words(UnitSystem.METRIC)
                            .orElseThrow()
                            .contains("trained person"),
                    finding.code());
            assertTrue(deeds(plan).contains(Deed.LAMINATE), finding.code());
        }
    }

    @Test
    void aHoleDeeperThanTheHullIsLeftOutAndTheRestIsPlanned() {
        RepairLine impossible = new RepairLine("bolt", new PlainHole(8, 40, 3), Lie.VERTICAL, 1);
        Hull thin = new Hull(OptionalDouble.of(0.5), OptionalDouble.of(12));
        FillPlan plan = FillPlanner.plan(Jobs.on(thin, impossible, ONE_HOLE));
        assertEquals(
                "bolt: 40 mm deep in a hull 12 mm thick cannot be: measure again; it is left out of the plan.",
                plan.before(UnitSystem.METRIC).get(0));
        assertFalse(plan.batches().isEmpty());
        assertTrue(plan.batches().stream()
                .flatMap(batch -> batch.parts().stream())
                .noneMatch(part -> part.line().equals("bolt")));
        assertTrue(FillPlanner.plan(Jobs.on(thin, impossible)).batches().isEmpty());
    }

    @Test
    void oneSmallHoleTakesOneSmallCupAndSaysWhyItIsNotSmaller() {
        FillPlan plan = FillPlanner.plan(Jobs.on(gelCoat(0.5), ONE_HOLE));
        assertEquals(0.17, plan.amounts().get(0).netMl(), 0.005);
        assertEquals(1, plan.batches().size(), "no second cup for a few hundredths of a ml");
        // Five steps of 0.01 g at about 1.9 %: 2.4 ml, two thirds of it gel coat of 1.3 g/ml.
        assertTrue(plan.gelCoatGrams() < 2.3, plan.gelCoatGrams() + " g");
        assertTrue(kinds(plan).contains(Warning.Kind.TOPPED_UP));
        assertTrue(
                plan.before(UnitSystem.METRIC).stream().anyMatch(words -> words.contains("catalyst can be measured")));
    }

    @Test
    void smallHolesOfTwoMixesShareOneCup() {
        RepairLine upright = new RepairLine("other hole", new PlainHole(6, 6, 0), Lie.VERTICAL, 1);
        FillPlan plan = FillPlanner.plan(Jobs.on(gelCoat(0.5), ONE_HOLE, upright));
        assertEquals(1, plan.batches().size());
        assertEquals(Lie.VERTICAL.mix(), plan.batches().get(0).mix(), "the stiffer mix stays on both");
        assertEquals(2, plan.batches().get(0).parts().size());
    }

    @Test
    void aWaxedCanIsSandedBeforeTheNextCoatAndNeverCoatedTacky() {
        FillPlan plan = waxed(true, false);
        assertFalse(deeds(plan).contains(Deed.COAT));
        int first = deeds(plan).indexOf(Deed.LAST_COAT);
        Stage firstStage = plan.day().steps().get(first).stage().orElseThrow();
        int next = 0;
        while (plan.day().steps().get(next).stage().isEmpty()
                || plan.day().steps().get(next).stage().get().equals(firstStage)) {
            next++;
        }
        List<Deed> between = deeds(plan).subList(first, next);
        assertTrue(between.contains(Deed.CURE) && between.lastIndexOf(Deed.PRIME) > between.indexOf(Deed.CURE));
        assertTrue(plan.batches().stream().allMatch(batch -> batch.wax().isEmpty()));
    }

    @Test
    void waxedPasteIsALastCoatAndTheNeatGelCoatOfTheGunIsNot() {
        FillPlan plan = waxed(false, true);
        for (Day.Step step : plan.day().steps()) {
            if (step.batch() > 0) {
                Batch batch = plan.batches().get(step.batch() - 1);
                boolean lastPass = batch.stage().pass() == batch.stage().of();
                assertEquals(
                        batch.pasteGrams() > 0 || batch.stage().kind() == Stage.Kind.SPRAY && lastPass,
                        step.deed() == Deed.LAST_COAT,
                        batch.stage().words());
                assertEquals(batch.pasteGrams() == 0 && lastPass, batch.wax().isPresent());
            }
        }
    }

    @Test
    void filmOverTheLastCoatTakesThePlaceOfWax() {
        Materials film = new Materials(Densities.USUAL, false, false, OptionalDouble.of(0.35), Materials.Seal.FILM);
        FillPlan plan = FillPlanner.plan(Jobs.with(film, new CatalystChoice.General()));
        assertTrue(deeds(plan).contains(Deed.FILM_OVER) && !deeds(plan).contains(Deed.LAST_COAT));
        assertEquals(0, plan.waxMl());
    }

    private static FillPlan weather(double hull, double cup, double air, double humidity) {
        return FillPlanner.plan(Jobs.in(
                new Conditions(hull, cup, air, OptionalDouble.of(humidity)),
                new CatalystChoice.General(),
                Jobs.GOUGE,
                Jobs.HOLES));
    }

    @Test
    void thirtySixDegreesIsPlannedInSmallCoolCups() {
        FillPlan plan = weather(36, 36, 34, 40);
        assertFalse(plan.forbidden());
        assertTrue(kinds(plan).containsAll(List.of(Warning.Kind.HOT_CUP, Warning.Kind.HOT_HULL)));
        assertTrue(plan.before(UnitSystem.METRIC).stream()
                .anyMatch(words -> words.contains("cold water") && words.contains("thin tray")));
        assertTrue(plan.time().leastMinutes() < 5, plan.time().words());
    }

    @Test
    void theCupsWarmthSetsTheWorkingTimeAndTheHullsTheCure() {
        FillPlan even = weather(25, 25, 25, 50);
        FillPlan coolCup = weather(25, 20, 25, 50);
        FillPlan warmHull = weather(34, 25, 25, 50);
        assertTrue(coolCup.time().leastMinutes() > even.time().leastMinutes());
        assertEquals(even.time(), warmHull.time());
        assertTrue(warmHull.timers().get(1).toMinutes() < even.timers().get(1).toMinutes());
        assertTrue(warmHull.timers().get(3).toMinutes() < even.timers().get(3).toMinutes());
    }

    @Test
    void oneLowerLimitWithItsSource() {
        assertTrue(weather(15, 20, 20, 50).forbidden());
        assertFalse(weather(15.6, 20, 20, 40).forbidden());
        String words = weather(12, 20, 20, 40).before(UnitSystem.METRIC).get(0);
        assertTrue(
                words.contains("the hull is at 12 °C")
                        && words.contains("from 16 °C (fibreglass supplier's technical page)"),
                words);
        assertTrue(weather(12, 20, 20, 40).before(UnitSystem.US).get(0).contains("from 60 °F"));
        assertFalse(weather(12, 20, 20, 40).batches().isEmpty(), "the rest of the plan is shown");
    }

    /** Dew points of ISO 8502-4, from memory, to a tenth of a degree. */
    @ParameterizedTest
    @CsvSource({"10, 80, 6.7", "20, 50, 9.3", "20, 80, 16.4", "25, 60, 16.7", "30, 80, 26.2"})
    void theDewPointIsTheTables(double air, double humidity, double dew) {
        assertEquals(
                dew, new Conditions(air, OptionalDouble.of(humidity)).dewPoint().orElseThrow(), 0.1);
    }

    @Test
    void aHullLessThanThreeDegreesAboveTheDewPointIsNotFilled() {
        // Dew point of 25 degrees and 60 %: 16.7.
        assertTrue(kinds(weather(19.5, 25, 25, 60)).contains(Warning.Kind.CONDENSATION));
        assertFalse(kinds(weather(20, 25, 25, 60)).contains(Warning.Kind.CONDENSATION));
        String words = weather(18, 25, 25, 60).before(UnitSystem.METRIC).get(0);
        assertTrue(
                words.startsWith("Not today") && words.contains("below 20 °C") && words.contains("ISO 8502-4"), words);
    }

    @Test
    void aSprayedFilmCountsItsSandingItsShrinkingAndItsStyrene() {
        assertEquals(0.127, Published.SPRAY_SANDED_MM.low(), 1e-9);
        assertEquals(0.254, Published.SPRAY_SANDED_MM.high(), 1e-9);
        // 0.35 mm that hides and 0.254 mm sanded off, cured, are 0.71 mm wet.
        SprayArea area = SprayArea.toHide(100, 100, 0.35);
        assertEquals((0.35 + 0.254) / 0.85, area.filmMm(), 1e-9);
        FillPlan plan = FillPlanner.plan(Jobs.of(new RepairLine("patch", area, Lie.VERTICAL, 1)));
        assertEquals(3, plan.batches().size(), "28 mil in passes of at most 12");
        Batch last = plan.batches().get(2);
        assertEquals(last.mixMl() * (1 + 0.08 + 0.03), last.fullMl(), 1e-9);
        FillPlan large =
                FillPlanner.plan(Jobs.of(new RepairLine("side", new SprayArea(1200, 900, 0.3), Lie.VERTICAL, 1)));
        assertTrue(large.batches().stream()
                .allMatch(batch -> batch.mixMl() + batch.styreneMl().orElseThrow()[1] <= 300));
    }

    @Test
    void noDropsBeforeTheyAreCountedAndNeverUnderFive() {
        assertFalse(FillPlanner.plan(Jobs.of(ONE_HOLE))
                .batches()
                .get(0)
                .catalyst()
                .words(UnitSystem.METRIC)
                .contains("drop"));
        for (double dropsPerMl : new double[] {13.5, 20, 34}) {
            Tools tools = Tools.USUAL.with(CatalystMeasure.dropper(dropsPerMl));
            FillPlan plan = FillPlanner.plan(Jobs.with(tools, ONE_HOLE));
            assertTrue(plan.batches().get(0).catalyst().said().orElseThrow() >= 5);
        }
        // What two drops in 5 ml are, by the fewest and the most drops to the ml that sources name.
        assertEquals(3, 100 * 2 / CatalystMeasure.DROPS_PER_ML.low() / 5, 0.05);
        assertEquals(1.2, 100 * 2 / CatalystMeasure.DROPS_PER_ML.high() / 5, 0.05);
    }

    /** A quarter teaspoon is 1.232 231 ml: NIST Special Publication 811 (2008), appendix B.8, teaspoon. */
    @Test
    void aSpoonIsForLargeCupsAndNeverHalfFull() {
        CatalystMeasure quarter = new CatalystMeasure(CatalystMeasure.By.SPOON, 4.928922 / 4);
        assertEquals("quarter teaspoon of 1.23 ml", quarter.words());
        assertEquals("quarter teaspoon of 1.25 ml", CatalystMeasure.QUARTER_TEASPOON.words());
        assertEquals("tablespoon of 15 ml", new CatalystMeasure(CatalystMeasure.By.SPOON, 15).words());
        assertEquals("spoon of 3.1 ml", new CatalystMeasure(CatalystMeasure.By.SPOON, 3.1).words());
        Batch small = FillPlanner.plan(Jobs.with(Tools.USUAL.with(quarter), ONE_HOLE))
                .batches()
                .get(0);
        double spoons = small.catalyst().said().orElseThrow() / quarter.step();
        assertEquals(1, spoons, 1e-9, "the smallest cup takes one");
        assertTrue(small.surplusMl() > 30, "and is raised to what one is the catalyst of: " + small.surplusMl());
        assertTrue(
                small.catalyst().words(UnitSystem.METRIC).startsWith("1 level quarter teaspoon of 1.23 ml ("),
                small.catalyst().words(UnitSystem.METRIC));
        for (RepairLine line : Jobs.ALL) {
            for (Batch batch :
                    FillPlanner.plan(Jobs.with(Tools.USUAL.with(quarter), line)).batches()) {
                batch.catalyst()
                        .said()
                        .ifPresent(ml -> assertEquals(
                                Math.rint(ml / quarter.step()), ml / quarter.step(), 1e-9, "whole spoons"));
            }
        }
    }

    @Test
    void aProductWithoutATableAndOneThatEndsTooSoonStillGetAPlan() {
        CatalystTable none = new CatalystTable("Quay white", List.of());
        FillPlan general = FillPlanner.plan(Jobs.in(Jobs.MILD, new CatalystChoice.Own(none), Jobs.HOLES));
        assertTrue(kinds(general).contains(Warning.Kind.NO_TABLE));
        CatalystTable cold = new CatalystTable(
                "Quay white",
                List.of(new CatalystTable.Row(18, new CatalystShare(2, Basis.MASS), new WorkingTime(20, 30))));
        FillPlan beyond = FillPlanner.plan(Jobs.in(Jobs.MILD, new CatalystChoice.Own(cold), Jobs.HOLES));
        assertTrue(kinds(beyond).contains(Warning.Kind.OUTSIDE_TABLE));
        assertEquals(new CatalystShare(2, Basis.MASS), beyond.share());
    }

    @Test
    void everyDeedSaysWhyAndWho() {
        for (Deed deed : Deed.values()) {
            assertTrue(deed.why().length() > 10 && deed.source().length() > 10, deed.name());
        }
    }

    @Test
    void whatTheCupIsAskedForIsTheHolesTheLossAndTheSmallestBatch() {
        for (RepairLine line : Jobs.ALL) {
            FillPlan plan = FillPlanner.plan(Jobs.of(line));
            double raised =
                    plan.batches().stream().mapToDouble(Batch::surplusMl).sum();
            double holes = plan.amounts().get(0).mixedMl();
            double all = plan.batches().stream().mapToDouble(Batch::mixMl).sum();
            assertEquals(holes + raised, all, 1e-9);
            assertEquals(all * line.mix().gelCoatShare() * 1.3, plan.gelCoatGrams(), 1e-9);
        }
        assertEquals(Optional.empty(), FillPlanner.plan(Jobs.all()).enough());
    }
}
