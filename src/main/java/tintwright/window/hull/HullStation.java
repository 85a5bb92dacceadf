package tintwright.window.hull;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tintwright.window.pieces.Controls;

/** The readings of the place, or the photo they are taken from; what is dropped here finds its own way. */
public final class HullStation extends StackPane {
    private static final Set<String> PHOTOS = Set.of("jpg", "jpeg", "png", "tif", "tiff");

    private final HullPage readings;
    private final Region page;
    private final PhotoModel photo;
    private VBox photoPage;

    /** @param phone the door for photos from a phone */
    public HullStation(HullModel hull, SheetModel sheet, PhotoModel photo, Node phone) {
        this.photo = photo;
        this.readings = new HullPage(hull, sheet, this::toThePhoto, phone);
        this.page = readings.build();
        getChildren().setAll(page);
        // A photo that comes from a phone is at once in sight.
        Controls.follow(this, photo.previewProperty(), (before, after) -> toThePhoto());
        addEventFilter(DragEvent.DRAG_OVER, event -> {
            if (event.getDragboard().hasFiles()) {
                event.acceptTransferModes(TransferMode.COPY);
                event.consume();
            }
        });
        addEventFilter(DragEvent.DRAG_DROPPED, event -> {
            List<File> files = event.getDragboard().getFiles();
            files.forEach(file -> take(file.toPath()));
            event.setDropCompleted(!files.isEmpty());
            event.consume();
        });
    }

    private void take(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (PHOTOS.contains(name.substring(name.lastIndexOf('.') + 1))) {
            readings.read(file);
        } else {
            readings.open(file);
        }
    }

    private void toThePhoto() {
        if (photoPage == null) {
            PhotoView view = new PhotoView(photo);
            VBox.setVgrow(view, Priority.ALWAYS);
            photoPage = new VBox(
                    Controls.row(Controls.button(
                            "Back to the readings", () -> getChildren().setAll(page))),
                    view);
            photoPage.getStyleClass().add("pictures");
        }
        getChildren().setAll(photoPage);
    }
}
