package tintwright.window.pieces;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;

/** Cards side by side, equally wide, as many as have room to be read; the others below. */
public final class Cards extends Pane {
    private static final double GAP = 0.6;

    private final double least;
    private final Label ruler = new Label();

    /** @param least width of a card, in text sizes, below which its words would break too often */
    public Cards(double least) {
        this.least = least;
        ruler.setManaged(false);
        ruler.setVisible(false);
        getChildren().add(ruler);
    }

    public void show(List<? extends Node> cards) {
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

    /** As many in a row as have room, and then the rows alike: four cards stand two by two, not three and one. */
    private int columns(double width) {
        int count = Math.max(1, getManagedChildren().size());
        double each = least * ruler.getFont().getSize();
        int room = (int) Math.max(1, Math.min(count, Math.floor((width + gap()) / (each + gap()))));
        int rows = (count + room - 1) / room;
        return (count + rows - 1) / rows;
    }

    private double each(double width) {
        int columns = columns(width);
        return Math.floor((width - gap() * (columns - 1)) / columns);
    }

    /** Height of the row that begins with this card. */
    private double rowHeight(int first, int columns, double each) {
        double most = 0;
        for (int i = first; i < Math.min(first + columns, getManagedChildren().size()); i++) {
            most = Math.max(most, getManagedChildren().get(i).prefHeight(each));
        }
        return most;
    }

    @Override
    protected double computePrefHeight(double width) {
        int columns = columns(width);
        double each = each(width);
        double sum = 0;
        for (int first = 0; first < getManagedChildren().size(); first += columns) {
            sum += rowHeight(first, columns, each) + (first > 0 ? gap() : 0);
        }
        return sum;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefWidth(double height) {
        return 3 * least * ruler.getFont().getSize();
    }

    @Override
    protected double computeMinWidth(double height) {
        return least * ruler.getFont().getSize();
    }

    @Override
    protected void layoutChildren() {
        int columns = columns(getWidth());
        double each = each(getWidth());
        double y = 0;
        for (int first = 0; first < getManagedChildren().size(); first += columns) {
            double height = rowHeight(first, columns, each);
            for (int i = first;
                    i < Math.min(first + columns, getManagedChildren().size());
                    i++) {
                getManagedChildren().get(i).resizeRelocate((i - first) * (each + gap()), y, each, height);
            }
            y += height + gap();
        }
    }
}
