package tintwright.window.boat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import tintwright.bench.log.ShopLog;
import tintwright.window.Desk;
import tintwright.window.Desks;
import tintwright.window.Stagehand;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/** The boat's station in the real scene, without a display. */
class BoatPageTest {
    private final Clock clock = Clock.systemUTC();

    private Scene scene(Desk desk) {
        Scene scene = new Scene(Desks.view(desk, true, true), 1280, 800);
        Look.dress(scene);
        desk.shell().stepProperty().set(Step.BOAT);
        laidOut(scene);
        return scene;
    }

    private static void laidOut(Scene scene) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
    }

    private Desk own() {
        return new Desk(Desk.own(), Runnable::run, Runnable::run, clock, () -> ShopLog.demo(clock), Desks::learn);
    }

    private static TextField field(Scene scene, String id) {
        return (TextField) scene.getRoot().lookup("#" + id);
    }

    @Test
    void enterTakesTheBoatOnAndEmptiesTheForm() {
        Stagehand.onScreen(() -> {
            Desk desk = own();
            Scene scene = scene(desk);
            field(scene, "boat-name").setText("Dunnelquay");
            field(scene, "boat-type").setText("open boat");
            field(scene, "boat-year").setText("1999");
            field(scene, "boat-year").fireEvent(new ActionEvent());
            assertEquals("Dunnelquay", desk.job().now().boat());
            assertEquals(Step.HULL, desk.shell().stepProperty().get(), "where her first place is read");
            desk.shell().stepProperty().set(Step.BOAT);
            laidOut(scene);
            ((javafx.scene.control.ToggleButton) scene.getRoot().lookup("#boat-new")).fire();
            laidOut(scene);
            for (String id : new String[] {"boat-name", "boat-type", "boat-year"}) {
                assertEquals("", field(scene, id).getText(), id);
            }
            return null;
        });
    }

    @Test
    void whatIsWrongIsSaidBelowTheButtonAndGoesWhenItIsMended() {
        Stagehand.onScreen(() -> {
            Desk desk = own();
            Scene scene = scene(desk);
            Node button = scene.getRoot().lookupAll(".main-button").stream()
                    .filter(node -> ((Button) node).getText().equals("Take her on"))
                    .findFirst()
                    .orElseThrow();
            double before = button.localToScene(0, 0).getY();
            field(scene, "boat-name").setText("Dunnelquay");
            field(scene, "boat-year").setText("nineteen");
            ((Button) button).fire();
            laidOut(scene);
            Label wrong = (Label) scene.getRoot().lookup("#boat-wrong");
            assertTrue(wrong.isVisible() && wrong.getText().contains("nineteen"), wrong.getText());
            assertEquals(before, button.localToScene(0, 0).getY(), 0.5, "the button moved away from the hand");
            assertEquals("Dunnelquay", field(scene, "boat-name").getText(), "what was typed is still there");
            field(scene, "boat-year").setText("1999");
            assertFalse(wrong.isVisible(), wrong.getText());
            return null;
        });
    }

    /** What was wrong with a file is said at the files, with a typed reading where it is typed. */
    @Test
    void whatIsWrongWithAReadingMovesNoButton() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(clock);
            Scene scene = scene(desk);
            desk.shell().stepProperty().set(Step.HULL);
            laidOut(scene);
            Node button = scene.getRoot().lookupAll(".main-button").stream()
                    .filter(node -> ((Button) node).getText().equals("Add the reading"))
                    .findFirst()
                    .orElseThrow();
            double before = button.localToScene(0, 0).getY();
            ((Button) button).fire();
            laidOut(scene);
            assertTrue(scene.getRoot().lookup("#wrong-typed").isVisible());
            assertEquals(before, button.localToScene(0, 0).getY(), 0.5, "the button moved away from the hand");
            desk.hull()
                    .open(
                            java.nio.file.Path.of("no-such-file.csv"),
                            tintwright.colour.Viewing.D65_10,
                            tintwright.colour.Geometry.SPECULAR_INCLUDED);
            laidOut(scene);
            assertTrue(scene.getRoot().lookup("#wrong-file").isVisible(), "said at the files");
            return null;
        });
    }
}
