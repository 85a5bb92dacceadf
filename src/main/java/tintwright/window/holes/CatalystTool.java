package tintwright.window.holes;

import java.util.Locale;
import java.util.OptionalDouble;
import tintwright.fill.catalyst.CatalystMeasure;

/** What the catalyst is measured with: how little of it can be told apart decides how small a cup may be. */
enum CatalystTool {
    /** A pocket scale with the cup on it. */
    SCALE("a scale to 0.01 g", "on a scale to 0.01 g", new CatalystMeasure(CatalystMeasure.By.SCALE, 0.01)),
    /** A small syringe marked in hundredths of a millilitre. */
    FINE_SYRINGE(
            "a 1 ml syringe marked in 0.01 ml",
            "with a syringe marked in 0.01 ml",
            new CatalystMeasure(CatalystMeasure.By.SYRINGE, 0.01)),
    /** A syringe marked in twentieths of a millilitre. */
    SYRINGE(
            "a syringe marked in 0.05 ml",
            "with a syringe marked in 0.05 ml",
            new CatalystMeasure(CatalystMeasure.By.SYRINGE, 0.05)),
    /** A dropper whose drops were counted. */
    DROPS("drops, counted into a ml", "in drops", null),
    /** A plastic measuring spoon, filled level. */
    SPOON("a level plastic spoon, for large cups", "with a spoon", CatalystMeasure.QUARTER_TEASPOON);

    private final String words;
    private final String inWords;
    private final CatalystMeasure measure;

    CatalystTool(String words, String inWords, CatalystMeasure measure) {
        this.words = words;
        this.inWords = inWords;
        this.measure = measure;
    }

    String words() {
        return words;
    }

    /** @return such as "in drops" */
    String inWords() {
        return inWords;
    }

    /** @param dropsPerMl as counted; empty while nobody did, and then drops cannot be the measure */
    CatalystMeasure measure(OptionalDouble dropsPerMl) {
        return this != DROPS
                ? measure
                : CatalystMeasure.dropper(
                        dropsPerMl.orElseThrow(
                                () -> new IllegalArgumentException(
                                        "count the drops of your dropper into one ml first and enter them: sources run from 13.5 to 34")));
    }

    /** @return what measures like this; a syringe that tells less apart than 0.03 ml is the fine one */
    static CatalystTool of(CatalystMeasure measure) {
        return switch (measure.by()) {
            case SCALE -> SCALE;
            case DROPPER -> DROPS;
            case SPOON -> SPOON;
            case SYRINGE -> measure.step() < 0.03 ? FINE_SYRINGE : SYRINGE;
        };
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
