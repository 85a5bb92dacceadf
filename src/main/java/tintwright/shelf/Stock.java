package tintwright.shelf;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much of a thing stands on the shelf, what it costs and how long it keeps.
 *
 * @param gramsLeft       grams in the can, 0 or more; empty when not weighed
 * @param pricePerKg      in the shop's own money, 0 or more; empty when not known
 * @param openedOn        day the can was opened
 * @param shelfLifeMonths months it keeps after that day, by its data sheet; empty when not known
 */
public record Stock(
        OptionalDouble gramsLeft,
        OptionalDouble pricePerKg,
        Optional<LocalDate> openedOn,
        Optional<Integer> shelfLifeMonths) {
    /** Nothing is known. */
    public static final Stock UNKNOWN =
            new Stock(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), Optional.empty());

    public Stock {
        if (gramsLeft.isPresent() && !(gramsLeft.getAsDouble() >= 0)) {
            throw new IllegalArgumentException("grams left must be 0 or more, was " + gramsLeft.getAsDouble());
        }
        if (pricePerKg.isPresent() && !(pricePerKg.getAsDouble() >= 0)) {
            throw new IllegalArgumentException("price must be 0 or more, was " + pricePerKg.getAsDouble());
        }
        if (shelfLifeMonths.isPresent() && shelfLifeMonths.get() < 0) {
            throw new IllegalArgumentException("shelf life must be 0 months or more, was " + shelfLifeMonths.get());
        }
    }

    /** @return the last day it should be used; empty when not known */
    public Optional<LocalDate> bestBefore() {
        return openedOn.flatMap(day -> shelfLifeMonths.map(months -> day.plusMonths(months)));
    }
}
