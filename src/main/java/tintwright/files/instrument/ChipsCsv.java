package tintwright.files.instrument;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tintwright.files.FileProblem;
import tintwright.reading.Conditions;
import tintwright.reading.Reading;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;

/**
 * Chips from a spreadsheet: a column {@code chip}, a column of grams {@code g ID} for each part, and the columns of
 * a reading. Lines of one chip are several readings of it.
 */
final class ChipsCsv {
    private final Table table;
    private final Map<String, Integer> parts = new LinkedHashMap<>();

    private ChipsCsv(Table table) {
        this.table = table;
        for (int i = 0; i < table.columns().size(); i++) {
            String heading = table.columns().get(i);
            if (heading.toLowerCase(Locale.ROOT).matches("(g|grams)\\s+\\S.*")) {
                parts.put(heading.substring(heading.indexOf(' ')).strip(), i);
            }
        }
    }

    static List<Chip> parse(String file, String text, Conditions unsaid) throws FileProblem {
        ChipsCsv csv = new ChipsCsv(CsvTable.parse(file, text));
        ReadingColumns columns = ReadingColumns.of(csv.table);
        int chip = columns.named("chip")
                .orElseThrow(() -> FileProblem.unusable(file + ": a column \"chip\" is missing; name each chip in it"));
        if (csv.parts.isEmpty()) {
            throw FileProblem.unusable(file + ": no column says what is in the chips; add one of grams for each part,"
                    + " such as \"g soot-black\"");
        }
        List<Reading> readings = TableReadings.readings(csv.table, unsaid);
        Map<String, Chip> chips = new LinkedHashMap<>();
        for (int i = 0; i < readings.size(); i++) {
            Table.Row row = csv.table.rows().get(i);
            String id = row.cells().get(chip);
            Chip next = csv.chip(row, id, readings.get(i), columns);
            Chip before = chips.get(id);
            if (before == null) {
                chips.put(id, next);
            } else if (before.parts().equals(next.parts())) {
                List<Reading> all = new ArrayList<>(before.readings());
                all.add(readings.get(i));
                chips.put(id, new Chip(id, before.parts(), all, before.madeOn(), before.note()));
            } else {
                throw csv.table.problem(
                        row,
                        "the chip \"" + id + "\" stands above with other parts; give one of"
                                + " them another name or correct its grams");
            }
        }
        return List.copyOf(chips.values());
    }

    private Chip chip(Table.Row row, String id, Reading reading, ReadingColumns columns) throws FileProblem {
        Map<String, Double> grams = new LinkedHashMap<>();
        for (Map.Entry<String, Integer> part : parts.entrySet()) {
            if (!row.cells().get(part.getValue()).isBlank()) {
                double mass = table.number(row, part.getValue());
                if (mass < 0) {
                    throw table.problem(
                            row, part.getValue(), "a mass must be 0 g or more, was " + mass + " g; correct it there");
                }
                grams.put(part.getKey(), mass);
            }
        }
        OptionalInt note = columns.named("note");
        Optional<LocalDate> madeOn = madeOn(row, columns.named("madeon", "made on", "date"));
        try {
            return new Chip(
                    id,
                    Parts.of(grams),
                    List.of(reading),
                    madeOn,
                    note.isPresent() ? row.cells().get(note.getAsInt()) : "");
        } catch (IllegalArgumentException e) {
            throw table.problem(row, e.getMessage() + "; correct it there");
        }
    }

    private Optional<LocalDate> madeOn(Table.Row row, OptionalInt column) throws FileProblem {
        if (column.isEmpty() || row.cells().get(column.getAsInt()).isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(row.cells().get(column.getAsInt())));
        } catch (DateTimeParseException e) {
            throw table.problem(
                    row,
                    column.getAsInt(),
                    "must be a date such as 2026-05-31, was \"" + row.cells().get(column.getAsInt())
                            + "\"; correct it there");
        }
    }
}
