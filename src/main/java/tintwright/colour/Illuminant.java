package tintwright.colour;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Relative spectral power of a light, 380 to 780 nm every 5 nm.
 *
 * <p>Source: ISO/CIE 11664-2 (A, D50, D65), CIE 15:2004 table T.6 (FL), CIE 15:2018 table 12 (LED); D75 by the
 * calculation of daylight in the same standards.
 */
public final class Illuminant {
    static final Grid TABLE = Grid.between(380, 780, 5);

    private static final Map<String, Illuminant> BY_NAME = new LinkedHashMap<>();
    /** By column of the table, from its second on. */
    private static final double[][] TABULATED = CieTable.columns("illuminants.csv", 1, 9);

    /** Incandescent lamp, 2856 K. */
    public static final Illuminant A = tabulated("A", 1);
    /** Daylight at 5003 K, the light of the graphic arts and of ICC profiles. */
    public static final Illuminant D50 = tabulated("D50", 2);
    /** Daylight at 6504 K, overcast sky. */
    public static final Illuminant D65 = tabulated("D65", 3);
    /** Daylight at 7504 K, the blue light of a north sky. */
    public static final Illuminant D75 = known("D75", Daylight.power(Daylight.ofNominal(7500), TABLE));
    /** Cool white fluorescent tube. */
    public static final Illuminant FL2 = tabulated("FL2", 4);
    /** Narrow-band fluorescent tube, 4000 K: what hangs in most workshops. */
    public static final Illuminant FL11 = tabulated("FL11", 5);
    /** Narrow-band fluorescent tube, 3000 K. */
    public static final Illuminant FL12 = tabulated("FL12", 6);
    /** Phosphor LED, 2733 K. */
    public static final Illuminant LED_B1 = tabulated("LED-B1", 7);
    /** Phosphor LED, 4103 K: a workshop LED. */
    public static final Illuminant LED_B3 = tabulated("LED-B3", 8);
    /** Phosphor LED, 6598 K. */
    public static final Illuminant LED_B5 = tabulated("LED-B5", 9);

    private final String name;
    private final double[] power;

    private Illuminant(String name, double[] power) {
        this.name = name;
        this.power = power;
    }

    private static Illuminant tabulated(String name, int column) {
        return known(name, TABULATED[column - 1]);
    }

    private static Illuminant known(String name, double[] power) {
        Illuminant light = new Illuminant(name, power);
        BY_NAME.put(name, light);
        return light;
    }

    /**
     * @param name a CIE name such as {@code D65}, {@code FL11} or {@code LED-B3}, or a daylight by its temperature
     *             such as {@code D5500K}; case does not matter
     * @throws IllegalArgumentException when the name is neither one of {@link #names()} nor a daylight
     */
    public static Illuminant named(String name) {
        String key = name.trim().toUpperCase(Locale.ROOT);
        Illuminant light = BY_NAME.get(key);
        if (light == null && key.matches("D[0-9]{1,9}(\\.[0-9]{1,9})?K")) {
            return daylight(Double.parseDouble(key.substring(1, key.length() - 1)));
        }
        if (light == null) {
            throw new IllegalArgumentException("illuminant must be one of " + String.join(", ", names())
                    + " or a daylight such as D5500K, was \"" + name + "\"");
        }
        return light;
    }

    /**
     * Daylight of a correlated colour temperature.
     *
     * <p>The components every 10 nm, straight lines between them, their shares rounded to three decimals as the
     * standard asks. The nominal 5000, 6500 and 7500 K of D50, D65 and D75 stand on an older scale of temperature, so
     * those three are not found by their nominal temperature here but by their names.
     * Source: CIE 15:2018, the calculation of daylight; ISO/CIE 11664-2.
     *
     * @param kelvin 4000 to 25000 K
     */
    public static Illuminant daylight(double kelvin) {
        return new Illuminant(Daylight.name(kelvin), Daylight.power(kelvin, TABLE));
    }

    /** @return the names that {@link #named(String)} knows */
    public static Set<String> names() {
        return Collections.unmodifiableSet(BY_NAME.keySet());
    }

    public String name() {
        return name;
    }

    /** @return relative power at a wavelength from 380 to 780 nm, straight lines between the 5 nm values */
    public double power(double nm) {
        if (nm < TABLE.firstNm() || nm > TABLE.lastNm()) {
            return 0;
        }
        double position = (nm - TABLE.firstNm()) / TABLE.stepNm();
        int left = Math.min((int) position, TABLE.count() - 2);
        double part = position - left;
        return power[left] * (1 - part) + power[left + 1] * part;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Illuminant that && name.equals(that.name) && java.util.Arrays.equals(power, that.power);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
