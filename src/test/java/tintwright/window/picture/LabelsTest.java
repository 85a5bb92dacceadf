package tintwright.window.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.function.BiConsumer;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Line;
import javafx.scene.shape.Shape;
import org.junit.jupiter.api.Test;
import tintwright.window.Stagehand;

/**
 * Whatever the state, the size and the text zoom: no two labels of a picture overlap, none leaves the picture, none
 * lies on a mark or on a line that has a meaning. Many states, the same ones on every run.
 */
class LabelsTest {
    private static final int STATES = 18;
    /** Widths and heights in text sizes: the least a picture takes, a small laptop, the usual, a large screen. */
    private static final double[][] SIZES = {{20, 15}, {20, 22}, {24, 16}, {27, 16}, {34, 18}, {48, 26}, {70, 40}};

    private static final double[] ZOOMS = {1, 1.2, 2};
    /** Boxes may touch; by less than this they do not overlap. */
    private static final double TOUCH = 0.75;
    /** What no label may lie on. */
    private static final Set<String> MARKS = Set.of("outlined", "hull-mark", "pull", "swing", "stairs", "mark", "sign");

    @Test
    void theGaugesLabelsKeepClear() {
        keepClear("depth gauge", DepthGauge::new, (gauge, random) -> gauge.show(RandomStates.depth(random)));
    }

    @Test
    void theRosesLabelsKeepClear() {
        keepClear("hue rose", HueRose::new, (rose, random) -> rose.show(RandomStates.rose(random)));
    }

    @Test
    void theSwatchsLabelsKeepClear() {
        keepClear("split swatch", SplitSwatch::new, (swatch, random) -> swatch.show(RandomStates.swatch(random)));
    }

    @Test
    void thePatchesLabelsKeepClear() {
        keepClear("patches", Patches::new, (patches, random) -> patches.show(RandomStates.patches(random), "patches"));
    }

    /** Words may give way, but never these: without them the picture says nothing. */
    @Test
    void hullAndCupAreAlwaysNamed() {
        Stagehand.onScreen(() -> {
            for (double zoom : ZOOMS) {
                Random random = new Random(77);
                DepthGauge gauge = new DepthGauge();
                HueRose rose = new HueRose();
                Scene scene = Stagehand.dressed(new Pane(gauge, rose), 100, 100, zoom, false);
                for (int i = 0; i < STATES; i++) {
                    DepthState depth = RandomStates.depth(random);
                    gauge.show(depth);
                    RoseState state = RandomStates.rose(random);
                    rose.show(state);
                    scene.getRoot().applyCss();
                    for (double[] size : SIZES) {
                        for (Picture picture : List.of(gauge, rose)) {
                            layOut(picture, size, zoom);
                        }
                        String where = i + " at " + size[0] + " x " + size[1] + " em, zoom " + zoom;
                        for (String name :
                                List.of("white", "hull", depth.cupName().toLowerCase(Locale.ROOT))) {
                            assertTrue(says(gauge, name), "the gauge does not say " + name + ", state " + where);
                        }
                        for (String name : List.of("hull", state.cupName().toLowerCase(Locale.ROOT))) {
                            assertTrue(says(rose, name), "the rose does not say " + name + ", state " + where);
                        }
                        boolean underWay = depth.stepsFrom() <= depth.cup() + 0.05;
                        assertTrue(
                                depth.steps().isEmpty() || !underWay || says(gauge, "after "),
                                "what the next doses come to is not named, state " + where);
                        assertTrue(
                                !depth.steps().isEmpty()
                                        || depth.cup() >= depth.hull()
                                        || depth.climb().isEmpty()
                                        || says(
                                                gauge,
                                                depth.climb().get().words().replace('\n', ' ')),
                                "the gauge does not say how to climb, state " + where);
                    }
                }
            }
            return null;
        });
    }

    /** With room enough nothing gives way: all four hues, and every tint of the plan that has a hue. */
    @Test
    void withRoomEveryTintOfThePlanIsNamed() {
        Stagehand.onScreen(() -> {
            Random random = new Random(78);
            HueRose rose = new HueRose();
            Scene scene = Stagehand.dressed(new Pane(rose), 100, 100, 1, false);
            for (int i = 0; i < STATES; i++) {
                RoseState state = RandomStates.rose(random);
                rose.show(state);
                scene.getRoot().applyCss();
                layOut(rose, new double[] {48, 26}, 1);
                double strongest = state.pulls().stream()
                        .mapToDouble(RoseState.Pull::size)
                        .max()
                        .orElse(0);
                for (RoseState.Pull pull : state.pulls()) {
                    boolean named = pull.planned() && pull.size() > RoseWords.HARDLY * strongest;
                    assertEquals(
                            named,
                            rose.getChildrenUnmodifiable().stream()
                                    .anyMatch(node -> node instanceof Label label
                                            && label.isVisible()
                                            && label.getText().equals(pull.tint())),
                            pull.tint() + " in state " + i);
                }
            }
            return null;
        });
    }

