package tintwright.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.shelf.Chip;
import tintwright.shelf.ItemKind;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.StockItem;
import tintwright.shelf.Tint;

/** Keep a shelf true: another name, another pigment, what is left, what is gone, a chip that was wrong. */
public final class TidyShelf {
    private TidyShelf() {}

    /**
     * Puts right what is written of anything but a leftover; its chips stay with it.
     *
     * @param name      the new name
     * @param family    the pigment; passed over for what has none
     * @param gramsLeft empty when it was not weighed
     * @throws IllegalArgumentException when nothing to change has this id, the name is blank or another one's, or there
     *         is less than nothing left
     */
    public static Shelf change(Shelf shelf, String id, String name, PigmentFamily family, OptionalDouble gramsLeft) {
        String called = name.strip();
        checkFree(shelf, id, called);
        StockItem item = shelf.item(id)
                .filter(known -> known.kind() != ItemKind.LEFTOVER)
                .orElseThrow(
                        () -> new IllegalArgumentException("there is no base or tint \"" + id + "\" on the shelf"));
        StockItem changed = item.withName(called).withStock(item.stock().withGramsLeft(gramsLeft));
        return shelf.with(changed instanceof Tint tint ? tint.withFamily(family) : changed);
    }

    /**
     * Two names that differ in capitals alone would be one name in a chip's line.
     *
     * @param id what may bear the name itself
     * @throws IllegalArgumentException when something else that is bought is called so
     */
    public static void checkFree(Shelf shelf, String id, String name) {
        if (shelf.items().stream()
                .filter(item -> item.kind() != ItemKind.LEFTOVER && !item.id().equals(id))
                .anyMatch(item -> item.name().equalsIgnoreCase(name.strip()))) {
            throw new IllegalArgumentException(
                    "\"" + name.strip() + "\" stands on the shelf already: give it another " + "name");
        }
    }

    /**
     * Takes anything but a base off the shelf, and the chips that hold it with it.
     *
     * @param inTheCup what is in the cup in hand
     * @throws IllegalArgumentException when it is in the cup in hand or in a leftover, or is a base or not there
     */
    public static Shelf takeOff(Shelf shelf, String id, Optional<Parts> inTheCup) {
        String name = shelf.nameOf(id);
        if (inTheCup.filter(parts -> parts.grams(id) > 0).isPresent()) {
            throw new IllegalArgumentException(name + " is in the cup in hand: finish the cup or put it away first");
        }
        shelf.leftovers().stream()
                .filter(left -> left.parts().grams(id) > 0)
                .findFirst()
                .ifPresent(left -> {
                    throw new IllegalArgumentException(
                            name + " is in the leftover \"" + left.name() + "\": take that off the shelf first");
                });
        if (shelf.item(id).isEmpty() || shelf.base(id).isPresent()) {
            throw new IllegalArgumentException(name + " cannot be taken off: only tints, leftovers and what is not "
                    + "mixed can; for another white, begin another shelf");
        }
        return shelf.without(id);
    }

    /**
     * Forgets a chip.
     *
     * @throws IllegalArgumentException when the shelf has no such chip
     */
    public static Shelf forget(Shelf shelf, String chipId) {
        List<Chip> kept =
                shelf.chips().stream().filter(chip -> !chip.id().equals(chipId)).toList();
        if (kept.size() == shelf.chips().size()) {
            throw new IllegalArgumentException("there is no chip \"" + chipId + "\" on the shelf");
        }
        return shelf.withChips(kept);
    }
}
