package tintwright.window.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.HBox;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import tintwright.window.Desk;
import tintwright.window.Desks;
import tintwright.window.Stagehand;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/**
 * Every word in the pictures and on every station stands out from what is behind it by at least 4.5 to 1, in the light and in the dark
 * theme: WCAG 2.2, success criterion 1.4.3, with its contrast ratio and relative luminance. All is painted without its
 * words, and each word is judged against every pixel behind it.
 */
class ContrastTest {
    private static final double LEAST = 4.5;
    private static final int STATES = 16;
    /** Pixels at the edge of words that belong to their neighbours' soft edges. */
    private static final int SOFT = 1;

    @Test
    void theRatioIsThatOfTheGuideline() {
        assertEquals(21, ratio(Color.BLACK, Color.WHITE), 1e-9, "black on white, as the guideline states");
        assertEquals(1, ratio(Color.web("#848484"), Color.web("#848484")), 0);
        assertEquals(0.2126, luminance(Color.RED), 1e-9, "the guideline's own share of red");
    }

    @Test
    void everyWordStandsOut() {
        List<String> faults = new ArrayList<>();
        int[] words = {0};
        Stagehand.onScreen(() -> {
            for (boolean dark : new boolean[] {false, true}) {
                Random random = new Random(615);
                for (int i = 0; i < STATES; i++) {
                    DepthGauge gauge = new DepthGauge();
                    gauge.show(RandomStates.depth(random));
                    HueRose rose = new HueRose();
                    rose.show(RandomStates.rose(random));
                    SplitSwatch swatch = new SplitSwatch();
                    swatch.show(i == 0 ? Samples.unshowable() : RandomStates.swatch(random));
                    swatch.openNote(i % 4 == 3);
                    HBox row = new HBox(gauge, rose, swatch);
                    row.getChildren().forEach(picture -> ((Picture) picture).setPrefSize(480, 340));
                    words[0] += look(
                            Stagehand.dressed(row, 1440, 340, 1, dark), "state " + i + (dark ? ", dark" : ""), faults);
                }
            }
            return null;
        });
        assertTrue(words[0] > 200, "only " + words[0] + " words were looked at");
        assertTrue(
                faults.isEmpty(),
                () -> faults.size() + " faults, the first: "
                        + String.join("\n", faults.subList(0, Math.min(8, faults.size()))));
    }

    /** What is disabled is left out, as the guideline leaves it out. */
    @Test
    void everyWordOfEveryStationStandsOut() {
        List<String> faults = new ArrayList<>();
        int[] words = {0};
        Stagehand.onScreen(() -> {
            for (boolean dark : new boolean[] {false, true}) {
                for (Desk desk : List.of(Desks.demo(Clock.systemUTC()), Desks.blank(Clock.systemUTC()))) {
                    Scene scene = new Scene(desk.view(), 1366, 768);
                    Look.dress(scene);
                    desk.shell().darkProperty().set(dark);
                    for (Step step : Step.values()) {
                        desk.shell().stepProperty().set(step);
                        String where = step + (dark ? ", dark" : "");
                        words[0] += look(scene, where, faults);
                        for (Node door : scene.getRoot().lookupAll(".door-key")) {
                            ((ToggleButton) door).fire();
                            words[0] += look(scene, where + ", " + ((ToggleButton) door).getText(), faults);
                        }
                    }
                }
            }
            return null;
        });
        assertTrue(words[0] > 1000, "only " + words[0] + " words were looked at");
        assertEquals("", String.join("\n", faults));
    }

    private static boolean inSight(Node node, Scene scene) {
        Bounds box = node.localToScene(node.getLayoutBounds());
        for (Node up = node; up != null; up = up.getParent()) {
            if (!up.isVisible() || up.isDisabled()) {
                return false;
            }
            if (up instanceof ScrollPane
                    && !up.localToScene(up.getLayoutBounds()).contains(box)) {
                return false;
            }
        }
        return box.getWidth() > 0 && box.getMaxY() < scene.getHeight();
    }

    private static int look(Scene scene, String where, List<String> faults) {
        for (int i = 0; i < 2; i++) {
            scene.getRoot().applyCss();
            scene.getRoot().layout();
        }
        List<Labeled> words = new ArrayList<>();
        for (Node node : scene.getRoot().lookupAll("*")) {
            if (node instanceof Labeled said
                    && said.getText() != null
                    && !said.getText().isBlank()
                    && said.lookup(".text") != null
                    && inSight(said, scene)) {
                words.add(said);
            }
        }
        List<Color> inks =
                words.stream().map(said -> (Color) said.getTextFill()).toList();
        List<String> styles = words.stream().map(Node::getStyle).toList();
        words.forEach(said -> said.setStyle("-fx-text-fill: transparent;"));
        WritableImage image = scene.snapshot(null);
        PixelReader pixels = image.getPixelReader();
        for (int i = 0; i < words.size(); i++) {
            Node letters = words.get(i).lookup(".text");
            Bounds box = letters.localToScene(letters.getLayoutBounds());
            double least = Double.POSITIVE_INFINITY;
            for (int y = (int) box.getMinY() + SOFT; y < box.getMaxY() - SOFT; y++) {
                for (int x = (int) box.getMinX() + SOFT; x < box.getMaxX() - SOFT; x++) {
                    if (x >= 0 && y >= 0 && x < image.getWidth() && y < image.getHeight()) {
                        least = Math.min(least, ratio(inks.get(i), pixels.getColor(x, y)));
                    }
                }
            }
            if (!(least >= LEAST)) {
                faults.add(where + ": \"" + words.get(i).getText() + "\" stands out by " + least);
            }
        }
        for (int i = 0; i < words.size(); i++) {
            words.get(i).setStyle(styles.get(i));
        }
        return words.size();
    }

    private static double ratio(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double code) {
        return code <= 0.04045 ? code / 12.92 : Math.pow((code + 0.055) / 1.055, 2.4);
    }
}
