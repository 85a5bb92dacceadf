package tintwright.cup;

import java.util.List;

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
     * @param besideHull true when chip and hull must stand in one photo: the hull's own doubt is what hinders
     */
    record TakeChip(Outlook now, boolean besideHull) implements Plan {}

    /**
     * Take a few grams of the cup, put these doses into them alone, and hold a dab of that to the hull: it shows what
     * the rest of the way would come to, and may be too dark.
     *
     * @param now   what the cup is by all that is known
     * @param grams of the cup to take
     * @param doses what these grams alone get
     * @param after what they then are
     */
    record TryDab(Outlook now, double grams, List<Dose> doses, Outlook after) implements Plan {
        public TryDab {
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
