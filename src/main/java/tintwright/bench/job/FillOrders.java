package tintwright.bench.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.bench.FillColour;
import tintwright.cup.Cup;
import tintwright.fill.FillJob;
import tintwright.fill.FillOrder;
import tintwright.fill.Materials;
import tintwright.fill.repair.Densities;
import tintwright.shelf.Base;
import tintwright.shelf.Parts;
import tintwright.shelf.Paste;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.units.UnitSystem;

/** From what is on the bench to an order the fill's engine takes. */
public final class FillOrders {
    private FillOrders() {}

    /**
     * The order for a job with at least one repair on its list.
     *
     * @param known what the chips of this job's shelf taught
     * @throws IllegalArgumentException when the cup holds what is not on the shelf
     */
    public static FillOrder of(Job job, Knowledge known) {
        FillColour colour = colour(job, known);
        return order(
                job,
                colour.materials(job.fill().facts().baseHides()),
                inTheCup(job).isPresent() ? colour.recipe() : List.of());
    }

    /** @return the film of the colour that hides, mm; empty while nobody knows */
    public static OptionalDouble hides(Job job, Knowledge known) {
        return colour(job, known).materials(job.fill().facts().baseHides()).hidingFilmMm();
    }

    private static FillColour colour(Job job, Knowledge known) {
        return FillColour.of(
                known, inTheCup(job).orElseGet(() -> Parts.of(Map.of(base(job).id(), 1.0))));
    }

    /** @return the same before the shelf's chips have taught anything: the bare base, hiding not known */
    public static FillOrder typed(Job job) {
        double paste =
                job.shelf().pastes().stream().findFirst().map(Paste::density).orElse(Densities.USUAL.paste());
        return order(
                job,
                new Materials(
                        new Densities(base(job).density(), paste, Densities.USUAL.catalyst(), Densities.USUAL.wax()),
                        base(job).waxed(),
                        OptionalDouble.empty()),
                List.of());
    }

    private static FillOrder order(Job job, Materials materials, List<FillOrder.Ingredient> recipe) {
        FillJob fill = job.fill()
                .job(
                        materials,
                        inTheCup(job).map(Parts::total).orElse(job.grams()),
                        inTheCup(job).isEmpty()
                                ? 0
                                : job.cup().orElseThrow().state().reserve());
        return new FillOrder(
                job.boat(),
                job.place() < 0 ? "" : job.places().get(job.place()).place(),
                job.cup().map(Cup::name).orElse(""),
                recipe,
                fill);
    }

    private static Optional<Parts> inTheCup(Job job) {
        return job.cup().flatMap(cup -> cup.state().parts());
    }

    private static Base base(Job job) {
        return job.cup()
                .flatMap(cup -> job.shelf().base(cup.base()))
                .orElse(job.shelf().bases().get(0));
    }

    /** @return what the amounts are reckoned with, in one sentence */
    public static String reckonedWith(Job job, UnitSystem units) {
        if (inTheCup(job).isEmpty()) {
            return "No colour is in the cup yet: reckoned with the " + units.mass(job.grams()) + " planned, and with "
                    + base(job).name() + " alone for density, wax and hiding.";
        }
        double reserve = job.cup().orElseThrow().state().reserve();
        return "In the cup: " + units.mass(inTheCup(job).get().total())
                + (reserve > 0 ? ", and " + units.mass(reserve) + " of white held back." : ", no white held back.");
    }
}
