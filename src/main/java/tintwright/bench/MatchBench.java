package tintwright.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tintwright.colour.Ciede2000;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
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
     * The order of the trade: base, then the tint that darkens most, then the others by how much of the colour
     * they make.
     *
     * @param scaleStep smallest step of the scale in grams
     */
    public List<Weighing> order(Recipe recipe, double scaleStep) {
        Parts weighed = recipe.weighed();
        Lab whole = colour(weighed);
        List<Weighing> tints = new ArrayList<>();
        List<Weighing> order = new ArrayList<>();
        Map<String, Double> darkens = new HashMap<>();
        Map<String, Double> colours = new HashMap<>();
        weighed.grams().forEach((id, grams) -> {
            boolean tint = knowledge.shelf().tint(id).isPresent();
            Weighing weighing = new Weighing(id, knowledge.shelf().nameOf(id), tint, grams, recipe.exact().grams(id),
                    weighed.share(id), grams / scaleStep);
            if (tint) {
                Map<String, Double> rest = new LinkedHashMap<>(weighed.grams());
                rest.remove(id);
                Lab without = colour(Parts.of(rest));
                darkens.put(id, without.lightness() - whole.lightness());
                colours.put(id, Ciede2000.between(without, whole));
                tints.add(weighing);
            } else {
                order.add(weighing);
            }
        });
        tints.stream().max(Comparator.comparing(each -> darkens.get(each.id()))).ifPresent(first -> {
            tints.remove(first);
            order.add(first);
        });
        tints.sort(Comparator.comparing((Weighing each) -> colours.get(each.id())).reversed());
        order.addAll(tints);
        return order;
    }

    private Lab colour(Parts parts) {
        return knowledge.colour(parts, Viewing.D65_10, Geometry.SPECULAR_INCLUDED);
    }
}
