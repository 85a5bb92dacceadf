package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.SVGPath;

/**
 * Hull and mix edge to edge, large, under one light; the other lights wait below as smaller pairs to press. A colour
 * the screen cannot show carries a bar of slanted lines and says so.
 */
public final class SplitSwatch extends Picture {
    private static final int SLANTS = 60;

    private SwatchState state;
    private int chosen;
    private IntConsumer onChosen = index -> { };

    private final Rectangle hull = new Rectangle();
    private final Rectangle mix = new Rectangle();
    private final Rectangle chip = new Rectangle();
    private final Label hullName = text("", "picture-name");
    private final Label mixName = text("", "picture-name");
    private final Label chipName = text("", "picture-name");
    private final Label verdict = text("", "picture-figure");
    private final Label unshown = text("Outside what this screen can show", "unshown-words");
    private final List<Line> slants = new ArrayList<>();
    private final List<LightKey> keys = new ArrayList<>();

    public SplitSwatch() {
        super("split-swatch");
        List.of(hull, mix, chip).forEach(field -> field.setSmooth(false));
        setOnKeyPressed(event -> {
            if (state == null) {
                return;
            }
            if (event.getCode() == KeyCode.RIGHT) {
                choose((chosen + 1) % state.lights().size());
                event.consume();
            } else if (event.getCode() == KeyCode.LEFT) {
                choose((chosen + state.lights().size() - 1) % state.lights().size());
                event.consume();
            }
        });
    }

    /** @param listener told the index of the light a person chose */
    public void onLightChosen(IntConsumer listener) {
        onChosen = listener;
    }

    /** @return index of the light shown large */
    public int chosenLight() {
        return chosen;
    }

    public void show(SwatchState next) {
        state = next;
        chosen = Math.min(chosen, next.lights().size() - 1);
        redraw();
    }

    public void choose(int light) {
        chosen = light;
        redraw();
        onChosen.accept(light);
    }

    private void redraw() {
        SwatchState.UnderLight now = state.lights().get(chosen);
        List<Node> nodes = new ArrayList<>(List.of(hull, mix));
        hull.setFill(paint(now.hull()));
        mix.setFill(paint(now.mix()));
        hullName.setText(state.hullName());
        mixName.setText(state.mixName());
        verdict.setText(now.verdict());
        nodes.addAll(List.of(hullName, mixName, verdict));
        if (now.chip().isPresent()) {
            chip.setFill(paint(now.chip().get()));
            chipName.setText(state.chipName());
            nodes.addAll(List.of(chip, chipName));
        }
        slants.clear();
        if (!now.allShown()) {
            for (int i = 0; i < SLANTS; i++) {
                slants.add(styled(new Line(), "unshown"));
            }
            nodes.addAll(slants);
            nodes.add(unshown);
        }
        keys.clear();
        for (int i = 0; i < state.lights().size() && state.lights().size() > 1; i++) {
            int light = i;
            LightKey key = new LightKey(state.lights().get(i), i == chosen);
            key.setOnMouseClicked(event -> choose(light));
            keys.add(key);
        }
        nodes.addAll(keys);
        draw(nodes, words(now));
    }

    private String words(SwatchState.UnderLight now) {
        StringBuilder said = new StringBuilder("Split swatch under ").append(now.light()).append(": ")
                .append(state.hullName()).append(" beside ").append(state.mixName());
        now.chip().ifPresent(shade -> said.append(" and ").append(state.chipName()));
        said.append(". ").append(now.verdict()).append(".");
        if (!now.allShown()) {
            said.append(" ").append(unshown.getText()).append(".");
        }
        return said.append(" Left and right arrow keys change the light.").toString();
    }

    @Override
    protected void layoutChildren() {
        if (state == null) {
            return;
        }
        double em = em();
        double keyHeight = keys.isEmpty() ? 0 : 4.2 * em;
        double top = Math.round(2.2 * em);
        double bottom = getHeight() - keyHeight - 2.9 * em;
        double left = Math.round(1.2 * em);
        double right = getWidth() - left;
        Optional<Shade> third = state.lights().get(chosen).chip();
        double fields = third.isPresent() ? 3 : 2;
        // Whole pixels: a soft edge between two fields would be taken for a difference.
        double width = Math.floor((right - left) / fields);
        double height = Math.max(em, Math.floor(bottom - top));
        // The hull stands in the middle of three, so that both others touch it.
        double hullAt = third.isPresent() ? left + width : left;
        box(hull, hullAt, top, width, height);
        box(mix, hullAt + width, top, width, height);
        middleAt(hullName, hullAt + width / 2, top / 2 + 0.1 * em);
        middleAt(mixName, hullAt + width * 1.5, top / 2 + 0.1 * em);
        if (third.isPresent()) {
            box(chip, left, top, width, height);
            middleAt(chipName, left + width / 2, top / 2 + 0.1 * em);
        }
        middleAt(verdict, getWidth() / 2, bottom + 1.4 * em);
        layoutSlants(left, top + height - 1.9 * em, fields * width, 1.9 * em);
        double each = (right - left + 0.6 * em) / Math.max(1, keys.size());
        for (int i = 0; i < keys.size(); i++) {
            keys.get(i).resizeRelocate(Math.round(left + i * each), Math.round(getHeight() - keyHeight - 0.5 * em),
                    Math.floor(each - 0.6 * em), keyHeight - 0.2 * em);
        }
    }

