package tintwright.match;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A short list in which each recipe is better than those above it in something a person would care about.
 */
final class Ranking {
    /** A judgement of ours. */
    private static final int MOST = 5;
    /** What a recipe may be worse than the best in expected CIEDE2000 and still be listed; a judgement of ours. */
    private static final double WORTH_SHOWING = 0.8;

    /** A judgement of ours. */
    private static final double PRICE_OF_A_TINT = 0.06;

    /** A judgement of ours. */
    private static final double PRICE_OF_METAMERISM = 0.15;
    /** For each per cent of tint in the mix: less of it is cheaper, and touches the film less; a judgement of ours. */
    private static final double PRICE_OF_LOADING = 0.12;
    /** CIEDE2000 that nobody sees: to be nearer than this counts for nothing; a judgement of ours. */
    private static final double UNSEEN = 0.3;

    private Ranking() {}

    static List<Recipe> rank(List<Recipe> judged) {
        List<Recipe> order = new ArrayList<>(judged);
        order.sort(Comparator.comparingDouble(Ranking::merit));
        List<Recipe> list = new ArrayList<>();
        for (Recipe recipe : order) {
            if (list.isEmpty()) {
                list.add(recipe);
            } else if (list.size() < MOST
                    && recipe.expected() <= list.get(0).expected() + WORTH_SHOWING
                    && recipe.deltaE()
                            <= Math.max(MatchAnswer.REACH, list.get(0).deltaE() + 0.3)) {
                List<String> words = betterThanAll(recipe, list);
                if (!words.isEmpty()) {
                    list.add(recipe.withBetterIn(words));
                }
            }
        }
        return list;
    }

    /** Lower is better: closeness as far as it is seen, then calm under other lights, then fewer and less tints. */
    private static double merit(Recipe recipe) {
        return Math.max(UNSEEN, recipe.expected())
                + 0.5 * Math.max(UNSEEN / 2, recipe.deltaE())
                + PRICE_OF_METAMERISM * recipe.metamerism()
                + PRICE_OF_A_TINT * recipe.exact().grams().size()
                + PRICE_OF_LOADING * 100 * recipe.tintGrams() / recipe.weighed().total();
    }

    private static List<String> betterThanAll(Recipe recipe, List<Recipe> above) {
        List<String> words = new ArrayList<>();
        if (above.stream()
                .allMatch(r -> recipe.exact().grams().size() < r.exact().grams().size())) {
            words.add("fewer tints");
        }
        if (above.stream().allMatch(r -> recipe.metamerism() < Math.min(0.75 * r.metamerism(), r.metamerism() - 0.2))) {
            words.add("holds better under other lights");
        }
        if (above.stream().allMatch(r -> recipe.chanceWithin1() > r.chanceWithin1() + 0.06)) {
            words.add("surer");
        }
        if (above.stream().allMatch(r -> recipe.stepCost() < Math.min(0.7 * r.stepCost(), r.stepCost() - 0.05))) {
            words.add("less touchy on the scale");
        }
        if (above.stream().allMatch(r -> recipe.tintGrams() < 0.8 * r.tintGrams())) {
            words.add("less tint");
        }
        if (recipe.cost().isPresent()
                && above.stream()
                        .allMatch(r -> r.cost().isPresent()
                                && recipe.cost().getAsDouble() < 0.97 * r.cost().getAsDouble())) {
            words.add("cheaper");
        }
        return words;
    }
}
