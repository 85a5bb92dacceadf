package tintwright.window.pieces;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * Two things side by side while there is room for both, and one below the other when there is not. What is longer than
 * the window scrolls as one page, or beside pictures that stay in sight: there is never a second scroll bar.
 */
public final class SideBySide extends StackPane {
    /** Width in text sizes below which the two are stacked: a window of 1024 pixels has 65 at the usual text. */
    private static final double ROOM = 62;

    private final Region wide;
    private final Region narrow;
    private final boolean wideStays;
    private final Label ruler = new Label();
    private boolean stacked;
    private boolean narrowFirst;
    private boolean narrowAbove;

    /**
     * @param wide      gets what is left of the width
     * @param narrow    keeps its own width
     * @param wideStays true when the wide side fits itself to the window, as pictures do, and the narrow one scrolls
     */
    public SideBySide(Region wide, Region narrow, boolean wideStays) {
        this.wideStays = wideStays;
        this.wide = wide;
        this.narrow = narrow;
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

    /** Where the two are stacked, the narrow side comes above the other or below it. */
    public void narrowAbove(boolean above) {
        if (above != narrowAbove) {
            narrowAbove = above;
            arrange(stacked);
        }
    }

    private void fit() {
        boolean tight = getWidth() > 0 && getWidth() < ROOM * ruler.getFont().getSize();
        if (tight != stacked) {
            arrange(tight);
        }
    }

    private void arrange(boolean tight) {
        stacked = tight;
        getChildren().clear();
        Region side = narrow;
        if (!tight) {
            side = wideStays ? scrolling(narrow) : narrow;
            HBox.setHgrow(wide, Priority.ALWAYS);
            side.setMinWidth(USE_PREF_SIZE);
        }
        Pane box = tight ? new VBox() : new HBox();
        box.getChildren().setAll(narrowFirst || tight && narrowAbove ? List.of(side, wide) : List.of(wide, side));
        box.getStyleClass().add("sides-box");
        getChildren().addAll(box, ruler);
    }

    private static ScrollPane scrolling(Region side) {
        ScrollPane pane = new ScrollPane(side);
        pane.setFitToWidth(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.getStyleClass().addAll("middle", "beside-a-bar");
        pane.setMinHeight(0);
        pane.setPrefHeight(0);
        return pane;
    }
}
