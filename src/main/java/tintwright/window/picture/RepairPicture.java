package tintwright.window.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.QuadCurveTo;
import javafx.scene.shape.Rectangle;
import tintwright.fill.repair.CountersunkHole;
import tintwright.fill.repair.Gouge;
import tintwright.fill.repair.Hole;
import tintwright.fill.repair.PlainHole;
import tintwright.fill.repair.Repair;
import tintwright.fill.repair.ScratchGroove;
import tintwright.fill.repair.SprayArea;

/**
 * One repair cut through as it was measured: gel coat above, laminate below, a plug at the bottom of its hole. Large, it
 * shows where each size is measured.
 */
public final class RepairPicture extends Picture {
    /** An opening takes this much of the width at most, and this much of the height. */
    private static final double MOST_WIDE = 0.72;

    private static final double MOST_DEEP = 0.78;
    /** The same where names stand beside it. */
    private static final double MOST_WIDE_NAMED = 0.4;

    private static final double MOST_DEEP_NAMED = 0.66;
    /** A scratch too shallow to be seen is drawn this deep. */
    private static final double LEAST_DEEP = 0.12;
    /** The gel coat is drawn as thick as it is, within these. */
    private static final double LEAST_GEL = 0.08;

    private static final double MOST_GEL = 0.5;

    private final Rectangle laminate = styled(new Rectangle(), "laminate");
    private final Rectangle gelCoat = styled(new Rectangle(), "gel-coat");
    private final Rectangle film = styled(new Rectangle(), "new-film");
    private final Path cut = styled(new Path(), "cut");
    private final Rectangle plug = styled(new Rectangle(), "plug");
    private final Repair repair;
    private final double gelMm;
    private final Map<String, Measure> measures = new LinkedHashMap<>();

    /** A size beside what it is the size of: a line with an end at each side, and its name. */
    private record Measure(Path line, Label name) {}

    /**
     * @param gelMm the gel coat around it, mm
     * @param words all of it for a screen reader
     */
    public RepairPicture(Repair repair, double gelMm, String words) {
        this(repair, gelMm, words, Map.of(), new Size(6.6, 3.6, 6.6, 3.6));
    }

    /**
     * @param names what each size is called, by its name in {@link tintwright.fill.repair.RepairKind}
     * @return the same, large, with the sizes that can be seen in it
     */
    public static RepairPicture measured(Repair repair, double gelMm, String words, Map<String, String> names) {
        return new RepairPicture(repair, gelMm, words, names, new Size(30, 19, 18, 16));
    }

    private RepairPicture(Repair repair, double gelMm, String words, Map<String, String> names, Size size) {
        super("repair-picture", size);
        setFocusTraversable(false);
        setMaxHeight(USE_PREF_SIZE);
        this.repair = repair;
        this.gelMm = gelMm;
        names.forEach((key, name) -> measures.put(
                key, new Measure(styled(new Path(), "measure"), text(name, "picture-name", "measure-name"))));
        List<Node> nodes = new ArrayList<>(List.of(laminate, gelCoat));
        if (repair instanceof SprayArea) {
            nodes.add(film);
        } else {
            nodes.add(cut);
        }
        if (plugMm(repair) > 0) {
            nodes.add(plug);
        }
        measures.values().forEach(measure -> {
            // Not every size can be seen in the cut.
            measure.name().setVisible(false);
            nodes.addAll(List.of(measure.line(), measure.name()));
        });
        draw(nodes, words);
    }

    private static double plugMm(Repair repair) {
        return repair instanceof CountersunkHole hole
                ? hole.plugMm()
                : repair instanceof PlainHole plain ? plain.plugMm() : 0;
    }

