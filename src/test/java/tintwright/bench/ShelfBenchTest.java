package tintwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tintwright.shelf.Base;
import tintwright.shelf.ItemKind;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.Paste;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Stock;
import tintwright.shelf.StockItem;
import tintwright.shelf.Sundry;
import tintwright.shelf.Tint;

/** What is low or old, of every kind that stands on a shelf. */
class ShelfBenchTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 5, 20);

    private static StockItem item(ItemKind kind, Stock stock) {
        return switch (kind) {
            case BASE -> new Base("thing", "the thing", 1.3, false, stock);
            case TINT -> Tint.of("thing", "the thing", PigmentFamily.VIOLET).withStock(stock);
            case PASTE -> new Paste("thing", "the thing", 0.8, stock);
            case LEFTOVER ->
                new Leftover("thing", "the thing", Parts.of(Map.of("white", 30.0)), List.of(), Optional.empty())
                        .withStock(stock);
            case CATALYST, WAX, KIT -> new Sundry("thing", "the thing", kind, stock);
        };
    }

    private static Shelf shelf(StockItem item) {
        return new Shelf("shelf", List.of(new Base("white", "White", 1.3, false, Stock.UNKNOWN), item), List.of());
    }

    private static Stock stock(double left, OptionalDouble lowAt, Period keeps) {
        return new Stock(
                OptionalDouble.of(left),
                lowAt,
                OptionalDouble.empty(),
                Optional.of(LocalDate.of(2026, 2, 20)),
                Optional.of(keeps));
    }

    private static List<String> toBuy(ItemKind kind, Stock stock) {
        return ShelfBench.toBuy(shelf(item(kind, stock)), TODAY).stream()
                .map(ShelfBench.Wanted::words)
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void everyKindButALeftoverIsBoughtWhenLowOrOld(ItemKind kind) {
        boolean bought = kind != ItemKind.LEFTOVER;
        Period year = Period.ofMonths(12);
        assertEquals(List.of(), toBuy(kind, stock(1000, OptionalDouble.empty(), year)), "enough and fresh");
        assertEquals(
                List.of(),
                ShelfBench.listToBuy(shelf(item(kind, stock(1000, OptionalDouble.empty(), year))), TODAY),
                "no list either");
        assertEquals(List.of(), toBuy(kind, Stock.UNKNOWN), "nobody weighed it");
        assertEquals(
                bought ? List.of("the thing: running low, 9 g left") : List.of(),
                toBuy(kind, stock(9, OptionalDouble.empty(), year)));
        assertEquals(
                bought ? List.of("the thing: running low, 900 g left") : List.of(),
                toBuy(kind, stock(900, OptionalDouble.of(950), year)),
                "the person's own measure of low");
        assertEquals(
                bought ? List.of("the thing: past its shelf life since 2026-05-06, running low, 1 g left") : List.of(),
                toBuy(kind, stock(1, OptionalDouble.empty(), Period.ofDays(75))));
        assertEquals(
                bought ? List.of("the thing: shelf life ends on 2026-06-10, 1000 g left") : List.of(),
                toBuy(kind, stock(1000, OptionalDouble.empty(), Period.ofDays(110))));
    }

    /** Common practice, no source: a kit keeps about two weeks once opened, a mixed cup three months. */
    @Test
    void whatWasOpenedOrMixedIsShownBeforeItFailsAlsoWhereNoDataSheetSaysSo() {
        LocalDate opened = LocalDate.of(2026, 5, 1);
        Stock stock = new Stock(
                OptionalDouble.of(500),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(opened),
                Optional.empty());
        StockItem kit = item(ItemKind.KIT, stock);
        assertEquals(List.of(), ShelfBench.warnings(kit, opened.plusDays(3)));
        assertEquals(List.of("shelf life ends on 2026-05-15"), ShelfBench.warnings(kit, opened.plusDays(10)));
        assertEquals(List.of("past its shelf life since 2026-05-15"), ShelfBench.warnings(kit, opened.plusDays(15)));
        StockItem mixed = item(ItemKind.LEFTOVER, stock);
        assertEquals(List.of(), ShelfBench.warnings(mixed, opened.plusDays(40)));
        assertEquals(List.of("shelf life ends on 2026-07-30"), ShelfBench.warnings(mixed, opened.plusDays(70)));
        assertEquals(List.of("past its shelf life since 2026-07-30"), ShelfBench.warnings(mixed, opened.plusDays(95)));
        assertEquals(
                1,
                ShelfBench.warnings(item(ItemKind.CATALYST, stock), opened.plusDays(350))
                        .size());
    }

    @ParameterizedTest
    @EnumSource
    void everyKindTakesAnotherNameAndStock(ItemKind kind) {
        StockItem item = item(kind, stock(70, OptionalDouble.empty(), Period.ofMonths(4)));
        StockItem other = item.withName("other").withStock(item.stock().withGramsLeft(OptionalDouble.of(12)));
        assertEquals(kind, other.kind());
        assertEquals("other", other.name());
        assertEquals("thing", other.id());
        assertEquals(12, other.stock().gramsLeft().orElseThrow(), 1e-12);
        assertEquals(item.stock().openedOn(), other.stock().openedOn());
        Shelf shelf = shelf(item).with(other);
        assertEquals(Optional.of(other), shelf.item("thing"));
        assertEquals(2, shelf.items().size());
        assertTrue(shelf.without("thing").item("thing").isEmpty());
        assertFalse(shelf.item("thing").isEmpty(), "and the first is as it was");
    }
}
