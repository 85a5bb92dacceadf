package tintwright.window.pieces;

import java.util.List;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The three numbers of a colour meter to type in, with a word on what they say: the same wherever they are asked. */
public final class MeterFields extends VBox {
    /** What the three numbers are, in one sentence. */
    public static final String MEANING =
            "Three numbers your meter shows: L* dark to light, a* green to red, b* blue to " + "yellow.";

    private static final int COLUMNS = 4;

    private final TextField lightness;
    private final TextField redGreen;
    private final TextField yellowBlue;

    /**
     * @param lightnessId id of the field for L*
     * @param aId         of the field for a*
     * @param bId         of the field for b*
     * @param take        what Enter in any of them does
     */
    public MeterFields(String lightnessId, String aId, String bId, Runnable take) {
        lightness = field(lightnessId, take);
        redGreen = field(aId, take);
        yellowBlue = field(bId, take);
        getStyleClass().add("asked");
        HBox row = Controls.row(
                asked("L*", "dark to light, 0 to 100", lightness),
                asked("a*", "green below 0, red above", redGreen),
                asked("b*", "blue below 0, yellow above", yellowBlue));
        getChildren().addAll(row, Controls.soft(MEANING));
    }

    private static TextField field(String id, Runnable take) {
        TextField field = new TextField();
        field.setId(id);
        field.setPrefColumnCount(COLUMNS);
        field.setOnAction(event -> take.run());
        return field;
    }

    private static VBox asked(String name, String meaning, TextField field) {
        VBox asked = Controls.asked(name, field);
        field.setAccessibleText(name + ", " + meaning);
        field.setTooltip(new Tooltip(name + ": " + meaning));
        HBox.setHgrow(asked, Priority.SOMETIMES);
        return asked;
    }

    /** @return what is typed, L*, a*, b*; empty when nothing is */
    public List<String> typed() {
        List<String> typed = List.of(lightness(), a(), b());
        return typed.stream().allMatch(String::isBlank) ? List.of() : typed;
    }

    public String lightness() {
        return lightness.getText();
    }

    public String a() {
        return redGreen.getText();
    }

    public String b() {
        return yellowBlue.getText();
    }

    /** @return the first field, where typing begins */
    public TextField first() {
        return lightness;
    }

    /** @param look runs at every key, for what is drawn while it is typed */
    public void onTyped(Runnable look) {
        List.of(lightness, redGreen, yellowBlue)
                .forEach(field -> field.textProperty().addListener((property, before, after) -> look.run()));
    }

    /** Makes room for the next reading. */
    public void clear() {
        List.of(lightness, redGreen, yellowBlue).forEach(TextField::clear);
    }
}
