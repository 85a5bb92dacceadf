package tintwright.window.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import org.junit.jupiter.api.Test;
import tintwright.shelf.PigmentFamily;
import tintwright.units.UnitSystem;
import tintwright.window.Desk;
import tintwright.window.Desks;

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
    void aTintTakesThreeFieldsAndIsKnownOnlyByItsFamily() {
        assertTrue(shelf.addTint("rust orange", PigmentFamily.ORANGE, "120", UnitSystem.METRIC));
        assertEquals("rust-orange", desk.job().now().shelf().tints().get(8).id());
        var line = shelf.standProperty().get().lines().stream()
                .filter(each -> each.name().equals("rust orange"))
                .findFirst()
                .orElseThrow();
        assertTrue(line.known().contains("guessed"), line.known());
        assertEquals("0", line.chips());
        assertEquals(120, line.left().orElseThrow());
        assertFalse(shelf.addTint(" ", PigmentFamily.ORANGE, "", UnitSystem.METRIC));
        assertFalse(shelf.addTint("x", PigmentFamily.ORANGE, "much", UnitSystem.METRIC));
        desk.shell().undo();
        assertEquals(8, desk.job().now().shelf().tints().size());
    }

    @Test
    void whatIsWrongWithATintIsSaidBesideTheTint() {
        assertFalse(shelf.addTint(" ", PigmentFamily.ORANGE, "", UnitSystem.METRIC));
        assertTrue(
                shelf.stockProblemProperty().get().contains("name"),
                shelf.stockProblemProperty().get());
        assertEquals("", shelf.problemProperty().get());
        assertTrue(shelf.addTint("rust orange", PigmentFamily.ORANGE, "4 oz", UnitSystem.METRIC));
        assertEquals("", shelf.stockProblemProperty().get());
    }

    @Test
    void aSlipOnTheShelfIsPutRight() {
        assertTrue(shelf.addTint("rust orang", PigmentFamily.ORGANIC_RED, "", UnitSystem.METRIC));
        assertTrue(
                shelf.addChip("0.2 rust orang in 19.8: 78.1 22.4 31.0"),
                shelf.problemProperty().get());
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

    @Test
    void aChipInOneLineTeachesTheTint() {
        assertTrue(shelf.addTint("rust orange", PigmentFamily.ORANGE, "", UnitSystem.METRIC));
        double before = desk.job().knowledgeProperty().get().strengthDeviation("rust-orange");
        assertTrue(
                shelf.addChip("0.2 rust orange in 19.8: 78.1 22.4 31.0"),
                shelf.problemProperty().get());
        double after = desk.job().knowledgeProperty().get().strengthDeviation("rust-orange");
        assertTrue(after < 0.6 * before, before + " to " + after);
    }

    @Test
    void theChipThatIsProposedIsALineThatOnlyWantsItsReading() {
        assertTrue(shelf.addTint("rust orange", PigmentFamily.ORANGE, "", UnitSystem.METRIC));
        var advice = shelf.nextProperty().get();
        assertTrue(advice.words().contains("rust orange"), advice.words());
        ChipLine line =
                ChipLine.read(advice.line() + "78.1 22.4 31.0", desk.job().now().shelf());
        assertTrue(line.grams().get("rust-orange") > 0 && line.grams().get("plain-white") > 15, advice.line());
        assertEquals(22.4, line.a());
    }

    @Test
    void aChipOfTwoTintsIsReadToo() {
        ChipLine line = ChipLine.read(
                "0.2 soot black, 0,1 g Straw Yellow in 19.7 g plain white: 61.2 \u22120.4 3.1",
                desk.job().now().shelf());
        assertEquals(0.2, line.grams().get("soot-black"));
        assertEquals(0.1, line.grams().get("straw-yellow"));
        assertEquals(19.7, line.grams().get("plain-white"));
        assertEquals(-0.4, line.a());
    }

    @Test
    void theWhiteAloneIsAChipToo() {
        for (String line : new String[] {
            "white: 93.5 -0.8 2.1",
            "in 20: 93.5 -0.8 2.1",
            "20 g white: 93.5 -0.8 2.1",
            "plain white: 93,5 -0,8 2,1",
            "20 in plain white: 93.5 -0.8 2.1",
            ": 93.5 -0.8 2.1"
        }) {
            ChipLine read = ChipLine.read(line, desk.job().now().shelf());
            assertEquals(java.util.Set.of("plain-white"), read.grams().keySet(), line);
            assertEquals(93.5, read.lightness(), line);
        }
        assertTrue(
                shelf.addChip("white: 95.1 -0.6 1.9"), shelf.problemProperty().get());
        assertFalse(shelf.addChip("white: 95.1 -0.6 1.9"));
        assertTrue(
                shelf.problemProperty().get().contains("already"),
                shelf.problemProperty().get());
    }

    @Test
    void aShelfWithoutAnyChipAsksForItsWhiteFirst() {
        assertTrue(shelf.startOwn("Shed white"));
        assertTrue(shelf.addTint("Black", PigmentFamily.CARBON_BLACK, "", UnitSystem.METRIC));
        desk.job().change(before -> before.withPlaces("", java.util.List.of(), -1));
        assertTrue(
                shelf.nextProperty().get().words().contains("Shed white"),
                shelf.nextProperty().get().words());
        assertTrue(
                shelf.addChip(shelf.nextProperty().get().line() + "94 -0.5 1.5"),
                shelf.problemProperty().get());
        assertTrue(
                shelf.nextProperty().get().words().contains("Black"),
                shelf.nextProperty().get().words());
        assertFalse(shelf.addTint("black", PigmentFamily.CARBON_BLACK, "", UnitSystem.METRIC));
        assertTrue(
                shelf.stockProblemProperty().get().contains("already"),
                shelf.stockProblemProperty().get());
    }

    @Test
    void aLineThatCannotBeReadSaysHowToWriteIt() {
        for (String line : new String[] {
            "",
            "black",
            "0.2 moon dust in 19.8: 61 0 0",
            "0.2 soot black in 19.8: 61 0",
            "0.2 soot black in 19.8 sand: 61 0 0"
        }) {
            assertFalse(shelf.addChip(line), line);
            String said = shelf.problemProperty().get();
            assertTrue(said.contains("write it like") || said.contains("called"), line + ": " + said);
        }
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
