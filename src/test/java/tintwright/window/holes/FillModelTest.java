package tintwright.window.holes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.HandClock;
import tintwright.bench.FillColour;
import tintwright.bench.job.FillDraft;
import tintwright.bench.job.KeptJob;
import tintwright.cup.CupState;
import tintwright.fill.FillOrder;
import tintwright.fill.GritLadder;
import tintwright.fill.Warning;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairKind;
import tintwright.units.UnitSystem;
import tintwright.window.Desk;
import tintwright.window.Desks;
import tintwright.window.frame.Step;

/** The fill without a window. */
class FillModelTest {
    private final HandClock clock = HandClock.standing("2026-05-04T09:00:00Z");
    private final Desk desk = Desks.demo(clock);
    private final FillModel fill = desk.fill();

    private boolean addHoles() {
        return fill.add(
                "cleat holes",
                RepairKind.COUNTERSUNK,
                Map.of("hole", "5", "top", "9", "countersink", "2", "depth", "6", "angle", " "),
                Lie.VERTICAL,
                "8",
                UnitSystem.METRIC);
    }

    @Test
    void aLineOfRepairsGivesBatchesAndUndoTakesItBack() {
        assertTrue(fill.planProperty().get().isEmpty());
        assertTrue(addHoles(), fill.problemProperty().get());
        assertTrue(fill.planProperty().get().orElseThrow().plan().gelCoatGrams() > 1);
        desk.shell().undo();
        assertTrue(fill.planProperty().get().isEmpty());
    }

    @Test
    void twoRepairsOfOneNameAreRefused() {
        assertTrue(addHoles());
        assertFalse(addHoles());
        assertTrue(
                fill.problemProperty().get().contains("own name"),
                fill.problemProperty().get());
    }

    @Test
    void whatCannotBeASizeIsRefusedInOneSentence() {
        assertFalse(fill.add(
                "x",
                RepairKind.GOUGE,
                Map.of("length", "long", "width", "2", "depth", "1"),
                Lie.VERTICAL,
                "1",
                UnitSystem.METRIC));
        assertTrue(
                fill.problemProperty().get().contains("Length"),
                fill.problemProperty().get());
        assertFalse(fill.add(
                "x",
                RepairKind.GOUGE,
                Map.of("length", "9", "width", "2", "depth", "1"),
                Lie.VERTICAL,
                "a few",
                UnitSystem.METRIC));
    }

    @Test
    void coldWeatherIsNamedFirstAndThePlanIsForWhenItIsWarmEnough() {
        assertTrue(addHoles());
        fill.hull().weather("2 C", "", "", "60", UnitSystem.METRIC);
        assertTrue(fill.planProperty().get().orElseThrow().plan().forbidden());
        String next = fill.nextProperty().get().sentence();
        assertTrue(next.startsWith("Not today: the hull is at 2 \u00b0C"), next);
        assertEquals("", fill.nextProperty().get().button());
        fill.hull().weather("22", "", "", "60", UnitSystem.METRIC);
        assertFalse(fill.planProperty().get().orElseThrow().plan().forbidden());
    }

    @Test
    void hullCupAndAirAreTakenApartAndBlankIsAsTheHull() {
        assertTrue(fill.hull().weather("34", "28", "", "50", UnitSystem.METRIC));
        var weather = desk.job().now().fill().weather();
        assertEquals(34, weather.hullCelsius());
        assertEquals(28, weather.cupCelsius());
        assertEquals(34, weather.airCelsius());
        assertFalse(fill.hull().weather("34", "warm", "", "50", UnitSystem.METRIC));
        assertTrue(fill.hull().problemProperty().get().contains("temperature of the cup"));
        assertEquals(weather, desk.job().now().fill().weather(), "nothing that was refused is taken");
    }

