package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import tintwright.bench.log.ShopLog;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;
import tintwright.window.frame.Shell;
import tintwright.window.frame.ShellModel;
import tintwright.window.frame.StationPage;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Controls;
import tintwright.window.pieces.Look;

/** The real scene without a display. */
class ShellTest {
    private static Scene open(Desk desk) {
        Scene scene = new Scene(desk.view(), 1280, 800);
        Look.dress(scene);
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        return scene;
    }

    private static Desk desk() {
        return Desks.demo(Clock.systemUTC());
    }

    private static void press(Scene scene, KeyCode code) {
        scene.getRoot().fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, true, false, false));
    }

    @Test
    void whatToDoNextIsSaidWithOneLargeKey() {
        Stagehand.onScreen(() -> {
            Scene scene = open(desk());
            Button button = (Button) scene.getRoot().lookup("#now-button");
            assertTrue(button.isVisible() && !button.getText().isBlank());
            assertTrue(button.getHeight() >= 40, "large enough for a glove: " + button.getHeight());
            return null;
        });
    }

    @Test
    void howNearTheColourIsStandsAtTheFootAsSoonAsItIsKnown() {
        Stagehand.onScreen(() -> {
            Desk desk = desk();
            Scene scene = open(desk);
            desk.shell().answer("\u2013", "nothing to compare yet", "\u2013", "");
            Label foot = (Label) scene.getRoot().lookup(".now-answer");
            assertFalse(foot.isVisible());
            desk.shell().answer("0.9 off", "a touch lighter", "likely within 1.4: seen edge to edge", "Nine in ten.");
            assertTrue(foot.isVisible() && foot.getText().startsWith("A touch lighter (0.9 off)"), foot.getText());
            desk.shell().answer("1.4 off", "Too light.", "likely within 2.8: seen side by side", "Nine in ten.");
            assertTrue(foot.getText().startsWith("Too light (1.4 off)"), foot.getText());
            return null;
        });
    }

    /** With nothing to mix for, the one thing to press is the way to where it is read. */
    @Test
    void beforeThereIsAHullNoCupCanBeBegun() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.blank(Clock.systemUTC());
            Scene scene = open(desk);
            desk.shell().stepProperty().set(Step.CUP);
            for (int i = 0; i < 2; i++) {
                scene.getRoot().applyCss();
                scene.getRoot().layout();
            }
            List<String> keys = scene.getRoot().lookupAll(".button").stream()
                    .filter(ShellTest::seen)
                    .map(node -> ((Button) node).getText())
                    .toList();
            assertTrue(keys.contains("To the boat") && !keys.contains("Begin the cup"), keys.toString());
            assertTrue(
                    scene.getRoot().lookupAll(".picture").stream().noneMatch(ShellTest::seen),
                    "a picture of nothing is drawn");
            return null;
        });
    }

    private static boolean seen(Node node) {
        return node.isVisible() && (node.getParent() == null || seen(node.getParent()));
    }

    /** Read with gloss before, a spot must not be read without it unasked. */
    @Test
    void aMeterIsSetAsThePlaceWasRead() {
        Stagehand.onScreen(() -> {
            Desk before = desk();
            before.hull().newPlace("transom", "80", "-2.0", "6.5", Viewing.D50_2, Geometry.SPECULAR_INCLUDED);
            Desk after = new Desk(
                    before.job().now(),
                    Runnable::run,
                    Runnable::run,
                    Clock.systemUTC(),
                    () -> ShopLog.demo(Clock.systemUTC()),
                    Desks::learn);
            after.shell().stepProperty().set(Step.HULL);
            Scene scene = open(after);
            assertEquals(Geometry.SPECULAR_INCLUDED, ((ComboBox<?>) scene.lookup("#meter-gloss")).getValue());
            assertEquals(Viewing.D50_2, ((ComboBox<?>) scene.lookup("#meter-light")).getValue());
            return null;
        });
    }

    @Test
    void everyStationOpensByItsNumberKey() {
        Stagehand.onScreen(() -> {
            Desk desk = desk();
            Scene scene = open(desk);
            for (Step step : desk.stations()) {
                press(scene, KeyCode.valueOf("DIGIT" + (step.ordinal() + 1)));
                assertEquals(step, desk.shell().stepProperty().get());
            }
            return null;
        });
    }

    @Test
    void textGrowsToTwiceItsSizeByKeysAndEverythingWithIt() {
        Stagehand.onScreen(() -> {
            Desk desk = desk();
            Scene scene = open(desk);
            double before =
                    ((Label) scene.getRoot().lookup(".recipe-grams")).getFont().getSize();
            for (int i = 0; i < 30; i++) {
                press(scene, KeyCode.PLUS);
            }
            scene.getRoot().applyCss();
            double after =
                    ((Label) scene.getRoot().lookup(".recipe-grams")).getFont().getSize();
            assertEquals(2 * before, after, 0.6);
            press(scene, KeyCode.DIGIT0);
            assertEquals(1, desk.shell().textShareProperty().get());
            return null;
        });
    }

    /** Space on Undo would take back the very step that was just done. */
    @Test
    void whenWhatHadTheFocusGoesTheFocusDoesNotFallOnUndo() throws InterruptedException {
        Desk desk = Stagehand.onScreen(ShellTest::desk);
        Stage stage = Stagehand.onScreen(() -> {
            Stage shown = new Stage();
            shown.setScene(open(desk));
            shown.show();
            ((Button) shown.getScene().getRoot().lookup("#now-button")).fire();
            shown.getScene().getRoot().applyCss();
            shown.getScene().getRoot().lookup("#really").requestFocus();
            return shown;
        });
        try {
            Stagehand.onScreen(() -> {
                assertTrue(desk.shell().canUndoProperty().get());
                assertEquals("really", stage.getScene().getFocusOwner().getId());
                desk.shell().stepProperty().set(Step.BOAT);
                return null;
            });
            for (int i = 0; i < 100 && !focusMoved(stage); i++) {
                Thread.sleep(20);
            }
            assertTrue(focusMoved(stage), "the focus stayed on a field that is gone");
            Stagehand.onScreen(() -> {
                Node owner = stage.getScene().getFocusOwner();
                assertTrue(owner.getStyleClass().contains("station-key"), "in focus: " + owner);
                return null;
            });
        } finally {
            Stagehand.onScreen(() -> {
                stage.close();
                return null;
            });
        }
    }

    private static boolean focusMoved(Stage stage) {
        return Stagehand.onScreen(() -> {
            Node owner = stage.getScene().getFocusOwner();
            return owner != null && !"really".equals(owner.getId());
        });
    }

    /** What a field cannot take back itself, the job takes back. */
    @Test
    void undoByKeyReachesTheJobFromAnEmptyField() {
        Stagehand.onScreen(() -> {
            Desk desk = desk();
            Scene scene = open(desk);
            ((Button) scene.getRoot().lookup("#now-button")).fire();
            scene.getRoot().applyCss();
            assertTrue(desk.job().now().cup().isPresent());
            scene.getRoot()
                    .lookup("#really")
                    .fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.Z, false, true, false, false));
            assertTrue(desk.job().now().cup().isEmpty());
            return null;
        });
    }

    @Test
    void switchingATintOffChangesTheFiguresInTheScene() {
        Stagehand.onScreen(() -> {
            Desk desk = desk();
            Scene scene = open(desk);
            String tint = desk.plan().planProperty().get().lines().stream()
                    .filter(line -> line.isTint() && !line.grams().isEmpty())
                    .findFirst()
                    .orElseThrow()
                    .id();
            CheckBox box = (CheckBox) scene.getRoot().lookup("#use-" + tint);
            assertTrue(box.isSelected());
            box.fire();
            assertFalse(desk.job().now().off().isEmpty());
            assertEquals(box, scene.getRoot().lookup("#use-" + tint), "the switch stays where the finger is");
            press(scene, KeyCode.Z);
            assertTrue(box.isSelected());
            return null;
        });
    }

    /** Contrast as the accessibility guidelines of the web reckon it (WCAG 2.1, 1.4.3), from the theme itself. */
    @Test
    void textStandsOutFromItsGroundInBothThemes() throws Exception {
        String css = new String(
                Shell.class.getResourceAsStream("/tintwright/window/bench.css").readAllBytes(), StandardCharsets.UTF_8);
        Map<String, double[]> light = colours(css.substring(css.indexOf(".root {"), css.indexOf(".root.dark {")));
        Map<String, double[]> dark = new HashMap<>(light);
        dark.putAll(colours(css.substring(css.indexOf(".root.dark {"), css.indexOf("/* pictures"))));
        String[][] pairs = {
            {"-ink", "-paper"},
            {"-ink", "-sheet"},
            {"-soft-ink", "-paper"},
            {"-soft-ink", "-sheet"},
            {"-ink", "-press"},
            {"-on-deep", "-deep"},
            {"-on-deep", "-deep-hover"},
            {"-on-signal", "-signal"},
            {"-on-signal", "-signal-hover"},
            {"-signal-text", "-sheet"},
            {"-signal-text", "-signal-sheet"},
            {"-link", "-sheet"},
            {"-link", "-paper"},
            {"-link", "-press"},
            {"-good", "-good-sheet"},
            {"-caution", "-caution-sheet"},
            {"-caution", "-sheet"},
            {"-ink", "-caution-sheet"},
            {"-good", "-sheet"},
            {"-on-field", "-field"}
        };
        for (Map<String, double[]> theme : java.util.List.of(light, dark)) {
            for (String[] pair : pairs) {
                double contrast = contrast(theme.get(pair[0]), theme.get(pair[1]));
                assertTrue(contrast >= 4.5, pair[0] + " on " + pair[1] + " is " + contrast);
            }
        }
    }

    /** Outlines of buttons and fields as the same guidelines ask (1.4.11): three to one against what lies beside them. */
    @Test
    void outlinesStandOutFromTheirGroundInBothThemes() throws Exception {
        String css = new String(
                Shell.class.getResourceAsStream("/tintwright/window/bench.css").readAllBytes(), StandardCharsets.UTF_8);
        Map<String, double[]> light = colours(css.substring(css.indexOf(".root {"), css.indexOf(".root.dark {")));
        Map<String, double[]> dark = new HashMap<>(light);
        dark.putAll(colours(css.substring(css.indexOf(".root.dark {"), css.indexOf("/* pictures"))));
        for (Map<String, double[]> theme : java.util.List.of(light, dark)) {
            for (String line : new String[] {"-edge", "-focus", "-link"}) {
                for (String ground : new String[] {"-paper", "-sheet", "-press", "-caution-sheet"}) {
                    double contrast = contrast(theme.get(line), theme.get(ground));
                    assertTrue(contrast >= 3, line + " on " + ground + " is " + contrast);
                }
            }
        }
    }

    /**
     * Every button that can be seen has an outline of its own, or is bold in the colour of what can be pressed; a tool
     * is a sign that says in words what it does.
     */
    @Test
    void everyButtonLooksLikeOne() {
        Stagehand.onScreen(() -> {
            for (boolean dark : new boolean[] {false, true}) {
                Desk desk = desk();
                desk.shell().darkProperty().set(dark);
                Scene scene = open(desk);
                for (Step step : Step.values()) {
                    desk.shell().stepProperty().set(step);
                    scene.getRoot().applyCss();
                    scene.getRoot().layout();
                    for (Node node : scene.getRoot().lookupAll(".button")) {
                        Button button = (Button) node;
                        boolean outlined = button.getBorder() != null
                                && button.getBorder().getStrokes().stream()
                                        .anyMatch(stroke -> stroke.getTopStroke() instanceof Color colour
                                                && colour.getOpacity() == 1);
                        boolean link = button.getStyleClass().contains("quiet-button")
                                && button.getFont().getStyle().contains("Bold");
                        boolean tool = button.getStyleClass().contains("tool")
                                && button.getGraphic() != null
                                && button.getTooltip() != null
                                && !button.getAccessibleText().isBlank();
                        assertTrue(outlined || link || tool, step + ": " + button.getText());
                    }
                }
            }
            return null;
        });
    }

    @Test
    void theNameOfTheJobAndTheToolsStandOnOneLine() {
        Stagehand.onScreen(() -> {
            Scene scene = open(desk());
            scene.snapshot(null);
            double first = Double.NaN;
            for (Node node : scene.getRoot().lookupAll(".head .text")) {
                double line = node.localToScene(0, 0).getY();
                first = Double.isNaN(first) ? line : first;
                assertEquals(first, line, 1.5, ((Text) node).getText());
            }
            return null;
        });
    }

    @Test
    void aNoticeGoesByItselfUnlessItMustNotBeMissed() {
        ShellModel model = new ShellModel();
        model.say("Copied as text.");
        assertFalse(model.noticeStaysProperty().get());
        model.warn("That could not be saved.");
        assertTrue(model.noticeStaysProperty().get());
        assertEquals(8000, Shell.timeToRead("Copied as text.").toMillis());
        assertEquals(20_000, Shell.timeToRead("x".repeat(200)).toMillis());
    }

    private static Map<String, double[]> colours(String css) {
        Map<String, double[]> found = new HashMap<>();
        Matcher matcher = Pattern.compile("(-[a-z-]+): #([0-9a-f]{6});").matcher(css);
        while (matcher.find()) {
            int code = Integer.parseInt(matcher.group(2), 16);
            found.put(matcher.group(1), new double[] {code >> 16 & 255, code >> 8 & 255, code & 255});
        }
        return found;
    }

    private static double contrast(double[] one, double[] other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(double[] code) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double c = code[i] / 255;
            sum += weights[i] * (c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    /** Units are switched often; what a page saw before must not go on being told, and kept, by the model for good. */
    @Test
    void aModelLetsGoOfAPageNobodySees() throws InterruptedException {
        SimpleStringProperty seen = new SimpleStringProperty("first");
        List<String> told = new ArrayList<>();
        Region page = new Region();
        Controls.follow(page, seen, (before, after) -> told.add(before + " to " + after));
        seen.set("second");
        assertEquals(List.of("first to second"), told);
        WeakReference<Region> old = new WeakReference<>(page);
        page = null;
        for (int i = 0; i < 100 && old.get() != null; i++) {
            System.gc();
            Thread.sleep(20);
        }
        assertNull(old.get(), "the page is kept");
        seen.set("third");
        assertEquals(1, told.size(), "a page that is gone was told");
    }

    @Test
    void onlyPagesThatShowUnitsAreBuiltAnewWhenTheseChange() {
        Stagehand.onScreen(() -> {
            Desk desk = desk();
            Scene scene = open(desk);
            for (Step step : Step.values()) {
                desk.shell().stepProperty().set(step);
                Node before = station(scene);
                press(scene, KeyCode.U);
                assertEquals(step.showsUnits(), before != station(scene), step.title());
            }
            return null;
        });
    }

    private static Node station(Scene scene) {
        return ((StationPage) ((ScrollPane) scene.getRoot().lookup(".middle")).getContent())
                .getChildren()
                .get(0);
    }

    @Test
    void whatTakesLongerIsSaidInWordsFromTheFirstStartOn() throws InterruptedException {
        List<Runnable> held = new CopyOnWriteArrayList<>();
        Desk desk = Stagehand.onScreen(() -> new Desk(
                Desk.demo(),
                held::add,
                Runnable::run,
                Clock.systemUTC(),
                () -> ShopLog.demo(Clock.systemUTC()),
                Desks::learn));
        Scene scene = Stagehand.onScreen(() -> open(desk));
        Label doing = (Label) scene.getRoot().lookup("#doing");
        for (int i = 0; i < 250 && !Stagehand.onScreen(() -> doing.getParent().isVisible()); i++) {
            Thread.sleep(20);
        }
        assertTrue(Stagehand.onScreen(() -> doing.getParent().isVisible()), "nothing is said");
        assertEquals("Learning the shelf\u2026", doing.getText());
        Stagehand.onScreen(() -> {
            while (!held.isEmpty()) {
                held.remove(0).run();
            }
            assertFalse(doing.getParent().isVisible(), "all is done");
            assertEquals("", doing.getText());
            return null;
        });
    }
}
