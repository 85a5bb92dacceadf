package tintwright.fill;

import java.util.ArrayList;
import java.util.List;
import tintwright.units.UnitSystem;

/** The job as steps to tick, in order, for paper, phone and screen alike. */
public final class JobSteps {
    private JobSteps() {}

    /** @return the steps in plain words */
    public static List<String> of(FillPlan plan, UnitSystem units) {
        List<String> steps = new ArrayList<>();
        steps.add("Clean and dry the places, roughen every edge, tape around them: about "
                + units.length(plan.finish().tapeMm()) + " of tape.");
        steps.add("Weigh gel coat and paste of all batches first. Catalyst goes in one cup at a time: stir it in for "
                + "two minutes, start the timer, use the cup up.");
        Stage.Kind before = null;
        for (Batch batch : plan.batches()) {
            Stage.Kind kind = batch.stage().kind();
            if (before != null && kind != before) {
                steps.add(between(plan, kind));
            }
            if (kind == Stage.Kind.SPRAY && kind != before) {
                steps.add(thinner());
            }
            before = kind;
            steps.add("Batch " + batch.number() + ", " + batch.stage().words() + ". " + closing(batch));
        }
        for (FillPlan.Sanding sanding : plan.finish().sandings()) {
            steps.add("Sand " + sanding.what() + " once a thumbnail leaves no mark, " + timer(plan, "sand") + ": "
                    + sanding.ladder().words() + " (takes about "
                    + units.film(sanding.ladder().takesLeastMm())
                    + " to " + units.film(sanding.ladder().takesMostMm()) + " off).");
        }
        steps.add("Write down what was used and how it came out, and let leftovers cure outdoors in a thin layer.");
        return steps;
    }

    private static String between(FillPlan plan, Stage.Kind next) {
        return switch (next) {
            case FIRST_FILL, SECOND_FILL ->
                waxedInTheCan(plan)
                        ? "Wait " + timer(plan, "sand") + ", sand the wax off with P150, wipe, then fill the low spots."
                        : "Wait " + timer(plan, "second coat") + " until tacky, then fill the low spots.";
            case SPRAY ->
                "Wait " + timer(plan, "sand") + ", level the fills where you will spray with P150 and "
                        + "P220, wipe, tape the area to spray.";
        };
    }

    private static String thinner() {
        return "Only if the gun needs it, thin with styrene, " + Sizes.plain(Published.STYRENE_RANGE.low()) + " to "
                + Sizes.plain(Published.STYRENE_RANGE.high()) + " % by volume; never acetone.";
    }

    private static boolean waxedInTheCan(FillPlan plan) {
        return plan.warnings().stream().anyMatch(w -> w.kind() == Warning.Kind.WAX_BETWEEN_COATS);
    }

    private static String closing(Batch batch) {
        if (batch.wax().isPresent()) {
            return "The wax lets it cure in air: leave it uncovered.";
        }
        if (batch.stage().kind() == Stage.Kind.SPRAY) {
            return "Let the pass turn tacky before the next.";
        }
        return batch.stage().kind() == Stage.Kind.FIRST_FILL
                ? "Leave it a little proud and pull the tape as it gels."
                : "Pull the tape as it gels.";
    }

    private static String timer(FillPlan plan, String cue) {
        return plan.timers().stream()
                .filter(timer -> timer.cue().equals(cue))
                .findFirst()
                .orElseThrow()
                .words();
    }
}
