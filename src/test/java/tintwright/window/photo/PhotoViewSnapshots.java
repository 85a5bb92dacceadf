package tintwright.window.photo;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Random;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.PhotoBench;
import tintwright.colour.Lab;
import tintwright.colour.RgbSpace;
import tintwright.reading.photo.PixelPoint;
import tintwright.reading.photo.ReferenceCard;
import tintwright.window.Stagehand;

/**
 * Pictures of the photo station at work, to be looked at, in target/snapshots:
 * {@code mvn test -Dtest=PhotoViewSnapshots}. The photo is drawn here: a card of ours on an invented hull. The name
 * keeps it out of the everyday run.
 */
class PhotoViewSnapshots {
    @TempDir
    Path folder;

    @Test
    void atWork() throws Exception {
        Path photo = drawn(folder.resolve("port-bow.png"));
        for (int variant = 0; variant < 3; variant++) {
            int now = variant;
            Stagehand.onScreen(() -> {
                PhotoModel model = new PhotoModel(Runnable::run, Runnable::run, readings -> { });
                PhotoView view = new PhotoView(model);
                StackPane root = new StackPane(view);
                root.getStyleClass().add("root");
                Scene scene = new Scene(root, now == 2 ? 1000 : 1280, now == 2 ? 640 : 800);
                scene.getStylesheets().add(Stagehand.class.getResource("/tintwright/window/bench.css")
                        .toExternalForm());
                model.open(photo);
                model.findCard();
                if (now > 0) {
                    model.addSpot(new PixelPoint(1150, 300));
                    model.addSpot(new PixelPoint(1250, 700));
                }
                if (now == 1) {
                    Stagehand.snapshot(scene, "photo-before");
                    hold(view.lookup(".photo-pane"), 513, 338);
                }
                Stagehand.snapshot(scene, "photo-" + (now == 0 ? "found" : now == 1 ? "read" : "small"));
                return null;
            });
        }
    }

    /** Presses on the second corner, so that the loupe shows. */
    private static void hold(Node pane, double x, double y) {
        pane.fireEvent(new MouseEvent(MouseEvent.MOUSE_PRESSED, x, y, x, y, MouseButton.PRIMARY, 1, false, false, false,
                false, true, false, false, false, false, false, null));
    }

    /** A hull of one colour in soft light, with the card of 24 laid on it a little askew. */
    static Path drawn(Path file) throws Exception {
        ReferenceCard card = PhotoBench.cards().get(0);
        int width = 1600;
        int height = 1000;
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(5);
        double cos = Math.cos(0.12);
        double sin = Math.sin(0.12);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double u = ((x - 220) * cos + (y - 250) * sin) / 120;
                double v = (-(x - 220) * sin + (y - 250) * cos) / 120;
                double light = 1.02 - 0.0001 * x - 0.00005 * y;
                double[] linear = {0.52, 0.60, 0.62};
                if (u > -0.15 && v > -0.15 && u < card.columns() + 0.15 && v < card.rows() + 0.15) {
                    linear = new double[] {0.03, 0.03, 0.03};
                    boolean patch = u > 0 && v > 0 && u < card.columns() && v < card.rows()
                            && Math.abs(u - Math.floor(u) - 0.5) < 0.42 && Math.abs(v - Math.floor(v) - 0.5) < 0.42;
                    if (patch) {
                        Lab lab = card.patch((int) v, (int) u).lab().orElseThrow();
                        RgbSpace.Code code = RgbSpace.SRGB.encode(lab);
                        linear = new double[] {RgbSpace.toLinear(code.red()), RgbSpace.toLinear(code.green()),
                            RgbSpace.toLinear(code.blue())};
                    }
                }
                int rgb = 0;
                double[] balance = {1.02, 0.97, 0.9};
                for (int k = 0; k < 3; k++) {
                    double code = RgbSpace.toCode(linear[k] * light * balance[k]) + 0.006 * random.nextGaussian();
                    rgb = rgb << 8 | (int) Math.round(255 * Math.max(0, Math.min(1, code)));
                }
                image.setRGB(x, y, rgb);
            }
        }
        javax.imageio.ImageIO.write(image, "png", file.toFile());
        return file;
    }
}
