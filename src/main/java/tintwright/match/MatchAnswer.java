package tintwright.match;

import java.util.List;
import java.util.Optional;
import tintwright.colour.DifferenceWords;
import tintwright.shelf.PigmentFamily;

/** What the search came to. */
public sealed interface MatchAnswer {
    /** Beyond this CIEDE2000 by the best estimate the shelf does not reach the target. */
    double REACH = 1.0;

    /** @return ranked recipes, at least one; each is better than those above it in something */
    List<Recipe> recipes();

    /** @return the first of them */
    default Recipe best() {
        return recipes().get(0);
    }

    /** The tints reach the target. */
    record Reached(List<Recipe> recipes) implements MatchAnswer {
        public Reached {
            recipes = List.copyOf(recipes);
        }
    }

    /**
     * The tints reach the target, but not in steps of this scale for so small a batch.
     *
     * @param recipes the nearest that can be weighed, ranked
     * @param exact   how near the tints come when nothing is rounded, CIEDE2000
     */
    record TooCoarse(List<Recipe> recipes, double exact) implements MatchAnswer {
        public TooCoarse {
            recipes = List.copyOf(recipes);
        }
    }

    /**
     * No mix of these tints comes within {@link #REACH}.
     *
     * @param recipes    the nearest, ranked
     * @param deltaE     how near the nearest comes
     * @param miss       which way it fails: the nearest mix against the target
     * @param wouldReach the family of tint that would reach it, or come nearest; empty when none would help
     * @param withFamily how near the mix would come with it
     * @param leftover   id of a leftover that helps when it is started from; empty when none does
     * @param withLeftover how near the mix would come with it
     */
    record OutOfReach(
            List<Recipe> recipes,
            double deltaE,
            DifferenceWords miss,
            Optional<PigmentFamily> wouldReach,
            double withFamily,
            Optional<String> leftover,
            double withLeftover)
            implements MatchAnswer {
        public OutOfReach {
            recipes = List.copyOf(recipes);
        }
    }
}
