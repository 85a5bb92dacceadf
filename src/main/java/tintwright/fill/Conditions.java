package tintwright.fill;

import java.util.OptionalDouble;

/**
 * The weather at the hull.
 *
 * @param celsius         temperature of hull, gel coat and air: the coldest of the three, degrees Celsius
 * @param humidityPercent relative humidity, 0 to 100; empty when unknown
 */
public record Conditions(double celsius, OptionalDouble humidityPercent) {
    public Conditions {
        Sizes.between("temperature", celsius, -50, 60, "°C");
        humidityPercent.ifPresent(percent -> Sizes.between("relative humidity", percent, 0, 100, "%"));
    }
}