    @Test
    void whatIsPressedWhenItGelsTeachesTheNextPlanAndIsKept(@TempDir Path folder) {
        Path file = folder.resolve("noted-times.json");
        fill.learnFrom(file);
        assertTrue(addHoles());
        var before = fill.planProperty().get().orElseThrow().plan();
        fill.catalysed(1);
        clock.move(Duration.ofMinutes(40));
        fill.done(fill.timers().inHand(1), "stop spreading");
        clock.move(Duration.ofMinutes(20));
        fill.done(fill.timers().inHand(1), "tape off");
        fill.learnFrom(file);
        var after = fill.planProperty().get().orElseThrow().plan();
        assertTrue(after.origin().contains("1 noted in this shop"), after.origin());
        assertTrue(after.time().leastMinutes() > before.time().leastMinutes());
        fill.catalysed(1);
        clock.move(Duration.ofHours(30));
        fill.done(fill.timers().inHand(1), "stop spreading");
        fill.learnFrom(file);
        assertEquals(
                after.time(), fill.planProperty().get().orElseThrow().plan().time(), "a day late is no time seen");
    }

    @Test
    void theHolesSayHowMuchColourTheCupIsAskedFor() {
        assertTrue(addHoles());
        assertTrue(fill.colourToMake());
        double wanted = fill.planProperty().get().orElseThrow().gramsForTheCup();
        assertTrue(fill.toMake(wanted).endsWith("make that much."), fill.toMake(wanted));
        assertTrue(fill.toMake(wanted + 3).endsWith("the tints can hardly be weighed."), fill.toMake(wanted + 3));
        fill.makeTheColour(wanted + 3);
        assertEquals(wanted + 3, desk.job().now().grams(), 1e-9);
        fill.makeTheColour(wanted / 2);
        assertEquals(wanted, desk.job().now().grams(), 1e-9);
        assertEquals(Step.CUP, desk.shell().stepProperty().get());
    }

    @Test
    void theWeatherIsTakenInCelsiusAndFahrenheit() {
        assertTrue(fill.hull().weather("68", "", "", "55 %", UnitSystem.US));
        assertEquals(20, desk.job().now().fill().weather().hullCelsius(), 1e-9);
        assertEquals(55, desk.job().now().fill().weather().humidityPercent().orElseThrow(), 1e-9);
        assertTrue(fill.hull().weather("77 F", "", "", "", UnitSystem.METRIC));
        assertEquals(25, desk.job().now().fill().weather().hullCelsius(), 1e-9);
        assertTrue(desk.job().now().fill().weather().humidityPercent().isEmpty());
        assertFalse(fill.hull().weather("20", "", "", "130", UnitSystem.METRIC));
        assertTrue(
                fill.hull().problemProperty().get().contains("130"),
                fill.hull().problemProperty().get());
        assertEquals(25, desk.job().now().fill().weather().hullCelsius(), 1e-9);
    }

    @Test
    void theCupInHandIsTheRecipeAndItsReserveCounts() {
        desk.cup().begin();
        desk.cup().accept();
        desk.cup().alsoWeighed("soot-black", "0.4");
        assertTrue(addHoles());
        CupState cup = desk.job().now().cup().orElseThrow().state();
        FillOrder order = fill.planProperty().get().orElseThrow().order();
        assertEquals(
                cup.mass(),
                order.recipe().stream().mapToDouble(FillOrder.Ingredient::grams).sum(),
                1e-9);
        assertEquals(cup.mass(), order.job().supply().orElseThrow().cup(), 1e-9);
        assertEquals(cup.reserve(), order.job().supply().orElseThrow().reserve(), 1e-9);
        FillColour same =
                FillColour.of(desk.job().knowledgeProperty().get(), cup.parts().orElseThrow());
        assertEquals(
                same.materials(OptionalDouble.empty()).densities(),
                order.job().materials().densities());
        assertEquals(
                order.recipe().size(),
                fill.planProperty().get().orElseThrow().order().recipe().size());
        desk.cup().alsoWeighed("soot-black", "0.2");
        assertEquals(
                cup.mass() + 0.2,
                fill.planProperty()
                        .get()
                        .orElseThrow()
                        .order()
                        .job()
                        .supply()
                        .orElseThrow()
                        .cup(),
                1e-9);
    }

