package tintwright.fill.catalyst;

import java.util.OptionalDouble;
import tintwright.fill.repair.Sizes;

/**
 * What this shop saw of one cup: when it gelled, and when the tape came off.
 *
 * @param celsius         temperature of the cup, degrees Celsius
 * @param share           catalyst, as it was measured
 * @param gelMinutes      from catalyst in to strings or lumps, minutes; empty when nobody looked
 * @param tapeOffMinutes  from catalyst in to tape off, minutes; empty when nobody looked
 */
public record NotedTime(double celsius, CatalystShare share, OptionalDouble gelMinutes, OptionalDouble tapeOffMinutes) {
    public NotedTime {
        Sizes.between("temperature of a noted time", celsius, 0, 60, "°C");
        gelMinutes.ifPresent(minutes -> Sizes.aboveZero("noted gel time", minutes, 720, "min"));
        tapeOffMinutes.ifPresent(minutes -> Sizes.aboveZero("noted tape-off time", minutes, 1440, "min"));
        if (gelMinutes.isPresent()
                && tapeOffMinutes.isPresent()
                && tapeOffMinutes.getAsDouble() < gelMinutes.getAsDouble()) {
            throw new IllegalArgumentException("tape comes off after the gel: the noted tape-off of "
                    + Sizes.plain(tapeOffMinutes.getAsDouble()) + " min lies before the gel at "
                    + Sizes.plain(gelMinutes.getAsDouble()) + " min");
        }
    }
}
