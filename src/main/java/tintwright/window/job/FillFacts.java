package tintwright.window.job;

import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.fill.Densities;
import tintwright.fill.GritLadder;
import tintwright.fill.Materials;
import tintwright.fill.Supply;
import tintwright.fill.Tools;

/**
 * What a person may know beside the list of repairs; each may be left out.
 *
 * @param baseHides film at which the bare base hides, mm, above 0, at most 3
 * @param oldFilm   thickness of the old gel coat around the repairs, mm, above 0, at most 10
 * @param paste     grams of gel paste on the shelf, not negative
 * @param surface   what it will look like before sanding
 * @param tools     dropper and cup
 */
public record FillFacts(
        OptionalDouble baseHides,
        OptionalDouble oldFilm,
        OptionalDouble paste,
        Optional<GritLadder.Surface> surface,
        Tools tools) {
    static final FillFacts NONE = new FillFacts(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), Tools.USUAL);
    private static final double THICKEST_OLD_MM = 10;

    public FillFacts {
        new Materials(Densities.USUAL, false, baseHides);
        new Supply(0, 0, paste);
        oldFilm.ifPresent(mm -> {
            if (!(mm > 0 && mm <= THICKEST_OLD_MM)) {
                throw new IllegalArgumentException(
                        "the old gel coat must be above 0, at most 10 mm, was " + mm + " mm");
            }
        });
    }

    public FillFacts with(Tools others) {
        return new FillFacts(baseHides, oldFilm, paste, surface, others);
    }
}
