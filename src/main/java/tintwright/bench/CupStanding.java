package tintwright.bench;

import java.util.Locale;
import tintwright.colour.DifferenceWords;
import tintwright.cup.Outlook;
import tintwright.cup.Plan;

/**
 * How a cup stands to its hull when somebody is about to fill from it: nobody wants to put catalyst into a colour that
 * is plainly another.
 *
 * @param deltaE CIEDE2000 to the hull by the best estimate, 0 or more
 * @param within CIEDE2000 that nine cases of ten stay within
 * @param words  how it looks beside the hull, such as "too dark and a touch red"
 * @param read   true when nothing went in since a chip of it was read
 * @param first  what to do before it is used; empty when it is the colour
 */
public record CupStanding(double deltaE, double within, String words, boolean read, String first) {
    /** Farther off than this a repair is seen from a step away, CIEDE2000; common practice, no source. */
    static final double PLAINLY_ANOTHER = 2;

    static CupStanding of(CupBench bench, Outlook seen) {
        String verdict = bench.verdict();
        String words = verdict.substring(0, 1).toLowerCase(Locale.ROOT) + verdict.substring(1, verdict.length() - 1);
        return new CupStanding(
                seen.deltaE(),
                seen.within90(),
                words,
                bench.state().unread().isEmpty() && bench.state().lastSample().isPresent(),
                first(bench, seen.deltaE()));
    }

    private static String first(CupBench bench, double deltaE) {
        if (bench.contradiction().isPresent()) {
            return "Its last chip does not fit what was weighed in: read one again, or correct the weight that was "
                    + "written down wrongly, first.";
        }
        Plan plan = bench.plan();
        if (plan instanceof Plan.WayBack) {
            return "Bring it back first.";
        }
        if (deltaE <= PLAINLY_ANOTHER) {
            return "";
        }
        return plan instanceof Plan.Doses
                ? "Weigh in first what is still missing."
                : plan instanceof Plan.TakeChip || plan instanceof Plan.TryDabs
                        ? "Read a chip of it first."
                        : plan instanceof Plan.NoWhite
                                ? "Weigh white in first."
                                : "These tints bring it no nearer: fill only where that is near enough.";
    }

    /** @return true when it is plainly not the colour of the hull, or nobody can tell */
    public boolean another() {
        return !first.isEmpty();
    }

    /** @return such as "The cup is off the hull by 9.5 (too dark), likely within 10.1: seen at a glance, by its weights: no chip of it was read." */
    public String sentence() {
        return "The cup is off the hull by " + DifferenceWords.size(deltaE) + " (" + words + "), "
                + DifferenceWords.likely(within)
                + (read ? ", by weights and chip." : ", by its weights: no chip of it as it is was read.");
    }
}
