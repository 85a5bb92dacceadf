package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.HandClock;
import tintwright.bench.job.FillDraft;
import tintwright.bench.job.Job;
import tintwright.bench.log.ShopLog;
import tintwright.colour.Ciede2000;
import tintwright.cup.CupDeeds;
import tintwright.demo.DemoGenerator;
import tintwright.demo.DemoPhoto;
import tintwright.files.Demo;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.reading.HullFamily;
import tintwright.study.HiddenEye;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/**
 * The whole job of somebody with eyes, a phone and a pocket scale, at the window without a display: the sheet laid, a
 * photo file in, the hull read, doses, what the eye sees, too dark, back, done, logged, made again. Hull, pigments and
 * eye are the invented world's.
 */
class PhotoAndEyeAtTheWindowTest {
    /** As near as looks alone bring this cup, in truth; see the study EyeStudy. */
    private static final double DONE = 2.5;

    private final DemoPhoto world = DemoGenerator.hiddenPhoto();
    private final HiddenEye eye = new HiddenEye(1, 0);
    private final Clock clock = new HandClock("2026-05-02T08:00:00Z", Duration.ofMinutes(5));

    @TempDir
    private Path folder;

    private Desk desk;
    private Scene scene;

    /** Nothing was read, no chip stands on the shelf. */
    private void open() {
        Job blank = new Job(
                "Tarrowmere",
                List.of(),
                -1,
                Demo.shelf().withChips(List.of()),
                100,
                0.01,
                Set.of(),
                FillDraft.NONE,
                Optional.empty(),
                List.of());
        desk = new Desk(
                blank,
                Runnable::run,
                Runnable::run,
                clock,
                () -> ShopLog.open(folder.resolve("log"), folder.resolve("home"), clock),
                Desks::learn);
        scene = new Scene(desk.view(), 1280, 800);
        Look.dress(scene);
        desk.shell().stepProperty().set(Step.HULL);
    }

