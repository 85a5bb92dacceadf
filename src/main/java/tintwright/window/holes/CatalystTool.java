package tintwright.window.holes;

import java.util.Locale;
import tintwright.fill.Tools;

/** What the catalyst is measured with: how little of it can be told apart decides how small a cup may be. */
enum CatalystTool {
    /** A dropper; its drop is the step. */
    DROPS("drops", "in drops", 0),
    /** A syringe marked in twentieths of a millilitre. */
    SYRINGE("a syringe marked in 0.05 ml", "with a syringe marked in 0.05 ml", 0.05),
    /** A small syringe marked in hundredths of a millilitre. */
    FINE_SYRINGE("a fine syringe marked in 0.01 ml", "with a syringe marked in 0.01 ml", 0.01);

    private final String words;
    private final String inWords;
    private final double stepMl;

    CatalystTool(String words, String inWords, double stepMl) {
        this.words = words;
        this.inWords = inWords;
        this.stepMl = stepMl;
    }

    String words() {
        return words;
    }

    /** @return such as "in drops" */
    String inWords() {
        return inWords;
    }

    /** @return the same tools with the catalyst measured like this */
    Tools with(Tools tools, double dropsPerMl) {
        return new Tools(dropsPerMl, this == DROPS ? 1 / dropsPerMl : stepMl, tools.cupMm(), tools.pace());
    }

    /** @return what these tools measure the catalyst with; a step that is nothing else is a drop */
    static CatalystTool of(Tools tools) {
        if (Math.abs(tools.catalystStepMl() * tools.dropsPerMl() - 1) < 1e-6) {
            return DROPS;
        }
        return tools.catalystStepMl() < 0.03 ? FINE_SYRINGE : SYRINGE;
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
