package tintwright.window.picture;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.colour.JudgedLight;

/**
 * What the split swatch shows.
 *
 * @param hullName what the hull's field is called
 * @param mixName  what the mix's field is called, such as "Cup, as computed"
 * @param chipName what the third field is called, when there is one
 * @param compared what the number compares, such as "Hull and cup"
 * @param lights   the same colours under each light, at least one
 */
public record SwatchState(
        String hullName, String mixName, String chipName, String compared, Map<JudgedLight, UnderLight> lights) {
    /**
     * @param hull  the hull under this light
     * @param mix   the mix under this light
     * @param chip  the chip that was read, when there is one
     * @param apart how far apart the two that are compared are, CIEDE2000, 0 or more
     * @param words how they differ, such as "too dark and a touch red"
     * @param within90 nine times in ten they are within this CIEDE2000; empty where that is not known
     */
    public record UnderLight(
            Shade hull, Shade mix, Optional<Shade> chip, double apart, String words, OptionalDouble within90) {
        public UnderLight {
            if (!(apart >= 0)) {
                throw new IllegalArgumentException("a difference is 0 or more, was " + apart);
            }
        }

        boolean allShown() {
            return hull.shown() && mix.shown() && chip.map(Shade::shown).orElse(true);
        }
    }

    public SwatchState {
        if (lights.isEmpty()) {
            throw new IllegalArgumentException("the split swatch needs at least one light");
        }
        lights = Collections.unmodifiableMap(new EnumMap<>(lights));
    }
}
