package tintwright.files;

import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    static Fields toTree(Stock stock) {
        Fields tree = Fields.none()
                .with("gramsLeft", stock.gramsLeft())
                .with("lowAtGrams", stock.lowAt())
                .with("pricePerKg", stock.pricePerKg())
                .with("openedOn", stock.openedOn());
        stock.keeps()
                // Whole months or whole days: what a tub says, and all that is read below.
                .ifPresent(time -> {
                    boolean months = time.toTotalMonths() > 0;
                    tree.with(
                            months ? "shelfLifeMonths" : "shelfLifeDays",
                            months ? time.toTotalMonths() : time.get(ChronoUnit.DAYS));
                });
        return tree;
    }

    static Stock read(JsonPlace place) throws FileProblem {
        if (place.has("shelfLifeMonths") && place.has("shelfLifeDays")) {
            throw place.at("shelfLifeDays").problem("its shelf life is said twice: in months or in days, not in both");
        }
        Optional<Period> months = place.optional("shelfLifeMonths", time -> Period.ofMonths(time.whole()));
        Optional<Period> days = place.optional("shelfLifeDays", time -> Period.ofDays(time.whole()));
        return place.make(() -> new Stock(
                place.optionalNumber("gramsLeft"),
                place.optionalNumber("lowAtGrams"),
                place.optionalNumber("pricePerKg"),
                place.optionalDate("openedOn"),
                months.or(() -> days)));
    }
}
