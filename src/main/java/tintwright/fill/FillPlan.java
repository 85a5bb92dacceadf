package tintwright.fill;

import java.util.List;
import java.util.Optional;

/**
 * The job worked out, in its order.
 *
 * @param amounts  for each line of repairs what it takes
 * @param share    catalyst, with its basis, limit and caution
 * @param origin   where that share comes from, in words
 * @param time     how long a catalysed cup can be worked
 * @param batches  the cups in order
 * @param enough   whether the coloured cup reaches; empty when no supply was entered
 * @param finish   sanding and tape
 * @param timers   what runs from "catalysed now"
 * @param warnings what to know before starting
 * @param cautions the usual cautions that apply
 */
public record FillPlan(
        List<Amount> amounts,
        CatalystShare share,
        String origin,
        WorkingTime time,
        List<Batch> batches,
        Optional<Enough> enough,
        Finish finish,
        List<CureTimer> timers,
        List<Warning> warnings,
        List<Caution> cautions) {
    /**
     * What one line of repairs takes.
     *
     * @param line    the line
     * @param netMl   what is missing, ml
     * @param mixedMl what is mixed for it in all, loss and second fill counted in, ml
     */
    public record Amount(RepairLine line, double netMl, double mixedMl) {}

    /**
     * How it is finished.
     *
     * @param sandings what is sanded with which grits
     * @param tapeMm   masking tape to guard the old gel coat around every repair, mm
     */
    public record Finish(List<Sanding> sandings, double tapeMm) {
        public Finish {
            sandings = List.copyOf(sandings);
        }

        /** @return the most any of the ladders takes off, mm */
        public double takesMostMm() {
            return sandings.stream()
                    .mapToDouble(sanding -> sanding.ladder().takesMostMm())
                    .max()
                    .orElse(0);
        }
    }

    /**
     * One ladder and where it goes.
     *
     * @param what   "the fills" or "the sprayed areas"
     * @param ladder the grits in order
     */
    public record Sanding(String what, GritLadder ladder) {}

    public FillPlan {
        amounts = List.copyOf(amounts);
        batches = List.copyOf(batches);
        timers = List.copyOf(timers);
        warnings = List.copyOf(warnings);
        cautions = List.copyOf(cautions);
    }

    /** @return coloured gel coat for all batches, grams */
    public double gelCoatGrams() {
        return batches.stream().mapToDouble(Batch::gelCoatGrams).sum();
    }

    /** @return gel paste for all batches, grams */
    public double pasteGrams() {
        return batches.stream().mapToDouble(Batch::pasteGrams).sum();
    }

    /** @return wax solution for all batches, ml; 0 when none is needed */
    public double waxMl() {
        return batches.stream()
                .mapToDouble(batch -> batch.wax().map(WaxDose::ml).orElse(0.0))
                .sum();
    }
}
