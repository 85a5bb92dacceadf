package tintwright.fill;

/**
 * The person's own tools and hand.
 *
 * @param dropsPerMl     drops of their dropper in a millilitre; count it once with the catalyst in use
 * @param catalystStepMl the least catalyst they can tell apart, ml: a drop, or a mark of the syringe
 * @param cupMm          inside diameter of the mixing cup
 * @param pace           1 for a steady hand, 2 for one that takes twice as long
 */
public record Tools(double dropsPerMl, double catalystStepMl, double cupMm, double pace) {
    /** A dropper of twenty drops to the millilitre and a small cup; common practice, no source. */
    public static final Tools USUAL = new Tools(20, 0.05, 60, 1);

    /** A batch takes at least so many steps of catalyst, so that one step too many is a fifth and not a half. */
    private static final double LEAST_STEPS = 5;

    public Tools {
        Sizes.between("drops in a millilitre", dropsPerMl, 5, 100, "drops");
        Sizes.between("smallest step of catalyst", catalystStepMl, 0.001, 5, "ml");
        Sizes.between("diameter of the cup", cupMm, 20, 500, "mm");
        Sizes.between("pace", pace, 0.2, 10, "");
    }

    /** @return the smallest batch whose catalyst can still be measured, ml of gel coat and paste */
    double leastBatchMl(double percentByVolume) {
        return LEAST_STEPS * catalystStepMl / (percentByVolume / 100);
    }

    /** @return how deep a batch stands in the cup, mm */
    double depthMm(double ml) {
        return ml * 1000 / (Math.PI / 4 * cupMm * cupMm);
    }

    /** How long it takes to fill one of these or to give it one pass; common practice, no source. */
    double minutes(Repair repair) {
        double squareDecimetres = repair.openingMm2() / 10_000;
        double minutes;
        if (repair instanceof CountersunkHole || repair instanceof PlainHole) {
            minutes = 0.5;
        } else if (repair instanceof Gouge) {
            minutes = 1 + squareDecimetres;
        } else if (repair instanceof ScratchGroove) {
            minutes = 0.25 + repair.acrossMm() / 100;
        } else if (repair instanceof WornArea) {
            minutes = 0.5 + squareDecimetres;
        } else {
            minutes = 0.5 + squareDecimetres / 4;
        }
        return minutes * pace;
    }
}
