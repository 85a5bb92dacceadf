package tintwright.colour;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;

/**
 * A kind of light a repair is judged under: the four it meets at a mooring, at home and in a workshop (common practice,
 * no source). What is said of a pair under lights is a map by these. Their words stand here and nowhere else.
 */
public enum JudgedLight {
    DAYLIGHT("Daylight", "daylight", Illuminant.D65),
    LAMP("Lamp", "lamp light", Illuminant.A),
    LED("LED", "LED", Illuminant.LED_B3),
    TUBE("Tube", "fluorescent tube", Illuminant.FL11);

    private final String label;
    private final String words;
    private final Illuminant illuminant;

    JudgedLight(String label, String words, Illuminant illuminant) {
        this.label = label;
        this.words = words;
        this.illuminant = illuminant;
    }

    /** @return the kind that a CIE light is of; its name tells, CIE 15:2018 */
    public static JudgedLight of(Illuminant light) {
        String name = light.name();
        return name.startsWith("D") ? DAYLIGHT : name.startsWith("FL") ? TUBE : name.startsWith("LED") ? LED : LAMP;
    }

    /** @return what belongs to each light, every light among them */
    public static <T> Map<JudgedLight, T> each(Function<JudgedLight, T> value) {
        Map<JudgedLight, T> each = new EnumMap<>(JudgedLight.class);
        for (JudgedLight light : values()) {
            each.put(light, value.apply(light));
        }
        return Collections.unmodifiableMap(each);
    }

    /** @return one word for a key or a heading */
    public String label() {
        return label;
    }

    /** @return the kind in running text, such as "lamp light" */
    public String words() {
        return words;
    }

    /** @return a CIE light in words, such as "daylight (D50)" */
    public static String words(Illuminant light) {
        return of(light).words + " (" + light + ")";
    }

    /** @return the light that stands for all of its kind */
    public Illuminant illuminant() {
        return illuminant;
    }

    /**
     * @param read what a colour was read under
     * @return what it is judged under in this light: as it was read when that was light of this kind, so that all that is
     *         said of it agrees; the observer stays in any case
     */
    public Viewing viewing(Viewing read) {
        return of(read.light()) == this ? read : new Viewing(illuminant, read.observer());
    }
}
