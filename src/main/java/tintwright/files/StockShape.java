package tintwright.files;

import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.shelf.Stock;

/** How much of a thing is left, as optional fields beside its own. */
final class StockShape {
    private static final List<String> FIELDS =
            List.of("gramsLeft", "lowAtGrams", "pricePerKg", "openedOn", "shelfLifeMonths", "shelfLifeDays");

    private StockShape() {}

    /** @return these fields and those of a stock */
    static String[] beside(String... own) {
        List<String> all = new ArrayList<>(List.of(own));
        all.addAll(FIELDS);
        return all.toArray(String[]::new);
    }

    static void write(Stock stock, Map<String, Object> tree) {
        stock.gramsLeft().ifPresent(grams -> tree.put("gramsLeft", grams));
        stock.lowAt().ifPresent(grams -> tree.put("lowAtGrams", grams));
        stock.pricePerKg().ifPresent(price -> tree.put("pricePerKg", price));
        stock.openedOn().ifPresent(day -> tree.put("openedOn", day.toString()));
        stock.keeps().ifPresent(time -> {
            // Whole months or whole days: what a tub says, and all that is read below.
            if (time.toTotalMonths() > 0) {
                tree.put("shelfLifeMonths", time.toTotalMonths());
            } else {
                tree.put("shelfLifeDays", time.get(ChronoUnit.DAYS));
            }
        });
    }

    static Stock read(JsonPlace place) throws FileProblem {
        OptionalDouble grams = place.optionalNumber("gramsLeft");
        OptionalDouble price = place.optionalNumber("pricePerKg");
        Optional<LocalDate> opened = place.optionalDate("openedOn");
        OptionalDouble low = place.optionalNumber("lowAtGrams");
        if (place.has("shelfLifeMonths") && place.has("shelfLifeDays")) {
            throw place.at("shelfLifeDays").problem("its shelf life is said twice: in months or in days, not in both");
        }
        Optional<Period> keeps = Optional.empty();
        if (place.has("shelfLifeMonths")) {
            keeps = Optional.of(Period.ofMonths(place.at("shelfLifeMonths").whole()));
        } else if (place.has("shelfLifeDays")) {
            keeps = Optional.of(Period.ofDays(place.at("shelfLifeDays").whole()));
        }
        Optional<Period> time = keeps;
        return place.make(() -> new Stock(grams, low, price, opened, time));
    }
}
