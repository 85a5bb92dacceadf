package tintwright.bench.log;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import tintwright.cup.Cup;
import tintwright.cup.CupState;
import tintwright.shelf.Chip;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;
import tintwright.shelf.StockItem;

/** A cup that is done: what it taught stays on the shelf, what went into it is gone from there, what was left comes up. */
public final class PutAway {
    private PutAway() {}

    /**
     * @param shelf the shelf the cup was mixed from
     * @param day   of today, for what is set aside
     * @return the shelf with the cup's chips, with less in the tubs that are weighed, and with what was poured off
     */
    public static Shelf of(Shelf shelf, Cup cup, LocalDate day) {
        CupState state = cup.state();
        Map<String, Double> gone = new TreeMap<>();
        state.parts().ifPresent(parts -> parts.grams().forEach((id, grams) -> gone.merge(id, grams, Double::sum)));
        state.aside().forEach(away -> away.parts().grams().forEach((id, grams) -> gone.merge(id, grams, Double::sum)));
        Shelf less = shelf;
        for (Map.Entry<String, Double> part : gone.entrySet()) {
            Optional<StockItem> item = less.item(part.getKey()).filter(each -> !(each instanceof Leftover));
            if (item.isPresent() && item.get().stock().gramsLeft().isPresent()) {
                double left = Math.max(0, item.get().stock().gramsLeft().getAsDouble() - part.getValue());
                less = less.with(item.get().withStock(item.get().stock().withGramsLeft(OptionalDouble.of(left))));
            }
        }
        for (CupState.Aside away : state.aside()) {
            String name = free(less, away.name());
            less = less.with(new Leftover(
                    name, name, WriteLog.withoutLeftovers(away.parts(), shelf), List.of(), Optional.of(day)));
        }
        return less.withChips(taught(less, shelf, cup));
    }

    private static List<Chip> taught(Shelf less, Shelf shelf, Cup cup) {
        List<Chip> chips = new ArrayList<>(less.chips());
        for (CupState.Sample sample : cup.state().samples()) {
            String id = "cup " + cup.name() + ", " + sample.entry();
            if (sample.read().counts()
                    && sample.parts().isPresent()
                    && chips.stream().noneMatch(chip -> chip.id().equals(id))) {
                Parts plain = WriteLog.withoutLeftovers(sample.parts().get(), shelf);
                Optional<LocalDate> read =
                        cup.entry(sample.entry()).map(entry -> LocalDate.ofInstant(entry.at(), ZoneOffset.UTC));
                chips.add(new Chip(id, plain, List.of(sample.read().reading()), read, ""));
            }
        }
        return chips;
    }

    private static String free(Shelf shelf, String wanted) {
        String name = wanted;
        for (int number = 2; taken(shelf, name); number++) {
            name = wanted + " " + number;
        }
        return name;
    }

    private static boolean taken(Shelf shelf, String name) {
        return shelf.item(name).isPresent()
                || shelf.items().stream().anyMatch(item -> item.name().equalsIgnoreCase(name));
    }
}
