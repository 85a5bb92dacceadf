package tintwright.fill;

import tintwright.units.UnitSystem;

/** Whether the coloured cup reaches for all repairs and for a spare. */
public sealed interface Enough {
    /** Enough for everything and the spare; so much is left after both. */
    record WithSpare(double neededG, double leftG) implements Enough {}

    /** Enough for everything, but so much is missing of the spare. */
    record WithoutSpare(double neededG, double missingG) implements Enough {}

    /** Enough once so much of the white in reserve is tinted by the same recipe. */
    record FromReserve(double neededG, double tintG) implements Enough {}

    /** Too little: so much is missing, the reserve counted in. */
    record TooLittle(double neededG, double missingG) implements Enough {}

    /**
     * @param neededG   coloured gel coat for all batches, grams
     * @param spareShare of that, what should remain
     */
    static Enough of(double neededG, double spareShare, Supply supply) {
        double withSpare = neededG * (1 + spareShare);
        if (supply.cup() >= withSpare) {
            return new WithSpare(neededG, supply.cup() - withSpare);
        }
        // The reserve serves the spare too: colour made in one go is one colour.
        if (supply.cup() + supply.reserve() >= withSpare) {
            return new FromReserve(neededG, withSpare - supply.cup());
        }
        if (supply.cup() >= neededG) {
            return new WithoutSpare(neededG, withSpare - supply.cup());
        }
        if (supply.cup() + supply.reserve() >= neededG) {
            return new FromReserve(neededG, supply.reserve());
        }
        return new TooLittle(neededG, neededG - supply.cup() - supply.reserve());
    }

    /** @return the answer in one sentence */
    default String words(UnitSystem units) {
        if (this instanceof WithSpare yes) {
            return "The cup is enough: " + units.mass(yes.neededG) + " are needed; a spare set by, "
                    + units.mass(yes.leftG) + " stay over.";
        }
        if (this instanceof WithoutSpare just) {
            return "The cup is enough for the repairs (" + units.mass(just.neededG) + "), but "
                    + units.mass(just.missingG) + " are missing for a full spare.";
        }
        if (this instanceof FromReserve more) {
            return "Of the white held back tint " + units.mass(more.tintG) + " by the same recipe before you start; "
                    + "the repairs need " + units.mass(more.neededG) + " of colour.";
        }
        TooLittle little = (TooLittle) this;
        return "Not enough: the repairs need " + units.mass(little.neededG) + " of colour and "
                + units.mass(little.missingG)
                + " are missing, the white held back counted in. Mix more before you start.";
    }
}
