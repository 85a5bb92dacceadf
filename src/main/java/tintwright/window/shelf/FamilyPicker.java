package tintwright.window.shelf;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tintwright.shelf.PigmentFamily;
import tintwright.window.picture.Shade;
import tintwright.window.pieces.Controls;

/** What a tint is, chosen by what it looks like: as it stands in the tub, and a little of it in white. */
final class FamilyPicker extends VBox {
    private static final int COLUMNS = 4;

    private final Map<PigmentFamily, ToggleButton> keys = new EnumMap<>(PigmentFamily.class);
    private final Runnable then;

    /** @param then called when one was chosen */
    FamilyPicker(Map<PigmentFamily, ShelfModel.Looks> looks, Runnable then) {
        this.then = then;
        draw(looks);
    }

    private void draw(Map<PigmentFamily, ShelfModel.Looks> looks) {
        getStyleClass().add("asked");
        ToggleGroup group = new ToggleGroup();
        GridPane grid = new GridPane();
        grid.getStyleClass().add("families");
        for (PigmentFamily family : PigmentFamily.values()) {
            ToggleButton key = key(family, Optional.ofNullable(looks.get(family)));
            key.setToggleGroup(group);
            keys.put(family, key);
            GridPane.setHgrow(key, Priority.ALWAYS);
            grid.add(key, family.ordinal() % COLUMNS, family.ordinal() / COLUMNS);
        }
        getChildren().addAll(Controls.wrapped("What does it look like?", "question"), grid);
    }

    private ToggleButton key(PigmentFamily family, Optional<ShelfModel.Looks> looks) {
        HBox drawn = new HBox();
        drawn.getStyleClass().add("family-drawn");
        if (looks.isPresent()) {
            drawn.getChildren()
                    .addAll(
                            field(looks.get().tub(), "left-half"),
                            field(looks.get().inWhite(), "right-half"));
        } else {
            StackPane open = new StackPane(Controls.wrapped("?", "shelf-unknown"));
            HBox.setHgrow(open, Priority.ALWAYS);
            drawn.getChildren().add(open);
        }
        Label name = new Label(family.plain());
        name.getStyleClass().add("family-name");
        VBox card = new VBox(drawn, name);
        card.setAlignment(Pos.CENTER);
        card.getStyleClass().add("family-card");
        ToggleButton key = new ToggleButton();
        key.setGraphic(card);
        key.getStyleClass().setAll("choice-key", "family-key");
        key.setId("family-" + family.code());
        key.setMaxWidth(Double.MAX_VALUE);
        key.setAccessibleText(family.plain());
        key.setTooltip(new Tooltip(
                family == PigmentFamily.UNKNOWN
                        ? "One chip of it will tell"
                        : "Pigment: " + family.words() + ". Left as in the tub, right one part in a hundred of white"));
        // Pressed a second time it stays chosen.
        key.setOnAction(event -> {
            key.setSelected(true);
            then.run();
        });
        return key;
    }

    private static Node field(Shade shade, String half) {
        StackPane field = new StackPane();
        field.getStyleClass().add(half);
        field.setStyle(shade.css());
        HBox.setHgrow(field, Priority.ALWAYS);
        return field;
    }

    /** @return what was chosen; empty before anything was */
    Optional<PigmentFamily> chosen() {
        return keys.entrySet().stream()
                .filter(entry -> entry.getValue().isSelected())
                .map(Map.Entry::getKey)
                .findFirst();
    }

    void choose(PigmentFamily family) {
        keys.get(family).setSelected(true);
    }
}
