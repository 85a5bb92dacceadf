package tintwright.shelf;

/**
 * A neutral gel paste that thickens gel coat for filling.
 *
 * @param id      short name in files, unique on the shelf
 * @param name    what the person calls it
 * @param density grams per millilitre, above 0
 * @param stock   how much there is
 */
public record Paste(String id, String name, double density, Stock stock) implements StockItem {
    public Paste {
        Names.check("paste", id, name);
        if (!(density > 0.2 && density < 5)) {
            throw new IllegalArgumentException("density of paste " + name + " must be 0.2 to 5 g/ml, was " + density);
        }
    }

    @Override
    public ItemKind kind() {
        return ItemKind.PASTE;
    }

    @Override
    public Paste withName(String other) {
        return new Paste(id, other, density, stock);
    }

    @Override
    public Paste withStock(Stock other) {
        return new Paste(id, name, density, other);
    }
}
