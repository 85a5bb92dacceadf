package tintwright.fill;

import tintwright.fill.catalyst.CatalystMeasure;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Gouge;
import tintwright.fill.repair.Hole;
import tintwright.fill.repair.Repair;
import tintwright.fill.repair.ScratchGroove;
import tintwright.fill.repair.Sizes;
import tintwright.fill.repair.WornArea;
import tintwright.units.UnitSystem;

/**
 * The person's own tools and hand.
 *
 * @param catalyst what the catalyst is measured with
 * @param scaleG   what the scale for gel coat and paste shows at the finest, g
 * @param cupMm    inside diameter of the mixing cup
 * @param pace     1 for a steady hand, 2 for one that takes twice as long
 */
public record Tools(CatalystMeasure catalyst, double scaleG, double cupMm, double pace) {
    /** A pocket scale to a hundredth of a gram and a small cup; common practice, no source. */
    public static final Tools USUAL = new Tools(new CatalystMeasure(CatalystMeasure.By.SCALE, 0.01), 0.01, 60, 1);

    public Tools {
        Sizes.between("smallest step of the scale", scaleG, 0.001, 50, "g");
        Sizes.between("diameter of the cup", cupMm, 20, 500, "mm");
        Sizes.between("pace", pace, 0.2, 10, "");
    }

    /** The same hand with another measure for the catalyst. */
    public Tools with(CatalystMeasure other) {
        return new Tools(other, scaleG, cupMm, pace);
    }

    /** @return the smallest batch whose catalyst can still be measured, ml of gel coat and paste */
    double leastBatchMl(double percentByVolume, Densities densities) {
        return catalyst.leastMl(densities) / (percentByVolume / 100);
    }

    /** @return how deep a batch stands in the cup, mm */
    double depthMm(double ml) {
        return ml * 1000 / (Math.PI / 4 * cupMm * cupMm);
    }

    /** @return a mass as this scale shows it, or that it is less than the scale shows */
    public String weighed(double grams, UnitSystem units) {
        return units.weighed(grams, scaleG);
    }

    /** How long it takes to fill one of these or to give it one pass; common practice, no source. */
    double minutes(Repair repair) {
        double squareDecimetres = repair.openingMm2() / 10_000;
        double minutes;
        if (repair instanceof Hole) {
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
