package tintwright.files.instrument;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import tintwright.files.FileProblem;

/**
 * A table from a spreadsheet: comma, semicolon or tab between the cells, headings first, lines that begin with #
 * left out. With semicolons or tabs a comma inside a number is its decimal point.
 */
final class CsvTable {
    private CsvTable() {}

    static Table parse(String file, String text) throws FileProblem {
        char between = delimiter(text);
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(between)
                .setCommentMarker('#')
                .setIgnoreSurroundingSpaces(true)
                .setIgnoreEmptyLines(true)
                .setTrim(true)
                .get();
        List<String> columns = List.of();
        List<Table.Row> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            for (CSVRecord line : parser) {
                List<String> cells = line.toList();
                if (cells.stream().allMatch(String::isEmpty)) {
                    continue;
                }
                if (columns.isEmpty()) {
                    columns = cells;
                } else if (cells.size() != columns.size()) {
                    throw FileProblem.unusable(file + ", line " + parser.getCurrentLineNumber() + ": expected "
                            + columns.size() + " cells as in the headings, got " + cells.size()
                            + "; correct that line");
                } else {
                    rows.add(new Table.Row(parser.getCurrentLineNumber(), cells));
                }
            }
        } catch (IOException | UncheckedIOException e) {
            throw FileProblem.unusable(
                    file + ": this is not a table as a spreadsheet writes it (" + e.getMessage()
                            + "); export it again as CSV",
                    e);
        }
        if (columns.isEmpty()) {
            throw FileProblem.unusable(file + ": the file is empty; export the measurements again");
        }
        return new Table(file, columns, rows, between != ',');
    }

    /** The sign that stands most often in the headings. */
    private static char delimiter(String text) {
        String headings = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        char best = ',';
        long most = 0;
        for (char sign : new char[] {';', '\t', ','}) {
            long count = headings.chars().filter(c -> c == sign).count();
            if (count > most) {
                best = sign;
                most = count;
            }
        }
        return best;
    }
}
