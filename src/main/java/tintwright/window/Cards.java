package tintwright.window;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;

/** Cards side by side, equally wide, while each has room to be read; one below the other else. */
final class Cards extends Pane {
    /** Width of a card, in text sizes, below which its words would break too often. */
    private static final double LEAST = 15;
    private static final double GAP = 0.6;

    private final Label ruler = new Label();

    Cards() {
        ruler.setManaged(false);
        ruler.setVisible(false);
        getChildren().add(ruler);
    }

    void show(List<? extends Node> cards) {
        getChildren().setAll(cards);
        getChildren().add(ruler);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    private double gap() {
        return Math.round(GAP * ruler.getFont().getSize());
    }

    private double each(double width) {
        int count = Math.max(1, getManagedChildren().size());
        double each = Math.floor((width - gap() * (count - 1)) / count);
        return each >= LEAST * ruler.getFont().getSize() ? each : width;
    }

    @Override
    protected double computePrefHeight(double width) {
        double each = each(width);
        double sum = 0;
        double most = 0;
        for (Node card : getManagedChildren()) {
            double height = card.prefHeight(each);
            most = Math.max(most, height);
            sum += height + (sum > 0 ? gap() : 0);
        }
        return each < width ? most : sum;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefWidth(double height) {
        return 3 * LEAST * ruler.getFont().getSize();
    }

    @Override
    protected double computeMinWidth(double height) {
        return LEAST * ruler.getFont().getSize();
    }

    @Override
    protected void layoutChildren() {
        double each = each(getWidth());
        boolean beside = each < getWidth() || getManagedChildren().size() == 1;
        double x = 0;
        double y = 0;
        for (Node card : getManagedChildren()) {
            double height = beside ? getHeight() : card.prefHeight(each);
            card.resizeRelocate(x, y, each, height);
            if (beside) {
                x += each + gap();
            } else {
                y += height + gap();
            }
        }
    }
}
