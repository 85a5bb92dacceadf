package tintwright.window.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import tintwright.bench.ShelfBench;
import tintwright.shelf.PigmentFamily;
import tintwright.units.UnitSystem;
import tintwright.window.Desk;
import tintwright.window.Desks;
import tintwright.window.frame.LatestAnswer;

/** The shelf without a window. */
class ShelfModelTest {
    private final Desk desk = Desks.demo(Clock.systemUTC());
    private final ShelfModel shelf = desk.shelf();

    @Test
    void everythingThatStandsOnItIsShown() {
        var stand = shelf.standProperty().get();
        var job = desk.job().now().shelf();
        assertEquals(job.items().size(), stand.lines().size());
        assertFalse(shelf.nextProperty().get().words().isBlank());
    }

    @Test
    void whatIsToBuyIsCopiedAsTheListThatTheTerminalPrints() {
        List<String> copied = new ArrayList<>();
        Clock autumn = Clock.fixed(Instant.parse("2027-09-01T08:00:00Z"), ZoneOffset.UTC);
        LatestAnswer atOnce = new LatestAnswer(Runnable::run, Runnable::run, desk.shell(), "");
        ShelfModel then = new ShelfModel(
                desk.job(), new SimpleObjectProperty<>(Optional.empty()), atOnce, atOnce, autumn, copied::add);
        then.copyToBuy();
        List<String> list = ShelfBench.listToBuy(desk.job().now().shelf(), LocalDate.of(2027, 9, 1));
        assertTrue(list.size() > 1, list.toString());
        assertEquals(
                List.of(list),
                copied.stream().map(text -> text.lines().toList()).toList());
        assertEquals(then.standProperty().get().toBuy(), list.subList(1, list.size()), "the card shows the same");
    }

    @Test
    void aTintTakesThreeFieldsAndIsKnownOnlyByItsFamily() {
        assertTrue(shelf.addTint("rust orange", Optional.of(PigmentFamily.ORANGE), "120", UnitSystem.METRIC));
        assertEquals("rust-orange", desk.job().now().shelf().tints().get(8).id());
        var line = shelf.standProperty().get().lines().stream()
                .filter(each -> each.name().equals("rust orange"))
                .findFirst()
                .orElseThrow();
        assertTrue(line.known().contains("guessed"), line.known());
        assertEquals("0", line.chips());
        assertEquals(120, line.left().orElseThrow());
        assertFalse(shelf.addTint(" ", Optional.of(PigmentFamily.UNKNOWN), "", UnitSystem.METRIC));
        assertFalse(shelf.addTint("x", Optional.of(PigmentFamily.ORANGE), "much", UnitSystem.METRIC));
        desk.shell().undo();
        assertEquals(8, desk.job().now().shelf().tints().size());
    }

    @Test
    void whatIsWrongWithATintIsSaidBesideTheTint() {
        assertFalse(shelf.addTint(" ", Optional.of(PigmentFamily.UNKNOWN), "", UnitSystem.METRIC));
        assertTrue(
                shelf.stockProblemProperty().get().contains("name"),
                shelf.stockProblemProperty().get());
        assertEquals("", shelf.problemProperty().get());
        assertTrue(shelf.addTint("rust orange", Optional.of(PigmentFamily.ORANGE), "4 oz", UnitSystem.METRIC));
        assertEquals("", shelf.stockProblemProperty().get());
    }

    @Test
    void aSlipOnTheShelfIsPutRight() {
        assertTrue(shelf.addTint("rust orang", Optional.of(PigmentFamily.ORGANIC_RED), "", UnitSystem.METRIC));
        assertTrue(chip("rust-orang", "0.2", "19.8", "78.1", "22.4", "31.0"), wrongWithTheChip());
        assertTrue(shelf.change("rust-orang", "rust orange", PigmentFamily.ORANGE, "120", UnitSystem.METRIC));
        ShelfModel.Detail detail = shelf.detail("rust-orang");
        assertEquals("rust orange", detail.name());
        assertEquals(120, detail.left().orElseThrow());
        assertEquals(1, detail.chips().size());
        assertTrue(
                detail.chips().values().iterator().next().contains("rust orange"),
                detail.chips().toString());
        assertTrue(shelf.forget(detail.chips().keySet().iterator().next()));
        assertTrue(shelf.detail("rust-orang").chips().isEmpty());
        assertTrue(shelf.takeOff("rust-orang"));
        assertEquals(8, desk.job().now().shelf().tints().size());
        desk.shell().undo();
        assertEquals("rust orange", desk.job().now().shelf().nameOf("rust-orang"));
    }

