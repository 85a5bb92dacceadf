package tintwright.match;

import java.util.Optional;
import java.util.Set;

/**
 * What is wanted of a match.
 *
 * @param target    the colour to hit
 * @param grams     how much of the mix, 1 to 100000 g
 * @param scaleStep smallest step of the scale, 0.0001 to 10 g
 * @param leaveOut  ids of tints not to use
 * @param base      id of the base; empty for the first on the shelf
 * @param leftover  id of a leftover to start from; empty for none
 */
public record Wish(
        Target target,
        double grams,
        double scaleStep,
        Set<String> leaveOut,
        Optional<String> base,
        Optional<String> leftover) {
    public Wish {
        if (!(grams >= 1 && grams <= 100_000)) {
            throw new IllegalArgumentException("the batch must be 1 to 100000 g, was " + grams + " g");
        }
        if (!(scaleStep >= 0.0001 && scaleStep <= 10)) {
            throw new IllegalArgumentException("the scale's step must be 0.0001 to 10 g, was " + scaleStep + " g");
        }
        leaveOut = Set.copyOf(leaveOut);
    }

    public static Wish of(Target target, double grams, double scaleStep) {
        return new Wish(target, grams, scaleStep, Set.of(), Optional.empty(), Optional.empty());
    }

    public Wish without(Set<String> tints) {
        return new Wish(target, grams, scaleStep, tints, base, leftover);
    }
}
