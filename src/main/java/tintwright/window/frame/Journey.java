package tintwright.window.frame;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;

/** The stations of the job side by side, each with its sign, its name and what is known there already. */
final class Journey extends HBox {
    private static final Map<Step, String> SIGNS = new EnumMap<>(
            Map.of(
                    Step.BOAT, "M2 15h24l-3.500 8h-17z M13 2v11h-1.500v-11z M14.500 3.500l8 9.500h-8z",
                    Step.HULL, "M2 6c8 3 16 3 24 0v14c-8 4-16 4-24 0z M9 10h10v7h-10z",
                    Step.SHELF, "M2 22h24v2.500h-24z M4 10h5v11h-5z M11.500 6h5v15h-5z M19 12h5v9h-5z",
                    Step.CUP, "M5 5h18l-3 20h-12z M3 2.500h22v2h-22z",
                    Step.FILL, "M2 18c4 0 6 5 12 5s8-5 12-5v7h-24z M12 2h4v9l3 3-5 5-5-5 3-3z",
                    Step.LOG,
                            "M4 3h9c1 0 1 1 1 1s0-1 1-1h9v20h-10h-10z M6.500 7v1.500h5v-1.500z M6.500 11v1.500h5v-1.500z M16.500 7v1.500h5v-1.500z"));

    private final Map<Step, ToggleButton> keys = new EnumMap<>(Step.class);

    Journey(ShellModel model, Collection<Step> stations) {
        getStyleClass().add("journey");
        for (Step step : stations) {
            ToggleButton key = key(model, step);
            keys.put(step, key);
            HBox.setHgrow(key, Priority.ALWAYS);
            getChildren().add(key);
        }
        model.stepProperty().addListener((property, before, after) -> mark(after));
        mark(model.stepProperty().get());
    }

    private ToggleButton key(ShellModel model, Step step) {
        SVGPath outline = new SVGPath();
        outline.setContent(SIGNS.get(step));
        Region sign = new Region();
        sign.setShape(outline);
        sign.getStyleClass().add("station-sign");
        StackPane frame = new StackPane(sign);
        frame.getStyleClass().add("station-frame");
        Label name = new Label(step.title());
        name.getStyleClass().add("station-name");
        Label caption = new Label();
        caption.getStyleClass().add("station-caption");
        caption.textProperty().bind(model.captionProperty(step));
        VBox words = new VBox(name, caption);
        HBox content = new HBox(frame, words);
        content.getStyleClass().add("station");
        ToggleButton key = new ToggleButton();
        key.setGraphic(content);
        key.setMaxWidth(Double.MAX_VALUE);
        key.setMinWidth(0);
        key.setPrefWidth(100);
        key.getStyleClass().setAll("station-key");
        key.accessibleTextProperty().bind(model.captionProperty(step).map(said -> step.title() + ": " + said));
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
