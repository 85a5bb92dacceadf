package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/** Several colours side by side on neutral grey, each with its name; one that does not count is crossed out. */
public final class Patches extends Picture {
    private final List<Rectangle> fields = new ArrayList<>();
    private final List<Label> names = new ArrayList<>();
    private final List<Line> crosses = new ArrayList<>();
    private List<Patch> shown = List.of();

    /**
     * One colour.
     *
     * @param shade  the colour
     * @param name   what it is called
     * @param counts false for a colour that was left out
     */
    public record Patch(Shade shade, String name, boolean counts) {}

    public Patches() {
        super("patches", new Size(24, 13, 10, 8));
    }

    /** @param words all of it for a screen reader */
    public void show(List<Patch> patches, String words) {
        shown = List.copyOf(patches);
        fields.clear();
        names.clear();
        crosses.clear();
        List<Node> nodes = new ArrayList<>();
        for (Patch patch : shown) {
            Rectangle field = new Rectangle();
            field.setSmooth(false);
            field.setFill(paint(patch.shade()));
            fields.add(field);
            nodes.add(field);
            Label name = text(patch.shade().shown() ? patch.name() : patch.name() + " *", "picture-small");
            names.add(name);
            nodes.add(name);
            Line cross = styled(new Line(), "mark");
            crosses.add(cross);
            if (!patch.counts()) {
                nodes.add(cross);
            }
        }
        draw(nodes, words);
    }

    @Override
    protected void layoutChildren() {
        double em = em();
        double left = Math.round(em);
        double each = Math.floor((getWidth() - 2 * left) / Math.max(1, shown.size()));
        double top = Math.round(em);
        double longest = 0;
        for (Label name : names) {
            size(name);
            longest = Math.max(longest, name.getWidth());
        }
        // Names too long to stand side by side take turns in two or three lines, and are cut only where that fails.
        double gap = 0.4 * em;
        int lines = longest <= each - gap ? 1 : longest <= 1.6 * each - gap ? 2 : 3;
        double room = (lines == 1 ? 1 : lines == 2 ? 1.6 : 2.3) * each - gap;
        room = Math.min(room, shown.size() > 1 ? getWidth() / 2 - 0.6 * em : getWidth() - 0.6 * em);
        double tall = Math.floor(getHeight() - top - (0.9 + 1.3 * lines) * em);
        for (int i = 0; i < shown.size(); i++) {
            Rectangle field = fields.get(i);
            field.setX(left + i * each);
            field.setY(top);
            field.setWidth(each);
            field.setHeight(tall);
            Label name = names.get(i);
            double wide = Math.min(name.getWidth(), Math.max(2 * em, room));
            double x = Math.max(0.3 * em, Math.min(getWidth() - wide - 0.3 * em, left + (i + 0.5) * each - wide / 2));
            name.resizeRelocate(x, top + tall + (0.4 + 1.3 * (i % lines)) * em, wide, name.getHeight());
            Line cross = crosses.get(i);
            cross.setStartX(field.getX() + 0.3 * em);
            cross.setStartY(top + tall - 0.3 * em);
            cross.setEndX(field.getX() + each - 0.3 * em);
            cross.setEndY(top + 0.3 * em);
        }
    }
}
