package tintwright.fill;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import tintwright.fill.catalyst.CureTimer;
import tintwright.fill.repair.Published;
import tintwright.fill.repair.Sizes;
import tintwright.fill.repair.Triage;
import tintwright.units.UnitSystem;

/** The steps of a job in plain words, for paper, phone and screen alike. */
public final class DayWords {
    private DayWords() {}

    /**
     * One step to tick.
     *
     * @param when  "now", "+45 to 70 min"
     * @param words what to do
     * @param why   why; empty where it was said before
     * @param batch the batch whose clock it starts; 0 for none
     */
    public record Line(String when, String words, String why, int batch) {
        /** @return what and why in one line: "Tape off (cured tape tears the edge)" */
        public String inOneLine() {
            return why.isEmpty() ? words : words + " (" + why + ")";
        }
    }

    /** @return the steps in order */
    public static List<Line> of(FillPlan plan, UnitSystem units) {
        List<Line> lines = new ArrayList<>();
        Set<Deed> said = EnumSet.noneOf(Deed.class);
        for (Day.Step step : plan.day().steps()) {
            String why = said.add(step.deed()) ? step.deed().why() : "";
            lines.add(new Line(step.when(), words(plan, step, units) + on(plan, step), why, step.batch()));
        }
        return lines;
    }

    /** Which lines, where it is not all of them. */
    private static String on(FillPlan plan, Day.Step step) {
        if (step.batch() > 0 || step.on().isEmpty() || step.deed() == Deed.SAND) {
            return "";
        }
        List<String> all = names(plan, amount -> true);
        for (boolean sprayed : new boolean[] {false, true}) {
            List<String> kind = names(plan, amount -> amount.line().sprayed() == sprayed);
            if (step.on().equals(kind) && kind.size() < all.size()) {
                return sprayed ? ": the sprayed areas" : ": the fills";
            }
        }
        return step.on().equals(all) ? "" : ": " + String.join(", ", step.on());
    }

    private static List<String> names(FillPlan plan, Predicate<FillPlan.Amount> which) {
        return plan.amounts().stream()
                .filter(amount -> amount.triage().below() != Triage.Below.MEASURE_AGAIN)
                .filter(which)
                .map(amount -> amount.line().name())
                .toList();
    }

    private static String words(FillPlan plan, Day.Step step, UnitSystem units) {
        String words = step.deed().words();
        return switch (step.deed()) {
            case TAPE -> words + ", about " + units.length(plan.tapeMm(step.on())) + " of tape";
            case COAT, LAST_COAT -> coat(plan, step, units);
            case CURE -> words + ", " + timer(plan, CureTimer.SAND) + " from the catalyst";
            case TAPE_OFF -> words + ", " + timer(plan, CureTimer.TAPE_OFF) + " from the catalyst";
            case SAND -> sand(plan, step, units);
            default -> words;
        };
    }

    private static String coat(FillPlan plan, Day.Step step, UnitSystem units) {
        Batch batch = plan.batches().get(step.batch() - 1);
        boolean sprayed = batch.stage().kind() == Stage.Kind.SPRAY;
        String thinned = !sprayed
                ? ""
                : "if the gun needs it, thin with styrene, " + Sizes.plain(Published.STYRENE_RANGE.low()) + " to "
                        + Sizes.plain(Published.STYRENE_RANGE.high())
                        + " % by volume (the film gauge shows it on top), never acetone; ";
        String wax = batch.wax()
                .map(dose -> "stir in wax solution, " + dose.words(plan.job().tools(), units) + "; ")
                .orElse("");
        String put = !sprayed
                ? step.deed().words()
                : step.deed() == Deed.LAST_COAT ? "spray the last pass, leave it uncovered" : "spray a wet, even pass";
        return "Batch " + batch.number() + ", " + batch.stage().words() + ": " + thinned + wax
                + "stir the catalyst in for two minutes, start its time, use it up in " + Math.round(batch.minutes())
                + " min; " + put;
    }

    private static String sand(FillPlan plan, Day.Step step, UnitSystem units) {
        FillPlan.Sanding sanding = plan.finish().sandings().stream()
                .filter(one -> one.ladder().finest() == step.grit()
                        && plan.amounts().stream()
                                .anyMatch(amount ->
                                        step.on().contains(amount.line().name())
                                                && amount.line().sprayed() == one.sprayed()))
                .findFirst()
                .orElseThrow();
        return "Sand " + sanding.what() + " with " + sanding.ladder().words().replace("; compound and polish", "")
                + " (takes about " + units.film(sanding.takesLeastMm()) + " to " + units.film(sanding.takesMostMm())
                + " off)";
    }

    private static String timer(FillPlan plan, String cue) {
        return plan.timers().stream()
                .filter(timer -> timer.cue().equals(cue))
                .findFirst()
                .orElseThrow()
                .words();
    }
}