    @Override
    protected void layoutChildren() {
        boolean named = !measures.isEmpty();
        double wide = getWidth();
        // Above the hull there is room for a size and its name.
        double top = named ? 3.4 * em() : 0.12 * getHeight();
        double tall = getHeight() - top;
        // A hole is cut through its middle; of what is long the cut goes across.
        double acrossMm = repair instanceof CountersunkHole hole
                ? hole.topMm()
                : repair instanceof PlainHole ? repair.acrossMm() : Math.min(repair.acrossMm(), repair.widthMm());
        double scale = Math.min(
                (named ? MOST_WIDE_NAMED : MOST_WIDE) * wide / acrossMm,
                (named ? MOST_DEEP_NAMED : MOST_DEEP) * tall / Math.max(repair.depthMm(), 0.01));
        double deep = Math.max(LEAST_DEEP * tall, repair.depthMm() * scale);
        // What is drawn deeper than it is takes the gel coat with it, so that the two stay true to each other.
        double down = repair.depthMm() > 0 ? deep / repair.depthMm() : LEAST_GEL * tall;
        double gel = Math.max(LEAST_GEL * tall, Math.min(MOST_GEL * tall, gelMm * down));
        SplitSwatch.box(laminate, 0, top, wide, tall);
        SplitSwatch.box(gelCoat, 0, top, wide, gel);
        double half = acrossMm * scale / 2;
        double middle = wide / 2;
        if (repair instanceof SprayArea) {
            double thick = 0.09 * getHeight();
            double over = wide * (named ? MOST_WIDE_NAMED : MOST_WIDE);
            SplitSwatch.box(film, (wide - over) / 2, top - thick, over, thick);
            across("width", (wide - over) / 2, (wide + over) / 2, top - thick, -1);
            down("film", (wide + over) / 2, top - thick, top, 1);
            return;
        }
        cut.getElements().setAll(new MoveTo(middle - half, top));
        if (repair instanceof CountersunkHole hole) {
            double neck = hole.holeMm() * scale / 2;
            double sink = hole.countersinkMm() * scale;
            to(middle - neck, top + sink);
            to(middle - neck, top + deep);
            to(middle + neck, top + deep);
            to(middle + neck, top + sink);
            plugAt(hole.plugMm() * scale, middle, neck, top + deep);
            across("top", middle - half, middle + half, top, -1);
            across("hole", middle - neck, middle + neck, top + deep, 1);
            down("countersink", middle - half, top, top + sink, -1);
        } else if (repair instanceof PlainHole hole) {
            to(middle - half, top + deep);
            to(middle + half, top + deep);
            plugAt(hole.plugMm() * scale, middle, half, top + deep);
            across("hole", middle - half, middle + half, top, -1);
        } else if (repair instanceof Gouge) {
            cut.getElements().add(new QuadCurveTo(middle, top + 2 * deep, middle + half, top));
        } else if (repair instanceof ScratchGroove) {
            to(middle, top + deep);
        } else {
            for (int i = 1; i < 6; i++) {
                to(middle - half + i * half / 3, top + deep * (i % 2 == 0 ? 0.55 : 1));
            }
        }
        to(middle + half, top);
        if (!(repair instanceof Hole)) {
            across("width", middle - half, middle + half, top, -1);
        }
        down("depth", middle + half, top, top + deep, 1);
    }

    /** @param side -1 for a line above what it measures, 1 for one below */
    private void across(String size, double left, double right, double at, int side) {
        Measure measure = measures.get(size);
        if (measure != null) {
            double y = at + side * 0.8 * em();
            ends(measure.line(), left, y, right, y, 0, 0.35 * em());
            measure.name().setVisible(true);
            size(measure.name());
            leftAt(measure.name(), (left + right - measure.name().getWidth()) / 2, y + side * 1.1 * em());
        }
    }

    /** @param side -1 for a line to the left of what it measures, 1 for one to the right */
    private void down(String size, double at, double top, double bottom, int side) {
        Measure measure = measures.get(size);
        if (measure != null) {
            double x = at + side * 1.1 * em();
            ends(measure.line(), x, top, x, bottom, 0.35 * em(), 0);
            measure.name().setVisible(true);
            size(measure.name());
            double away = 0.8 * em();
            leftAt(
                    measure.name(),
                    side > 0 ? x + away : x - away - measure.name().getWidth(),
                    (top + bottom) / 2);
        }
    }

    private static void ends(Path line, double x1, double y1, double x2, double y2, double wide, double tall) {
        line.getElements()
                .setAll(
                        new MoveTo(x1 - wide, y1 - tall),
                        new LineTo(x1 + wide, y1 + tall),
                        new MoveTo(x1, y1),
                        new LineTo(x2, y2),
                        new MoveTo(x2 - wide, y2 - tall),
                        new LineTo(x2 + wide, y2 + tall));
    }

    private void to(double x, double y) {
        cut.getElements().add(new LineTo(x, y));
    }

    private void plugAt(double high, double middle, double half, double bottom) {
        SplitSwatch.box(plug, middle - half, bottom - high, 2 * half, high);
    }
}
