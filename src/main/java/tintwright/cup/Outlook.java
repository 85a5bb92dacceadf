package tintwright.cup;

import tintwright.colour.DifferenceWords;
import tintwright.colour.Lab;

/**
 * How near a mix comes to the hull, by all that is known and not known.
 *
 * @param lab           its cured colour by the best estimate
 * @param deltaE        CIEDE2000 of that colour to the hull by the best estimate
 * @param expected      CIEDE2000 to the true hull to be expected
 * @param chanceWithin1 probability, 0 to 1, that it is within 1.0
 * @param chanceWithin2 probability, 0 to 1, that it is within 2.0
 * @param within90      CIEDE2000 to the true hull that nine cases of ten stay within
 * @param chanceTooDark probability, 0 to 1, that it is darker than the hull by more than 0.5 L*
 */
public record Outlook(
        Lab lab,
        double deltaE,
        double expected,
        double chanceWithin1,
        double chanceWithin2,
        double within90,
        double chanceTooDark) {
    /** @return how near and how sure, such as "about 0.3 from the hull, likely within 0.6: hard to see" */
    public String words() {
        String size = DifferenceWords.size(expected);
        return (size.startsWith("under") ? size : "about " + size) + " from the hull, "
                + DifferenceWords.likely(within90);
    }
}