    private static boolean says(Picture picture, String start) {
        return picture.getChildrenUnmodifiable().stream()
                .anyMatch(node -> node instanceof Label label
                        && label.isVisible()
                        && label.getText().startsWith(start));
    }

    private static void layOut(Picture picture, double[] size, double zoom) {
        picture.resize(size[0] * 15 * zoom, size[1] * 15 * zoom);
        picture.requestLayout();
        picture.layout();
    }

    private static <P extends Picture> void keepClear(
            String name, java.util.function.Supplier<P> make, BiConsumer<P, Random> show) {
        List<String> faults = new ArrayList<>();
        Stagehand.onScreen(() -> {
            for (double zoom : ZOOMS) {
                Pane pane = new Pane();
                Scene scene = Stagehand.dressed(pane, 100, 100, zoom, false);
                P picture = make.get();
                pane.getChildren().add(picture);
                Random random = new Random(20_417);
                for (int i = 0; i < STATES; i++) {
                    show.accept(picture, random);
                    for (double[] size : SIZES) {
                        picture.resize(size[0] * 15 * zoom, size[1] * 15 * zoom);
                        scene.getRoot().applyCss();
                        picture.requestLayout();
                        picture.layout();
                        look(
                                picture,
                                name + " " + i + " at " + size[0] + " x " + size[1] + " em, zoom " + zoom,
                                faults);
                    }
                }
            }
            return null;
        });
        assertTrue(
                faults.isEmpty(),
                () -> faults.size() + " faults, the first: "
                        + String.join("\n", faults.subList(0, Math.min(12, faults.size()))));
    }

    private static void look(Picture picture, String where, List<String> faults) {
        List<Label> labels = new ArrayList<>();
        List<Shape> marks = new ArrayList<>();
        for (Node node : picture.getChildrenUnmodifiable()) {
            if (node instanceof Label label
                    && label.isVisible()
                    && !label.getText().isBlank()) {
                labels.add(label);
            } else if (node instanceof Shape shape
                    && shape.isVisible()
                    && shape.getStyleClass().stream().anyMatch(MARKS::contains)) {
                marks.add(shape);
            }
        }
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            Bounds box = inner(label.getBoundsInParent());
            if (label.getBoundsInParent().getMinX() < 0
                    || label.getBoundsInParent().getMinY() < 0
                    || label.getBoundsInParent().getMaxX() > picture.getWidth()
                    || label.getBoundsInParent().getMaxY() > picture.getHeight()) {
                faults.add(where + ": \"" + label.getText() + "\" leaves the picture");
            }
            for (int j = i + 1; j < labels.size(); j++) {
                if (box.intersects(inner(labels.get(j).getBoundsInParent()))) {
                    faults.add(where + ": \"" + label.getText() + "\" on \""
                            + labels.get(j).getText() + "\"");
                }
            }
            for (Shape mark : marks) {
                if (crosses(mark, box)) {
                    faults.add(where + ": \"" + label.getText() + "\" on a " + mark.getStyleClass());
                }
            }
        }
    }

    private static Bounds inner(Bounds box) {
        return new BoundingBox(
                box.getMinX() + TOUCH,
                box.getMinY() + TOUCH,
                Math.max(0, box.getWidth() - 2 * TOUCH),
                Math.max(0, box.getHeight() - 2 * TOUCH));
    }

    private static boolean crosses(Shape mark, Bounds box) {
        if (mark instanceof Line line) {
            return new java.awt.geom.Rectangle2D.Double(box.getMinX(), box.getMinY(), box.getWidth(), box.getHeight())
                    .intersectsLine(line.getStartX(), line.getStartY(), line.getEndX(), line.getEndY());
        }
        if (!mark.getBoundsInParent().intersects(box)) {
            return false;
        }
        javafx.scene.shape.Rectangle area =
                new javafx.scene.shape.Rectangle(box.getMinX(), box.getMinY(), box.getWidth(), box.getHeight());
        Bounds common = Shape.intersect(mark, area).getBoundsInLocal();
        return common.getWidth() > 0 && common.getHeight() > 0;
    }
}
