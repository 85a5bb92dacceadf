package tintwright.window.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.cup.CupDeeds;
import tintwright.window.Desk;
import tintwright.window.Desks;
import tintwright.window.Stagehand;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/** The cup in hand: what it says next, and what its page takes for granted. */
class CupModelTest {
    private static CupModel.InHand inHand(Desk desk) {
        return desk.cup().inHandProperty().get().orElseThrow();
    }

    @Test
    void tooMuchByTheScaleAsksForAChipBeforeAnyWayBack() {
        Desk desk = Desks.demo(Clock.systemUTC());
        desk.cup().begin();
        desk.cup().accept();
        assertTrue(inHand(desk).ways().isEmpty());
        assertTrue(desk.cup().really("1.9"), desk.cup().problemProperty().get());
        assertTrue(inHand(desk).ways().isEmpty(), "perhaps it was only written wrongly");
        assertEquals(CupDeeds.Kind.READ_CHIP, inHand(desk).deeds().now().kind());
    }

    @Test
    void enterTakesTheDoseAsAdvisedAndTheMeterIsSetAsForTheHull() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(Clock.systemUTC());
            desk.cup().begin();
            Scene scene = new Scene(desk.view(), 1280, 800);
            Look.dress(scene);
            desk.shell().stepProperty().set(Step.CUP);
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            boolean included =
                    desk.job().place().orElseThrow().readings().get(0).geometry() == Geometry.SPECULAR_INCLUDED;
            String words = scene.getRoot().lookupAll(".soft").stream()
                    .filter(Label.class::isInstance)
                    .map(node -> ((Label) node).getText())
                    .filter(text -> text.startsWith("The meter set as"))
                    .findFirst()
                    .orElseThrow();
            assertTrue(words.contains(included ? "with gloss" : "without gloss"), words);
            double white = Double.parseDouble(
                    inHand(desk).deeds().now().amount().orElseThrow().shown().replace(" g", ""));
            TextField really = (TextField) scene.getRoot().lookup("#really");
            really.fireEvent(new javafx.event.ActionEvent());
            assertEquals(white, desk.job().now().cup().orElseThrow().state().mass(), 1e-9);
            return null;
        });
    }
}
