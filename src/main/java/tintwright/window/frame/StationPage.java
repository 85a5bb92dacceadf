package tintwright.window.frame;

import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/**
 * The room around a station. A stack pane asks how low its content may be at its own full width, margins counted in;
 * there text wraps less than it will, and the last lines of a long page would lie out of reach below it.
 */
public final class StationPage extends StackPane {
    StationPage(Node station) {
        super(station);
        getStyleClass().add("station-page");
    }

    @Override
    protected double computeMinHeight(double width) {
        Insets around = getInsets();
        return super.computeMinHeight(width < 0 ? width : width - around.getLeft() - around.getRight());
    }
}
