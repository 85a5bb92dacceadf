package tintwright.shelf;

/**
 * What a repair takes and no colour is reckoned from: catalyst, wax in styrene, a repair kit.
 *
 * @param kind catalyst, wax or repair kit
 */
public record Sundry(String id, String name, ItemKind kind, Stock stock) implements StockItem {
    public Sundry {
        Names.check(kind.word(), id, name);
        if (kind != ItemKind.CATALYST && kind != ItemKind.WAX && kind != ItemKind.KIT) {
            throw new IllegalArgumentException("a " + kind.word() + " needs more said of it than a sundry");
        }
    }

    @Override
    public Sundry withName(String other) {
        return new Sundry(id, other, kind, stock);
    }

    @Override
    public Sundry withStock(Stock other) {
        return new Sundry(id, name, kind, other);
    }
}
