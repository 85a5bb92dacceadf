package tintwright.fill.catalyst;

import java.util.Locale;
import tintwright.fill.repair.Sizes;

/**
 * How long a catalysed cup can be worked before it gels, as a range: plan on the shorter, expect the longer.
 *
 * @param leastMinutes above 0
 * @param mostMinutes  at least as long
 */
public record WorkingTime(double leastMinutes, double mostMinutes) {
    public WorkingTime {
        Sizes.aboveZero("shortest working time", leastMinutes, 1440, "min");
        Sizes.aboveZero("longest working time", mostMinutes, 10_080, "min");
        if (mostMinutes < leastMinutes) {
            throw new IllegalArgumentException("the longest working time must not be below the shortest of "
                    + Sizes.plain(leastMinutes) + " min, was " + Sizes.plain(mostMinutes) + " min");
        }
    }

    /** @return the range in words: "10 to 17 min" */
    public String words() {
        return minutes(leastMinutes, mostMinutes);
    }

    public static String minutes(double least, double most) {
        if (least >= 120) {
            return String.format(Locale.ROOT, "%.0f to %.0f h", Math.floor(least / 60), Math.ceil(most / 60));
        }
        return String.format(Locale.ROOT, "%.0f to %.0f min", Math.floor(least), Math.ceil(most));
    }
}
