package tintwright.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.CatalystMeasure;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.CatalystTable;
import tintwright.fill.catalyst.CureTimer;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.fill.repair.CountersunkHole;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Gouge;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.Mix;
import tintwright.fill.repair.PlainHole;
import tintwright.fill.repair.Repair;
import tintwright.fill.repair.RepairLine;
import tintwright.fill.repair.ScratchGroove;
import tintwright.fill.repair.SprayArea;
import tintwright.fill.repair.Triage;
import tintwright.fill.repair.WornArea;
import tintwright.units.UnitSystem;

class FillPlannerTest {
    /** What is mixed, without what was added to make the catalyst measurable, is what the holes need. */
    private static void nothingIsLost(FillJob job) {
        FillPlan plan = FillPlanner.plan(job);
        double mixed = plan.batches().stream()
                .mapToDouble(batch -> batch.mixMl() - batch.surplusMl())
                .sum();
        double needed = 0;
        for (RepairLine line : job.lines()) {
            double net = Triage.of(line, job.hull()).netMl();
            needed += line.repair() instanceof SprayArea
                    ? net / (1 - job.allowances().sprayLoss())
                    : net
                            * (1 + (secondFill(plan) ? job.allowances().secondFill() : 0))
                            / (1 - job.allowances().loss());
        }
        assertEquals(needed, mixed, 1e-6 * needed);
        assertEquals(
                needed,
                plan.amounts().stream().mapToDouble(FillPlan.Amount::mixedMl).sum(),
                1e-6 * needed);
    }

    private static boolean secondFill(FillPlan plan) {
        return plan.batches().stream().anyMatch(batch -> batch.stage().kind() == Stage.Kind.SECOND_FILL);
    }

    private static void everyPieceIsDoneInEveryStage(FillJob job) {
        Map<Stage, Map<String, Double>> done = new HashMap<>();
        FillPlanner.plan(job)
                .batches()
                .forEach(batch -> batch.parts()
                        .forEach(part -> done.computeIfAbsent(batch.stage(), stage -> new HashMap<>())
                                .merge(part.line(), part.pieces(), Double::sum)));
        for (Map.Entry<Stage, Map<String, Double>> stage : done.entrySet()) {
            boolean spray = stage.getKey().kind() == Stage.Kind.SPRAY;
            for (RepairLine line : job.lines()) {
                double expected = line.sprayed() == spray ? line.count() : 0;
                assertEquals(
                        expected,
                        stage.getValue().getOrDefault(line.name(), 0.0),
                        1e-6,
                        stage.getKey().words() + ": " + line.name());
            }
        }
    }

    @Test
    void whatIsMixedIsWhatIsNeededAndEveryPieceIsDone() {
        nothingIsLost(Jobs.all());
        everyPieceIsDoneInEveryStage(Jobs.all());
    }

    @Test
    void holdsForManyRandomJobs() {
        Random random = new Random(11);
        for (int n = 0; n < 150; n++) {
            List<RepairLine> lines = IntStream.rangeClosed(1, 1 + random.nextInt(5))
                    .mapToObj(i -> new RepairLine(
                            "line " + i, repair(random), Lie.values()[random.nextInt(4)], 1 + random.nextInt(40)))
                    .toList();
            FillJob job = Jobs.of(lines.toArray(new RepairLine[0]));
            nothingIsLost(job);
            everyPieceIsDoneInEveryStage(job);
            everyBatchIsUsedInTime(FillPlanner.plan(job));
        }
    }

    private static Repair repair(Random random) {
        double size = 1 + 20 * random.nextDouble();
        return switch (random.nextInt(6)) {
            case 0 -> new CountersunkHole(size, size * 2, 1, 1 + size / 2, 0.5);
            case 1 -> new PlainHole(size, 1 + size / 4, 0);
            case 2 -> new Gouge(size * 4, size, size / 5);
            case 3 -> new ScratchGroove(size * 60, 3, 1);
            case 4 -> new WornArea(size * 90, size * 8, 0.5);
            default -> new SprayArea(size * 90, size * 20, 0.2 + random.nextDouble());
        };
    }

    private static void everyBatchIsUsedInTime(FillPlan plan) {
        boolean warned = plan.warnings().stream().anyMatch(w -> w.kind() == Warning.Kind.PIECE_TOO_LONG);
        for (Batch batch : plan.batches()) {
            if (!warned) {
                assertTrue(
                        batch.minutes() <= plan.time().leastMinutes() + 1e-6,
                        "batch " + batch.number() + " takes " + batch.minutes() + " of " + plan.time());
            }
        }
    }

