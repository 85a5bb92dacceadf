package tintwright.cup;

import java.util.List;

/** One honest way on from a cup that was read: only additions. */
public sealed interface Way {
    /** @return what comes out, and how sure that is */
    Outlook after();

    /** @return grams of the mix in the end */
    double finalMass();

    /** @return grams of white it takes, letdowns left out */
    double white();

    /** @return grams of that white beyond the reserve; 0 when the reserve does */
    double beyondReserve();

    /** @return grams made beyond what is wanted; 0 when it is no more */
    double beyondNeed();

    /**
     * As near as eyes can tell, or as these tints and readings can bring it.
     *
     * @param after what the cup is
     */
    record StopHere(Outlook after, double finalMass) implements Way {
        @Override
        public double white() {
            return 0;
        }

        @Override
        public double beyondReserve() {
            return 0;
        }

        @Override
        public double beyondNeed() {
            return 0;
        }
    }

    /**
     * White and trimming tints into the cup as it is.
     *
     * @param doses white first
     */
    record Climb(
            List<Dose> doses, Outlook after, double finalMass, double white, double beyondReserve, double beyondNeed)
            implements Way {
        public Climb {
            doses = List.copyOf(doses);
        }
    }

    /**
     * Keep part of the cup, set the rest aside under a name, climb in the small cup.
     *
     * @param keep     grams that stay in the cup
     * @param setAside grams that are poured off
     * @param name     what to write on what is set aside
     * @param doses    for what stays, white first
     * @param shortBy  grams less than wanted; 0 when it makes all that is wanted
     */
    record Split(
            double keep,
            double setAside,
            String name,
            List<Dose> doses,
            Outlook after,
            double finalMass,
            double white,
            double beyondReserve,
            double beyondNeed,
            double shortBy)
            implements Way {
        public Split {
            doses = List.copyOf(doses);
        }
    }

    /**
     * A clean cup of white, tinted with the dark one, little by little.
     *
     * @param darkFirst grams of the dark cup that are safe to pour in before a chip
     * @param dark      grams of the dark cup it will take in the end, about
     * @param name      what to write on the rest of the dark cup
     * @param doses     trimming tints after that, about
     */
    record Fresh(
            double darkFirst,
            double dark,
            String name,
            List<Dose> doses,
            Outlook after,
            double finalMass,
            double white,
            double beyondReserve,
            double beyondNeed)
            implements Way {
        public Fresh {
            doses = List.copyOf(doses);
        }
    }
}
