package tintwright.window;

import java.util.List;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;

/** How the meter was set: the light it states its numbers for, and what it does with the gloss. */
final class MeterSetting extends VBox {
    /** For whoever does not know. */
    static final String HELP =
            "Not sure? Leave both as they are. The meter's menu or booklet names the code in " + "brackets.";
    /** What is taken for granted where the setting is not asked. */
    static final String USUAL = "The meter set to daylight (D65, 10\u00b0), without gloss (45:0 or d:8 excluded).";

    private record Named<T>(String words, T value) {}

    private static final List<Named<Viewing>> LIGHTS = List.of(
            new Named<>("daylight (D65, 10\u00b0)", Viewing.D65_10),
            new Named<>("daylight, narrow view (D65, 2\u00b0)", Viewing.D65_2),
            new Named<>("printer's light (D50, 2\u00b0)", Viewing.D50_2));
    private static final List<Named<Geometry>> GLOSS = List.of(
            new Named<>("without gloss (45:0, d:8 excluded)", Geometry.SPECULAR_EXCLUDED),
            new Named<>("with gloss (d:8 included)", Geometry.SPECULAR_INCLUDED));

    private final ComboBox<Named<Viewing>> light = new ComboBox<>();
    private final ComboBox<Named<Geometry>> gloss = new ComboBox<>();

    MeterSetting() {
        getStyleClass().add("asked");
        Choices.fill(light, LIGHTS, Named::words);
        Choices.fill(gloss, GLOSS, Named::words);
        light.setId("meter-light");
        gloss.setId("meter-gloss");
        light.getSelectionModel().select(0);
        gloss.getSelectionModel().select(0);
        getChildren()
                .addAll(
                        Choices.asked("The meter is set to", light),
                        Choices.asked("and reads the surface", gloss),
                        Pieces.soft(HELP));
    }

    /** Sets both as an earlier reading was made, so that nobody is asked twice. */
    void setTo(Viewing viewing, Geometry geometry) {
        light.setValue(LIGHTS.stream()
                .filter(named -> named.value().equals(viewing))
                .findFirst()
                .orElseGet(() -> new Named<>(viewing.toString(), viewing)));
        gloss.setValue(GLOSS.stream()
                .filter(named -> named.value() == geometry)
                .findFirst()
                .orElseThrow());
    }

    /** @return both in a few words */
    String words() {
        return light.getValue().words() + ", " + gloss.getValue().words();
    }

    /** @param change runs when one of them is set otherwise */
    void onChange(Runnable change) {
        light.valueProperty().addListener((property, before, after) -> change.run());
        gloss.valueProperty().addListener((property, before, after) -> change.run());
    }

    Viewing viewing() {
        return light.getValue().value();
    }

    Geometry geometry() {
        return gloss.getValue().value();
    }
}
