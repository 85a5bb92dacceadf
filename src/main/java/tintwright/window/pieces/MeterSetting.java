package tintwright.window.pieces;

import java.util.List;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;
import tintwright.colour.Geometry;
import tintwright.colour.JudgedLight;
import tintwright.colour.Viewing;

/** How the meter was set: the light it states its numbers for, and what it does with the gloss. */
public final class MeterSetting extends VBox {
    /** For whoever does not know. */
    static final String HELP =
            "Not sure? Leave both as they are. The meter's menu or booklet names the code in " + "brackets.";
    /** What is taken for granted where the setting is not asked. */
    public static final String USUAL =
            "The meter set to daylight (D65, 10\u00b0), without gloss (45:0 or d:8 excluded).";

    private final ComboBox<Viewing> light = new ComboBox<>();
    private final ComboBox<Geometry> gloss = new ComboBox<>();

    public MeterSetting() {
        getStyleClass().add("asked");
        Choices.fill(light, List.of(Viewing.D65_10, Viewing.D65_2, Viewing.D50_2), MeterSetting::words);
        Choices.fill(gloss, List.of(Geometry.SPECULAR_EXCLUDED, Geometry.SPECULAR_INCLUDED), MeterSetting::words);
        light.setId("meter-light");
        gloss.setId("meter-gloss");
        setTo(Viewing.D65_10, Geometry.SPECULAR_EXCLUDED);
        getChildren()
                .addAll(
                        Choices.asked("The meter is set to", light),
                        Choices.asked("and reads the surface", gloss),
                        Pieces.soft(HELP));
    }

    /** Sets both as an earlier reading was made, so that nobody is asked twice. */
    public void setTo(Viewing viewing, Geometry geometry) {
        light.setValue(viewing);
        gloss.setValue(geometry);
    }

    private static String words(Viewing viewing) {
        String name = viewing.equals(Viewing.D65_2)
                ? "daylight, narrow view (D65)"
                : viewing.equals(Viewing.D50_2) ? "printer's light (D50)" : JudgedLight.words(viewing.light());
        return name.replace(")", ", " + viewing.observer().degrees() + "\u00b0)");
    }

    private static String words(Geometry geometry) {
        return switch (geometry) {
            case SPECULAR_EXCLUDED -> "without gloss (45:0, d:8 excluded)";
            case SPECULAR_INCLUDED -> "with gloss (d:8 included)";
        };
    }

    /** @return both in a few words */
    public String words() {
        return words(viewing()) + ", " + words(geometry());
    }

    /** @param change runs when one of them is set otherwise */
    public void onChange(Runnable change) {
        light.valueProperty().addListener((property, before, after) -> change.run());
        gloss.valueProperty().addListener((property, before, after) -> change.run());
    }

    public Viewing viewing() {
        return light.getValue();
    }

    public Geometry geometry() {
        return gloss.getValue();
    }
}
