package tintwright.bench;

/**
 * One thing to weigh into the cup.
 *
 * @param id       of the base, tint or leftover
 * @param name     what the person calls it
 * @param tint     true for a tint, false for a base or leftover
 * @param grams    what the scale should show
 * @param exact    grams before rounding to the scale
 * @param share    share of the whole mass, 0 to 1
 * @param steps    how many steps of the scale that is: below twenty the scale itself is the error
 */
public record Weighing(String id, String name, boolean tint, double grams, double exact, double share, double steps) {
    /** Fewer steps of the scale than this are better weighed as a letdown; common practice, no source. */
    public static final double FEWEST_STEPS = 20;

    /** @return grams in 100 g of the mix */
    public double per100() {
        return share * 100;
    }

    /** @return true when a pre-mix in base is the better way to weigh it */
    public boolean betterAsLetdown() {
        return tint && steps < FEWEST_STEPS;
    }
}
