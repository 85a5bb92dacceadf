package tintwright.shelf;

/**
 * A tint paste.
 *
 * @param id           short name in files, unique on the shelf
 * @param name         what the person calls it
 * @param family       the pigment in it
 * @param loadingLimit most of it in a mix, as a share of the whole mass, above 0, at most 0.5
 * @param density      grams per millilitre, above 0
 * @param dropGrams    mass of one drop from its bottle, grams, above 0
 * @param stock        how much there is
 */
public record Tint(
        String id,
        String name,
        PigmentFamily family,
        double loadingLimit,
        double density,
        double dropGrams,
        Stock stock)
        implements StockItem {
    /**
     * Usual largest share of one tint, by mass of the mix; common practice, no source. One gel coat maker states less
     * for its own colorants, a US fluid ounce in a quart, 3.1 % by volume: about 2.8 % by mass at the usual
     * densities. What the tub says belongs on the shelf and counts before this.
     */
    public static final double USUAL_LOADING_LIMIT = 0.04;
    /** Usual density of a paste, g/ml; common practice, no source. */
    public static final double USUAL_DENSITY = 1.2;
    /** Twenty-five drops to a gram; common practice, no source. */
    public static final double USUAL_DROP_GRAMS = 0.04;

    public Tint {
        Names.check("tint", id, name);
        if (!(loadingLimit > 0 && loadingLimit <= 0.5)) {
            throw new IllegalArgumentException("loading limit of tint " + name
                    + " must be above 0 and at most 0.5 of the mix, was " + loadingLimit);
        }
        if (!(density > 0.5 && density < 8)) {
            throw new IllegalArgumentException("density of tint " + name + " must be 0.5 to 8 g/ml, was " + density);
        }
        if (!(dropGrams > 0 && dropGrams < 1)) {
            throw new IllegalArgumentException("a drop of tint " + name + " must weigh 0 to 1 g, was " + dropGrams);
        }
    }

    /** A tint of which only the name and the family are known. */
    public static Tint of(String id, String name, PigmentFamily family) {
        return new Tint(id, name, family, USUAL_LOADING_LIMIT, USUAL_DENSITY, USUAL_DROP_GRAMS, Stock.UNKNOWN);
    }

    @Override
    public ItemKind kind() {
        return ItemKind.TINT;
    }

    @Override
    public Tint withName(String other) {
        return new Tint(id, other, family, loadingLimit, density, dropGrams, stock);
    }

    @Override
    public Tint withStock(Stock other) {
        return new Tint(id, name, family, loadingLimit, density, dropGrams, other);
    }

    public Tint withFamily(PigmentFamily other) {
        return new Tint(id, name, other, loadingLimit, density, dropGrams, stock);
    }
}