    @Test
    void theFilmThatHidesComesFromTheBaseAndTheOptics() {
        desk.cup().begin();
        desk.cup().accept();
        desk.cup().alsoWeighed("soot-black", "0.4");
        assertTrue(addHoles());
        assertTrue(kinds().contains(Warning.Kind.HIDING_UNKNOWN));
        assertTrue(fill.hull()
                .know(new AtTheHullModel.Known("0.5", "", "", "", Optional.empty(), "", ""), UnitSystem.METRIC));
        assertFalse(kinds().contains(Warning.Kind.HIDING_UNKNOWN));
        double hides = fill.planProperty()
                .get()
                .orElseThrow()
                .order()
                .job()
                .materials()
                .hidingFilmMm()
                .orElseThrow();
        assertTrue(hides > 0 && hides < 0.5, "black in the white hides in a thinner film, was " + hides);
        assertFalse(fill.hull()
                .know(new AtTheHullModel.Known("none", "", "", "", Optional.empty(), "", ""), UnitSystem.METRIC));
        assertTrue(
                fill.hull().problemProperty().get().contains("none"),
                fill.hull().problemProperty().get());
    }

    private List<Warning.Kind> kinds() {
        return fill.planProperty().get().orElseThrow().plan().warnings().stream()
                .map(Warning::kind)
                .toList();
    }

    @Test
    void aTypedShareOutsideTheLimitIsRefusedWithTheReason() {
        assertTrue(addHoles());
        assertFalse(fill.catalyst().share("3.1", Basis.MASS));
        String why = fill.catalyst().problemProperty().get();
        assertTrue(
                why.contains("1.2 to 3 %")
                        && why.contains("3.1 % by mass")
                        && why.contains("brittle")
                        && why.contains(CatalystShare.CAUTION),
                why);
        assertFalse(fill.catalyst().share("1.1", Basis.VOLUME));
        assertFalse(fill.catalyst().share("much", Basis.VOLUME));
        assertEquals(new CatalystChoice.General(), fill.catalyst().choice());
        assertTrue(fill.catalyst().share("2", Basis.VOLUME));
        assertEquals("", fill.catalyst().problemProperty().get());
        assertEquals(
                new CatalystShare(2, Basis.VOLUME),
                fill.planProperty().get().orElseThrow().plan().share());
        desk.shell().undo();
        assertEquals(new CatalystChoice.General(), fill.catalyst().choice());
    }

    @Test
    void theProductsOwnTableIsReadBetweenItsRowsAndBeyondItWarns() {
        assertTrue(addHoles());
        assertFalse(fill.catalyst().row("", "18", "2", Basis.MASS, "18", "24", UnitSystem.METRIC));
        assertTrue(fill.catalyst().row("Grey tin", "18", "2", Basis.MASS, "18", "24", UnitSystem.METRIC));
        assertTrue(fill.catalyst().row("", "71.6", "1.6", Basis.MASS, "14", "", UnitSystem.US));
        assertFalse(fill.catalyst().row("", "24", "3.5", Basis.MASS, "14", "", UnitSystem.METRIC));
        var plan = fill.planProperty().get().orElseThrow().plan();
        assertEquals(1.8, plan.share().percent(), 1e-9);
        assertEquals(16, plan.time().leastMinutes(), 1e-9);
        assertTrue(plan.origin().contains("Grey tin"), plan.origin());
        fill.hull().weather("23", "", "", "", UnitSystem.METRIC);
        var beyond = fill.planProperty().get().orElseThrow().plan();
        assertTrue(
                beyond.warnings().stream().anyMatch(one -> one.kind() == Warning.Kind.OUTSIDE_TABLE),
                "" + beyond.warnings());
        fill.catalyst().general();
        assertTrue(fill.planProperty().get().isPresent());
        fill.catalyst().own();
        assertEquals(2, fill.catalyst().table().orElseThrow().rows().size());
        fill.catalyst().removeRow(0);
        fill.catalyst().removeRow(0);
        assertEquals(new CatalystChoice.General(), fill.catalyst().choice());
    }

