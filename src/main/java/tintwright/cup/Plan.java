package tintwright.cup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.reading.EyeVerdict;

/** What to do with a cup next. */
public sealed interface Plan {
    /**
     * Nothing is in the cup: weigh in white and hold some back.
     *
     * @param white   grams of white to weigh in
     * @param reserve grams of white to hold back
     * @param climb   of these, what the first doses could need in one case of a hundred
     * @param after   what the recipe comes to
     */
    record Start(double white, double reserve, double climb, Outlook after) implements Plan {}

    /**
     * Put these in, one after the other.
     *
     * @param doses  white first, then the tint that darkens most, then the others
     * @param after  what the cup then is
     * @param share  share of the whole way that is safe now, 0 to 1
     * @param fillUp true when this brings the cup to the mass wanted
     */
    record Doses(List<Dose> doses, Outlook after, double share, boolean fillUp) implements Plan {
        public Doses {
            doses = List.copyOf(doses);
        }
    }

    /**
     * Take a chip and read it before anything else goes in.
     *
     * @param now        what the cup is by all that is known
     * @param besideHull true when the hull is to be seen once more with it, in one photo with the chip or by the same
     *     meter: the hull's own doubt is what hinders
     */
    record TakeChip(Outlook now, boolean besideHull) implements Plan {}

    /**
     * Take a few grams of the cup for each dab, put its doses into them alone, and hold the dabs to the hull in a row:
     * they show what the rest of the way would come to, and may be too dark.
     *
     * @param now  what the cup is by all that is known
     * @param dabs one or more, the lightest first
     */
    record TryDabs(Outlook now, List<TrialDab> dabs) implements Plan {
        /** Instead of a number: only the first dab was made; a mark that no number can be, a judgement of ours. */
        public static final int FIRST_ALONE = -1;

        public TryDabs {
            dabs = List.copyOf(dabs);
        }

        /**
         * @param nearest which dab came nearest: 1 for the first of the row, 0 for the cup's own beside it; or
         *     {@link #FIRST_ALONE}
         * @return what is written when they were made and looked at as advised
         * @throws IllegalArgumentException when there is no such dab
         */
        public Deed.Seen seen(EyeVerdict verdict, int nearest) {
            if (nearest == FIRST_ALONE) {
                return new Deed.Seen(verdict, Optional.of(dabs.get(0).trial()), List.of());
            }
            if (nearest < 0 || nearest > dabs.size()) {
                throw new IllegalArgumentException(
                        dabs.size() == 1
                                ? "one trial dab is asked for: 1 is that one, 0 the cup's own"
                                : "the trial dabs are numbered 1 to " + dabs.size()
                                        + ", the lightest first, 0 is the cup's own: say which came nearest");
            }
            List<Deed.Trial> farther =
                    new ArrayList<>(dabs.stream().map(TrialDab::trial).toList());
            return new Deed.Seen(
                    verdict, nearest == 0 ? Optional.empty() : Optional.of(farther.remove(nearest - 1)), farther);
        }
    }

    /**
     * One dab of such a row.
     *
     * @param grams of the cup to take
     * @param doses what these grams alone get
     * @param after what they then are
     */
    record TrialDab(double grams, List<Dose> doses, Outlook after) {
        public TrialDab {
            doses = List.copyOf(doses);
        }

        /** @return what is written when it was looked at as advised */
        public Deed.Trial trial() {
            return new Deed.Trial(grams, doses.stream().map(Dose::deed).toList());
        }
    }

    /**
     * Stop: another dose would help less than the readings can tell.
     *
     * @param now  what the cup is
     * @param gain CIEDE2000 that the next dose would be expected to gain
     */
    record Stop(Outlook now, double gain) implements Plan {}

    /**
     * Tints alone do not bring the cup near any more, it is too dark or too strong: choose a way back.
     *
     * @param now   what the cup is
     * @param white grams of white that the climb in this cup takes
     */
    record WayBack(Outlook now, double white) implements Plan {}

    /** Tints stand in a cup without white. */
    record NoWhite() implements Plan {}
}