    private Node find(String id) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        Node node = scene.getRoot().lookup("#" + id);
        assertTrue(node != null, "there is no " + id);
        return node;
    }

    private void press(String id) {
        ButtonBase key = (ButtonBase) find(id);
        assertFalse(key.isDisabled(), id);
        key.fire();
    }

    private void pressWords(String words) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        for (Node node : scene.getRoot().lookupAll(".button")) {
            if (node instanceof ButtonBase key && words.equals(key.getText())) {
                key.fire();
                return;
            }
        }
        throw new AssertionError("no button says \"" + words + "\"");
    }

    private void type(String id, String text) {
        ((TextField) find(id)).setText(text);
    }

    private void lay(String part, String grams, String white) {
        @SuppressWarnings("unchecked")
        ComboBox<String> what = (ComboBox<String>) find("on-sheet-what");
        what.setValue(part);
        if (!grams.isEmpty()) {
            type("on-sheet-grams", grams);
            type("on-sheet-white", white);
        }
        press("lay-chip");
        assertEquals("", problem(tintwright.window.hull.HullModel.Where.PHOTO));
    }

    private String problem(tintwright.window.hull.HullModel.Where where) {
        return desk.hull().problemProperty(where).get();
    }

    private CupDeeds.Todo next() {
        return desk.cup().inHandProperty().get().orElseThrow().deeds().now();
    }

    private Map<String, Double> grams() {
        return desk.job().now().cup().orElseThrow().state().grams();
    }

    /** The cured dab is held against the hull, and what is seen is pressed. */
    private void look() {
        EyeVerdict seen = eye.look(world.dab(grams()), world.truth());
        press("eye-now");
        press(key(seen.depth().orElseThrow()));
        press(key(seen.hue().orElseThrow()));
        if (seen.hue().get() != Hue.NONE) {
            press(key(seen.amount()));
        }
        press("eye-seen");
        assertEquals("", desk.cup().problemProperty().get());
    }

    private static String key(Enum<?> answer) {
        return "eye-" + answer.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void laySheetAndRead() throws Exception {
        press("way-to-read-0");
        press("on-sheet");
        lay("plain-white", "", "");
        lay("soot-black", "0.05", "50");
        lay("soot-black", "0.25", "50");
        lay("soot-black", "1", "50");
        lay("brick-red", "0.5", "50");
        lay("straw-yellow", "0.5", "50");
        lay("bottle-green", "0.2", "50");
        desk.sheet().lay(withTape());
        Path photo = folder.resolve("bow.jpg");
        Demo.copyPhoto(photo);
        type("new-place", "port bow");
        desk.sheet().read(photo, "port bow");
    }

    private tintwright.reading.photo.sheet.SheetContents withTape() {
        var lying = desk.sheet().contentsProperty().get();
        return new tintwright.reading.photo.sheet.SheetContents(lying.chips(), 10, lying.dab());
    }

    @Test
    void fromThePhotoFileToTheCupThatIsMadeAgain() {
        Stagehand.onScreen(() -> {
            open();
            laySheetAndRead();
            assertEquals(7, desk.job().now().shelf().chips().size(), "the same photo taught the tints");
            assertEquals(1, desk.job().now().places().size());
            var hull = desk.hull().hullProperty().get();
            double error = Ciede2000.between(world.truth(), hull.mean().orElseThrow());
            assertTrue(hull.sure().startsWith("From 1 reading, likely within"), hull.sure());
            assertTrue(error < 5, error + " off, " + hull.sure());
            assertTrue(find("read-photo").isVisible(), "the photo is shown with what was read in it");

            press("now-button");
            assertEquals(Step.CUP, desk.shell().stepProperty().get());
            while (next().kind() != CupDeeds.Kind.READ_CHIP) {
                press("now-button");
            }
            look();
            assertTrue(desk.cup().alsoWeighed("soot-black", "1.20"), "a slip: more black than was said");
            assertTrue(
                    world.dab(grams()).lightness() < world.truth().lightness() - 3, "too dark: " + world.dab(grams()));
            look();
            boolean back = false;
            for (int i = 0; i < 60 && next().kind() != CupDeeds.Kind.STOP; i++) {
                if (next().deed().isPresent()) {
                    press("now-button");
                } else if (!desk.cup()
                        .inHandProperty()
                        .get()
                        .orElseThrow()
                        .ways()
                        .isEmpty()) {
                    back = true;
                    press("way-0");
                } else {
                    look();
                }
            }
            assertEquals(CupDeeds.Kind.STOP, next().kind(), next().sentence());
            assertTrue(back, "a way back was taken");
            double done = Ciede2000.between(world.dab(grams()), world.truth());
            assertTrue(done < DONE, "done at " + done);

            desk.shell().stepProperty().set(Step.LOG);
            pressWords("Done with this cup");
            assertEquals("", desk.log().problemProperty().get());
            var cup = desk.log().shownProperty().get().entries().stream()
                    .filter(entry -> entry.cup())
                    .findFirst()
                    .orElseThrow();
            desk.log().again(cup.id(), "60");
            assertTrue(
                    desk.log().againProperty().get().lines().toString().contains("plain white"),
                    desk.log().againProperty().get().toString());
            desk.log().close();
            return null;
        });
    }

    @Test
    void theEyeIsADoorOfTheSameRank() {
        Stagehand.onScreen(() -> {
            open();
            press("way-to-read-2");
            type("new-place", "transom");
            press("hull-like-pale-blue");
            assertEquals("transom", desk.job().place().orElseThrow().place());
            assertEquals(
                    Optional.of(HullFamily.PALE_BLUE),
                    HullFamily.of(desk.job().place().orElseThrow().readings().get(0)));
            press("hull-like-pale-green");
            assertEquals(1, desk.job().place().orElseThrow().readings().size(), "another pick takes its place");
            assertEquals("Begin the cup", desk.shell().nowButtonProperty().get());

            laySheetAndRead();
            desk.shell().undo();
            desk.hull()
                    .type(
                            "75",
                            "-8",
                            "3",
                            tintwright.colour.Viewing.D65_10,
                            tintwright.colour.Geometry.SPECULAR_EXCLUDED);
            assertEquals(
                    Optional.empty(),
                    HullFamily.of(desk.job().place().orElseThrow().readings().get(0)),
                    "a reading takes the pick's place");
            press("way-to-read-2");
            type("new-place", "");
            press("hull-like-grey");
            assertTrue(
                    problem(tintwright.window.hull.HullModel.Where.EYE).contains("says more than a pick"),
                    "a pick does not take a reading's");
            desk.log().close();
            return null;
        });
    }
}
