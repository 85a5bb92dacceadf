package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import tintwright.units.Grams;

/** A cup as it rises and falls, one after the other with arrows between: how full each is and of what colour. */
public final class LevelsPicture extends Picture {
    /** A cup is narrower at its bottom by this share. */
    private static final double TAPER = 0.2;
    /** The fullest cup leaves this share of its height empty. */
    private static final double RIM = 0.12;

    private final List<Level> levels;
    private final double fullest;
    private final List<Polygon> cups = new ArrayList<>();
    private final List<Polygon> fills = new ArrayList<>();
    private final List<Label> grams = new ArrayList<>();
    private final List<Line> arrows = new ArrayList<>();
    private final List<Polygon> heads = new ArrayList<>();

    /**
     * One cup.
     *
     * @param shade what is in it
     * @param grams how much, above 0
     */
    public record Level(Shade shade, double grams) {}

    /** @param fullest grams of the fullest cup it is to be compared with */
    public LevelsPicture(List<Level> levels, double fullest) {
        super("levels", new Size(8, 7, 8, 7));
        setFocusTraversable(false);
        this.levels = List.copyOf(levels);
        this.fullest = fullest;
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            Polygon cup = styled(new Polygon(), "cup-empty");
            Polygon fill = new Polygon();
            fill.setFill(paint(levels.get(i).shade()));
            Label words = text(Grams.about(levels.get(i).grams()), "picture-small");
            cups.add(cup);
            fills.add(fill);
            grams.add(words);
            nodes.addAll(List.of(cup, fill, words));
            if (i > 0) {
                Line arrow = styled(new Line(), "swing");
                Polygon head = styled(new Polygon(), "level-head");
                arrows.add(arrow);
                heads.add(head);
                nodes.addAll(List.of(arrow, head));
            }
        }
        draw(
                nodes,
                "The cup: "
                        + levels.stream()
                                .map(level -> Grams.about(level.grams()))
                                .collect(Collectors.joining(", then ")));
    }

    @Override
    protected void layoutChildren() {
        double em = em();
        double wide = Math.min(6 * em, (getWidth() + 2.4 * em) / levels.size() - 2.4 * em);
        double gap = 2.4 * em;
        double tall = getHeight() - 1.5 * em;
        double bottom = tall;
        for (int i = 0; i < levels.size(); i++) {
            double x = i * (wide + gap);
            double full = Math.min(1, (1 - RIM) * levels.get(i).grams() / fullest);
            double level = bottom - full * tall;
            double in = TAPER / 2 * wide;
            double slope = in * (1 - full);
            cups.get(i).getPoints().setAll(x, 0.0, x + wide, 0.0, x + wide - in, bottom, x + in, bottom);
            fills.get(i)
                    .getPoints()
                    .setAll(x + slope, level, x + wide - slope, level, x + wide - in, bottom, x + in, bottom);
            Label words = grams.get(i);
            size(words);
            words.relocate(x + (wide - words.getWidth()) / 2, bottom + 0.2 * em);
            if (i > 0) {
                double middle = tall / 2;
                line(arrows.get(i - 1), x - gap + 0.5 * em, middle, x - 0.8 * em, middle);
                heads.get(i - 1)
                        .getPoints()
                        .setAll(
                                x - 0.5 * em,
                                middle,
                                x - 1.1 * em,
                                middle - 0.35 * em,
                                x - 1.1 * em,
                                middle + 0.35 * em);
            }
        }
    }

    @Override
    protected double computePrefWidth(double height) {
        return (6 * levels.size() + 2.4 * (levels.size() - 1)) * em();
    }
}
