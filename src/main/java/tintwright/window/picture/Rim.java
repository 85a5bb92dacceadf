package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.shape.ArcTo;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.Polygon;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;

/**
 * The round of the hue rose on the screen.
 *
 * @param x     middle, pixels
 * @param y     middle, pixels
 * @param inner radius of what is shown inside
 * @param outer radius of the rim
 * @param em    text size
 */
record Rim(double x, double y, double inner, double outer, double em) {
    private static final int PIECES = 48;

    /** @return pieces of the rim, each in the hue of its direction */
    static List<Path> pieces() {
        List<Path> pieces = new ArrayList<>();
        for (int i = 0; i < PIECES; i++) {
            double hue = Math.toRadians((i + 0.5) * 360.0 / PIECES);
            Path piece = Picture.styled(new Path(), "rim");
            piece.setFill(Picture.paint(Shade.of(new Lab(68, 30 * Math.cos(hue), 30 * Math.sin(hue), Viewing.D65_2))));
            pieces.add(piece);
        }
        return pieces;
    }

    void layout(List<Path> pieces) {
        for (int i = 0; i < PIECES; i++) {
            double from = Math.toRadians(i * 360.0 / PIECES);
            double to = Math.toRadians((i + 1) * 360.0 / PIECES);
            pieces.get(i)
                    .getElements()
                    .setAll(
                            new MoveTo(x + outer * Math.cos(from), y - outer * Math.sin(from)),
                            new ArcTo(
                                    outer, outer, 0, x + outer * Math.cos(to), y - outer * Math.sin(to), false, false),
                            new LineTo(x + inner * Math.cos(to), y - inner * Math.sin(to)),
                            new ArcTo(
                                    inner,
                                    inner,
                                    0,
                                    x + inner * Math.cos(from),
                                    y - inner * Math.sin(from),
                                    false,
                                    true),
                            new ClosePath());
        }
    }

    /** An arrow's head with its tip at a point, pointing along a unit vector. */
    static void head(Polygon head, double tipX, double tipY, double ux, double uy, double size) {
        head.getPoints()
                .setAll(
                        tipX,
                        tipY,
                        tipX - ux * size * 1.4 - uy * size * 0.7,
                        tipY - uy * size * 1.4 + ux * size * 0.7,
                        tipX - ux * size * 1.4 + uy * size * 0.7,
                        tipY - uy * size * 1.4 - ux * size * 0.7);
    }
}
