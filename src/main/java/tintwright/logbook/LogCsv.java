package tintwright.logbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;

/**
 * Everything that counts in a log as one table, a row for each entry, for a spreadsheet: RFC 4180, UTF-8 with a
 * byte-order mark (without it some spreadsheets read other letters), decimal points.
 */
public final class LogCsv {
    private static final char BYTE_ORDER_MARK = '\ufeff';

    /** The columns, in their order. */
    private enum Column {
        BOAT,
        YEAR,
        PLACE,
        ENTRY,
        DAY,
        NAME,
        WORDS,
        GRAMS,
        PARTS,
        WEIGHINGS,
        L,
        A,
        B,
        LIGHT,
        OBSERVER,
        FILM,
        NOTE,
        WRITTEN,
        ID
    }

    private final Map<UUID, Page> pages = new HashMap<>();

    private LogCsv() {}

    /** @return the whole log; several weighings or steps stand in one cell, separated by semicolons */
    public static String of(LogBook book) {
        LogCsv csv = new LogCsv();
        List<Noted<Page>> all = book.all();
        all.forEach(noted -> csv.pages.put(noted.id(), noted.page()));
        StringBuilder out = new StringBuilder().append(BYTE_ORDER_MARK);
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
            for (Column column : Column.values()) {
                printer.print(title(column));
            }
            printer.println();
            for (Noted<Page> noted : all) {
                Map<Column, String> row = csv.row(noted);
                for (Column column : Column.values()) {
                    printer.print(Harmless.cell(row.getOrDefault(column, "")));
                }
                printer.println();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory takes any row", e);
        }
        return out.toString();
    }

    private static String title(Column column) {
        return switch (column) {
            case L -> "L*";
            case A -> "a*";
            case B -> "b*";
            default -> column.name().toLowerCase(Locale.ROOT);
        };
    }

    private Map<Column, String> row(Noted<Page> noted) {
        Map<Column, String> row = new EnumMap<>(Column.class);
        Page page = noted.page();
        row.put(Column.ENTRY, PageShape.kind(page));
        row.put(Column.WRITTEN, noted.at().toString());
        row.put(Column.ID, noted.id().toString());
        noted.boat()
                .map(pages::get)
                .filter(Page.Boat.class::isInstance)
                .map(Page.Boat.class::cast)
                .ifPresent(boat -> row.put(Column.BOAT, boat.name()));
        if (page instanceof Page.Boat boat) {
            put(row, boat.name(), Optional.empty(), boat.notes());
            row.put(Column.WORDS, boat.type());
            boat.year().ifPresent(year -> row.put(Column.YEAR, year.toString()));
        } else if (page instanceof Page.Place place) {
            row.put(Column.PLACE, place.name());
            put(row, place.name(), Optional.empty(), place.aged());
        } else if (page instanceof Page.Target target) {
            place(row, Optional.of(target.place()));
            put(row, "", Optional.of(target.day()), target.note());
            colour(row, target.readings());
        } else if (page instanceof Page.Cup cup) {
            cup(row, cup);
        } else {
            others(row, page);
        }
        return row;
    }

    private void cup(Map<Column, String> row, Page.Cup cup) {
        place(row, cup.place());
        put(row, cup.name(), Optional.of(cup.day()), cup.note());
        row.put(Column.GRAMS, grams(cup.parts().total()));
        row.put(Column.PARTS, parts(cup.parts(), cup.shelf()));
        row.put(
                Column.WEIGHINGS,
                cup.weighings().stream()
                        .map(weighing -> cup.nameOf(weighing.part()) + " " + grams(weighing.grams()) + " g"
                                + (weighing.note().isEmpty() ? "" : " (" + weighing.note() + ")"))
                        .collect(Collectors.joining("; ")));
        colour(row, cup.readings());
    }

    private void others(Map<Column, String> row, Page page) {
        if (page instanceof Page.ChipMade made) {
            put(row, made.chip().id(), made.chip().madeOn(), made.chip().note());
            row.put(Column.WORDS, made.cured());
            row.put(
                    Column.PARTS,
                    parts(
                            made.chip().parts(),
                            made.cup()
                                    .map(pages::get)
                                    .filter(Page.Cup.class::isInstance)
                                    .map(cup -> ((Page.Cup) cup).shelf())
                                    .orElse(List.of())));
            colour(row, made.chip().readings());
        } else if (page instanceof Page.Filled fill) {
            place(row, fill.place());
            put(row, "", Optional.of(fill.day()), fill.note());
            fill.grams().ifPresent(grams -> row.put(Column.GRAMS, grams(grams)));
            row.put(Column.WORDS, String.join("; ", fill.steps()));
        } else if (page instanceof Page.LeftOver left) {
            put(row, left.leftover().name(), left.leftover().setAside(), left.used() ? "used up" : "");
            row.put(Column.GRAMS, grams(left.leftover().parts().total()));
            row.put(Column.PARTS, parts(left.leftover().parts(), left.shelf()));
            colour(row, left.leftover().readings());
        } else if (page instanceof Page.Verdict verdict) {
            if (pages.get(verdict.of()) instanceof Page.Cup cup) {
                row.put(Column.NAME, cup.name());
                place(row, cup.place());
            }
            row.put(Column.DAY, verdict.day().toString());
            row.put(Column.WORDS, verdict.outcome().words());
            row.put(Column.NOTE, verdict.note());
        } else if (page instanceof Page.Remark remark) {
            row.put(Column.NOTE, remark.text());
        } else if (page instanceof Page.Unknown unknown) {
            row.put(Column.NOTE, unknown.body());
        }
    }

    private void place(Map<Column, String> row, Optional<UUID> id) {
        id.map(pages::get)
                .filter(Page.Place.class::isInstance)
                .ifPresent(place -> row.put(Column.PLACE, ((Page.Place) place).name()));
    }

    private static void put(Map<Column, String> row, String name, Optional<LocalDate> day, String note) {
        row.put(Column.NAME, name);
        day.ifPresent(date -> row.put(Column.DAY, date.toString()));
        row.put(Column.NOTE, note);
    }

    private static void colour(Map<Column, String> row, List<Reading> readings) {
        MeanColour.of(readings).ifPresent(mean -> {
            row.put(Column.L, number(mean.lab().lightness(), 2));
            row.put(Column.A, number(mean.lab().a(), 2));
            row.put(Column.B, number(mean.lab().b(), 2));
            row.put(Column.LIGHT, mean.lab().viewing().light().name());
            row.put(
                    Column.OBSERVER,
                    Integer.toString(mean.lab().viewing().observer().degrees()));
            row.put(Column.FILM, mean.film().name().toLowerCase(Locale.ROOT));
        });
    }

    private static String parts(Parts parts, List<Page.Ingredient> shelf) {
        Map<String, String> names = new HashMap<>();
        shelf.forEach(one -> names.put(one.id(), one.name()));
        return parts.grams().entrySet().stream()
                .map(part -> names.getOrDefault(part.getKey(), part.getKey()) + " " + grams(part.getValue()) + " g")
                .collect(Collectors.joining("; "));
    }

    private static String grams(double grams) {
        return number(grams, 3).replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    private static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0\\.0+") ? text.substring(1) : text;
    }
}