    @Test
    void theBatchesOfAStageAreAlike() {
        List<Batch> strip = FillPlanner.plan(
                        Jobs.of(new RepairLine("strip", new WornArea(3000, 100, 0.6), Lie.VERTICAL, 1)))
                .batches()
                .stream()
                .filter(b -> b.stage().kind() == Stage.Kind.FIRST_FILL)
                .toList();
        assertTrue(strip.size() >= 3, "batches: " + strip.size());
        double most = strip.stream().mapToDouble(Batch::mixMl).max().orElseThrow();
        double least = strip.stream().mapToDouble(Batch::mixMl).min().orElseThrow();
        assertTrue(least > 0.95 * most, least + " against " + most + " ml");
    }

    @Test
    void aCupIsNeverSoSmallThatItsCatalystCannotBeMeasured() {
        FillPlan plan = FillPlanner.plan(Jobs.of(new RepairLine("one hole", new PlainHole(4, 3, 0), Lie.FACING_UP, 1)));
        for (Batch batch : plan.batches()) {
            assertTrue(batch.catalyst().ml() >= 5 * 0.01 / Densities.USUAL.catalyst() - 1e-9, "" + batch.catalyst());
            assertTrue(batch.surplusMl() > 0);
        }
        assertTrue(kinds(plan).contains(Warning.Kind.TOPPED_UP));
    }

    @Test
    void massesFollowTheMixAndTheDensities() {
        for (Batch batch : FillPlanner.plan(Jobs.all()).batches()) {
            double share =
                    batch.mix().gelCoat() / (batch.mix().gelCoat() + batch.mix().paste());
            assertEquals(batch.mixMl() * share * 1.3, batch.gelCoatGrams(), 1e-9);
            assertEquals(batch.mixMl() * (1 - share) * 1.1, batch.pasteGrams(), 1e-9);
        }
    }

    @Test
    void theGunGetsNoPaste() {
        List<Batch> sprayed = FillPlanner.plan(Jobs.all()).batches().stream()
                .filter(batch -> batch.stage().kind() == Stage.Kind.SPRAY)
                .toList();
        // 0.5 mm is 19.7 mil: two passes of at most 12.
        assertEquals(2, sprayed.size());
        for (Batch batch : sprayed) {
            assertEquals(0, batch.pasteGrams());
            assertEquals(0.05 * batch.mixMl(), batch.styreneMl().orElseThrow()[0], 1e-9);
            assertEquals(0.08 * batch.mixMl(), batch.styreneMl().orElseThrow()[1], 1e-9);
        }
    }

    @Test
    void waxGoesIntoTheLastCoatOfUnwaxedGelCoatOnly() {
        FillPlan unwaxed = FillPlanner.plan(Jobs.all());
        for (Batch batch : unwaxed.batches()) {
            boolean last = batch.stage().kind() == Stage.Kind.SECOND_FILL
                    || batch.stage().kind() == Stage.Kind.SPRAY
                            && batch.stage().pass() == batch.stage().of();
            assertEquals(last, batch.wax().isPresent(), batch.stage().words());
            batch.wax().ifPresent(wax -> {
                assertEquals(0.03 * batch.mixMl(), wax.ml(), 1e-9);
            });
        }
        FillPlan waxed = FillPlanner.plan(
                Jobs.with(new Materials(Densities.USUAL, true, OptionalDouble.of(0.3)), new CatalystChoice.General()));
        assertTrue(waxed.batches().stream().allMatch(batch -> batch.wax().isEmpty()));
        assertTrue(kinds(waxed).contains(Warning.Kind.WAX_BETWEEN_COATS));
        assertEquals(0, waxed.waxMl());
        assertEquals("3 % by volume (published 1.6 to 3.1 %)", WaxDose.shareWords());
        FillPlan inOneGo =
                FillPlanner.plan(Jobs.with(new Allowances(0.1, 0.3, 0, 0), new Supply(500, 0, OptionalDouble.empty())));
        assertTrue(
                inOneGo.batches().stream()
                        .filter(b -> b.stage().kind() == Stage.Kind.FIRST_FILL)
                        .allMatch(batch -> batch.wax().isPresent()),
                "without a second fill the first is the last");
    }

    @Test
    void moreRepairsNeverTakeLess() {
        double before = 0;
        for (int count = 1; count < 40; count++) {
            double grams = FillPlanner.plan(
                            Jobs.of(new RepairLine("holes", new PlainHole(9, 6, 0), Lie.VERTICAL, count)))
                    .gelCoatGrams();
            assertTrue(grams >= before - 1e-9, "count " + count + ": " + grams + " after " + before);
            before = grams;
        }
    }

