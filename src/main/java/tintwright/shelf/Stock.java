package tintwright.shelf;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much of a thing stands on the shelf, what it costs and how long it keeps.
 *
 * @param gramsLeft  grams in the can, 0 or more; empty when not weighed
 * @param lowAt      grams below which it runs low, 0 or more; empty for what is usual of its kind
 * @param pricePerKg in the shop's own money, 0 or more; empty when not known
 * @param openedOn   day the can was opened
 * @param keeps      how long it keeps after that day, by its data sheet; empty when not known
 */
public record Stock(
        OptionalDouble gramsLeft,
        OptionalDouble lowAt,
        OptionalDouble pricePerKg,
        Optional<LocalDate> openedOn,
        Optional<Period> keeps) {
    /** Nothing is known. */
    public static final Stock UNKNOWN = new Stock(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), Optional.empty());

    public Stock {
        check("grams left", gramsLeft);
        check("the grams at which it runs low", lowAt);
        check("price", pricePerKg);
        keeps.filter(Period::isNegative).ifPresent(time -> {
            throw new IllegalArgumentException("shelf life must be 0 or more, was " + time);
        });
    }

    private static void check(String what, OptionalDouble value) {
        if (value.isPresent() && !(value.getAsDouble() >= 0)) {
            throw new IllegalArgumentException(what + " must be 0 or more, was " + value.getAsDouble());
        }
    }

    public Stock withGramsLeft(OptionalDouble other) {
        return new Stock(other, lowAt, pricePerKg, openedOn, keeps);
    }

    /** @return true when it was weighed and nothing was left */
    public boolean usedUp() {
        return gramsLeft.orElse(1) == 0;
    }
}
