package tintwright.window.picture;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.SVGPath;
import tintwright.colour.DifferenceWords;
import tintwright.colour.JudgedLight;

/** A small pair of fields under one light, to press. */
final class LightKey extends Region {
    /** Width in text sizes from which the fields stand beside the name. */
    static final double WIDE = 9.5;

    private final Rectangle hull = new Rectangle();
    private final Rectangle mix = new Rectangle();
    private final SVGPath sign = new SVGPath();
    private final Label name;

    LightKey(JudgedLight light, SwatchState.UnderLight pair, boolean chosen) {
        getStyleClass().add("light-key");
        if (chosen) {
            getStyleClass().add("light-key-chosen");
        }
        setManaged(false);
        setAccessibleRole(AccessibleRole.RADIO_BUTTON);
        setAccessibleText(light.label() + ", " + DifferenceWords.off(pair.apart()) + ", " + pair.words()
                + (chosen ? ", chosen" : ""));
        hull.setFill(Picture.paint(pair.hull()));
        mix.setFill(Picture.paint(pair.mix()));
        sign.setContent(
                switch (light) {
                    case DAYLIGHT -> "M12 7a5 5 0 1 0 .01 0z M11 0h2v4h-2z M11 20h2v4h-2z M0 11h4v2h-4z M20 11h4v2h-4z";
                    case LAMP ->
                        "M12 2a7 7 0 0 0-4 12.7V18h8v-3.300A7 7 0 0 0 12 2z M8.500 19.500h7v1.500h-7z M10 22h4v1.500h-4z";
                    case LED ->
                        "M5 4h14v9h-14z M8 15h1.500v6h-1.500z M11.250 15h1.500v7h-1.500z M14.500 15h1.500v6h-1.500z";
                    case TUBE ->
                        "M1 8h22v5h-22z M4 15h1.500v5h-1.500z M11.250 15h1.500v7h-1.500z M18.500 15h1.500v5h-1.500z";
                });
        sign.getStyleClass().add("light-sign");
        name = Picture.text(light.label(), "picture-small");
        getChildren().addAll(hull, mix, sign, name);
    }

    @Override
    protected void layoutChildren() {
        Picture.size(name);
        double em = name.getFont().getSize() / 0.87;
        double edge = 0.4 * em;
        boolean beside = getWidth() >= WIDE * em;
        double half = Math.floor(beside ? (getWidth() - 7.6 * em) / 2 : (getWidth() - 2 * edge) / 2);
        double tall = Math.floor(beside ? getHeight() - 2 * edge : 1.4 * em);
        double corner = Math.round(edge);
        SplitSwatch.box(hull, corner, corner, half, tall);
        SplitSwatch.box(mix, corner + half, corner, half, tall);
        double scale = 1.2 * em / 24;
        sign.setScaleX(scale);
        sign.setScaleY(scale);
        double middle = beside ? getHeight() / 2 : edge + tall + (getHeight() - edge - tall) / 2;
        double from = beside ? 2 * edge + 2 * half : 0;
        double wide = name.getWidth() + 1.6 * em;
        // A sign without room for it gives way to the name.
        boolean signed = wide <= getWidth() - from;
        sign.setVisible(signed);
        double width = Math.min(name.getWidth(), getWidth() - from - 0.2 * em);
        double start = from + (getWidth() - from - (signed ? wide : width)) / 2;
        sign.setLayoutX(start + 0.6 * em - sign.getLayoutBounds().getCenterX());
        sign.setLayoutY(middle - sign.getLayoutBounds().getCenterY());
        name.resizeRelocate(
                start + (signed ? 1.6 * em : 0), middle - name.getHeight() / 2, Math.ceil(width), name.getHeight());
    }
}
