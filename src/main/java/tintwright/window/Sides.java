package tintwright.window;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Two things side by side while there is room for both, and one below the other when there is not. */
final class Sides extends StackPane {
    private final Region wide;
    private final Region narrow;
    private final double room;
    private final Label ruler = new Label();
    private boolean stacked;

    /**
     * @param wide   gets what is left of the width
     * @param narrow keeps its own width
     * @param room   width in text sizes below which they are stacked
     */
    Sides(Region wide, Region narrow, double room) {
        this.wide = wide;
        this.narrow = narrow;
        this.room = room;
        ruler.setManaged(false);
        ruler.setVisible(false);
        getStyleClass().add("sides");
        HBox.setHgrow(wide, Priority.ALWAYS);
        wide.setMinWidth(0);
        arrange(false);
        widthProperty().addListener((property, before, after) -> fit());
        ruler.fontProperty().addListener((property, before, after) -> fit());
    }

    private void fit() {
        boolean tight = getWidth() > 0 && getWidth() < room * ruler.getFont().getSize();
        if (tight != stacked) {
            arrange(tight);
        }
    }

    private void arrange(boolean tight) {
        stacked = tight;
        getChildren().clear();
        Node box = tight ? new VBox(wide, narrow) : new HBox(wide, narrow);
        box.getStyleClass().add("sides-box");
        getChildren().addAll(box, ruler);
    }
}
