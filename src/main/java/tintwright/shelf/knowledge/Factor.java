package tintwright.shelf.knowledge;

import java.util.Arrays;

/**
 * Lower triangular Cholesky factor of a symmetric positive matrix, whose rows begin at their first figure: what
 * stands before it is zero in the factor too, and costs nothing.
 *
 * <p>Source: George and Liu (1981), Computer Solution of Large Sparse Positive Definite Systems, chapter 4 (the
 * envelope method).
 */
final class Factor {
    /** Rows that are worked on together, so that one look at an earlier row serves them all; a judgement of ours. */
    private static final int GROUP = 4;

    private final double[][] rows;
    private final int[] first;

    private Factor(double[][] rows, int[] first) {
        this.rows = rows;
        this.first = first;
    }

    /**
     * @param symmetric of which the lower triangle counts; not changed
     * @throws IllegalStateException when the matrix is not positive definite
     */
    static Factor of(double[][] symmetric) {
        int[] first = new int[symmetric.length];
        double[][] rows = identity(first);
        for (int i = 0; i < first.length; i++) {
            System.arraycopy(symmetric[i], 0, rows[i], 0, i + 1);
        }
        return inPlace(rows, first);
    }

    /**
     * The lower triangle of the identity, to add to: the figure of row i and column j stands at {@code j - first[i]}.
     *
     * @param first where each row begins; made so that rows which are worked on together begin together
     */
    static double[][] identity(int[] first) {
        double[][] rows = new double[(first.length + GROUP - 1) / GROUP * GROUP][];
        for (int from = 0; from < rows.length; from += GROUP) {
            int to = Math.min(first.length, from + GROUP);
            int least = Arrays.stream(first, from, to).min().orElseThrow();
            Arrays.fill(first, from, to, least);
            for (int i = from; i < from + GROUP; i++) {
                rows[i] = new double[from + GROUP - least];
                rows[i][i - least] = 1;
            }
        }
        return rows;
    }

    /**
     * @param rows  as {@link #identity} made them; become the factor
     * @param first as it left them
     * @throws IllegalStateException when the matrix is not positive definite, which a prior rules out
     */
    static Factor inPlace(double[][] rows, int[] first) {
        Factor factor = new Factor(rows, first);
        for (int from = 0; from < rows.length; from += GROUP) {
            factor.eliminate(from);
        }
        return factor;
    }

    private void eliminate(int from) {
        double[] a = rows[from];
        double[] b = rows[from + 1];
        double[] c = rows[from + 2];
        double[] d = rows[from + 3];
        int begin = first[from];
        for (int j = begin; j < from + GROUP; j++) {
            double[] row = rows[j];
            int ahead = j < from ? first[j] : begin;
            int shift = ahead - begin;
            int end = j - begin;
            double sa = a[end];
            double sb = b[end];
            double sc = c[end];
            double sd = d[end];
            for (int k = Math.max(0, shift); k < end; k++) {
                double by = row[k - shift];
                sa -= by * a[k];
                sb -= by * b[k];
                sc -= by * c[k];
                sd -= by * d[k];
            }
            double pivot = row[j - ahead];
            if (j >= from) {
                // Of the four only those from here on have this column; the others hold nothing that is looked at.
                double square = j == from ? sa : j == from + 1 ? sb : j == from + 2 ? sc : sd;
                if (!(square > 0)) {
                    throw new IllegalStateException("a covariance is not positive definite");
                }
                pivot = Math.sqrt(square);
            }
            a[end] = sa / pivot;
            b[end] = sb / pivot;
            c[end] = sc / pivot;
            d[end] = sd / pivot;
        }
    }

    /** Solves L x = b in place. */
    void forward(double[] b) {
        for (int i = 0; i < first.length; i++) {
            double[] row = rows[i];
            int begin = first[i];
            double sum = b[i];
            for (int j = begin; j < i; j++) {
                sum -= row[j - begin] * b[j];
            }
            b[i] = sum / row[i - begin];
        }
    }

    /** Solves L' x = b in place. */
    void backward(double[] b) {
        for (int i = first.length - 1; i >= 0; i--) {
            double[] row = rows[i];
            int begin = first[i];
            double x = b[i] / row[i - begin];
            b[i] = x;
            for (int j = begin; j < i; j++) {
                b[j] -= row[j - begin] * x;
            }
        }
    }

    /** @return ln of the determinant of the matrix itself */
    double logDeterminant() {
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            sum += 2 * Math.log(rows[i][i - first[i]]);
        }
        return sum;
    }

    double at(int row, int column) {
        return column > row || column < first[row] ? 0 : rows[row][column - first[row]];
    }
}
