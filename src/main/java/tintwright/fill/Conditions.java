package tintwright.fill;

import java.util.Locale;
import java.util.OptionalDouble;
import tintwright.fill.repair.Sizes;
import tintwright.units.UnitSystem;

/**
 * The weather at the hull, its three temperatures apart: the cup's sets how long a cup can be worked, the hull's how
 * the film on it cures, and the coldest of the three is held against the lower limit.
 *
 * @param hullCelsius     temperature of the hull where it is filled, degrees Celsius
 * @param cupCelsius      temperature of gel coat and cup, degrees Celsius
 * @param airCelsius      temperature of the air, degrees Celsius
 * @param humidityPercent relative humidity of the air, 0 to 100; empty when unknown
 */
public record Conditions(double hullCelsius, double cupCelsius, double airCelsius, OptionalDouble humidityPercent) {
    /** Magnus formula over water, WMO-No. 8 (Guide to Instruments, annex on humidity formulae), from memory. */
    private static final double MAGNUS_A = 17.62;

    private static final double MAGNUS_B_CELSIUS = 243.12;

    public Conditions {
        Sizes.between("temperature of the hull", hullCelsius, -50, 80, "°C");
        Sizes.between("temperature of the cup", cupCelsius, -50, 60, "°C");
        Sizes.between("temperature of the air", airCelsius, -50, 60, "°C");
        humidityPercent.ifPresent(percent -> Sizes.between("relative humidity", percent, 0, 100, "%"));
    }

    /** Hull, cup and air equally warm. */
    public Conditions(double celsius, OptionalDouble humidityPercent) {
        this(celsius, celsius, celsius, humidityPercent);
    }

    /** @return true when hull, cup and air are equally warm */
    public boolean even() {
        return hullCelsius == cupCelsius && cupCelsius == airCelsius;
    }

    /** @return the coldest of hull, cup and air */
    double coldest() {
        return Math.min(hullCelsius, Math.min(cupCelsius, airCelsius));
    }

    /** @return "hull", "cup" or "air" */
    String coldestName() {
        return hullCelsius <= coldest() ? "hull" : cupCelsius <= coldest() ? "cup" : "air";
    }

    /** @return the weather in one line: "hull 34 °C, cup 31 °C, air 31 °C, 60 % humidity, dew point 22 °C" */
    public String words(UnitSystem units) {
        String warmth = even()
                ? units.temperature(hullCelsius)
                : "hull " + units.temperature(hullCelsius) + ", cup " + units.temperature(cupCelsius) + ", air "
                        + units.temperature(airCelsius);
        return warmth
                + (humidityPercent.isPresent()
                        ? String.format(Locale.ROOT, ", %.0f %% humidity", humidityPercent.getAsDouble())
                        : "")
                + (dewPoint().isPresent()
                        ? ", dew point " + units.temperature(dewPoint().getAsDouble())
                        : "");
    }

    /** @return temperature at which the air's moisture settles, degrees Celsius; empty in air of unknown or no humidity */
    public OptionalDouble dewPoint() {
        if (humidityPercent.isEmpty() || humidityPercent.getAsDouble() < 1) {
            return OptionalDouble.empty();
        }
        double damp =
                Math.log(humidityPercent.getAsDouble() / 100) + MAGNUS_A * airCelsius / (MAGNUS_B_CELSIUS + airCelsius);
        return OptionalDouble.of(MAGNUS_B_CELSIUS * damp / (MAGNUS_A - damp));
    }
}
