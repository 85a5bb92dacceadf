package tintwright.fill.catalyst;

import java.util.Locale;
import java.util.Optional;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Published;
import tintwright.fill.repair.Sizes;
import tintwright.units.Units;

/**
 * What a person measures the catalyst with. A pocket scale or a small syringe first; a dropper only once its own drops
 * were counted into a millilitre, because sources run from 13.5 to 34 of them; a level spoon for large cups only.
 *
 * @param by   the tool
 * @param step the least it tells apart: grams on a scale, millilitres in a syringe, one drop or a level spoon
 */
public record CatalystMeasure(By by, double step) {
    /** The tool. */
    public enum By {
        /** A scale, with the cup on it. */
        SCALE("scale", "g"),
        /** A syringe; its marks are the step. */
        SYRINGE("syringe", "ml"),
        /** A dropper; its drop is the step. */
        DROPPER("dropper", "ml"),
        /** A measuring spoon of plastic, filled level; what it holds is the step. */
        SPOON("spoon", "ml");

        private final String words;
        private final String unit;

        By(String words, String unit) {
            this.words = words;
            this.unit = unit;
        }

        /** @throws IllegalArgumentException when no tool has this name */
        public static By named(String name) {
            for (By by : values()) {
                if (by.words.equals(name.trim().toLowerCase(Locale.ROOT))) {
                    return by;
                }
            }
            throw new IllegalArgumentException(
                    "the catalyst is measured with a scale, a syringe, a dropper or a spoon, was \"" + name + "\"");
        }
    }

    /** So many steps at least, so that one too many is a fifth and not a half; common practice, no source. */
    static final double LEAST_STEPS = 5;
    /** A spoon is full or it is not: nobody takes a second for the first; a judgement of ours. */
    private static final double LEAST_SPOONS = 1;
    /** The smallest of a usual set of measuring spoons, and the largest, ml; common practice, no source. */
    private static final double SMALLEST_SPOON = 0.5;

    private static final double LARGEST_SPOON = 20;
    /** A level spoon is good to about this; common practice, no source. */
    private static final double LEVEL_WITHIN = 0.03;
    /** A quarter of the metric measuring spoon of 5 ml, 1.4 % more than a quarter of a US teaspoon; common practice, no source. */
    public static final CatalystMeasure QUARTER_TEASPOON = new CatalystMeasure(By.SPOON, 1.25);
    /** Drops in a millilitre where nobody counted, fewest and most that sources name; common practice, no one source. */
    public static final Published DROPS_PER_ML = new Published(13.5, 34, "drops", "the spread of several guides");

    public CatalystMeasure {
        if (by == By.DROPPER) {
            Sizes.between("drops in a millilitre", 1 / step, 5, 100, "drops");
        } else if (by == By.SPOON) {
            Sizes.between("what the spoon holds", step, SMALLEST_SPOON, LARGEST_SPOON, "ml");
        } else {
            Sizes.between("smallest step of the " + by.words, step, 0.001, 5, by.unit);
        }
    }

    /** @param dropsPerMl counted with the catalyst in use, 5 to 100 */
    public static CatalystMeasure dropper(double dropsPerMl) {
        return new CatalystMeasure(By.DROPPER, 1 / dropsPerMl);
    }

    /** @return drops in a millilitre, of a dropper */
    public double dropsPerMl() {
        return 1 / step;
    }

    /** @return the least catalyst worth measuring, ml */
    public double leastMl(Densities densities) {
        return (by == By.SPOON ? LEAST_SPOONS : LEAST_STEPS) * step / (by == By.SCALE ? densities.catalyst() : 1);
    }

    /** @return the tool in words: "0.01 g scale", "dropper of 24 drops to the ml", "quarter teaspoon of 1.25 ml" */
    public String words() {
        return switch (by) {
            case SCALE -> Sizes.plain(step) + " g scale";
            case SYRINGE -> "syringe marked in " + Sizes.plain(step) + " ml";
            case DROPPER -> "dropper of " + Sizes.plain(Math.round(dropsPerMl() * 10) / 10.0) + " drops to the ml";
            case SPOON -> spoon() + " of " + Sizes.plain(Math.round(step * 100) / 100.0) + " ml";
        };
    }

    /** What is written on a spoon that holds this, by the teaspoon of 5 ml or of a sixth of a US fluid ounce. */
    private String spoon() {
        return spoonOf(0.25, "quarter teaspoon")
                .or(() -> spoonOf(0.5, "half teaspoon"))
                .or(() -> spoonOf(1, "teaspoon"))
                .or(() -> spoonOf(3, "tablespoon"))
                .orElse("spoon");
    }

    private Optional<String> spoonOf(double teaspoons, String name) {
        boolean so = Math.abs(step / teaspoons / Units.ML_PER_US_TEASPOON - 1) < LEVEL_WITHIN;
        return so ? Optional.of(name) : Optional.empty();
    }
}
