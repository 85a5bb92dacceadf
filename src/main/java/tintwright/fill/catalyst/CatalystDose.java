package tintwright.fill.catalyst;

import java.util.Locale;
import java.util.OptionalDouble;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Mix;
import tintwright.fill.repair.Published;
import tintwright.fill.repair.Sizes;
import tintwright.units.UnitSystem;

/**
 * The catalyst for one batch. Its words always carry the basis, the limit and the caution; faces show {@link #words}
 * and never the bare numbers (a test holds them to it). A figure is said only as far as the amount it really names, after
 * rounding to what a scale, a syringe or a dropper shows, lies inside the limit on its own basis and on that of the share.
 *
 * @param share      the share it was worked out from, with its basis and limit
 * @param grams      grams of catalyst
 * @param ml         millilitres of catalyst
 * @param mixGrams   what is catalysed, g of gel coat and paste together
 * @param mixMl      the same in ml
 * @param measure    what the person measures it with: no figure is finer
 */
public record CatalystDose(
        CatalystShare share, double grams, double ml, double mixGrams, double mixMl, CatalystMeasure measure) {
    /** Gel coat and paste are said to three figures, so they may be off by half of one in a hundred. */
    private static final double MIX_ROUNDING = 0.005;

    /**
     * @param mix   what is catalysed
     * @param mixMl millilitres of gel coat and paste together, above 0
     */
    public static CatalystDose of(
            CatalystShare share, Mix mix, double mixMl, Densities densities, CatalystMeasure measure) {
        double ml = share.percentByVolume(mix, densities) / 100 * mixMl;
        return new CatalystDose(share, ml * densities.catalyst(), ml, mixMl * mix.density(densities), mixMl, measure);
    }

    /** @return what is measured, in the measure's own unit: g, ml (whole spoons of it) or drops; empty when no such figure stays in the limit */
    public OptionalDouble said() {
        return measured().said();
    }

    private Measured measured() {
        return switch (measure.by()) {
            case SCALE ->
                measured("weighing to " + Sizes.plain(measure.step()) + " g", measure.step(), grams, mixGrams);
            case SYRINGE ->
                measured("a syringe marked in " + Sizes.plain(measure.step()) + " ml", measure.step(), ml, mixMl);
            case SPOON -> measured("a level " + measure.words(), measure.step(), ml, mixMl);
            case DROPPER -> measured("drops", 1, measure.dropsPerMl() * ml, measure.dropsPerMl() * mixMl);
        };
    }

    /** @param mix what is catalysed, in the unit of the measure: it decides the basis of what is read there */
    private Measured measured(String by, double step, double exact, double mix) {
        double low = Published.CATALYST_RANGE.low() * (1 + MIX_ROUNDING);
        double high = Published.CATALYST_RANGE.high() * (1 - MIX_ROUNDING);
        double perPercent = exact / share.percent();
        return new Measured(
                by,
                step,
                exact,
                Math.max(low * perPercent, low / 100 * mix),
                Math.min(high * perPercent, high / 100 * mix));
    }

    /**
     * The dose by one measure.
     *
     * @param by    what it is measured with
     * @param step  the least that can be told apart
     * @param exact the dose
     * @param least what may be said at the least: inside the limit on both bases
     * @param most  what may be said at the most
     */
    private record Measured(String by, double step, double exact, double least, double most) {
        /** @return the nearest whole number of steps inside the limit; empty when there is none */
        OptionalDouble said() {
            double fewest = Math.max(fewestSteps(), Math.ceil(least / step));
            double greatest = Math.floor(most / step);
            return !isInside() || fewest > greatest
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Math.max(fewest, Math.min(greatest, Math.rint(exact / step))) * step);
        }

        /** Whether the dose itself may be said; its ends are a little wider than those, which count the mix's rounding. */
        private boolean isInside() {
            double slack = 2 * MIX_ROUNDING * exact;
            return least <= most && exact > least - slack && exact < most + slack;
        }

        /** Drops differ among themselves, the marks of a scale do not. */
        private double fewestSteps() {
            return by.equals("drops") ? CatalystMeasure.LEAST_STEPS : 1;
        }

        String whyNot(double mixGrams, UnitSystem units) {
            if (!isInside()) {
                return "not by " + by + ": with these densities it would read as outside the limit";
            }
            double steps = Math.max(fewestSteps(), Math.floor(most / step) + 1);
            // Rounded up to a tenth of a gram: rounded down it would not do.
            double smallest = Math.ceil(mixGrams * steps * step / most * 10) / 10;
            return "too little for " + by + " inside the limit, which takes " + units.mass(smallest)
                    + " of gel coat and paste at least";
        }
    }

    /** @return mass, volume and drops with basis, limit and caution, in one line */
    public String words(UnitSystem units) {
        return amount(units) + " (" + share.words() + ")";
    }

    /** The figure alone; only for the records that carry basis, limit and caution beside it. */
    private String amount(UnitSystem units) {
        OptionalDouble said = said();
        if (said.isEmpty()) {
            return "no catalyst figure; " + measured().whyNot(mixGrams, units);
        }
        double figure = said.getAsDouble();
        return switch (measure.by()) {
            case SCALE -> Sizes.toStep(figure, measure.step()) + " g on the scale";
            case SYRINGE -> Sizes.toStep(figure, measure.step()) + " ml in the syringe";
            case DROPPER -> String.format(Locale.ROOT, "%.0f drops of your ", figure) + measure.words();
            case SPOON -> spoons(Math.round(figure / measure.step()));
        };
    }

    private String spoons(long count) {
        return count + " level "
                + (count == 1 ? measure.words() : measure.words().replaceFirst(" of ", "s of "));
    }

    @Override
    public String toString() {
        return words(UnitSystem.METRIC);
    }
}
