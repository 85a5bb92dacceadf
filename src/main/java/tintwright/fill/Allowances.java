package tintwright.fill;

import tintwright.fill.repair.RepairLine;
import tintwright.fill.repair.Sizes;

/**
 * What is mixed beyond the hole itself, as shares of 0 to below 1.
 *
 * @param loss       of a fill, what stays in cup, on stick and spreader
 * @param sprayLoss  of a sprayed batch, what stays in the gun or drifts away
 * @param secondFill of the net volume, for the low spots that shrinkage leaves
 * @param spare      of everything, what should remain for a mishap
 */
public record Allowances(double loss, double sprayLoss, double secondFill, double spare) {
    /** Common practice, no source. */
    public static final Allowances USUAL = new Allowances(0.15, 0.35, 0.10, 0.20);

    public Allowances {
        Sizes.between("share lost in the cup", loss, 0, 0.8, "");
        Sizes.between("share lost in spraying", sprayLoss, 0, 0.8, "");
        Sizes.between("share for the second fill", secondFill, 0, 0.8, "");
        Sizes.between("share to spare", spare, 0, 1, "");
    }

    double lossOf(RepairLine line) {
        return line.sprayed() ? sprayLoss : loss;
    }
}
