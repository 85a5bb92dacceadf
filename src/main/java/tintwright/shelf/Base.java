package tintwright.shelf;

/**
 * A white gel coat that tints go into.
 *
 * @param id      short name in files, unique on the shelf
 * @param name    what the person calls it
 * @param density grams per millilitre, above 0
 * @param waxed   true when it holds wax and cures dry in air
 * @param stock   how much there is
 */
public record Base(String id, String name, double density, boolean waxed, Stock stock) implements StockItem {
    /** Usual density of a white gel coat, g/ml; common practice, no source. */
    public static final double USUAL_DENSITY = 1.3;

    public Base {
        Names.check("base", id, name);
        if (!(density > 0.5 && density < 5)) {
            throw new IllegalArgumentException("density of base " + name + " must be 0.5 to 5 g/ml, was " + density);
        }
    }

    @Override
    public ItemKind kind() {
        return ItemKind.BASE;
    }

    @Override
    public Base withName(String other) {
        return new Base(id, other, density, waxed, stock);
    }

    @Override
    public Base withStock(Stock other) {
        return new Base(id, name, density, waxed, other);
    }
}
