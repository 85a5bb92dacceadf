package tintwright.fill.repair;

import java.util.Optional;
import tintwright.units.UnitSystem;

/**
 * What a line of repairs is filled with, from the bottom up. Gel coat is a skin: thick, it is brittle and cracks, and
 * it mends no laminate.
 *
 * @param line     the line
 * @param below    what goes under the colour
 * @param colourMm how deep the colour goes in, mm; 0 where nothing can be planned
 * @param gelMm    gel coat it was held against, mm
 * @param measured true when that gel coat was measured, false when it is the usual one
 */
public record Triage(RepairLine line, Below below, double colourMm, double gelMm, boolean measured) {
    /** What goes under the colour. */
    public enum Below {
        /** Gel coat from the bottom to the top. */
        NOTHING,
        /** A plug at the bottom of a screw hole, gel coat paste above. */
        PLUG,
        /** Putty to a gel coat's thickness below the surface. */
        PUTTY,
        /** Glass and resin to a gel coat's thickness below the surface. */
        LAMINATE,
        /** Its depth cannot be: nothing is planned until it is measured again. */
        MEASURE_AGAIN
    }

    /** A depth gauge at a hull tells no better, mm; common practice, no source. */
    private static final double GAUGE_MM = 0.3;
    /** Deeper than this into the laminate, glass is cut: putty alone does not carry; common practice, no source. */
    private static final double PUTTY_MM = 1.5;
    /** Gel coat paste above a plug deeper than this heats and cracks; common practice, no source. */
    static final double DEEPEST_PASTE_MM = 6;

    public static Triage of(RepairLine line, Hull hull) {
        Repair repair = line.repair();
        boolean measured = hull.gelCoatMm().isPresent();
        double gel = hull.gelCoatOrUsualMm();
        double surely = hull.gelCoatMm().orElse(Published.USUAL_FILM_MM.high());
        if (hull.thicknessMm().isPresent()
                && repair.depthMm() > hull.thicknessMm().getAsDouble() + GAUGE_MM) {
            return new Triage(line, Below.MEASURE_AGAIN, 0, hull.thicknessMm().getAsDouble(), measured);
        }
        if (repair instanceof SprayArea) {
            return new Triage(line, Below.NOTHING, repair.thickestMm(), gel, measured);
        }
        if (repair instanceof Hole hole) {
            boolean shallow = hole.depthMm() <= surely + GAUGE_MM;
            return new Triage(
                    line,
                    shallow ? Below.NOTHING : Below.PLUG,
                    Math.min(hole.thickestMm(), DEEPEST_PASTE_MM),
                    gel,
                    measured);
        }
        double into = repair.depthMm() - surely;
        if (into <= GAUGE_MM + 1e-9) {
            return new Triage(line, Below.NOTHING, repair.depthMm(), gel, measured);
        }
        return new Triage(line, into > PUTTY_MM + 1e-9 ? Below.LAMINATE : Below.PUTTY, gel, gel, measured);
    }

    /** @return colour and paste that all of the line take, ml; nothing added for loss */
    public double netMl() {
        return line.count() * pieceMl();
    }

    double pieceMl() {
        return line.repair().volumeToMm3(colourMm) / 1000;
    }

    /** @return what goes under the colour in all of the line, ml */
    public double belowMl() {
        return below == Below.MEASURE_AGAIN ? 0 : line.netMl() - netMl();
    }

    /** @return true when a person trained in laminate must look before anything is filled */
    public boolean trained() {
        return below == Below.LAMINATE
                || line.found().contains(Finding.SOFT)
                || line.found().contains(Finding.CORE)
                || line.found().contains(Finding.STRUCTURE);
    }

    /** @return what is wrong with it and what to do, one or two sentences; empty for a place that is gel coat all through */
    public Optional<String> words(UnitSystem units) {
        String gel = (measured ? "the " : "the usual ") + units.film(gelMm) + " gel coat";
        String colour = units.film(colourMm) + " of colour on top";
        String first = switch (below) {
            case NOTHING -> "";
            case PLUG -> plug(units);
            case PUTTY ->
                units.length(line.repair().depthMm()) + " is through " + gel + ": putty first, then " + colour + ".";
            case LAMINATE ->
                units.length(line.repair().depthMm()) + " is through " + gel + ": mend the laminate first, then "
                        + colour + ".";
            case MEASURE_AGAIN ->
                units.length(line.repair().depthMm()) + " deep in a hull " + units.length(gelMm)
                        + " thick cannot be: measure again; it is left out of the plan.";
        };
        String second = !trained()
                ? ""
                : line.found().contains(Finding.CORE)
                        ? "The core is open: a trained person dries and closes it first."
                        : line.found().contains(Finding.SOFT)
                                ? "It is soft: a trained person looks at the laminate first."
                                : line.found().contains(Finding.STRUCTURE)
                                        ? "It carries load: a trained person mends it first; the colour is only the skin."
                                        : "Cut glass is work for a trained person.";
        String both = (first + " " + second).trim();
        return both.isEmpty() ? Optional.empty() : Optional.of(both);
    }

    private String plug(UnitSystem units) {
        Hole hole = (Hole) line.repair();
        if (hole.thickestMm() > colourMm) {
            return units.length(hole.thickestMm()) + " is deep for gel coat, it heats and cracks: putty up to "
                    + units.length(colourMm) + " below the surface.";
        }
        return hole.plugMm() > 0 ? "" : "Plug the bottom, or the fill sinks.";
    }
}
