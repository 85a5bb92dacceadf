package tintwright.match;

import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;

/**
 * Mix and target under one light.
 *
 * @param mix    the mix as foretold
 * @param target the target
 * @param deltaE CIEDE2000 between them
 */
public record UnderLight(Lab mix, Lab target, double deltaE) {
    /** @param mix stated for the same light and observer as the target */
    static UnderLight of(Lab mix, Lab target) {
        return new UnderLight(mix, target, Ciede2000.between(mix, target));
    }
}
