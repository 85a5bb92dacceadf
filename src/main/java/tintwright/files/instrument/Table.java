package tintwright.files.instrument;

import java.util.List;
import tintwright.files.FileProblem;

/**
 * Rows of text under named columns, with the line each stands on.
 *
 * @param file         how the file is called in a complaint
 * @param columns      the headings, as they stand
 * @param rows         each as long as the headings
 * @param decimalComma whether 0,5 is a half
 */
record Table(String file, List<String> columns, List<Row> rows, boolean decimalComma) {
    /**
     * @param line  where it stands in the file, from 1
     * @param cells texts, in the order of the columns
     */
    record Row(long line, List<String> cells) {}

    /** @return a finite number */
    double number(Row row, int column) throws FileProblem {
        String text = row.cells().get(column).strip();
        String plain = decimalComma ? text.replace(',', '.') : text;
        if (plain.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?")) {
            double value = Double.parseDouble(plain);
            if (Double.isFinite(value)) {
                return value;
            }
        }
        throw problem(row, column, "must be a number such as 0.25, was \"" + text + "\"; correct it there");
    }

    FileProblem problem(Row row, int column, String what) {
        return FileProblem.unusable(
                file + ", line " + row.line() + ", column \"" + columns.get(column) + "\": " + what);
    }

    FileProblem problem(Row row, String what) {
        return FileProblem.unusable(file + ", line " + row.line() + ": " + what);
    }
}
