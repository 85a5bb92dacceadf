package tintwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import tintwright.shelf.Base;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Stock;
import tintwright.shelf.Tint;

/** Keep a shelf true: another name, another pigment, what is left, what is gone, a chip that was wrong. */
public final class TidyShelf {
    private TidyShelf() {}

    /**
     * Puts right what is written of a base or a tint; its chips stay with it.
     *
     * @param name      the new name
     * @param family    the pigment; passed over for a base, which has none
     * @param gramsLeft empty when it was not weighed
     * @throws IllegalArgumentException when no base or tint has this id, the name is blank or another one's, or there
     *         is less than nothing left
     */
    public static Shelf change(Shelf shelf, String id, String name, PigmentFamily family, OptionalDouble gramsLeft) {
        String called = name.strip();
        checkFree(shelf, id, called);
        if (shelf.base(id).isPresent()) {
            return new Shelf(
                    shelf.name(),
                    with(
                            shelf.bases(),
                            base -> base.id().equals(id)
                                    ? new Base(id, called, base.density(), base.waxed(), left(base.stock(), gramsLeft))
                                    : base),
                    shelf.tints(),
                    shelf.pastes(),
                    shelf.leftovers(),
                    shelf.chips());
        }
        if (shelf.tint(id).isEmpty()) {
            throw new IllegalArgumentException("there is no base or tint \"" + id + "\" on the shelf");
        }
        return shelf.withTints(with(
                shelf.tints(),
                tint -> tint.id().equals(id)
                        ? new Tint(
                                id,
                                called,
                                family,
                                tint.loadingLimit(),
                                tint.density(),
                                tint.dropGrams(),
                                left(tint.stock(), gramsLeft))
                        : tint));
    }

    /**
     * Two names that differ in capitals alone would be one name in a chip's line.
     *
     * @param id what may bear the name itself
     * @throws IllegalArgumentException when another base or tint is called so
     */
    public static void checkFree(Shelf shelf, String id, String name) {
        Stream<String> others = Stream.concat(
                shelf.bases().stream().filter(base -> !base.id().equals(id)).map(Base::name),
                shelf.tints().stream().filter(tint -> !tint.id().equals(id)).map(Tint::name));
        if (others.anyMatch(name.strip()::equalsIgnoreCase)) {
            throw new IllegalArgumentException(
                    "\"" + name.strip() + "\" stands on the shelf already: give it another " + "name");
        }
    }

    private static <T> List<T> with(List<T> things, UnaryOperator<T> change) {
        return things.stream().map(change).toList();
    }

    private static Stock left(Stock stock, OptionalDouble gramsLeft) {
        return new Stock(gramsLeft, stock.pricePerKg(), stock.openedOn(), stock.shelfLifeMonths());
    }

    /**
     * Takes a tint or a leftover off the shelf, and the chips that hold it with it.
     *
     * @param inTheCup what is in the cup in hand
     * @throws IllegalArgumentException when it is in the cup in hand or in a leftover, or is no tint and no leftover
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
        if (shelf.tint(id).isEmpty() && shelf.leftover(id).isEmpty()) {
            throw new IllegalArgumentException(name + " cannot be taken off: only tints and leftovers can; for "
                    + "another white, begin another shelf");
        }
        return new Shelf(
                shelf.name(),
                shelf.bases(),
                without(shelf.tints(), tint -> tint.id().equals(id)),
                shelf.pastes(),
                without(shelf.leftovers(), left -> left.id().equals(id)),
                without(shelf.chips(), chip -> chip.parts().grams(id) > 0));
    }

    /**
     * Forgets a chip.
     *
     * @throws IllegalArgumentException when the shelf has no such chip
     */
    public static Shelf forget(Shelf shelf, String chipId) {
        List<Chip> kept = without(shelf.chips(), chip -> chip.id().equals(chipId));
        if (kept.size() == shelf.chips().size()) {
            throw new IllegalArgumentException("there is no chip \"" + chipId + "\" on the shelf");
        }
        return shelf.withChips(kept);
    }

    private static <T> List<T> without(List<T> things, Predicate<T> gone) {
        List<T> kept = new ArrayList<>(things);
        kept.removeIf(gone);
        return kept;
    }
}
