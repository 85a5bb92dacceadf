package tintwright.shelf;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything a shop has to mix with, and every chip it has made.
 *
 * @param name      what the shop calls it
 * @param bases     at least one; the first is used unless another is asked for
 * @param tints     in the order they stand
 * @param pastes    gel pastes
 * @param leftovers cups set aside
 * @param chips     samples of known parts
 */
public record Shelf(
        String name,
        List<Base> bases,
        List<Tint> tints,
        List<Paste> pastes,
        List<Leftover> leftovers,
        List<Chip> chips) {
    /**
     * @throws IllegalArgumentException when there is no base, two things share an id, or a chip or leftover
     *         names a part that does not stand on the shelf
     */
    public Shelf {
        bases = List.copyOf(bases);
        tints = List.copyOf(tints);
        pastes = List.copyOf(pastes);
        leftovers = List.copyOf(leftovers);
        chips = List.copyOf(chips);
        if (bases.isEmpty()) {
            throw new IllegalArgumentException("the shelf has no base: add the white gel coat that tints go into");
        }
        Map<String, String> seen = new HashMap<>();
        bases.forEach(b -> claim(seen, b.id(), "base"));
        tints.forEach(t -> claim(seen, t.id(), "tint"));
        pastes.forEach(p -> claim(seen, p.id(), "paste"));
        leftovers.forEach(l -> claim(seen, l.id(), "leftover"));
        Map<String, String> chipIds = new HashMap<>();
        for (Chip chip : chips) {
            claim(chipIds, chip.id(), "chip");
            chip.parts().grams().keySet().forEach(id -> mustStand(seen, id, "chip \"" + chip.id() + "\""));
        }
        for (Leftover leftover : leftovers) {
            leftover.parts().grams().keySet().forEach(id -> mustStand(seen, id, "leftover \"" + leftover.id() + "\""));
        }
    }

    private static void claim(Map<String, String> seen, String id, String what) {
        String other = seen.put(id, what);
        if (other != null) {
            throw new IllegalArgumentException("two things on the shelf are called \"" + id + "\" (a " + other
                    + " and a " + what + "): give one of them another id");
        }
    }

    private static void mustStand(Map<String, String> seen, String id, String where) {
        String what = seen.get(id);
        if (what == null) {
            throw new IllegalArgumentException(where + " holds \"" + id
                    + "\", which is not on the shelf: add it as a base or tint, or correct the name");
        }
        if (what.equals("paste")) {
            throw new IllegalArgumentException(
                    where + " holds the paste \"" + id + "\": chips and leftovers are of base and tints only");
        }
    }

    public Optional<Base> base(String id) {
        return bases.stream().filter(b -> b.id().equals(id)).findFirst();
    }

    public Optional<Tint> tint(String id) {
        return tints.stream().filter(t -> t.id().equals(id)).findFirst();
    }

    public Optional<Leftover> leftover(String id) {
        return leftovers.stream().filter(l -> l.id().equals(id)).findFirst();
    }

    /** @return the name of a base, tint or leftover; the id itself when nothing has it */
    public String nameOf(String id) {
        return base(id).map(Base::name)
                .or(() -> tint(id).map(Tint::name))
                .or(() -> leftover(id).map(Leftover::name))
                .orElse(id);
    }

    public Shelf withChips(List<Chip> other) {
        return new Shelf(name, bases, tints, pastes, leftovers, other);
    }

    public Shelf withTints(List<Tint> other) {
        return new Shelf(name, bases, other, pastes, leftovers, chips);
    }

    public Shelf withLeftovers(List<Leftover> other) {
        return new Shelf(name, bases, tints, pastes, other, chips);
    }
}
