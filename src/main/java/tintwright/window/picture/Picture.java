package tintwright.window.picture;

import java.util.List;
import java.util.Locale;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Line;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;

/**
 * A drawing made of shapes and labels. All lengths follow the text size, so it is as sharp
 * at 200 % as at 100 %.
 */
abstract class Picture extends Region {
    private final Label ruler = new Label("0");

    /** How large a picture wants to be and must be, in multiples of the text size. */
    record Size(double width, double height, double leastWidth, double leastHeight) {}

    private final Size size;

    Picture(String style, Size size) {
        this.size = size;
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

    static void line(Line line, double x1, double y1, double x2, double y2) {
        line.setStartX(x1);
        line.setStartY(y1);
        line.setEndX(x2);
        line.setEndY(y2);
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
        double tall = Math.ceil(label.prefHeight(wide));
        // No wider than its lines: what points at it then ends at its words.
        double most = wide;
        double least = label.prefWidth(-1) > wide ? longestWord(label) : wide;
        while (wide - least > 1) {
            double middle = (wide + least) / 2;
            if (Math.ceil(label.prefHeight(middle)) > tall) {
                least = middle;
            } else {
                wide = middle;
            }
        }
        // The space a line was broken at still takes its width at the line's end.
        double space = 0.4 * label.getFont().getSize();
        label.resize(Math.min(most, Math.ceil(wide + space)), tall);
    }

    /** A line is never narrower than this: no word is broken that would fit. */
    private static double longestWord(Label label) {
        double longest = 0;
        for (String word : label.getText().split("[ \n]")) {
            Text measured = new Text(word);
            measured.setFont(label.getFont());
            longest = Math.max(longest, measured.getLayoutBounds().getWidth());
        }
        return Math.ceil(longest
                        + label.getInsets().getLeft()
                        + label.getInsets().getRight())
                + 1;
    }

    static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    /** Puts a label's left edge at x and its middle at y, whole inside this picture. */
    final void leftAt(Label label, double x, double y) {
        size(label);
        place(label, x, y - label.getHeight() / 2);
    }

    private void place(Label label, double x, double y) {
        double inside = em() * 0.3;
        double right = Math.max(inside, getWidth() - label.getWidth() - inside);
        double bottom = Math.max(inside, getHeight() - label.getHeight() - inside);
        label.relocate(Math.max(inside, Math.min(right, x)), Math.max(inside, Math.min(bottom, y)));
    }

    @Override
    protected double computePrefWidth(double height) {
        return size.width() * em();
    }

    @Override
    protected double computePrefHeight(double width) {
        return size.height() * em();
    }

    @Override
    protected double computeMinWidth(double height) {
        return size.leastWidth() * em();
    }

    @Override
    protected double computeMinHeight(double width) {
        return size.leastHeight() * em();
    }
}
