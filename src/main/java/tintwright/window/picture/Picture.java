package tintwright.window.picture;

import java.util.List;
import java.util.Locale;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Shape;

/**
 * A drawing made of shapes and labels on a neutral grey ground. All lengths follow the text size, so it is as sharp
 * at 200 % as at 100 %.
 */
abstract class Picture extends Region {
    private final Label ruler = new Label("0");

    Picture(String style) {
        getStyleClass().addAll("picture", style);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setFocusTraversable(true);
        ruler.setVisible(false);
        ruler.setManaged(false);
        ruler.getStyleClass().add("picture-text");
    }

    /** Replaces all that is drawn; positions follow in {@link #layoutChildren()}. */
    final void draw(List<? extends Node> nodes, String words) {
        getChildren().setAll(nodes);
        getChildren().add(ruler);
        nodes.forEach(node -> node.setManaged(false));
        setAccessibleText(words);
        requestLayout();
    }

    /** @return the text size, the unit of every length here */
    final double em() {
        return ruler.getFont().getSize();
    }

    static Label text(String words, String... styles) {
        Label label = new Label(words);
        label.getStyleClass().add("picture-text");
        label.getStyleClass().addAll(styles);
        label.setMouseTransparent(true);
        return label;
    }

    static <S extends Shape> S styled(S shape, String... styles) {
        shape.getStyleClass().addAll(styles);
        return shape;
    }

    static Color paint(Shade shade) {
        return Color.color(shade.red(), shade.green(), shade.blue());
    }

    static void size(Label label) {
        label.applyCss();
        label.autosize();
    }

    /** Gives a label its size within a width, in several lines when one is too long. */
    static void fit(Label label, double width) {
        label.setWrapText(true);
        label.applyCss();
        double wide = Math.ceil(Math.min(width, label.prefWidth(-1)));
        label.resize(wide, Math.ceil(label.prefHeight(wide)));
    }

    static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    /** Puts a label's left edge at x and its middle at y, whole inside this picture. */
    final void leftAt(Label label, double x, double y) {
        size(label);
        place(label, x, y - label.getHeight() / 2);
    }

    /** Puts a label's right edge at x and its middle at y. */
    final void rightAt(Label label, double x, double y) {
        size(label);
        place(label, x - label.getWidth(), y - label.getHeight() / 2);
    }

    /** Puts a label's middle at x, y. */
    final void middleAt(Label label, double x, double y) {
        size(label);
        place(label, x - label.getWidth() / 2, y - label.getHeight() / 2);
    }

    private void place(Label label, double x, double y) {
        double inside = em() * 0.3;
        double right = Math.max(inside, getWidth() - label.getWidth() - inside);
        double bottom = Math.max(inside, getHeight() - label.getHeight() - inside);
        label.relocate(Math.max(inside, Math.min(right, x)), Math.max(inside, Math.min(bottom, y)));
    }
}
