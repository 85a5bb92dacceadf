package tintwright.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.shelf.Base;
import tintwright.shelf.Knowledge;
import tintwright.shelf.Leftover;
import tintwright.shelf.Paste;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Stock;
import tintwright.shelf.Tint;

/** Look over the shelf: what stands on it, how well it is known, what has run low or grown old. */
public final class ShelfBench {
    /** Days ahead that an end of shelf life is worth a word; a judgement of ours. */
    private static final int SOON_DAYS = 30;
    /** A tint below this is running low, grams: a dozen small cups; a judgement of ours. */
    private static final double LOW_TINT_GRAMS = 20;
    /** A base below this is running low, grams; a judgement of ours. */
    private static final double LOW_BASE_GRAMS = 300;

    private ShelfBench() {}

    /**
     * One thing on the shelf.
     *
     * @param kind      base, tint, paste or leftover
     * @param family    of a tint
     * @param chips     how many chips hold it
     * @param deviation how well its strength is known, one standard deviation in ln; empty for pastes and leftovers
     * @param gramsLeft when weighed
     * @param bestBefore when known
     * @param warnings  what to see to; mostly none
     */
    public record Item(
            String id,
            String name,
            String kind,
            Optional<PigmentFamily> family,
            int chips,
            OptionalDouble deviation,
            OptionalDouble gramsLeft,
            Optional<LocalDate> bestBefore,
            List<String> warnings) {
        /** @return such as "well known" */
        public String known() {
            return deviation.isPresent() ? wordsFor(deviation.getAsDouble()) : "";
        }
    }

    /** @return a deviation of the strength in words */
    public static String wordsFor(double deviation) {
        if (deviation < 0.04) {
            return "well known";
        }
        if (deviation < 0.12) {
            return "known";
        }
        return deviation < 0.3 ? "roughly known" : "only guessed";
    }

    /** @return bases, tints, pastes and leftovers, in the order of the shelf */
    public static List<Item> look(Knowledge knowledge, LocalDate today) {
        Shelf shelf = knowledge.shelf();
        List<Item> items = new ArrayList<>();
        for (Base base : shelf.bases()) {
            items.add(item(
                    knowledge, base.id(), base.name(), "base", Optional.empty(), base.stock(), today, LOW_BASE_GRAMS));
        }
        for (Tint tint : shelf.tints()) {
            items.add(item(
                    knowledge,
                    tint.id(),
                    tint.name(),
                    "tint",
                    Optional.of(tint.family()),
                    tint.stock(),
                    today,
                    LOW_TINT_GRAMS));
        }
        for (Paste paste : shelf.pastes()) {
            items.add(new Item(
                    paste.id(),
                    paste.name(),
                    "paste",
                    Optional.empty(),
                    0,
                    OptionalDouble.empty(),
                    paste.stock().gramsLeft(),
                    paste.stock().bestBefore(),
                    warnings(paste.stock(), today, 0)));
        }
        for (Leftover leftover : shelf.leftovers()) {
            items.add(new Item(
                    leftover.id(),
                    leftover.name(),
                    "leftover",
                    Optional.empty(),
                    0,
                    OptionalDouble.empty(),
                    OptionalDouble.of(leftover.parts().total()),
                    Optional.empty(),
                    List.of()));
        }
        return items;
    }

    private static Item item(
            Knowledge knowledge,
            String id,
            String name,
            String kind,
            Optional<PigmentFamily> family,
            Stock stock,
            LocalDate today,
            double low) {
        return new Item(
                id,
                name,
                kind,
                family,
                knowledge.chipsWith(id),
                OptionalDouble.of(knowledge.strengthDeviation(id)),
                stock.gramsLeft(),
                stock.bestBefore(),
                warnings(stock, today, low));
    }

    private static List<String> warnings(Stock stock, LocalDate today, double low) {
        List<String> warnings = new ArrayList<>();
        stock.bestBefore().ifPresent(day -> {
            if (day.isBefore(today)) {
                warnings.add("past its shelf life since " + day);
            } else if (day.isBefore(today.plusDays(SOON_DAYS))) {
                warnings.add("shelf life ends on " + day);
            }
        });
        if (stock.gramsLeft().isPresent() && stock.gramsLeft().getAsDouble() < low) {
            warnings.add("running low");
        }
        return warnings;
    }
}
