package tintwright.fill.catalyst;

import java.util.Locale;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Published;
import tintwright.fill.repair.Sizes;

/**
 * What a person measures the catalyst with. A pocket scale or a small syringe first; a dropper only once its own drops
 * were counted into a millilitre, because sources run from 13.5 to 34 of them.
 *
 * @param by   the tool
 * @param step the least it tells apart: grams on a scale, millilitres in a syringe or in one drop
 */
public record CatalystMeasure(By by, double step) {
    /** The tool. */
    public enum By {
        /** A scale, with the cup on it. */
        SCALE("scale", "g"),
        /** A syringe; its marks are the step. */
        SYRINGE("syringe", "ml"),
        /** A dropper; its drop is the step. */
        DROPPER("dropper", "ml");

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
                    "the catalyst is measured with a scale, a syringe or a dropper, was \"" + name + "\"");
        }
    }

    /** So many steps at least, so that one too many is a fifth and not a half; common practice, no source. */
    static final double LEAST_STEPS = 5;
    /** Drops in a millilitre where nobody counted, fewest and most that sources name; common practice, no one source. */
    public static final Published DROPS_PER_ML = new Published(13.5, 34, "drops", "the spread of several guides");

    public CatalystMeasure {
        if (by == By.DROPPER) {
            Sizes.between("drops in a millilitre", 1 / step, 5, 100, "drops");
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
        return LEAST_STEPS * step / (by == By.SCALE ? densities.catalyst() : 1);
    }

    /** @return the tool in words: "0.01 g scale", "syringe marked in 0.02 ml", "dropper of 24 drops to the ml" */
    public String words() {
        return switch (by) {
            case SCALE -> Sizes.plain(step) + " g scale";
            case SYRINGE -> "syringe marked in " + Sizes.plain(step) + " ml";
            case DROPPER -> "dropper of " + Sizes.plain(Math.round(dropsPerMl() * 10) / 10.0) + " drops to the ml";
        };
    }
}
