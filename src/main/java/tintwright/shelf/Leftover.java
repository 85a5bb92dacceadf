package tintwright.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.reading.Reading;

/**
 * A cup that was set aside.
 *
 * @param id       unique on the shelf
 * @param name     what the person wrote on the cup
 * @param parts    what is in it, grams by id; their sum is how much is left
 * @param readings what was read from it; may be empty
 * @param setAside day it was set aside, when known
 */
public record Leftover(String id, String name, Parts parts, List<Reading> readings, Optional<LocalDate> setAside)
        implements StockItem {
    public Leftover {
        Names.check("leftover", id, name);
        readings = List.copyOf(readings);
    }

    @Override
    public ItemKind kind() {
        return ItemKind.LEFTOVER;
    }

    @Override
    public Leftover withName(String other) {
        return new Leftover(id, other, parts, readings, setAside);
    }

    @Override
    public Leftover withStock(Stock other) {
        return new Leftover(
                id,
                name,
                other.gramsLeft().isPresent() ? parts.times(other.gramsLeft().getAsDouble() / parts.total()) : parts,
                readings,
                other.openedOn());
    }

    /** What is in the cup is what is left; it is paid for. */
    @Override
    public Stock stock() {
        return new Stock(
                OptionalDouble.of(parts.total()),
                OptionalDouble.empty(),
                OptionalDouble.of(0),
                setAside,
                Optional.empty());
    }
}
