package tintwright.shelf.knowledge;

/**
 * Turns differences from what was read into units of how sure that is: afterwards their errors are independent and of
 * standard deviation 1.
 */
interface Whitening {
    /** Turns one difference, in place. */
    void turn(double[] difference);

    /** Turns differences in the first so many columns, of which each row is one figure that was read. */
    void turn(double[][] rows, int columns);

    /** For a few figures whose errors go together. */
    static Whitening of(double[][] covariance) {
        Factor factor = Factor.of(covariance);
        return new Whitening() {
            @Override
            public void turn(double[] difference) {
                factor.forward(difference);
            }

            @Override
            public void turn(double[][] rows, int columns) {
                double[] column = new double[covariance.length];
                for (int c = 0; c < columns; c++) {
                    for (int i = 0; i < column.length; i++) {
                        column[i] = rows[i][c];
                    }
                    factor.forward(column);
                    for (int i = 0; i < column.length; i++) {
                        rows[i][c] = column[i];
                    }
                }
            }
        };
    }

    /**
     * For many figures with independent errors of their own and a few that all share.
     *
     * @param variance of each figure's own
     * @param shared   a row for each shared error: its step in every figure, one standard deviation long; not changed
     */
    static Whitening of(double[] variance, double[][] shared) {
        return new ManyFigures(variance, shared);
    }

    /** One shared error after another is taken out, each as those before it have left it. */
    final class ManyFigures implements Whitening {
        private final double[] scale;
        private final double[][] errors;
        private final double[] shrink;

        private ManyFigures(double[] variance, double[][] shared) {
            scale = new double[variance.length];
            for (int i = 0; i < scale.length; i++) {
                scale[i] = 1 / Math.sqrt(variance[i]);
            }
            errors = new double[shared.length][scale.length];
            shrink = new double[shared.length];
            for (int e = 0; e < errors.length; e++) {
                for (int i = 0; i < scale.length; i++) {
                    errors[e][i] = shared[e][i] * scale[i];
                }
                for (int before = 0; before < e; before++) {
                    takeOut(before, errors[e]);
                }
                double size = dot(errors[e], errors[e]);
                // The root of the inverse of 1 + v v' is 1 - shrink v v'.
                shrink[e] = size > 1e-12 ? (1 - 1 / Math.sqrt(1 + size)) / size : 0;
            }
        }

        private void takeOut(int error, double[] from) {
            double by = shrink[error] * dot(errors[error], from);
            for (int i = 0; i < from.length; i++) {
                from[i] -= by * errors[error][i];
            }
        }

        private static double dot(double[] a, double[] b) {
            double sum = 0;
            for (int i = 0; i < a.length; i++) {
                sum += a[i] * b[i];
            }
            return sum;
        }

        @Override
        public void turn(double[] difference) {
            for (int i = 0; i < difference.length; i++) {
                difference[i] *= scale[i];
            }
            for (int e = 0; e < errors.length; e++) {
                takeOut(e, difference);
            }
        }

        @Override
        public void turn(double[][] rows, int columns) {
            for (int i = 0; i < scale.length; i++) {
                for (int c = 0; c < columns; c++) {
                    rows[i][c] *= scale[i];
                }
            }
            double[][] along = new double[errors.length][columns];
            double[] by = new double[errors.length];
            for (int e = 0; e < errors.length; e++) {
                RowSum.add(along[e], columns, errors[e], rows, scale.length);
                for (int before = 0; before < e; before++) {
                    by[before] = -shrink[before] * dot(errors[before], errors[e]);
                }
                RowSum.add(along[e], columns, by, along, e);
            }
            for (int i = 0; i < scale.length; i++) {
                for (int e = 0; e < errors.length; e++) {
                    by[e] = -shrink[e] * errors[e][i];
                }
                RowSum.add(rows[i], columns, by, along, errors.length);
            }
        }
    }
}
