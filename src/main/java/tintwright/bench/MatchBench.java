package tintwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import tintwright.match.MatchAnswer;
import tintwright.match.Matcher;
import tintwright.match.Recipe;
import tintwright.match.Wish;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;
import tintwright.shelf.knowledge.Knowledge;

/** Match a target: what to weigh, in which order, and what to think of it. */
public final class MatchBench {
    /** Below this not even one tint at its loading limit can be told on the scale; a judgement of ours. */
    private static final int FEWEST_STEPS_OF_A_BATCH = 100;

    private final Knowledge knowledge;
    private final Matcher matcher;

    private MatchBench(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.matcher = new Matcher(knowledge);
    }

    /** @return the bench for a shelf; learns from its chips, which takes a moment */
    public static MatchBench of(Shelf shelf) {
        return new MatchBench(Knowledge.of(shelf));
    }

    /** @return the bench for what is already known of a shelf */
    public static MatchBench of(Knowledge knowledge) {
        return new MatchBench(knowledge);
    }

    /** @return what the chips of the shelf have taught */
    public Knowledge knowledge() {
        return knowledge;
    }

    /**
     * @throws IllegalArgumentException when the wish names a base, tint or leftover that is not on the shelf, or the
     *         batch is too small for the scale
     */
    public MatchAnswer match(Wish wish) {
        if (wish.grams() < FEWEST_STEPS_OF_A_BATCH * wish.scaleStep()) {
            throw new IllegalArgumentException("a batch of " + wish.grams() + " g cannot be weighed in steps of "
                    + wish.scaleStep() + " g: make at least " + FEWEST_STEPS_OF_A_BATCH * wish.scaleStep()
                    + " g or take a finer scale");
        }
        wish.leftover().ifPresent(id -> {
            if (knowledge.shelf().leftover(id).isEmpty()) {
                throw new IllegalArgumentException("there is no leftover \"" + id + "\" on the shelf");
            }
        });
        return matcher.match(wish);
    }

    /** @return what to do when the tints would reach the hull and the scale does not */
    public static String tooCoarse(MatchAnswer.TooCoarse answer) {
        return String.format(
                Locale.ROOT,
                "The tints would reach it, but the scale is too coarse for this batch: "
                        + "rounding alone leaves %.1f. Make more, take a finer scale, or stir the tints into some white first.",
                answer.best().deltaE());
    }

    /** @return a sentence for each part of which less is left than the recipe takes; mostly none */
    public List<String> shortages(Recipe recipe) {
        List<String> sentences = new ArrayList<>();
        recipe.weighed().grams().forEach((id, grams) -> {
            Shelf shelf = knowledge.shelf();
            OptionalDouble left =
                    shelf.item(id).map(item -> item.stock().gramsLeft()).orElse(OptionalDouble.empty());
            if (left.isPresent() && left.getAsDouble() < grams) {
                sentences.add(String.format(
                        Locale.ROOT, "Only %.1f g of %s are left on the shelf.", left.getAsDouble(), shelf.nameOf(id)));
            }
        });
        return sentences;
    }

    /**
     * What to weigh, in the order of the trade: base, then black or the strongest darkener, then the others.
     *
     * @param scaleStep smallest step of the scale in grams
     */
    public List<Weighing> order(Recipe recipe, double scaleStep) {
        Parts weighed = recipe.weighed();
        List<Weighing> order = new ArrayList<>();
        weighed.grams()
                .forEach((id, grams) -> order.add(new Weighing(
                        id,
                        knowledge.shelf().nameOf(id),
                        knowledge.shelf().tint(id).isPresent(),
                        grams,
                        recipe.exact().grams(id),
                        weighed.share(id),
                        grams / scaleStep)));
        return order;
    }
}
