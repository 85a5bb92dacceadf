package tintwright.window.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.cup.Deed;
import tintwright.window.Desk;
import tintwright.window.Desks;
import tintwright.window.Stagehand;
import tintwright.window.frame.Step;
import tintwright.window.hull.DrawnPhoto;

/** A chip of the cup read from one photo with the hull beside it, through the real scene. */
class ChipPhotoTest {
    private static void press(Scene scene, String words) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        for (Node node : scene.getRoot().lookupAll(".button")) {
            if (node instanceof Button button && words.equals(button.getText())) {
                button.fire();
                return;
            }
        }
        throw new AssertionError("no button says \"" + words + "\"");
    }

    @Test
    void theChipIsTakenWithTheHullBesideItAndTheCupIsShownAgain(@TempDir Path folder) {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(Clock.systemUTC());
            desk.shell().stepProperty().set(Step.CUP);
            Scene scene = new Scene(desk.view(), 1280, 800);
            desk.cup().begin();
            while (desk.cup()
                    .inHandProperty()
                    .get()
                    .orElseThrow()
                    .deeds()
                    .now()
                    .deed()
                    .isPresent()) {
                desk.cup().accept();
            }
            Lab hull = desk.plan().planProperty().get().target().orElseThrow().colour();
            Lab cup = desk.job()
                    .knowledgeProperty()
                    .get()
                    .colour(
                            desk.job().now().cup().orElseThrow().state().parts().orElseThrow(),
                            Viewing.D65_10,
                            Geometry.SPECULAR_EXCLUDED);
            press(scene, "From a photo");
            assertNotNull(scene.getRoot().lookup(".photo-pane"), "the photo is shown");
            desk.chipPhoto()
                    .open(DrawnPhoto.of(folder.resolve("chip.png"), DrawnPhoto.linear(hull), DrawnPhoto.linear(cup)));
            desk.chipPhoto().findCard();
            desk.chipPhoto().addSpot(DrawnPhoto.CHIP);
            desk.chipPhoto().addSpot(DrawnPhoto.HULL);
            press(scene, "Take this chip");
            assertEquals("", desk.chipPhoto().problemProperty().get());
            Deed last = desk.job().now().cup().orElseThrow().standing().stream()
                    .map(entry -> entry.deed())
                    .reduce((first, second) -> second)
                    .orElseThrow();
            Deed.Read read = (Deed.Read) last;
            assertTrue(read.counts(), desk.cup().problemProperty().get());
            assertTrue(read.hull().isPresent(), "the hull was read with it");
            scene.getRoot().layout();
            assertNotNull(scene.getRoot().lookup("#dose"), "the cup is shown again");
            return null;
        });
    }
}
