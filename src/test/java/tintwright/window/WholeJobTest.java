package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.HandClock;
import tintwright.bench.job.Job;
import tintwright.bench.job.KeptJob;
import tintwright.bench.log.ShopLog;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.cup.CupDeeds;
import tintwright.logbook.DemoLog;
import tintwright.window.frame.Step;
import tintwright.window.frame.WalkModel;
import tintwright.window.pieces.Look;

/** One whole job of the invented boat in a shop with a meter, through the real scene without a display. */
class WholeJobTest {
    private final Clock clock = new HandClock("2026-05-04T09:00:00Z", Duration.ofMinutes(1));

    private Desk open(Path folder, Job first, KeptJob kept) {
        Desk desk = new Desk(
                first,
                Runnable::run,
                Runnable::run,
                clock,
                () -> ShopLog.open(folder.resolve("log"), folder.resolve("home"), clock),
                Desks::learn);
        desk.job().keepWith(job -> {
            try {
                kept.keep(job);
            } catch (Exception e) {
                throw new AssertionError(e);
            }
        });
        return desk;
    }

    private static Scene scene(Desk desk) {
        Scene scene = new Scene(desk.view(), 1280, 800);
        Look.dress(scene);
        lay(scene);
        return scene;
    }

    private static void lay(Scene scene) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
    }

    private static void press(Scene scene, String id) {
        lay(scene);
        Button button = (Button) scene.getRoot().lookup("#" + id);
        assertTrue(button != null && button.isVisible() && !button.isDisabled(), "there is no button " + id);
        button.fire();
    }

    private static void pressWords(Scene scene, String words) {
        lay(scene);
        for (Node node : scene.getRoot().lookupAll(".button")) {
            if (node instanceof Button button && words.equals(button.getText())) {
                button.fire();
                return;
            }
        }
        throw new AssertionError("no button says \"" + words + "\"");
    }

    private static void type(Scene scene, String id, String text) {
        lay(scene);
        TextField field = (TextField) scene.getRoot().lookup("#" + id);
        assertTrue(field != null, "there is no field " + id);
        field.setText(text);
    }

    /** Reads a chip as a true instrument would, if the shelf were exactly as its chips say. */
    private static void readChip(Scene scene, Desk desk) {
        Lab truth = desk.job()
                .knowledgeProperty()
                .get()
                .colour(
                        desk.job().now().cup().orElseThrow().state().parts().orElseThrow(),
                        tintwright.colour.Viewing.D65_10,
                        hullGeometry(desk));
        type(scene, "chip-lightness", String.format(Locale.ROOT, "%.2f", truth.lightness()));
        type(scene, "chip-a", String.format(Locale.ROOT, "%.2f", truth.a()));
        type(scene, "chip-b", String.format(Locale.ROOT, "%.2f", truth.b()));
        pressWords(scene, "Take the reading");
        assertEquals("", desk.cup().problemProperty().get());
    }

    private static tintwright.colour.Geometry hullGeometry(Desk desk) {
        return desk.job().place().orElseThrow().readings().get(0).geometry();
    }

    private static CupDeeds.Todo next(Desk desk) {
        return desk.cup().inHandProperty().get().orElseThrow().deeds().now();
    }

    /** Does what the strip says until it says stop. */
    private static void follow(Scene scene, Desk desk) {
        for (int i = 0; i < 40 && next(desk).kind() != CupDeeds.Kind.STOP; i++) {
            if (next(desk).deed().isPresent()) {
                press(scene, "now-button");
            } else if (!desk.cup().inHandProperty().get().orElseThrow().ways().isEmpty()) {
                press(scene, "way-0");
            } else {
                readChip(scene, desk);
            }
        }
        assertEquals(
                CupDeeds.Kind.STOP,
                next(desk).kind(),
                "never done: " + next(desk).sentence());
    }

    @Test
    void matchDoseGoTooDarkClimbFillLogAndReopen(@TempDir Path folder) {
        Stagehand.onScreen(() -> {
            DemoLog.copyTo(folder.resolve("log"));
            KeptJob kept = new KeptJob(folder.resolve("bench"));
            Desk desk = open(folder, Desks.metered(), kept);
            Scene scene = scene(desk);

            press(scene, "now-button");
            assertEquals(Step.CUP, desk.shell().stepProperty().get());
            press(scene, "now-button");
            double white = desk.job().now().cup().orElseThrow().state().white();
            assertTrue(white > 50, "the white is in: " + white);

            double advised =
                    Double.parseDouble(next(desk).amount().orElseThrow().shown().replace(" g", ""));
            type(scene, "really", String.format(Locale.ROOT, "%.2f", 6 * advised));
            press(scene, "it-is-in");
            while (next(desk).deed().isPresent()) {
                press(scene, "now-button");
            }
            readChip(scene, desk);
            Lab hull = desk.plan().planProperty().get().target().orElseThrow().colour();
            Lab dark = cupColour(desk);
            assertTrue(dark.lightness() < hull.lightness() - 2, "it went too dark: " + dark + " for " + hull);
            assertFalse(desk.cup().inHandProperty().get().orElseThrow().ways().isEmpty(), "a way back is offered");
            assertEquals("port bow 1", desk.job().now().cup().orElseThrow().name(), "short enough for a marker");

            follow(scene, desk);
            Lab done = cupColour(desk);
            assertTrue(Ciede2000.between(done, hull) < 1, "close in the end: " + Ciede2000.between(done, hull));
            double mass = desk.job().now().cup().orElseThrow().state().mass();

            press(scene, "now-button");
            assertEquals(Step.FILL, desk.shell().stepProperty().get());
            type(scene, "repair-name", "cleat holes");
            type(scene, "size-hole", "5");
            type(scene, "size-top", "9");
            type(scene, "size-countersink", "2");
            type(scene, "size-depth", "6");
            pressWords(scene, "Put it on the list");
            assertTrue(
                    desk.fill().planProperty().get().isPresent(),
                    desk.fill().problemProperty().get());

            desk.shell().stepProperty().set(Step.LOG);
            String name = desk.job().now().cup().orElseThrow().name();
            assertEquals(1, cupsNamed(desk, name), "one page for the whole story of the cup");
            pressWords(scene, "Done with this cup");
            assertEquals("", desk.log().problemProperty().get());
            assertTrue(desk.job().now().cup().isEmpty(), "done is put away");
            desk.shell().undo();
            assertEquals(name, desk.job().now().cup().orElseThrow().name(), "and undo brings it back");
            pressWords(scene, "These holes are filled");
            assertTrue(
                    desk.log().shownProperty().get().entries().stream()
                            .anyMatch(entry -> entry.words().contains("1 x cleat holes")),
                    desk.log().problemProperty().get());
            desk.log().close();

            Desk again = open(folder, kept.fetch().orElseThrow(), kept);
            Scene reopened = scene(again);
            lay(reopened);
            assertEquals(mass, again.job().now().cup().orElseThrow().state().mass(), 1e-9);
            assertEquals(1, again.job().now().fill().lines().size());
            assertEquals(CupDeeds.Kind.STOP, next(again).kind(), next(again).sentence());
            assertEquals(1, cupsNamed(again, name));
            again.log().close();
            return null;
        });
    }

    private static long cupsNamed(Desk desk, String name) {
        return desk.log().shownProperty().get().entries().stream()
                .filter(entry -> entry.cup() && entry.title().contains(name))
                .count();
    }

    private static Lab cupColour(Desk desk) {
        return desk.job()
                .knowledgeProperty()
                .get()
                .colour(
                        desk.job().now().cup().orElseThrow().state().parts().orElseThrow(),
                        tintwright.colour.Viewing.D65_10,
                        hullGeometry(desk));
    }

    @Test
    void everyStepOfACupIsTakenBackAndDoneAgainWithoutLosingWhatWasWritten(@TempDir Path folder) {
        Stagehand.onScreen(() -> {
            DemoLog.copyTo(folder.resolve("log"));
            Desk desk = open(folder, Desks.metered(), new KeptJob(folder.resolve("bench")));
            Scene scene = scene(desk);
            press(scene, "now-button");
            press(scene, "now-button");
            press(scene, "now-button");
            var two = desk.job().now().cup().orElseThrow();
            desk.shell().undo();
            var one = desk.job().now().cup().orElseThrow();
            assertEquals(2, one.standing().size(), "white in, and white held back");
            assertTrue(one.state().reserve() > 0);
            assertEquals(two.entries().size() + 1, one.entries().size(), "undoing is one more entry");
            desk.shell().redo();
            assertEquals(
                    two.state().grams(),
                    desk.job().now().cup().orElseThrow().state().grams());
            String first = desk.cup()
                    .inHandProperty()
                    .get()
                    .orElseThrow()
                    .deeds()
                    .done()
                    .get(0)
                    .entry();
            assertTrue(desk.cup().correct(first, "90"));
            assertEquals(90, desk.job().now().cup().orElseThrow().state().white(), 1e-9);
            desk.log().close();
            return null;
        });
    }

    @Test
    void aBenchOfOnesOwnBeginsEmptyAndSaysWhatToDo(@TempDir Path folder) {
        Stagehand.onScreen(() -> {
            KeptJob kept = new KeptJob(folder.resolve("bench"));
            Desk desk = open(folder, Desk.own(), kept);
            Scene scene = scene(desk);
            assertEquals("To the boat", desk.shell().nowButtonProperty().get());
            press(scene, "now-button");
            type(scene, "boat-name", "Quillmarrow");
            pressWords(scene, "Take her on");
            assertEquals("Quillmarrow", desk.job().now().boat());
            lay(scene);
            type(scene, "new-place", "transom");
            ((javafx.scene.control.ToggleButton) scene.getRoot().lookup("#way-to-read-1")).fire();
            lay(scene);
            type(scene, "lightness", "80");
            type(scene, "red-green", "-1");
            type(scene, "yellow-blue", "6");
            pressWords(scene, "Add the reading");
            assertEquals("Go on with one", desk.shell().nowButtonProperty().get());
            press(scene, "now-button");
            assertEquals("To the shelf", desk.shell().nowButtonProperty().get());
            press(scene, "now-button");
            type(scene, "tint-name", "my black");
            ((javafx.scene.control.ToggleButton) scene.getRoot().lookup("#family-carbon-black")).fire();
            pressWords(scene, "Put it on the shelf");
            assertEquals(1, desk.job().now().shelf().tints().size());
            assertEquals("Begin all the same", desk.shell().nowButtonProperty().get(), "black alone does not reach it");
            assertEquals(desk.job().now(), kept.fetch().orElseThrow());
            desk.log().close();
            return null;
        });
    }

    @Test
    void theFirstWalkStopsWhereItSaysAndCanBeSkipped() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(Clock.systemUTC());
            Scene scene = scene(desk);
            desk.walk().begin();
            for (int i = 0; i < WalkModel.STOPS.size(); i++) {
                assertEquals(
                        WalkModel.STOPS.get(i).where(),
                        desk.shell().stepProperty().get());
                press(scene, "walk-next");
            }
            assertFalse(desk.walk().walkingProperty().get());
            desk.walk().begin();
            press(scene, "walk-skip");
            assertFalse(desk.walk().walkingProperty().get());
            assertEquals(Step.CUP, desk.shell().stepProperty().get());
            return null;
        });
    }
}
