package tintwright.window.pieces;

import java.util.Collection;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Boxes to choose from, with the question above them. */
public final class Choices {
    private Choices() {}

    /** Fills a box and says each choice in words. */
    public static <T> void fill(ComboBox<T> box, Collection<T> values, Function<T, String> say) {
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(T value) {
                return value == null ? "" : say.apply(value);
            }

            @Override
            public T fromString(String text) {
                throw new UnsupportedOperationException("choices are not typed");
            }
        });
        box.getItems().setAll(values);
        box.setMaxWidth(Double.MAX_VALUE);
    }

    /** A labelled box that takes the room there is. */
    public static VBox asked(String question, ComboBox<?> box) {
        Label label = new Label(question);
        label.getStyleClass().add("question");
        label.setLabelFor(box);
        box.setAccessibleText(question);
        VBox asked = new VBox(label, box);
        asked.getStyleClass().add("asked");
        HBox.setHgrow(asked, Priority.ALWAYS);
        return asked;
    }
}