    @Test
    void aStifferMixTakesLessColourAndMorePasteAndHidesLess() {
        Mix before = Lie.FACING_UP.mix();
        for (Lie lie : List.of(Lie.VERTICAL, Lie.DEEP_OVERHEAD)) {
            assertTrue(lie.mix().gelCoatShare() < before.gelCoatShare(), lie.words());
            assertTrue(lie.mix().hidingFilmMm(0.3) > before.hidingFilmMm(0.3), lie.words());
            before = lie.mix();
        }
        assertEquals(0.45, Lie.FACING_UP.mix().hidingFilmMm(0.3), 1e-12, "2 to 1: half as much again");
        assertEquals(0.6, Lie.VERTICAL.mix().hidingFilmMm(0.3), 1e-12, "1 to 1: twice the film");
        assertEquals(0.3, Mix.NEAT.hidingFilmMm(0.3), 1e-12);
    }

    @Test
    void theCupIsEnoughOrNotToTheGram() {
        double needed = FillPlanner.plan(Jobs.all()).gelCoatGrams();
        assertTrue(enough(needed * 1.2 + 1, 0) instanceof Enough.WithSpare yes && near(yes.leftG(), 1));
        assertTrue(enough(needed + 1, 0) instanceof Enough.WithoutSpare no && near(no.missingG(), needed * 0.2 - 1));
        assertTrue(
                enough(needed - 5, needed) instanceof Enough.FromReserve more && near(more.tintG(), needed * 0.2 + 5));
        assertTrue(enough(needed - 5, 6) instanceof Enough.FromReserve all && near(all.tintG(), 6));
        assertTrue(enough(needed - 5, 2) instanceof Enough.TooLittle less && near(less.missingG(), 3));
    }

    private static boolean near(double value, double expected) {
        return Math.abs(value - expected) < 1e-6;
    }

    private static Enough enough(double cup, double reserve) {
        return FillPlanner.plan(Jobs.with(Allowances.USUAL, new Supply(cup, reserve, OptionalDouble.of(1000))))
                .enough()
                .orElseThrow();
    }

    private static List<Warning.Kind> kinds(FillPlan plan) {
        return plan.warnings().stream().map(Warning::kind).toList();
    }

    @Test
    void saysWhenTheWeatherIsWrong() {
        assertTrue(kinds(FillPlanner.plan(Jobs.at(12, OptionalDouble.of(50)))).contains(Warning.Kind.TOO_COLD));
        assertTrue(kinds(FillPlanner.plan(Jobs.at(30, OptionalDouble.of(50)))).contains(Warning.Kind.HOT_CUP));
        assertTrue(kinds(FillPlanner.plan(Jobs.at(22, OptionalDouble.of(85)))).contains(Warning.Kind.TOO_HUMID));
        assertTrue(
                kinds(FillPlanner.plan(Jobs.at(22, OptionalDouble.empty()))).contains(Warning.Kind.HUMIDITY_UNKNOWN));
        FillPlan fine = FillPlanner.plan(Jobs.at(22, OptionalDouble.of(50)));
        assertFalse(
                fine.forbidden()
                        || kinds(fine).contains(Warning.Kind.HOT_CUP)
                        || kinds(fine).contains(Warning.Kind.HOT_HULL)
                        || kinds(fine).contains(Warning.Kind.TOO_HUMID)
                        || kinds(fine).contains(Warning.Kind.HUMIDITY_UNKNOWN),
                "" + fine.warnings());
    }

    @Test
    void warnsOfWhatWillGoWrong() {
        FillPlan plan = FillPlanner.plan(Jobs.of(
                new RepairLine("deep", new PlainHole(10, 9, 0), Lie.OVERHEAD, 1),
                new RepairLine("thin", new WornArea(100, 100, 0.2), Lie.VERTICAL, 1),
                new RepairLine("thick", new SprayArea(100, 100, 1.2), Lie.VERTICAL, 1)));
        assertTrue(
                kinds(plan)
                        .containsAll(List.of(
                                Warning.Kind.DEEP_OVERHEAD,
                                Warning.Kind.FILM_TOO_THIN,
                                Warning.Kind.SHOWS_THROUGH,
                                Warning.Kind.FILM_TOO_THICK)),
                "" + plan);
        FillPlan big = FillPlanner.plan(Jobs.of(new RepairLine("pit", new WornArea(400, 200, 0.8), Lie.FACING_UP, 1)));
        assertTrue(kinds(big).containsAll(List.of(Warning.Kind.DEEP_CUP)), "" + big.warnings());
    }