    @Test
    void cupAfterCupIsAskedForAndThenTheLog() {
        assertTrue(addHoles());
        var batches = fill.planProperty().get().orElseThrow().plan().batches();
        for (var batch : batches) {
            assertTrue(fill.nextProperty().get().button().endsWith("batch " + batch.number()));
            fill.doNext();
            while (fill.nextProperty().get().running()) {
                clock.move(Duration.ofDays(4));
                fill.timers().tick();
                fill.doNext();
            }
        }
        assertEquals("On to the log", fill.nextProperty().get().button());
    }

    @Test
    void massesToWeighToAlwaysShowTheGramsOfAScale() {
        assertEquals("12.35 g", UnitSystem.METRIC.weighed(12.346, FillModel.STEP));
        assertEquals("0.435 oz (12.35 g)", UnitSystem.US.weighed(12.346, FillModel.STEP));
    }

    @Test
    void whatWasTypedIsKeptWithTheJob(@TempDir Path folder) throws Exception {
        assertTrue(addHoles());
        fill.hull().weather("68", "", "", "55", UnitSystem.US);
        assertTrue(fill.hull()
                .know(
                        new AtTheHullModel.Known(
                                "20", "25", "", "3", Optional.of(GritLadder.Surface.NEARLY_LEVEL), "24", ""),
                        UnitSystem.US));
        assertTrue(fill.catalyst().row("Grey tin", "18", "2", Basis.MASS, "18", "24", UnitSystem.METRIC));
        new KeptJob(folder).keep(desk.job().now());
        FillDraft before = desk.job().now().fill();
        FillDraft after = new KeptJob(folder).fetch().orElseThrow().fill();
        assertEquals(before.lines(), after.lines());
        assertEquals(before.weather(), after.weather());
        assertEquals(before.catalyst(), after.catalyst());
        assertEquals(before.facts(), after.facts());
    }

    @Test
    void aSpoonIsChosenMeasuredAndKept(@TempDir Path folder) throws Exception {
        assertTrue(addHoles());
        assertTrue(fill.hull().measureWith(CatalystTool.SPOON));
        assertEquals(1.25, desk.job().now().fill().facts().tools().catalyst().step());
        assertTrue(
                fill.hull().know(new AtTheHullModel.Known("", "", "", "", Optional.empty(), "", "1/2"), UnitSystem.US));
        assertEquals(2.46, desk.job().now().fill().facts().tools().catalyst().step(), 0.005);
        assertTrue(fill.planProperty().get().orElseThrow().plan().batches().stream()
                .allMatch(batch -> batch.catalyst().words(UnitSystem.METRIC).contains("level half teaspoon")));
        new KeptJob(folder).keep(desk.job().now());
        assertEquals(
                desk.job().now().fill(),
                new KeptJob(folder).fetch().orElseThrow().fill());
        assertFalse(
                fill.hull().know(new AtTheHullModel.Known("", "", "", "", Optional.empty(), "", "1 l"), UnitSystem.US));
        assertTrue(
                fill.hull().problemProperty().get().contains("spoon holds"),
                fill.hull().problemProperty().get());
    }

    @Test
    void theJobSheetIsWrittenForPaperAndPhone(@TempDir Path folder) throws Exception {
        assertTrue(addHoles());
        fill.sheet().write(folder.resolve("a.pdf"), UnitSystem.US);
        fill.sheet().write(folder.resolve("a.html"), UnitSystem.US);
        assertEquals("%PDF", new String(Files.readAllBytes(folder.resolve("a.pdf")), 0, 4, StandardCharsets.US_ASCII));
        String page = Files.readString(folder.resolve("a.html"));
        assertTrue(page.contains("cleat holes") && page.contains("\u00b0F"), page);
        assertTrue(desk.shell().noticeProperty().get().contains("a.html"));
        fill.sheet().write(folder.resolve("no such folder").resolve("a.pdf"), UnitSystem.METRIC);
        assertFalse(Files.exists(folder.resolve("no such folder").resolve("a.pdf")));
        assertFalse(
                desk.shell().noticeProperty().get().contains("is in"),
                desk.shell().noticeProperty().get());
    }
}
