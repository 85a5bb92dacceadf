package tintwright.window.pieces;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Things to do side by side, one open at a time: what is behind the chosen door stands below the doors. */
public final class Doors<D> extends VBox {
    private final Map<D, ToggleButton> keys = new LinkedHashMap<>();
    private final Map<D, List<Node>> behind = new LinkedHashMap<>();
    private final FlowPane row = new FlowPane();
    private final ToggleGroup group = new ToggleGroup();
    private final VBox open = new VBox();
    private final Function<D, String> id;

    /** @param id of the key of a door */
    public Doors(Function<D, String> id) {
        this.id = id;
        row.getStyleClass().add("door-keys");
        open.getStyleClass().add("column");
        getStyleClass().addAll("column", "slim-column");
        getChildren().setAll(row, open);
    }

    /** Adds a door; the first one is open until another is taken. */
    public Doors<D> with(D door, String words, Node... content) {
        ToggleButton key = new ToggleButton(words);
        key.getStyleClass().setAll("door-key");
        key.setId(id.apply(door));
        key.setMnemonicParsing(false);
        key.setToggleGroup(group);
        key.setMinWidth(Region.USE_PREF_SIZE);
        key.setOnAction(event -> take(door));
        keys.put(door, key);
        behind.put(door, List.of(content));
        row.getChildren().add(key);
        if (keys.size() == 1) {
            take(door);
        }
        return this;
    }

    /** Opens a door; pressed again it stays open. */
    public void take(D door) {
        keys.get(door).setSelected(true);
        open.getChildren().setAll(behind.get(door));
    }

    /** @return whether this door is open */
    public boolean isOpen(D door) {
        return keys.get(door).isSelected();
    }
}
