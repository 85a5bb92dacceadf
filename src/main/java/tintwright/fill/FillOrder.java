package tintwright.fill;

import java.util.List;
import tintwright.fill.catalyst.NotedTime;
import tintwright.fill.repair.Sizes;

/**
 * A fill job with the words that belong to it: whose it is and what is in the cup.
 *
 * @param boat   the boat; may be empty
 * @param place  the place on the boat; may be empty
 * @param colour what the person calls the colour in the cup; may be empty
 * @param recipe what is in the cup, grams of each; may be empty
 * @param job    the job itself
 */
public record FillOrder(String boat, String place, String colour, List<Ingredient> recipe, FillJob job) {
    /**
     * A part of the colour in the cup.
     *
     * @param name  a base, tint or leftover
     * @param grams above 0
     */
    public record Ingredient(String name, double grams) {
        public Ingredient {
            if (name.isBlank()) {
                throw new IllegalArgumentException("a part of the recipe needs a name");
            }
            Sizes.aboveZero("grams of " + name, grams, 1e6, "g");
        }
    }

    public FillOrder {
        recipe = List.copyOf(recipe);
    }

    /** The same order with the times this shop noted. */
    public FillOrder with(List<NotedTime> noted) {
        return new FillOrder(boat, place, colour, recipe, job.with(noted));
    }

    /** @return the recipe for so many grams of colour, in the same proportions */
    public List<Ingredient> recipeFor(double grams) {
        double sum = recipe.stream().mapToDouble(Ingredient::grams).sum();
        return recipe.stream()
                .map(part -> new Ingredient(part.name(), part.grams() / sum * grams))
                .toList();
    }
}
