package tintwright.colour;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Reads the CIE tables that travel with the program: numbers with commas, remarks behind {@code #}. */
final class CieTable {
    private CieTable() {}

    /** @return {@code count} columns of the table from {@code first} on, each as long as the table */
    static double[][] columns(String name, int first, int count) {
        List<double[]> rows = rows(name);
        double[][] columns = new double[count][rows.size()];
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < count; column++) {
                columns[column][row] = rows.get(row)[first + column];
            }
        }
        return columns;
    }

    private static List<double[]> rows(String name) {
        List<double[]> rows = new ArrayList<>();
        try (InputStream in = CieTable.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program was packed without its table " + name);
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.US_ASCII));
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (!line.startsWith("#")) {
                    rows.add(numbers(line));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the program's table " + name + " cannot be read", e);
        }
        return rows;
    }

    private static double[] numbers(String line) {
        String[] cells = line.split(",");
        double[] row = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            row[i] = Double.parseDouble(cells[i]);
        }
        return row;
    }
}
