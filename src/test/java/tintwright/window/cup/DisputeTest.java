package tintwright.window.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import org.junit.jupiter.api.Test;
import tintwright.colour.Ciede2000;
import tintwright.colour.Geometry;
import tintwright.colour.JudgedLight;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.cup.CupState;
import tintwright.reading.FilmState;
import tintwright.shelf.Parts;
import tintwright.window.Desk;
import tintwright.window.Desks;
import tintwright.window.Stagehand;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/** A chip that the weights cannot explain is never passed over in silence. */
class DisputeTest {
    private final Desk desk = Desks.demo(Clock.systemUTC());

    private CupModel.InHand now() {
        return desk.cup().inHandProperty().get().orElseThrow();
    }

    private CupState state() {
        return desk.job().now().cup().orElseThrow().state();
    }

    private void dosed() {
        desk.cup().begin();
        while (now().deeds().now().deed().isPresent()) {
            desk.cup().accept();
        }
    }

    /** What the cup would read with so much more black in it than is written. */
    private Lab withBlack(double more) {
        Map<String, Double> really = new LinkedHashMap<>(state().grams());
        really.merge("soot-black", more, Double::sum);
        return desk.job().knowledgeProperty().get().colour(Parts.of(really), Viewing.D65_10, geometry());
    }

    private Geometry geometry() {
        return desk.job().now().cup().orElseThrow().hull().readings().get(0).geometry();
    }

    private void read(Lab chip) {
        assertTrue(
                desk.cup()
                        .read(
                                String.format(Locale.ROOT, "%.2f", chip.lightness()),
                                String.format(Locale.ROOT, "%.2f", chip.a()),
                                String.format(Locale.ROOT, "%.2f", chip.b()),
                                Viewing.D65_10,
                                FilmState.CURED),
                desk.cup().chipProblemProperty().get());
    }

    @Test
    void itIsAskedWhatIsWrongAndOnePressSettlesIt() {
        dosed();
        double written = state().grams().get("soot-black");
        Lab chip = withBlack(0.8);
        read(chip);
        Dispute dispute = now().dispute().orElseThrow();
        assertTrue(dispute.words().contains("disagree"), dispute.words());
        assertTrue(now().close().contains(" or "), "both figures: " + now().close());
        assertEquals("not sure", now().sure());
        assertTrue(now().deeds().now().deed().isEmpty(), "nothing goes in before it is settled");
        assertTrue(now().swatch().lights().get(JudgedLight.DAYLIGHT).chip().isPresent(), "the chip is shown");
        Dispute.Mend mend = dispute.mends().stream()
                .filter(each -> each.words().contains("soot black"))
                .findFirst()
                .orElseThrow();
        desk.cup().settle(dispute, mend);
        assertTrue(now().dispute().isEmpty());
        assertEquals(written + 0.8, state().grams().get("soot-black"), 0.05 * (written + 0.8));
        Lab cup =
                desk.job().knowledgeProperty().get().colour(state().parts().orElseThrow(), Viewing.D65_10, geometry());
        assertTrue(Ciede2000.between(cup, chip) < 0.6, "the cup stands where the chip says");
        assertTrue(state().lastSample().isPresent(), "and the chip counts");
        desk.shell().undo();
        assertTrue(now().dispute().isPresent(), "undo brings the question back");
    }

    @Test
    void aWrongChipIsCrossedOutAndTheWorkGoesOn() {
        dosed();
        String before = now().close();
        read(withBlack(0.8));
        desk.cup().crossOut(now().dispute().orElseThrow().chip());
        assertTrue(now().dispute().isEmpty());
        assertEquals(before, now().close());
    }

    @Test
    void goingOnAllTheSameKeepsTheDoubtInSight() {
        dosed();
        read(withBlack(0.8));
        desk.cup().goOn(now().dispute().orElseThrow().chip());
        assertFalse(
                now().deeds().now().sentence().contains("settle"),
                now().deeds().now().sentence());
        assertEquals("not sure", now().sure());
    }

    @Test
    void theCardStandsAtTheTopAndTheStripPointsToIt() {
        Stagehand.onScreen(() -> {
            desk.shell().stepProperty().set(Step.CUP);
            Scene scene = new Scene(desk.view(), 1280, 800);
            Look.dress(scene);
            dosed();
            read(withBlack(0.8));
            Stagehand.snapshot(scene, "cup-dispute-1280");
            Button first = (Button) scene.getRoot().lookup("#mend-0");
            assertTrue(first.isVisible() && first.getText().startsWith("Yes: "), first.getText());
            Button strip = (Button) scene.getRoot().lookup("#now-button");
            assertEquals("Show me", strip.getText());
            strip.fire();
            assertEquals(first, scene.getFocusOwner());
            return null;
        });
    }

    @Test
    void aSlipInTypingAChipIsSaidBesideTheChip() {
        dosed();
        assertFalse(desk.cup().read("pale", "0", "0", Viewing.D65_10, FilmState.CURED));
        assertTrue(
                desk.cup().chipProblemProperty().get().contains("L*"),
                desk.cup().chipProblemProperty().get());
        assertEquals("", desk.cup().problemProperty().get());
    }
}
