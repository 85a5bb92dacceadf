package tintwright.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.CureTimer;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.fill.repair.Published;
import tintwright.fill.repair.RepairLine;
import tintwright.fill.repair.Triage;
import tintwright.units.UnitSystem;

/**
 * The job worked out, in its order.
 *
 * @param job      what was asked
 * @param amounts  for each line of repairs what it takes
 * @param share    catalyst, with its basis, limit and caution
 * @param origin   where that share comes from, in words
 * @param time     how long a catalysed cup can be worked
 * @param batches  the cups in order
 * @param enough   whether the coloured cup reaches; empty when no supply was entered
 * @param finish   sanding and tape
 * @param timers   what runs from "catalysed now"
 * @param day      the steps in order, with their times
 * @param warnings what to know before starting
 * @param cautions the usual cautions that apply
 */
public record FillPlan(
        FillJob job,
        List<Amount> amounts,
        CatalystShare share,
        String origin,
        WorkingTime time,
        List<Batch> batches,
        Optional<Enough> enough,
        Finish finish,
        List<CureTimer> timers,
        Day day,
        List<Warning> warnings,
        List<Caution> cautions) {
    /**
     * What one line of repairs takes.
     *
     * @param triage  the line, and what goes where in it
     * @param netMl   colour and paste that are missing, ml
     * @param mixedMl what is mixed for it in all, loss and second fill counted in, ml
     */
    public record Amount(Triage triage, double netMl, double mixedMl) {
        /** @return the line of repairs */
        public RepairLine line() {
            return triage.line();
        }
    }

    /**
     * How it is finished.
     *
     * @param sandings what is sanded with which grits
     */
    public record Finish(List<Sanding> sandings) {
        public Finish {
            sandings = List.copyOf(sandings);
        }

        /** @return the most any of the ladders takes off the old gel coat around, mm */
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
     * @param what    "the fills" or "the sprayed areas"
     * @param ladder  the grits in order
     * @param sprayed true for a sprayed film, which loses its orange peel too
     */
    public record Sanding(String what, GritLadder ladder, boolean sprayed) {
        /** @return what it takes off what was filled or sprayed, at least, mm */
        public double takesLeastMm() {
            return sprayed ? Published.SPRAY_SANDED_MM.low() : ladder.takesLeastMm();
        }

        /** @return what it takes off what was filled or sprayed, at most, mm */
        public double takesMostMm() {
            return sprayed ? Published.SPRAY_SANDED_MM.high() : ladder.takesMostMm();
        }
    }

    /** Tape laps over at each of four corners, mm; common practice, no source. */
    private static final double TAPE_LAP_MM = 25;

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

    /** @return what must be known before starting, each in its sentence, the forbidding first */
    public List<String> before(UnitSystem units) {
        List<String> said = new ArrayList<>();
        warnings.stream().filter(one -> one.kind().forbids()).forEach(one -> said.add(one.words(units)));
        for (Amount amount : amounts) {
            amount.triage()
                    .words(units)
                    .ifPresent(words -> said.add(amount.line().name() + ": " + words));
        }
        warnings.stream().filter(one -> !one.kind().forbids()).forEach(one -> said.add(one.words(units)));
        return said;
    }

    /** @return whether the weather allows the work */
    public boolean forbidden() {
        return warnings.stream().anyMatch(one -> one.kind().forbids());
    }

    /** @return masking tape round all of these lines, mm: twice length and width, with a lap at each corner */
    double tapeMm(List<String> lines) {
        return amounts.stream()
                .filter(amount -> lines.contains(amount.line().name()))
                .map(Amount::line)
                .mapToDouble(line -> line.count()
                        * (2 * (line.repair().acrossMm() + line.repair().widthMm()) + 4 * TAPE_LAP_MM))
                .sum();
    }

    /** @return masking tape for the whole job, mm */
    public double tapeMm() {
        return tapeMm(amounts.stream().map(amount -> amount.line().name()).toList());
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
