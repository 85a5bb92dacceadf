package tintwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Viewing;
import tintwright.fill.FillOrder;
import tintwright.fill.Materials;
import tintwright.fill.repair.Densities;
import tintwright.optics.Film;
import tintwright.optics.Hiding;
import tintwright.optics.Surface;
import tintwright.shelf.Base;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.Paste;
import tintwright.shelf.Shelf;
import tintwright.shelf.knowledge.Knowledge;

/**
 * What the shelf and the optics know of the colour in a cup that a fill needs: its density, its wax and the film that
 * hides.
 *
 * <p>Chips teach how strong a tint is against the base, not how much a millimetre scatters. So the person gives one
 * film, the one at which the bare base hides (its data sheet, or a drawdown over black and white), and the optics say
 * how much more or less the mix needs: the thickness over which black and white card differ by CIEDE2000 1, mix
 * against base.
 */
public final class FillColour {
    /** Black and white under the film may differ by this much: just seen edge to edge. */
    private static final double JUST_SEEN = 1;
    /** In units of 1/S of the base; a white that needs more than this covers nothing. */
    private static final double THICKEST = 1000;

    private final Knowledge knowledge;
    private final Parts parts;

    private FillColour(Knowledge knowledge, Parts parts) {
        this.knowledge = knowledge;
        this.parts = parts;
    }

    /** @throws IllegalArgumentException when a part is not on the shelf */
    public static FillColour of(Knowledge knowledge, Parts parts) {
        for (String id : parts.grams().keySet()) {
            Shelf shelf = knowledge.shelf();
            if (shelf.base(id).isEmpty()
                    && shelf.tint(id).isEmpty()
                    && shelf.leftover(id).isEmpty()) {
                throw new IllegalArgumentException("there is no base, tint or leftover \"" + id + "\" on the shelf");
            }
        }
        return new FillColour(knowledge, parts);
    }

    /**
     * How the film that hides compares to that of the base which makes most of the mix.
     *
     * @return 1 when both hide alike, below 1 when the mix hides in a thinner film; empty when neither hides at all
     */
    public OptionalDouble hidingAgainstBase() {
        Optional<Base> base = mainBase();
        if (base.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble mix = hides(parts);
        OptionalDouble bare = hides(Parts.of(Map.of(base.get().id(), 1.0)));
        return mix.isEmpty() || bare.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(mix.getAsDouble() / bare.getAsDouble());
    }

    private OptionalDouble hides(Parts mix) {
        double[] shares = knowledge.shares(mix);
        double[] k = new double[Grid.INSIDE.count()];
        double[] s = new double[Grid.INSIDE.count()];
        double[][] absorption = knowledge.absorption(shares);
        double[][] scattering = knowledge.scattering(shares);
        for (int part = 0; part < shares.length; part++) {
            for (int w = 0; w < k.length; w++) {
                k[w] += shares[part] * absorption[part][w];
                s[w] += shares[part] * scattering[part][w];
            }
        }
        return Hiding.thickness(
                new Film(Grid.INSIDE, k, s, Surface.RESIN),
                JUST_SEEN,
                THICKEST,
                Geometry.SPECULAR_INCLUDED,
                Viewing.D65_10);
    }

    private Optional<Base> mainBase() {
        double[] shares = knowledge.shares(parts);
        List<String> ids = knowledge.ids();
        Base main = null;
        double most = 0;
        for (Base base : knowledge.shelf().bases()) {
            double share = shares[ids.indexOf(base.id())];
            if (share > most) {
                most = share;
                main = base;
            }
        }
        return Optional.ofNullable(main);
    }

    /**
     * The colour as a fill takes it, thickened with the first gel paste of the shelf (of usual density when there is
     * none).
     *
     * @param baseHidesFromMm film at which the bare base hides, mm; empty when nobody knows
     */
    public Materials materials(OptionalDouble baseHidesFromMm) {
        Shelf shelf = knowledge.shelf();
        double[] shares = knowledge.shares(parts);
        double volume = 0;
        boolean waxed = false;
        for (int part = 0; part < shares.length; part++) {
            String id = knowledge.ids().get(part);
            Optional<Base> base = shelf.base(id);
            double density = base.isPresent()
                    ? base.get().density()
                    : shelf.tint(id).orElseThrow().density();
            volume += shares[part] / density;
            waxed |= shares[part] > 0 && base.isPresent() && base.get().waxed();
        }
        OptionalDouble against = hidingAgainstBase();
        OptionalDouble hides = baseHidesFromMm.isPresent() && against.isPresent()
                ? OptionalDouble.of(baseHidesFromMm.getAsDouble() * against.getAsDouble())
                : OptionalDouble.empty();
        return new Materials(
                new Densities(
                        1 / volume,
                        shelf.pastes().stream().findFirst().map(Paste::density).orElse(Densities.USUAL.paste()),
                        Densities.USUAL.catalyst(),
                        Densities.USUAL.wax()),
                waxed,
                hides);
    }

    /** @return the parts by name, as a job sheet lists them */
    public List<FillOrder.Ingredient> recipe() {
        List<FillOrder.Ingredient> recipe = new ArrayList<>();
        parts.grams()
                .forEach((id, grams) -> recipe.add(new FillOrder.Ingredient(
                        knowledge
                                .shelf()
                                .leftover(id)
                                .map(Leftover::name)
                                .orElse(knowledge.shelf().nameOf(id)),
                        grams)));
        return recipe;
    }
}
