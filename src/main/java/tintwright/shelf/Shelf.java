package tintwright.shelf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Everything a shop has to mix with, and every chip it has made.
 *
 * @param name  what the shop calls it
 * @param items by kind, each kind in the order it stands: among them at least one base, and the first is used unless
 *              another is asked for
 * @param chips samples of known parts
 */
public record Shelf(String name, List<StockItem> items, List<Chip> chips) {
    /**
     * @throws IllegalArgumentException when there is no base, two things share an id, or a chip or leftover
     *         names a part that does not stand on the shelf
     */
    public Shelf {
        items = items.stream().sorted(Comparator.comparing(StockItem::kind)).toList();
        chips = List.copyOf(chips);
        if (items.stream().noneMatch(Base.class::isInstance)) {
            throw new IllegalArgumentException("the shelf has no base: add the white gel coat that tints go into");
        }
        Map<String, ItemKind> kinds = new HashMap<>();
        for (StockItem item : items) {
            ItemKind other = kinds.put(item.id(), item.kind());
            if (other != null) {
                throw twice(item.id(), other.word(), item.kind().word());
            }
        }
        Set<String> chipIds = new HashSet<>();
        for (Chip chip : chips) {
            if (!chipIds.add(chip.id())) {
                throw twice(chip.id(), "chip", "chip");
            }
            mustStand(kinds, chip.parts(), "chip \"" + chip.id() + "\"");
        }
        for (Leftover leftover : all(items, Leftover.class)) {
            mustStand(kinds, leftover.parts(), "leftover \"" + leftover.id() + "\"");
        }
    }

    private static IllegalArgumentException twice(String id, String one, String other) {
        return new IllegalArgumentException("two things on the shelf are called \"" + id + "\" (a " + one + " and a "
                + other + "): give one of them another id");
    }

    private static void mustStand(Map<String, ItemKind> kinds, Parts parts, String where) {
        for (String id : parts.grams().keySet()) {
            ItemKind kind = kinds.get(id);
            if (kind == null) {
                throw new IllegalArgumentException(where + " holds \"" + id
                        + "\", which is not on the shelf: add it as a base or tint, or correct the name");
            }
            if (!kind.mixes()) {
                throw new IllegalArgumentException(where + " holds the " + kind.word() + " \"" + id
                        + "\": chips and leftovers are of base and tints only");
            }
        }
    }

    private static <T> List<T> all(List<StockItem> items, Class<T> kind) {
        return items.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    public List<Base> bases() {
        return all(items, Base.class);
    }

    public List<Tint> tints() {
        return all(items, Tint.class);
    }

    public List<Paste> pastes() {
        return all(items, Paste.class);
    }

    public List<Leftover> leftovers() {
        return all(items, Leftover.class);
    }

    public Optional<StockItem> item(String id) {
        for (StockItem item : items) {
            if (item.id().equals(id)) {
                return Optional.of(item);
            }
        }
        return Optional.empty();
    }

    public Optional<Base> base(String id) {
        return item(id).filter(Base.class::isInstance).map(Base.class::cast);
    }

    public Optional<Tint> tint(String id) {
        return item(id).filter(Tint.class::isInstance).map(Tint.class::cast);
    }

    public Optional<Leftover> leftover(String id) {
        return item(id).filter(Leftover.class::isInstance).map(Leftover.class::cast);
    }

    /** @return what the person calls it; the id itself when nothing has it */
    public String nameOf(String id) {
        return item(id).map(StockItem::name).orElse(id);
    }

    /** @return the same with this in place of what has its id, or behind the others of its kind */
    public Shelf with(StockItem item) {
        List<StockItem> others = new ArrayList<>(items);
        if (item(item.id()).isPresent()) {
            others.replaceAll(old -> old.id().equals(item.id()) ? item : old);
        } else {
            others.add(item);
        }
        return new Shelf(name, others, chips);
    }

    /** @return the same without this and without the chips that hold it */
    public Shelf without(String id) {
        return new Shelf(
                name,
                items.stream().filter(item -> !item.id().equals(id)).toList(),
                chips.stream().filter(chip -> chip.parts().grams(id) == 0).toList());
    }

    public Shelf withChips(List<Chip> other) {
        return new Shelf(name, items, other);
    }
}
