package tintwright.window.hull;

import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.window.Stagehand;
import tintwright.window.pieces.Look;

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
        Path photo = DrawnPhoto.of(folder.resolve("port-bow.png"));
        for (int variant = 0; variant < 3; variant++) {
            int now = variant;
            Stagehand.onScreen(() -> {
                PhotoModel model = new PhotoModel(Runnable::run, Runnable::run, readings -> {});
                PhotoView view = new PhotoView(model);
                StackPane root = new StackPane(view);
                root.getStyleClass().add("root");
                Scene scene = new Scene(root, now == 2 ? 1000 : 1280, now == 2 ? 640 : 800);
                Look.dress(scene);
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
        pane.fireEvent(new MouseEvent(
                MouseEvent.MOUSE_PRESSED,
                x,
                y,
                x,
                y,
                MouseButton.PRIMARY,
                1,
                false,
                false,
                false,
                false,
                true,
                false,
                false,
                false,
                false,
                false,
                null));
    }
}
