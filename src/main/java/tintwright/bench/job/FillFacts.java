package tintwright.bench.job;

import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.fill.GritLadder;
import tintwright.fill.Materials;
import tintwright.fill.Supply;
import tintwright.fill.Tools;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Hull;

/**
 * What a person may know beside the list of repairs; each may be left out.
 *
 * @param baseHides film at which the bare base hides, mm, above 0, at most 3
 * @param oldFilm   thickness of the old gel coat around the repairs, mm, above 0, at most 10
 * @param hullMm    thickness of the whole hull there, mm, above the gel coat's, at most 200
 * @param paste     grams of gel paste on the shelf, not negative
 * @param surface   what it will look like before sanding
 * @param tools     dropper and cup
 * @param waxedPaste true when the gel paste holds wax and cures dry in air
 * @param seal      what keeps the air from a last coat without wax of its own
 */
public record FillFacts(
        OptionalDouble baseHides,
        OptionalDouble oldFilm,
        OptionalDouble hullMm,
        OptionalDouble paste,
        Optional<GritLadder.Surface> surface,
        Tools tools,
        boolean waxedPaste,
        Materials.Seal seal) {
    static final FillFacts NONE = new FillFacts(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Tools.USUAL,
            false,
            Materials.Seal.WAX);

    public FillFacts {
        new Materials(Densities.USUAL, false, baseHides);
        new Supply(0, 0, paste);
        new Hull(oldFilm, hullMm);
    }

    /** @return the hull around the repairs */
    Hull hull() {
        return new Hull(oldFilm, hullMm);
    }

    /** @return the facts of these repairs with those of another's shop */
    FillFacts inTheShopOf(FillFacts other) {
        return new FillFacts(
                other.baseHides, oldFilm, hullMm, other.paste, surface, other.tools, other.waxedPaste, other.seal);
    }

    /** @param waxed true when the paste holds wax; {@code by} seals the last coat */
    public FillFacts sealed(boolean waxed, Materials.Seal by) {
        return new FillFacts(baseHides, oldFilm, hullMm, paste, surface, tools, waxed, by);
    }

    public FillFacts with(Tools others) {
        return new FillFacts(baseHides, oldFilm, hullMm, paste, surface, others, waxedPaste, seal);
    }
}