    @Test
    void warnsWhenTheBasisMattersAndWhenNobodyKnowsTheHiding() {
        CatalystChoice edge = new CatalystChoice.Typed(new CatalystShare(3, Basis.MASS));
        FillPlan plan =
                FillPlanner.plan(Jobs.with(new Materials(Densities.USUAL, false, OptionalDouble.empty()), edge));
        assertTrue(kinds(plan).containsAll(List.of(Warning.Kind.OTHER_BASIS, Warning.Kind.HIDING_UNKNOWN)));
        assertEquals(3, plan.share().percent());
    }

    @Test
    void everyWarningSpeaksInBothSystems() {
        for (Warning.Kind kind : Warning.Kind.values()) {
            Warning warning = new Warning(kind, "Batch 1", 12, 20);
            assertTrue(warning.words(UnitSystem.METRIC).length() > 25, kind.name());
            assertFalse(
                    warning.words(UnitSystem.US).contains(" mm")
                            || warning.words(UnitSystem.US).contains("°C"),
                    warning.words(UnitSystem.US));
        }
    }

    @Test
    void theOwnTableRulesShareAndTime() {
        CatalystTable table = new CatalystTable(
                "plain white base",
                List.of(new CatalystTable.Row(22, new CatalystShare(2.2, Basis.MASS), new WorkingTime(19, 25))));
        FillPlan plan = FillPlanner.plan(Jobs.with(Jobs.UNWAXED, new CatalystChoice.Own(table)));
        assertEquals(new CatalystShare(2.2, Basis.MASS), plan.share());
        assertEquals(19, plan.time().leastMinutes());
        assertTrue(plan.origin().contains("plain white base"));
        for (Batch batch : plan.batches()) {
            assertEquals(
                    0.022 * (batch.gelCoatGrams() + batch.pasteGrams()),
                    batch.catalyst().grams(),
                    1e-9);
        }
    }

    @Test
    void theTimersRunInOrderAndSlowerInTheCold() {
        List<CureTimer> mild =
                FillPlanner.plan(Jobs.at(25, OptionalDouble.empty())).timers();
        List<CureTimer> cold =
                FillPlanner.plan(Jobs.at(15, OptionalDouble.empty())).timers();
        assertEquals(
                List.of("stop spreading", "tape off", "second coat", "sand"),
                mild.stream().map(CureTimer::cue).toList());
        for (int i = 0; i < mild.size(); i++) {
            assertTrue(mild.get(i).fromMinutes() < mild.get(i).toMinutes());
            assertTrue(
                    cold.get(i).fromMinutes() > mild.get(i).fromMinutes(),
                    mild.get(i).cue());
            assertTrue(i == 0 || mild.get(i).fromMinutes() >= mild.get(i - 1).fromMinutes());
        }
    }

    @Test
    void refusesAJobThatContradictsItself() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Jobs.of())
                .getMessage()
                .contains("at least one repair"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Jobs.of(Jobs.HOLES, Jobs.HOLES))
                .getMessage()
                .contains("same name"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new Densities(0, 1, 1, 1))
                .getMessage()
                .contains("density of the gel coat must be 0.3 to 5 g/ml, was 0 g/ml"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new Conditions(20, OptionalDouble.of(130)))
                .getMessage()
                .contains("humidity"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new Allowances(1, 0, 0, 0))
                .getMessage()
                .contains("lost in the cup"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new Supply(-1, 0, OptionalDouble.empty()))
                .getMessage()
                .contains("gel coat in the cup"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> CatalystMeasure.dropper(2))
                .getMessage()
                .contains("drops"));
    }

    @Test
    void refusesAJobOfHundredsOfCupsAtOnce() {
        FillJob sea = Jobs.of(new RepairLine("the sea", new WornArea(20_000, 20_000, 5), Lie.FACING_UP, 1000));
        String message = assertThrows(IllegalArgumentException.class, () -> FillPlanner.plan(sea))
                .getMessage();
        assertTrue(message.contains("cups for the first fill") && message.contains("at most 300"), message);
    }

    @Test
    void theStepsFollowTheOrderOfTheBatches() {
        FillPlan plan = FillPlanner.plan(Jobs.all());
        List<Integer> used = plan.day().steps().stream()
                .map(Day.Step::batch)
                .filter(batch -> batch > 0)
                .toList();
        assertEquals(plan.batches().stream().map(Batch::number).toList(), used);
    }

    @Test
    void allUsualCautionsGoWithEveryPlan() {
        assertEquals(List.of(Caution.values()), FillPlanner.plan(Jobs.all()).cautions());
        assertEquals(Optional.empty(), FillPlanner.plan(Jobs.all()).enough());
    }
}
