package tintwright.shelf.knowledge;

/**
 * How a tint's strength for each gram changes with its share of the mix: by a power of the share, one for each tint.
 * The share of a usual chip is where the family's curves hold, so a chip there says nothing of the power.
 */
final class DosePower {
    /** One standard deviation of the power before anything was read; chosen by the studies ShelfStudy and OilPaintStudy on their choosing halves. */
    static final double DEVIATION = 0.1;
    /** Share of tint in a usual chip, 0.2 g in 20 g of white; common practice, no source. */
    private static final double OF_A_CHIP = 0.01;
    /** Below about this share strength changes no more: grains then stand alone; a judgement of ours. */
    private static final double ALONE = 1e-4;
    /** Share of a tint in the mix for a faded hull, where nobody says which mix; a judgement of ours. */
    static final double USUAL_SHARE = 0.002;

    private DosePower() {}

    /** @return ln of this share over that of a chip: what the power is times */
    static double reach(double share) {
        return Math.log((share + ALONE) / (OF_A_CHIP + ALONE));
    }

    /** @return how many times as strong each gram is at this share as in a usual chip */
    static double times(double power, double share) {
        return power == 0 ? 1 : Math.exp(power * reach(share));
    }
}