    @Test
    void whatIsInTheCupStaysOnTheShelf() {
        desk.cup().begin();
        desk.cup().accept();
        String white = desk.job().now().shelf().bases().get(0).id();
        assertFalse(shelf.detail(white).goes());
        desk.cup().alsoWeighed("soot-black", "0.3");
        assertFalse(shelf.takeOff("soot-black"));
        assertTrue(
                shelf.stockProblemProperty().get().contains("cup in hand"),
                shelf.stockProblemProperty().get());
    }

    private boolean chip(String part, String grams, String white, String lightness, String a, String b) {
        return shelf.chip().add(new ChipModel.Typed(part, grams, white, lightness, a, b));
    }

    private String wrongWithTheChip() {
        return shelf.chip().problemProperty().get();
    }

    @Test
    void aChipInThreeBoxesTeachesTheTint() {
        assertTrue(shelf.addTint("rust orange", Optional.of(PigmentFamily.ORANGE), "", UnitSystem.METRIC));
        double before = desk.job().knowledgeProperty().get().strengthDeviation("rust-orange");
        assertTrue(chip("rust-orange", "0,2", "19.8 g", "78.1", "22.4", "31.0"), wrongWithTheChip());
        double after = desk.job().knowledgeProperty().get().strengthDeviation("rust-orange");
        assertTrue(after < 0.6 * before, before + " to " + after);
        assertFalse(chip("rust-orange", "0.2", "19.8", "78.1", "22.4", "31.0"));
        assertTrue(wrongWithTheChip().contains("already"), wrongWithTheChip());
    }

    @Test
    void aTintThatNobodyKnowsIsAskedForItsChipAndPaintedInNoColour() {
        assertTrue(shelf.addTint("the red tub", Optional.of(PigmentFamily.UNKNOWN), "", UnitSystem.METRIC));
        assertTrue(line("the red tub").look().isEmpty());
        desk.job().change(before -> before.withPlaces("", java.util.List.of(), -1));
        var advice = shelf.nextProperty().get();
        assertEquals("the-red-tub", advice.chip().orElseThrow().part(), advice.words());
        assertTrue(chip("the-red-tub", "0.2", "19.8", "70", "30", "10"), wrongWithTheChip());
        assertTrue(line("the red tub").look().isPresent());
        assertFalse(shelf.nextProperty().get().words().contains("nobody"));
    }

    @Test
    void aTintWithoutALabelIsCalledWhatItLooksLike() {
        assertTrue(shelf.addTint("", Optional.of(PigmentFamily.ORANGE), "", UnitSystem.METRIC));
        assertTrue(shelf.addTint(" ", Optional.of(PigmentFamily.ORANGE), "", UnitSystem.METRIC));
        List<String> names = desk.job().now().shelf().tints().stream()
                .map(tint -> tint.name())
                .toList();
        assertTrue(names.containsAll(List.of("orange", "orange 2")), names.toString());
    }

    @Test
    void nothingChosenIsNotTheSameAsNotKnown() {
        assertFalse(shelf.addTint("a tub", Optional.empty(), "", UnitSystem.METRIC));
        assertTrue(shelf.stockProblemProperty().get().contains("I do not know"));
    }

    @Test
    void theChipThatIsProposedOnlyWantsItsReading() {
        assertTrue(shelf.addTint("rust orange", Optional.of(PigmentFamily.ORANGE), "", UnitSystem.METRIC));
        var proposed = shelf.nextProperty().get().chip().orElseThrow();
        assertEquals("rust-orange", proposed.part());
        assertTrue(chip(proposed.part(), proposed.grams(), proposed.white(), "78.1", "22.4", "31.0"));
    }

