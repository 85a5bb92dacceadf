package tintwright.window.pieces;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Two things side by side while there is room for both, and one below the other when there is not. */
public final class SideBySide extends StackPane {
    private final Region wide;
    private final Region narrow;
    private final boolean wideScrolls;
    private final double room;
    private final Consumer<Boolean> whenStacked;
    private final Label ruler = new Label();
    private boolean stacked;
    private boolean narrowFirst;

    /**
     * @param wide   gets what is left of the width
     * @param narrow keeps its own width
     * @param wideScrolls true when the wide side may be longer than the window; pictures are not
     * @param room   width in text sizes below which they are stacked
     */
    public SideBySide(Region wide, Region narrow, boolean wideScrolls, double room) {
        this(wide, narrow, wideScrolls, room, tight -> {});
    }

    /** @param whenStacked told before the sides are put one below the other, or apart again: it may move what is in them */
    public SideBySide(Region wide, Region narrow, boolean wideScrolls, double room, Consumer<Boolean> whenStacked) {
        this.whenStacked = whenStacked;
        this.wideScrolls = wideScrolls;
        this.wide = wide;
        this.narrow = narrow;
        this.room = room;
        ruler.setManaged(false);
        ruler.setVisible(false);
        getStyleClass().add("sides");
        wide.setMinWidth(0);
        arrange(false);
        widthProperty().addListener((property, before, after) -> fit());
        ruler.fontProperty().addListener((property, before, after) -> fit());
    }

    /** Puts the narrow side on the left, and above the other where they are stacked: the deed comes before pictures. */
    public SideBySide narrowFirst() {
        narrowFirst = true;
        arrange(stacked);
        return this;
    }

    private void fit() {
        boolean tight = getWidth() > 0 && getWidth() < room * ruler.getFont().getSize();
        if (tight != stacked) {
            arrange(tight);
        }
    }

    private void arrange(boolean tight) {
        stacked = tight;
        whenStacked.accept(tight);
        getChildren().clear();
        Region first = tight || !wideScrolls ? wide : scrolling(wide);
        Region second = tight ? narrow : scrolling(narrow);
        if (!tight) {
            HBox.setHgrow(first, Priority.ALWAYS);
            second.setMinWidth(USE_PREF_SIZE);
        }
        Pane box = tight ? new VBox() : new HBox();
        box.getChildren().setAll(narrowFirst ? List.of(second, first) : List.of(first, second));
        box.getStyleClass().add("sides-box");
        getChildren().addAll(box, ruler);
    }

    /** Each side scrolls by itself, so that the pictures stay in sight. */
    private static ScrollPane scrolling(Region side) {
        ScrollPane pane = new ScrollPane(side);
        pane.setFitToWidth(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.getStyleClass().add("middle");
        pane.setMinHeight(0);
        if (!side.getStyleClass().contains("side")) {
            side.getStyleClass().add("beside-a-bar");
        }
        pane.setPrefHeight(0);
        return pane;
    }
}
