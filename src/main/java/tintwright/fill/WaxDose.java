package tintwright.fill;

import java.util.Locale;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Published;
import tintwright.fill.repair.Sizes;
import tintwright.units.UnitSystem;

/**
 * Wax solution for a last coat that must cure dry in air.
 *
 * @param percentByVolume of gel coat and paste
 * @param ml              millilitres
 * @param grams           grams
 */
public record WaxDose(double percentByVolume, double ml, double grams) {
    /** Common practice, no source; the published range stands beside it wherever it is shown. */
    static final double USUAL_PERCENT = 3;

    static WaxDose of(double mixMl, Densities densities) {
        double ml = USUAL_PERCENT / 100 * mixMl;
        return new WaxDose(USUAL_PERCENT, ml, ml * densities.wax());
    }

    /** @return the dose as these tools show it: "0.56 g" */
    public String words(Tools tools, UnitSystem units) {
        return tools.weighed(grams, units);
    }

    /** @return the share with the published range beside it: "3 % by volume (published 1.6 to 3.1 %)" */
    public static String shareWords() {
        return String.format(
                Locale.ROOT,
                "%s %% by volume (published %.1f to %.1f %%)",
                Sizes.plain(USUAL_PERCENT),
                Published.WAX_RANGE.low(),
                Published.WAX_RANGE.high());
    }
}
