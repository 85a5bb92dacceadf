package tintwright.fill.catalyst;

import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Mix;
import tintwright.fill.repair.Published;
import tintwright.fill.repair.Sizes;

/**
 * How much catalyst, as a share of gel coat and paste together. There is no such value outside the published range of
 * 1.2 to 3 %, and none without its basis.
 *
 * @param percent 1.2 to 3
 * @param basis   by mass or by volume
 */
public record CatalystShare(double percent, Basis basis) {
    /** The short caution that goes with every catalyst figure; {@code Caution.PEROXIDE} says it in full. */
    public static final String CAUTION = "goggles and gloves, never with accelerator or acetone";

    public CatalystShare {
        if (basis == null) {
            throw new IllegalArgumentException("a catalyst percentage must say whether it is by mass or by volume");
        }
        if (!Published.CATALYST_RANGE.holds(percent)) {
            throw new IllegalArgumentException("catalyst must be " + limitWords() + ", was " + Sizes.plain(percent)
                    + " % " + basis.words() + "; "
                    + (percent > Published.CATALYST_RANGE.high()
                            ? "more makes the fill hot, brittle and yellow"
                            : "less never cures through")
                    + " (" + CAUTION + ")");
        }
    }

    /** @return the share, its basis, its limit and the caution in one breath */
    public String words() {
        return Sizes.plain(Math.round(percent * 100) / 100.0) + " % " + basis.words() + ", limit " + limitWords() + "; "
                + CAUTION;
    }

    /** @return the limit that goes with every catalyst figure: "1.2 to 3 %" */
    public static String limitWords() {
        return Sizes.plain(Published.CATALYST_RANGE.low()) + " to " + Sizes.plain(Published.CATALYST_RANGE.high())
                + " %";
    }

    /** @return millilitres of catalyst per 100 ml of the mix */
    public double percentByVolume(Mix mix, Densities densities) {
        return basis == Basis.VOLUME ? percent : percent * mix.density(densities) / densities.catalyst();
    }

    @Override
    public String toString() {
        return words();
    }

    /**
     * The number alone, as it goes back into the entry it was typed into: basis, limit and caution stand beside that
     * entry. Nobody else may show it bare.
     */
    public String entry() {
        return String.format(java.util.Locale.ROOT, "%.2f", percent);
    }
}
