package tintwright.shelf;

import java.time.LocalDate;
import java.util.Optional;

/** One thing that stands on the shelf. */
public sealed interface StockItem permits Base, Tint, Paste, Leftover, Sundry {
    /** Short name in files, unique on the shelf. */
    String id();

    /** What the person calls it. */
    String name();

    ItemKind kind();

    /** How much there is and how long it keeps. */
    Stock stock();

    StockItem withName(String other);

    StockItem withStock(Stock other);

    /** @return the last day it should be used, by its data sheet, else by what is usual of its kind; empty when not known */
    default Optional<LocalDate> bestBefore() {
        return stock().openedOn()
                .flatMap(day -> stock().keeps().or(kind()::usuallyKeeps).map(day::plus));
    }

    /** @return true when less is left than the person, or common sense, wants to have; false when nobody weighed it */
    default boolean low() {
        return stock().gramsLeft().orElse(Double.POSITIVE_INFINITY)
                < stock().lowAt().orElse(kind().usualLowGrams());
    }
}
