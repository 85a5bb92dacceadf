package tintwright.window.picture;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
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
 * lies on the tank, on a mark or on a line that has a meaning. Many states, the same ones on every run.
 */
class LabelsTest {
    private static final int STATES = 25;
    /** Widths and heights in text sizes: the least a picture takes, a small laptop, the usual, a large screen. */
    private static final double[][] SIZES = {{20, 15}, {20, 22}, {24, 16}, {27, 16}, {34, 18}, {48, 26}, {70, 40}};
    private static final double[] ZOOMS = {1, 1.2, 2};
    /** Boxes may touch; by less than this they do not overlap. */
    private static final double TOUCH = 0.75;
    /** What no label may lie on. */
    private static final Set<String> MARKS = Set.of("well", "outlined", "climb", "climb-head", "pointer", "rim",
            "pull", "pull-head", "swing", "thread", "leader", "stairs", "mark", "sign");

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

    private static <P extends Picture> void keepClear(String name, java.util.function.Supplier<P> make,
            BiConsumer<P, Random> show) {
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
                        look(picture, name + " " + i + " at " + size[0] + " x " + size[1] + " em, zoom " + zoom, faults);
                    }
                }
            }
            return null;
        });
        assertTrue(faults.isEmpty(), () -> faults.size() + " faults, the first: "
                + String.join("\n", faults.subList(0, Math.min(12, faults.size()))));
    }

    private static void look(Picture picture, String where, List<String> faults) {
        List<Label> labels = new ArrayList<>();
        List<Shape> marks = new ArrayList<>();
        for (Node node : picture.getChildrenUnmodifiable()) {
            if (node instanceof Label label && label.isVisible() && !label.getText().isBlank()) {
                labels.add(label);
            } else if (node instanceof Shape shape && shape.isVisible()
                    && shape.getStyleClass().stream().anyMatch(MARKS::contains)) {
                marks.add(shape);
            }
        }
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            Bounds box = inner(label.getBoundsInParent());
            if (label.getBoundsInParent().getMinX() < 0 || label.getBoundsInParent().getMinY() < 0
                    || label.getBoundsInParent().getMaxX() > picture.getWidth()
                    || label.getBoundsInParent().getMaxY() > picture.getHeight()) {
                faults.add(where + ": \"" + label.getText() + "\" leaves the picture");
            }
            for (int j = i + 1; j < labels.size(); j++) {
                if (box.intersects(inner(labels.get(j).getBoundsInParent()))) {
                    faults.add(where + ": \"" + label.getText() + "\" on \"" + labels.get(j).getText() + "\"");
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
        return new BoundingBox(box.getMinX() + TOUCH, box.getMinY() + TOUCH,
                Math.max(0, box.getWidth() - 2 * TOUCH), Math.max(0, box.getHeight() - 2 * TOUCH));
    }

    private static boolean crosses(Shape mark, Bounds box) {
        if (mark instanceof Line line) {
            return new java.awt.geom.Rectangle2D.Double(box.getMinX(), box.getMinY(), box.getWidth(), box.getHeight())
                    .intersectsLine(line.getStartX(), line.getStartY(), line.getEndX(), line.getEndY());
        }
        if (!mark.getBoundsInParent().intersects(box)) {
            return false;
        }
        javafx.scene.shape.Rectangle area = new javafx.scene.shape.Rectangle(box.getMinX(), box.getMinY(),
                box.getWidth(), box.getHeight());
        Bounds common = Shape.intersect(mark, area).getBoundsInLocal();
        return common.getWidth() > 0 && common.getHeight() > 0;
    }
}
