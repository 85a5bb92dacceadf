package tintwright.match;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import tintwright.colour.JudgedLight;
import tintwright.shelf.Parts;
import tintwright.shelf.knowledge.Prediction;

/**
 * One way to mix the colour, and what is known about it.
 *
 * @param exact          grams of each part for the batch wanted, base first, then the strongest darkener, then the others
 * @param weighed        the same as the scale can show it
 * @param prediction     the cured colour of what is weighed
 * @param deltaE         CIEDE2000 of that colour to the target, by the best estimate
 * @param expected       CIEDE2000 to the target to be expected, by all that is not known
 * @param chanceWithin1  probability, 0 to 1, that it comes within 1.0
 * @param chanceWithin2  probability, 0 to 1, that it comes within 2.0
 * @param within90       nine of ten times it comes within this CIEDE2000
 * @param roundingCost   what rounding to the scale adds, CIEDE2000 between the exact and the weighed mix
 * @param stepCost       what one step of the scale too much of the most touchy tint changes, CIEDE2000
 * @param lights         mix and target under each light; under the kind it was read in, as it was read
 * @param lightsEstimated true when the target's spectrum is not measured but estimated from its colour
 * @param metamerism     largest special index of metamerism from the light of the target to the others, CIEDE2000
 * @param tintGrams      grams of all tints
 * @param cost           in the shop's own money, when the prices are known
 * @param betterIn       in what this recipe beats all listed above it; empty for the first
 */
public record Recipe(
        Parts exact,
        Parts weighed,
        Prediction prediction,
        double deltaE,
        double expected,
        double chanceWithin1,
        double chanceWithin2,
        double within90,
        double roundingCost,
        double stepCost,
        Map<JudgedLight, UnderLight> lights,
        boolean lightsEstimated,
        double metamerism,
        double tintGrams,
        OptionalDouble cost,
        List<String> betterIn) {
    public Recipe {
        betterIn = List.copyOf(betterIn);
    }

    Recipe withPrediction(Prediction full) {
        return new Recipe(
                exact,
                weighed,
                full,
                deltaE,
                expected,
                chanceWithin1,
                chanceWithin2,
                within90,
                roundingCost,
                stepCost,
                lights,
                lightsEstimated,
                metamerism,
                tintGrams,
                cost,
                betterIn);
    }

    Recipe withBetterIn(List<String> words) {
        return new Recipe(
                exact,
                weighed,
                prediction,
                deltaE,
                expected,
                chanceWithin1,
                chanceWithin2,
                within90,
                roundingCost,
                stepCost,
                lights,
                lightsEstimated,
                metamerism,
                tintGrams,
                cost,
                words);
    }
}
