package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.QuadCurveTo;
import javafx.scene.shape.Rectangle;
import tintwright.fill.repair.CountersunkHole;
import tintwright.fill.repair.Gouge;
import tintwright.fill.repair.PlainHole;
import tintwright.fill.repair.Repair;
import tintwright.fill.repair.ScratchGroove;
import tintwright.fill.repair.SprayArea;

/** One repair cut through as it was measured: gel coat above, laminate below, a plug at the bottom of its hole. */
public final class RepairPicture extends Picture {
    /** An opening takes this much of the width at most, and this much of the height. */
    private static final double MOST_WIDE = 0.72;

    private static final double MOST_DEEP = 0.78;
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

    /**
     * @param gelMm the gel coat around it, mm
     * @param words all of it for a screen reader
     */
    public RepairPicture(Repair repair, double gelMm, String words) {
        super("repair-picture", new Size(6.6, 3.6, 6.6, 3.6));
        setFocusTraversable(false);
        setMaxHeight(USE_PREF_SIZE);
        this.repair = repair;
        this.gelMm = gelMm;
        List<Node> nodes = new ArrayList<>(List.of(laminate, gelCoat));
        if (repair instanceof SprayArea) {
            nodes.add(film);
        } else {
            nodes.add(cut);
        }
        if (plugMm(repair) > 0) {
            nodes.add(plug);
        }
        draw(nodes, words);
    }

    private static double plugMm(Repair repair) {
        return repair instanceof CountersunkHole hole
                ? hole.plugMm()
                : repair instanceof PlainHole plain ? plain.plugMm() : 0;
    }

    @Override
    protected void layoutChildren() {
        double wide = getWidth();
        double top = 0.12 * getHeight();
        double tall = getHeight() - top;
        // A hole is cut through its middle; of what is long the cut goes across.
        double acrossMm = repair instanceof CountersunkHole hole
                ? hole.topMm()
                : repair instanceof PlainHole ? repair.acrossMm() : Math.min(repair.acrossMm(), repair.widthMm());
        double scale = Math.min(MOST_WIDE * wide / acrossMm, MOST_DEEP * tall / Math.max(repair.depthMm(), 0.01));
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
            SplitSwatch.box(film, wide * (1 - MOST_WIDE) / 2, top - thick, wide * MOST_WIDE, thick);
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
        } else if (repair instanceof PlainHole hole) {
            to(middle - half, top + deep);
            to(middle + half, top + deep);
            plugAt(hole.plugMm() * scale, middle, half, top + deep);
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
    }

    private void to(double x, double y) {
        cut.getElements().add(new LineTo(x, y));
    }

    private void plugAt(double high, double middle, double half, double bottom) {
        SplitSwatch.box(plug, middle - half, bottom - high, 2 * half, high);
    }
}
