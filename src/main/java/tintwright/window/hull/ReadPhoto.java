package tintwright.window.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import tintwright.window.picture.Shade;

/** The photo that was read by its sheet, with a ring round what was read, the hull's colour beside it, and in short what was found. */
final class ReadPhoto extends Region {
    private static final double MOST_HIGH_EM = 30;
    /** What stands below it is to be seen without scrolling: for that the photo gives way so far. */
    private static final double LEAST_HIGH_EM = 14;

    private final ImageView picture = new ImageView();
    private final Label words = new Label();
    private final Region field = new Region();
    private final List<Circle> rings = new ArrayList<>();
    private SheetModel.Sight shown;

    ReadPhoto() {
        getStyleClass().add("read-photo");
        setId("read-photo");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        picture.setPreserveRatio(true);
        words.getStyleClass().add("read-photo-words");
    }

    /** @param hull what was made of it */
    void show(SheetModel.Sight sight, Shade hull) {
        field.setStyle(hull.css());
        if (sight.equals(shown)) {
            return;
        }
        shown = sight;
        picture.setImage(PhotoPane.image(sight.preview()));
        rings.clear();
        for (SheetModel.Mark mark : sight.marks()) {
            Circle ring = new Circle();
            ring.getStyleClass().setAll(mark.hull() ? "hull-ring" : "chip-ring");
            rings.add(ring);
        }
        words.setText(sight.words());
        words.getStyleClass().remove("look-at");
        if (!sight.good()) {
            words.getStyleClass().add("look-at");
        }
        setAccessibleText("The photo " + sight.photo() + ". " + sight.words() + ". Read: "
                + sight.marks().stream().map(SheetModel.Mark::name).collect(Collectors.joining(", ")));
        getChildren().setAll(picture, field);
        getChildren().addAll(rings);
        getChildren().add(words);
        requestLayout();
    }

    private double em() {
        return words.getFont().getSize();
    }

    /** Of the neutral around it. */
    private double edge() {
        return 0.9 * em();
    }

    private double scale(double width, double height) {
        return Math.min(
                width / picture.getImage().getWidth(),
                height / picture.getImage().getHeight());
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        return picture.getImage() == null || width <= 0
                ? 0
                : scale(width - 2 * edge(), MOST_HIGH_EM * em())
                                * picture.getImage().getHeight()
                        + 2 * edge();
    }

    @Override
    protected double computeMinHeight(double width) {
        return Math.min(LEAST_HIGH_EM * em(), computePrefHeight(width));
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        if (picture.getImage() == null) {
            return;
        }
        double scale = scale(getWidth() - 2 * edge(), getHeight() - 2 * edge());
        double wide = scale * picture.getImage().getWidth();
        words.resize(words.prefWidth(-1), words.prefHeight(-1));
        // Beside the photo where there is room; only a wide photo carries the words at its foot.
        double beside = getWidth() - wide - 3 * edge();
        boolean room = words.getWidth() <= beside;
        picture.setFitWidth(wide);
        double left = room ? edge() : (getWidth() - wide) / 2;
        picture.relocate(left, edge());
        field.setVisible(room);
        for (int i = 0; i < rings.size(); i++) {
            SheetModel.Mark mark = shown.marks().get(i);
            rings.get(i).setCenterX(left + scale * mark.x());
            rings.get(i).setCenterY(edge() + scale * mark.y());
            rings.get(i).setRadius(scale * mark.radius());
        }
        double tall = scale * picture.getImage().getHeight();
        if (room) {
            double below = words.getHeight() + 0.6 * em();
            field.resizeRelocate(left + wide + edge(), edge(), beside, tall - below);
            words.relocate(left + wide + edge(), edge() + tall - words.getHeight());
        } else {
            words.relocate(Math.max(0, (getWidth() - words.getWidth()) / 2), edge() + tall - words.getHeight() - em());
        }
    }
}