    private void layoutSlants(double x, double y, double width, double height) {
        if (slants.isEmpty()) {
            return;
        }
        double step = (width - height) / (slants.size() - 1);
        for (int i = 0; i < slants.size(); i++) {
            double at = x + i * step;
            slants.get(i).setStartX(at);
            slants.get(i).setStartY(y + height);
            slants.get(i).setEndX(at + height);
            slants.get(i).setEndY(y);
        }
        middleAt(unshown, x + width / 2, y + height / 2);
    }

    private static void box(Rectangle field, double x, double y, double width, double height) {
        field.setX(x);
        field.setY(y);
        field.setWidth(width);
        field.setHeight(height);
    }

    @Override
    protected double computePrefWidth(double height) {
        return 34 * em();
    }

    @Override
    protected double computePrefHeight(double width) {
        return 22 * em();
    }

    @Override
    protected double computeMinHeight(double width) {
        return 14 * em();
    }

    @Override
    protected double computeMinWidth(double height) {
        return 20 * em();
    }

    /** A small pair of fields under one light, to press. */
    private static final class LightKey extends Region {
        private final Rectangle hull = new Rectangle();
        private final Rectangle mix = new Rectangle();
        private final SVGPath sign = new SVGPath();
        private final Label name;

        LightKey(SwatchState.UnderLight light, boolean chosen) {
            getStyleClass().add("light-key");
            if (chosen) {
                getStyleClass().add("light-key-chosen");
            }
            setManaged(false);
            setAccessibleRole(AccessibleRole.RADIO_BUTTON);
            setAccessibleText(light.light() + ", " + light.verdict() + (chosen ? ", chosen" : ""));
            hull.setFill(paint(light.hull()));
            mix.setFill(paint(light.mix()));
            sign.setContent(switch (light.lamp()) {
                case DAYLIGHT -> "M12 7a5 5 0 1 0 .01 0z M11 0h2v4h-2z M11 20h2v4h-2z M0 11h4v2h-4z M20 11h4v2h-4z";
                case LAMP -> "M12 2a7 7 0 0 0-4 12.7V18h8v-3.300A7 7 0 0 0 12 2z M8.500 19.500h7v1.500h-7z M10 22h4v1.500h-4z";
                case LED -> "M5 4h14v9h-14z M8 15h1.500v6h-1.500z M11.250 15h1.500v7h-1.500z M14.500 15h1.500v6h-1.500z";
                case TUBE -> "M1 8h22v5h-22z M4 15h1.500v5h-1.500z M11.250 15h1.500v7h-1.500z M18.500 15h1.500v5h-1.500z";
            });
            sign.getStyleClass().add("light-sign");
            name = text(light.light());
            getChildren().addAll(hull, mix, sign, name);
        }

        @Override
        protected void layoutChildren() {
            size(name);
            double em = name.getFont().getSize();
            double edge = 0.45 * em;
            double half = Math.floor((getWidth() - 2 * edge) / 2);
            double tall = Math.floor(1.5 * em);
            box(hull, edge, edge, half, tall);
            box(mix, edge + half, edge, half, tall);
            double scale = 1.25 * em / 24;
            sign.setScaleX(scale);
            sign.setScaleY(scale);
            double below = edge + tall + (getHeight() - edge - tall) / 2;
            double width = Math.min(name.getWidth(), getWidth() - 2.4 * em);
            double start = (getWidth() - width - 1.7 * em) / 2;
            sign.setLayoutX(start + 0.65 * em - sign.getLayoutBounds().getCenterX());
            sign.setLayoutY(below - sign.getLayoutBounds().getCenterY());
            name.resizeRelocate(start + 1.7 * em, below - name.getHeight() / 2, Math.ceil(width), name.getHeight());
        }
    }
}
