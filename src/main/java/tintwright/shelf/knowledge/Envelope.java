package tintwright.shelf.knowledge;

import java.util.Arrays;
import java.util.List;

/**
 * Where a matrix over the unknowns has figures at all, in one order of them: an unknown meets only those that stand
 * in a chip with it. With what every chip shares at the end, the rows of a tint hardly reach beyond the tint.
 */
final class Envelope {
    private final int[] row;
    private final int[] first;

    /**
     * @param row for each unknown, which row of the matrix is its
     */
    Envelope(int[] row, List<Observation> observations) {
        this.row = row;
        this.first = new int[row.length];
        for (int i = 0; i < first.length; i++) {
            first[i] = i;
        }
        for (Observation observation : observations) {
            int least = row.length;
            for (int column : observation.columns()) {
                least = Math.min(least, row[column]);
            }
            for (int column : observation.columns()) {
                first[row[column]] = Math.min(first[row[column]], least);
            }
        }
    }

    /** @return the lower triangle of the identity, each row from where it begins */
    double[][] identity() {
        return Factor.identity(first);
    }

    /** Adds a small symmetric square, of which the lower triangle counts, over these unknowns. */
    void add(double[][] square, int[] columns, double[][] rows) {
        int[] at = new int[columns.length];
        for (int a = 0; a < at.length; a++) {
            at[a] = row[columns[a]];
            for (int b = 0; b <= a; b++) {
                int below = Math.max(at[a], at[b]);
                rows[below][Math.min(at[a], at[b]) - first[below]] += square[a][b];
            }
        }
    }

    /** @return the factor of such rows, which it takes for its own */
    Factor factor(double[][] rows) {
        return Factor.inPlace(rows, first);
    }

    /** @return figures of the unknowns in the order of the rows */
    double[] inRows(double[] ofUnknowns) {
        double[] out = new double[row.length];
        for (int i = 0; i < row.length; i++) {
            out[row[i]] = ofUnknowns[i];
        }
        return out;
    }

    /** @return figures of the rows in the order of the unknowns */
    double[] ofUnknowns(double[] inRows) {
        double[] out = new double[row.length];
        for (int i = 0; i < row.length; i++) {
            out[i] = inRows[row[i]];
        }
        return out;
    }

    /** @return every unknown in its own row */
    static int[] asTheyCome(int count) {
        int[] row = new int[count];
        Arrays.setAll(row, i -> i);
        return row;
    }
}
