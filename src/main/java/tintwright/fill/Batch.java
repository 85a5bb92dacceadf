package tintwright.fill;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tintwright.fill.catalyst.CatalystDose;
import tintwright.fill.repair.Mix;
import tintwright.fill.repair.Published;

/**
 * One cup, catalysed at once and used before it gels.
 *
 * @param number       from 1, in the order of the job
 * @param stage        where in the job
 * @param mix          gel coat to paste
 * @param parts        what is done with it
 * @param mixMl        gel coat and paste together, ml
 * @param gelCoatMl    coloured gel coat, ml
 * @param gelCoatGrams coloured gel coat, g
 * @param pasteGrams   gel paste, g
 * @param surplusMl    what was added so that the catalyst can be measured, ml; 0 for most
 * @param minutes      expected time to use it, stirring counted in
 * @param catalyst     the dose with its basis, limit and caution
 * @param wax          wax solution, only in the last coat of an unwaxed gel coat
 */
public record Batch(
        int number,
        Stage stage,
        Mix mix,
        List<Part> parts,
        double mixMl,
        double gelCoatMl,
        double gelCoatGrams,
        double pasteGrams,
        double surplusMl,
        double minutes,
        CatalystDose catalyst,
        Optional<WaxDose> wax) {
    /**
     * What of one line of repairs is done from a batch.
     *
     * @param line   the line's name
     * @param pieces how many of the line's pieces; broken where an area is done in parts
     * @param of     how many pieces the line has
     */
    public record Part(String line, double pieces, int of) {
        /** @return "all 20 of old cleat holes", "12 of the 20 of old cleat holes" or "52 % of keel strip" */
        public String words() {
            if (of == 1) {
                return pieces > 0.995 ? line : String.format(Locale.ROOT, "%.0f %% of %s", pieces * 100, line);
            }
            if (pieces > of - 0.005) {
                return (of == 2 ? "both of " : "all " + of + " of ") + line;
            }
            boolean whole = Math.abs(pieces - Math.rint(pieces)) < 0.01;
            return String.format(
                    Locale.ROOT, whole ? "%.0f of the %d of %s" : "%.1f of the %d of %s", pieces, of, line);
        }
    }

    public Batch {
        parts = List.copyOf(parts);
    }

    /** @return what stands in the cup, wax and the most styrene counted in, ml */
    double fullMl() {
        return mixMl
                + wax.map(WaxDose::ml).orElse(0.0)
                + styreneMl().map(range -> range[1]).orElse(0.0);
    }

    /** @return styrene that may thin a sprayed batch, least and most ml by the published 5 to 8 % */
    public Optional<double[]> styreneMl() {
        return stage.kind() == Stage.Kind.SPRAY
                ? Optional.of(new double[] {
                    Published.STYRENE_RANGE.low() / 100 * mixMl, Published.STYRENE_RANGE.high() / 100 * mixMl
                })
                : Optional.empty();
    }
}
