package tintwright.bench;

import java.util.ArrayList;
import java.util.List;
import tintwright.files.Demo;
import tintwright.match.MatchAnswer;
import tintwright.match.Matcher;
import tintwright.match.Recipe;
import tintwright.match.Wish;
import tintwright.shelf.Knowledge;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;

/** Match a target: what to weigh, in which order, and what to think of it. */
public final class MatchBench {
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

    /** @return the bench of the invented shop that travels with the program */
    public static MatchBench demo() {
        return of(Demo.shelf());
    }

    /** @return what the chips of the shelf have taught */
    public Knowledge knowledge() {
        return knowledge;
    }

    /** @throws IllegalArgumentException when the wish names a base, tint or leftover that is not on the shelf */
    public MatchAnswer match(Wish wish) {
        wish.leftover().ifPresent(id -> {
            if (knowledge.shelf().leftover(id).isEmpty()) {
                throw new IllegalArgumentException("there is no leftover \"" + id + "\" on the shelf");
            }
        });
        return matcher.match(wish);
    }

    /**
     * What to weigh, in the order of the trade: base, then black or the strongest darkener, then the others.
     *
     * @param scaleStep smallest step of the scale in grams
     */
    public List<Weighing> order(Recipe recipe, double scaleStep) {
        Parts weighed = recipe.weighed();
        List<Weighing> order = new ArrayList<>();
        weighed.grams().forEach((id, grams) -> order.add(new Weighing(id, knowledge.shelf().nameOf(id),
                knowledge.shelf().tint(id).isPresent(), grams, recipe.exact().grams(id), weighed.share(id),
                grams / scaleStep)));
        return order;
    }
}
