package tintwright.fill;

import java.util.OptionalDouble;
import tintwright.fill.repair.Sizes;

/**
 * What stands on the bench, grams.
 *
 * @param cup     the matched colour
 * @param reserve white that was held back and can be tinted by the same recipe
 * @param paste   neutral gel paste; empty when nobody looked
 */
public record Supply(double cup, double reserve, OptionalDouble paste) {
    public Supply {
        Sizes.between("gel coat in the cup", cup, 0, 1e6, "g");
        Sizes.between("white in reserve", reserve, 0, 1e6, "g");
        paste.ifPresent(grams -> Sizes.between("gel paste on the shelf", grams, 0, 1e6, "g"));
    }
}
