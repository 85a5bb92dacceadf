package tintwright.window.frame;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.shape.SVGPath;

/** The stations of the job side by side, each with its name and a tick where all is known already. */
final class Journey extends HBox {
    private static final String TICK = "M1 6l1.800-1.800 3.200 3.200 7.200-7.200 1.800 1.800-9 9z";

    private final Map<Step, ToggleButton> keys = new EnumMap<>(Step.class);

    Journey(ShellModel model, Collection<Step> stations) {
        getStyleClass().add("journey");
        for (Step step : stations) {
            ToggleButton key = key(model, step);
            keys.put(step, key);
            getChildren().add(key);
        }
        model.stepProperty().addListener((property, before, after) -> mark(after));
        mark(model.stepProperty().get());
    }

    private ToggleButton key(ShellModel model, Step step) {
        SVGPath outline = new SVGPath();
        outline.setContent(TICK);
        Region tick = new Region();
        tick.setShape(outline);
        tick.getStyleClass().add("station-tick");
        ToggleButton key = new ToggleButton(step.title());
        key.setMnemonicParsing(false);
        model.doneProperty(step).addListener((property, before, after) -> key.setGraphic(after ? tick : null));
        key.setGraphic(model.doneProperty(step).get() ? tick : null);
        key.getStyleClass().setAll("station-key");
        key.setMinWidth(USE_PREF_SIZE);
        key.accessibleTextProperty().bind(model.captionProperty(step).map(said -> step.title() + ": " + said));
        Tooltip tip = new Tooltip();
        tip.textProperty().bind(model.captionProperty(step));
        key.setTooltip(tip);
        key.setOnAction(event -> {
            model.stepProperty().set(step);
            mark(step);
        });
        return key;
    }

    /** Puts the focus on the key of the station in hand. */
    void focusChosen() {
        keys.values().stream().filter(ToggleButton::isSelected).findFirst().ifPresent(ToggleButton::requestFocus);
    }

    private void mark(Step chosen) {
        keys.forEach((step, key) -> key.setSelected(step == chosen));
    }
}
