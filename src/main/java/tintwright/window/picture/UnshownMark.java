package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/** A strip of slanted bars, dark on light, at the foot of a field whose colour the screen cannot show. */
final class UnshownMark {
    /** What it says, the longest that fits first. */
    static final String[] WORDS = {
        "Outside what this screen can show", "this screen cannot show it", "not on this screen", "beyond"
    };

    private static final int SLANTS = 40;
    private static final double TALL = 1.9;

    private final Rectangle field;
    private final Rectangle ground = Picture.styled(new Rectangle(), "unshown-ground");
    private final List<Line> slants = new ArrayList<>();
    private final Label words = Picture.text("", "picture-small", "unshown-words");

    UnshownMark(Rectangle field) {
        this.field = field;
        for (int i = 0; i < SLANTS; i++) {
            slants.add(Picture.styled(new Line(), "unshown"));
        }
    }

    List<Node> nodes() {
        List<Node> nodes = new ArrayList<>(List.of(ground));
        nodes.addAll(slants);
        nodes.add(words);
        return nodes;
    }

    void layout(double em) {
        double height = Math.min(TALL * em, field.getHeight());
        double y = field.getY() + field.getHeight() - height;
        SplitSwatch.box(ground, field.getX(), y, field.getWidth(), height);
        double width = field.getWidth();
        double step = (width + height) / slants.size();
        for (int i = 0; i < slants.size(); i++) {
            double at = (i + 0.5) * step - height;
            double before = Math.max(0, -at);
            double after = Math.max(0, at + height - width);
            Picture.line(
                    slants.get(i),
                    field.getX() + at + before,
                    y + height - before,
                    field.getX() + at + height - after,
                    y + after);
        }
        for (String choice : WORDS) {
            words.setText(choice);
            Picture.size(words);
            if (words.getWidth() <= field.getWidth() - 0.4 * em) {
                break;
            }
        }
        words.relocate(field.getX() + (field.getWidth() - words.getWidth()) / 2, y + (height - words.getHeight()) / 2);
    }
}
