package tintwright.fill;

import java.util.Locale;
import java.util.OptionalInt;
import tintwright.units.UnitSystem;

/**
 * The catalyst for one batch. Its words always carry the basis, the limit and the caution; faces show {@link #words}
 * and never the bare numbers (a test holds them to it).
 *
 * @param share      the share it was worked out from, with its basis and limit
 * @param grams      grams of catalyst
 * @param ml         millilitres of catalyst
 * @param drops      the nearest count of drops that stays inside the limit; empty when no count does
 * @param dropsPerMl how many drops of the person's dropper make a millilitre
 */
public record CatalystDose(CatalystShare share, double grams, double ml, OptionalInt drops, double dropsPerMl) {
    /**
     * @param mix   what is catalysed
     * @param mixMl millilitres of gel coat and paste together, above 0
     */
    static CatalystDose of(CatalystShare share, Mix mix, double mixMl, Densities densities, double dropsPerMl) {
        double ml = share.percentByVolume(mix, densities) / 100 * mixMl;
        return new CatalystDose(share, ml * densities.catalyst(), ml, drops(share, ml, dropsPerMl), dropsPerMl);
    }

    private static OptionalInt drops(CatalystShare share, double ml, double dropsPerMl) {
        double exact = ml * dropsPerMl;
        double perDrop = share.percent() / exact;
        // The count itself must lie in the limit; the slack is for the last bit of the division only.
        int least = (int) Math.ceil(Published.CATALYST_RANGE.low() / perDrop - 1e-9);
        int most = (int) Math.floor(Published.CATALYST_RANGE.high() / perDrop + 1e-9);
        int nearest = (int) Math.round(exact);
        return least > most || most < 1
                ? OptionalInt.empty()
                : OptionalInt.of(Math.max(1, Math.max(least, Math.min(most, nearest))));
    }

    /** @return mass, volume and drops with basis, limit and caution, in one line */
    public String words(UnitSystem units) {
        return amount(units) + " (" + share.words() + ")";
    }

    /** The figures alone; only for the records that carry basis, limit and caution beside them. */
    private String amount(UnitSystem units) {
        String volume = String.format(Locale.ROOT, "%.2f ml", ml);
        String count = drops.isPresent()
                ? " = about " + drops.getAsInt() + (drops.getAsInt() == 1 ? " drop" : " drops") + " at "
                        + Sizes.plain(dropsPerMl) + " to the ml"
                : "; too little to count in drops";
        String mass = units == UnitSystem.US ? units.mass(grams) : String.format(Locale.ROOT, "%.2f g", grams);
        return mass + " = " + volume + count;
    }

    @Override
    public String toString() {
        return words(UnitSystem.METRIC);
    }
}
