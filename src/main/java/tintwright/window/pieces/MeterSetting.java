package tintwright.window.pieces;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import tintwright.colour.Geometry;
import tintwright.colour.JudgedLight;
import tintwright.colour.Viewing;

/** How the meter was set: the light it states its numbers for, and what it does with the gloss. */
public final class MeterSetting extends VBox {
    /** For whoever does not know. */
    static final String HELP =
            "Not sure? Leave both as they are. Held over either, the pointer shows the code in the meter's booklet.";
    /** What is taken for granted where the setting is not asked. */
    public static final String USUAL = "The meter set to daylight, without gloss.";
    /** The same in the codes of a meter's booklet. */
    public static final String USUAL_CODES = "D65, 10\u00b0, 45:0 or d:8 excluded";

    /** What a meter is usually set to, in words, the likeliest first. */
    private static final Map<Viewing, String> LIGHTS = lights();

    private final ComboBox<Viewing> light = new ComboBox<>();
    private final ComboBox<Geometry> gloss = new ComboBox<>();

    public MeterSetting() {
        getStyleClass().add("asked");
        Choices.fill(light, List.copyOf(LIGHTS.keySet()), MeterSetting::words);
        Choices.fill(gloss, List.of(Geometry.SPECULAR_EXCLUDED, Geometry.SPECULAR_INCLUDED), MeterSetting::words);
        light.setId("meter-light");
        gloss.setId("meter-gloss");
        setTo(Viewing.D65_10, Geometry.SPECULAR_EXCLUDED);
        onChange(this::tell);
        getChildren()
                .addAll(
                        Choices.asked("The meter is set to", light),
                        Choices.asked("and reads the surface", gloss),
                        Controls.soft(HELP));
    }

    private static Map<Viewing, String> lights() {
        Map<Viewing, String> lights = new LinkedHashMap<>();
        lights.put(Viewing.D65_10, "daylight");
        lights.put(Viewing.D65_2, "daylight, narrow view");
        lights.put(Viewing.D50_2, "printer's light");
        lights.put(Viewing.D75_10, "north sky");
        return lights;
    }

    /** Sets both as an earlier reading was made, so that nobody is asked twice. */
    public void setTo(Viewing viewing, Geometry geometry) {
        light.setValue(viewing);
        gloss.setValue(geometry);
        tell();
    }

    private static String words(Viewing viewing) {
        return LIGHTS.getOrDefault(viewing, JudgedLight.of(viewing.light()).words());
    }

    private static String words(Geometry geometry) {
        return switch (geometry) {
            case SPECULAR_EXCLUDED -> "without gloss";
            case SPECULAR_INCLUDED -> "with gloss";
        };
    }

    /** The codes that a meter's booklet names, for whoever has it in hand. */
    private void tell() {
        Viewing viewing = light.getValue();
        light.setTooltip(
                new Tooltip(viewing.light().name() + ", " + viewing.observer().degrees() + "\u00b0"));
        gloss.setTooltip(
                new Tooltip(gloss.getValue() == Geometry.SPECULAR_EXCLUDED ? "45:0, or d:8 excluded" : "d:8 included"));
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