    @Test
    void aChipIsDrawnAsItIsTyped() {
        ChipModel chip = shelf.chip();
        assertTrue(chip.look(new ChipModel.Typed("soot-black", "", "", "", "", ""))
                .expected()
                .isEmpty());
        var weighed = chip.look(new ChipModel.Typed("soot-black", "0.2", "19.8", "", "", ""));
        var stronger = chip.look(new ChipModel.Typed("soot-black", "2", "18", "", "", ""));
        assertTrue(stronger.expected().orElseThrow().green()
                < weighed.expected().orElseThrow().green());
        assertTrue(weighed.words().contains("One part in 100: a good"), weighed.words());
        assertTrue(stronger.words().contains("strong"), stronger.words());
        assertTrue(weighed.read().isEmpty());
        assertTrue(chip.look(new ChipModel.Typed("soot-black", "0.2", "19.8", "61", "0", "-1"))
                .read()
                .isPresent());
    }

    @Test
    void theWhiteAloneIsAChipToo() {
        assertTrue(chip("plain-white", "", "", "95,1", "\u22120.6", "1.9"), wrongWithTheChip());
        var last = desk.job()
                .now()
                .shelf()
                .chips()
                .get(desk.job().now().shelf().chips().size() - 1);
        assertEquals(java.util.Set.of("plain-white"), last.parts().grams().keySet());
    }

    private ShelfModel.Line line(String name) {
        return shelf.standProperty().get().lines().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aShelfWithoutAnyChipAsksForItsWhiteFirst() {
        assertTrue(shelf.startOwn("Shed white"));
        assertTrue(shelf.addTint("Black", Optional.of(PigmentFamily.CARBON_BLACK), "", UnitSystem.METRIC));
        desk.job().change(before -> before.withPlaces("", java.util.List.of(), -1));
        assertTrue(
                shelf.nextProperty().get().words().contains("Shed white"),
                shelf.nextProperty().get().words());
        assertTrue(
                chip(shelf.nextProperty().get().chip().orElseThrow().part(), "", "", "94", "-0.5", "1.5"),
                wrongWithTheChip());
        assertTrue(
                shelf.nextProperty().get().words().contains("Black"),
                shelf.nextProperty().get().words());
        assertFalse(shelf.addTint("black", Optional.of(PigmentFamily.CARBON_BLACK), "", UnitSystem.METRIC));
        assertTrue(
                shelf.stockProblemProperty().get().contains("already"),
                shelf.stockProblemProperty().get());
    }

    @Test
    void aBoxThatCannotBeReadIsNamed() {
        assertFalse(chip("soot-black", "", "19.8", "61", "0", "0"));
        assertTrue(wrongWithTheChip().contains("grams of tint"), wrongWithTheChip());
        assertFalse(chip("soot-black", "0.2", "-3", "61", "0", "0"));
        assertTrue(wrongWithTheChip().contains("grams of white"), wrongWithTheChip());
        assertFalse(chip("soot-black", "0.2", "19.8", "", "", ""));
        assertTrue(wrongWithTheChip().contains("photo"), wrongWithTheChip());
        assertFalse(chip("soot-black", "0.2", "19.8", "161", "0", "0"));
        assertTrue(wrongWithTheChip().contains("L*"), wrongWithTheChip());
    }

    @Test
    void ownShelfIsOneStepAwayAndTheOldOneComesBack() {
        assertTrue(shelf.startOwn("My white"));
        assertEquals("My white", desk.job().now().shelf().bases().get(0).name());
        assertTrue(desk.job().now().shelf().tints().isEmpty());
        desk.shell().undo();
        assertEquals(8, desk.job().now().shelf().tints().size());
    }

    @Test
    void aNewShelfAsksForItsFirstTintAndPutsTheOldCupAway() {
        desk.job()
                .change(before -> before.using("ink-blue", false)
                        .mixing(java.util.Optional.of(
                                tintwright.cup.Cup.empty("bow", before.places().get(0), 100, 0.01, "plain-white"))));
        assertTrue(shelf.startOwn("My white"));
        assertTrue(desk.job().now().cup().isEmpty());
        assertTrue(desk.job().now().off().isEmpty());
        assertTrue(
                shelf.nextProperty().get().words().contains("first tint"),
                shelf.nextProperty().get().words());
        desk.shell().undo();
        assertTrue(desk.job().now().cup().isPresent());
    }
}
