package tintwright.files;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.shelf.Stock;

/** How much of a thing is left, as four optional fields beside its own. */
final class StockShape {
    private static final List<String> FIELDS = List.of("gramsLeft", "pricePerKg", "openedOn", "shelfLifeMonths");

    private StockShape() {}

    /** @return these fields and those of a stock */
    static String[] beside(String... own) {
        List<String> all = new ArrayList<>(List.of(own));
        all.addAll(FIELDS);
        return all.toArray(String[]::new);
    }

    static void write(Stock stock, Map<String, Object> tree) {
        stock.gramsLeft().ifPresent(grams -> tree.put("gramsLeft", grams));
        stock.pricePerKg().ifPresent(price -> tree.put("pricePerKg", price));
        stock.openedOn().ifPresent(day -> tree.put("openedOn", day.toString()));
        stock.shelfLifeMonths().ifPresent(months -> tree.put("shelfLifeMonths", months));
    }

    static Stock read(JsonPlace place) throws FileProblem {
        OptionalDouble grams = place.optionalNumber("gramsLeft");
        OptionalDouble price = place.optionalNumber("pricePerKg");
        Optional<LocalDate> opened = place.optionalDate("openedOn");
        Optional<Integer> months = place.has("shelfLifeMonths")
                ? Optional.of(place.at("shelfLifeMonths").whole())
                : Optional.empty();
        return place.make(() -> new Stock(grams, price, opened, months));
    }
}
