package tintwright.match;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tintwright.colour.Lab;
import tintwright.reading.Covariance;
import tintwright.shelf.Parts;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Knowledge;

/**
 * Which single chip would make a recipe most certain: the one whose reading is expected to shrink the spread of
 * the recipe's colour most.
 *
 * @param tintId  the tint to make it of, in the recipe's base
 * @param share   how strong: its share by mass, 0 to 1
 * @param grams   how much of the mix to make: enough that the scale tells the tint well
 * @param before  spread of the recipe's colour now: root mean square CIEDE2000
 * @param after   spread expected once the chip is read
 * @param words   the advice in one sentence
 */
public record NextChip(String tintId, double share, double grams, double before, double after, String words) {
    /** Shares of tint a chip may show: from the weakest a scale can weigh to half the usual limit; a judgement of ours. */
    private static final double[] STRENGTHS = {0.002, 0.005, 0.01, 0.02};
    /** A chip is worth making when it takes away at least this much of the spread; a judgement of ours. */
    private static final double WORTH_MAKING = 0.15;

    /** A chip and little more: enough to stir, not enough to waste; those below too are common practice, no source. */
    private static final double LEAST_GRAMS = 20;

    private static final double MOST_GRAMS = 60;
    /** Steps of the scale that a tint should weigh, for 5 % of it to be told; common practice, no source. */
    private static final double STEPS = 20;

    /**
     * @param scaleStep smallest step of the scale, grams
     * @return the chip to make next; empty when no chip would help enough
     */
    public static Optional<NextChip> of(Knowledge knowledge, Recipe recipe, Target target, double scaleStep) {
        Lab colour = recipe.prediction().lab();
        double[][] metric = Metric.around(colour);
        double before = spread(metric, recipe.prediction().covariance());
        String base = recipe.exact().grams().keySet().stream()
                .filter(id -> knowledge.shelf().base(id).isPresent())
                .findFirst()
                .orElseThrow();
        NextChip best = null;
        for (String id : recipe.exact().grams().keySet()) {
            Optional<Tint> tint = knowledge.shelf().tint(id);
            if (tint.isEmpty()) {
                continue;
            }
            for (double share : STRENGTHS) {
                if (share > tint.get().loadingLimit()) {
                    continue;
                }
                double grams = grams(share, scaleStep);
                double after = spread(
                        metric,
                        knowledge.covarianceAfter(
                                recipe.exact(), chip(base, id, share, grams), colour.viewing(), target.geometry()));
                if (best == null || after < best.after()) {
                    best = new NextChip(
                            id, share, grams, before, after, words(tint.get(), share, grams, before, after));
                }
            }
        }
        boolean worth = best != null && best.after() < before * (1 - WORTH_MAKING) && before > 0.3;
        return worth ? Optional.of(best) : Optional.empty();
    }

    /** @return how much of a chip to mix, grams, for a tint of this share to be told on the scale */
    public static double grams(double share, double scaleStep) {
        return Math.max(LEAST_GRAMS, Math.min(MOST_GRAMS, STEPS * scaleStep / share));
    }

    private static Parts chip(String base, String tint, double share, double grams) {
        Map<String, Double> parts = new LinkedHashMap<>();
        parts.put(base, grams * (1 - share));
        parts.put(tint, grams * share);
        return Parts.of(parts);
    }

    private static double spread(double[][] metric, Covariance covariance) {
        double[][] c = covariance.toArray();
        double sum = 0;
        for (double[] row : metric) {
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    sum += row[i] * c[i][j] * row[j];
                }
            }
        }
        return Math.sqrt(Math.max(0, sum));
    }

    private static String words(Tint tint, double share, double grams, double before, double after) {
        return String.format(
                Locale.ROOT,
                "Make one chip of %s next: %.2f g in %.0f g of white. It should bring "
                        + "the doubt about this recipe from %.1f down to %.1f.",
                tint.name(),
                share * grams,
                grams * (1 - share),
                before,
                after);
    }
}
