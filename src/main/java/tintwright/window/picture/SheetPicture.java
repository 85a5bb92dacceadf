package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;

/** The printed sheet as it lies on a hull: the hull shows through its window, chips lie on its circles. */
public final class SheetPicture extends Picture {
    /** Of a sheet's height, as it is drawn: its width, and how far its top is turned to the left. */
    private static final double WIDE = 0.74;

    private static final double TURNED = 0.07;
    /** Where the four corner signs lie, shares of the sheet's width and height. */
    private static final double[][] SIGNS = {{0.12, 0.1}, {0.88, 0.1}, {0.12, 0.9}, {0.88, 0.9}};

    private static final double[][] CHIPS = {{0.12, 0.35}, {0.12, 0.55}, {0.12, 0.75}, {0.88, 0.35}, {0.88, 0.55}};

    private final Rectangle hull = styled(new Rectangle(), "drawn-hull", "well");
    private final Polygon paper = styled(new Polygon(), "drawn-paper");
    private final Polygon window = styled(new Polygon(), "drawn-window");
    private final List<Polygon> signs = new ArrayList<>();
    private final List<Circle> chips = new ArrayList<>();

    public SheetPicture() {
        super("drawn-sheet", new Size(26, 26, 10, 12));
        setFocusTraversable(false);
        for (int i = 0; i < SIGNS.length; i++) {
            signs.add(styled(new Polygon(), "drawn-sign"));
        }
        for (int i = 0; i < CHIPS.length; i++) {
            chips.add(styled(new Circle(), "drawn-chip"));
        }
        List<Node> nodes = new ArrayList<>(List.of(hull, paper, window));
        nodes.addAll(signs);
        nodes.addAll(chips);
        draw(nodes, "The printed sheet on a hull, which shows through the window in its middle.");
    }

    @Override
    protected void layoutChildren() {
        SplitSwatch.box(hull, 0, 0, getWidth(), getHeight());
        box(paper, 0.5, 0.5, 0.5);
        box(window, 0.5, 0.5, 0.16);
        for (int i = 0; i < SIGNS.length; i++) {
            box(signs.get(i), SIGNS[i][0], SIGNS[i][1], 0.05);
        }
        for (int i = 0; i < CHIPS.length; i++) {
            double[] at = at(CHIPS[i][0], CHIPS[i][1]);
            chips.get(i).setCenterX(at[0]);
            chips.get(i).setCenterY(at[1]);
            chips.get(i).setRadius(0.05 * tall());
        }
    }

    private double tall() {
        return Math.min(0.86 * getHeight(), 0.86 * getWidth() / WIDE);
    }

    /** A point of the sheet, from shares of its width and height, on the screen. */
    private double[] at(double across, double down) {
        double x = (across - 0.5) * WIDE * tall();
        double y = (down - 0.5) * tall();
        return new double[] {getWidth() / 2 + x + TURNED * y, getHeight() / 2 + y - TURNED * x};
    }

    /** @param half of its height and of what it is wide, as shares of the sheet's height; the whole sheet is narrower */
    private void box(Polygon box, double across, double down, double half) {
        double wide = half < 0.5 ? half / WIDE : half;
        box.getPoints().clear();
        for (double[] corner : new double[][] {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
            for (double place : at(across + corner[0] * wide, down + corner[1] * half)) {
                box.getPoints().add(place);
            }
        }
    }
}
