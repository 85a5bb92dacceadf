package tintwright.fill.repair;

/** A round hole, filled in one go down to its plug. */
public sealed interface Hole extends Repair permits CountersunkHole, PlainHole {
    /** @return the diameter of the opening at the surface, mm */
    double mouthMm();

    /** @return how much of the bottom a plug takes up, mm */
    double plugMm();

    @Override
    default double openingMm2() {
        return Math.PI / 4 * mouthMm() * mouthMm();
    }

    @Override
    default double acrossMm() {
        return mouthMm();
    }

    @Override
    default double widthMm() {
        return mouthMm();
    }

    @Override
    default double thickestMm() {
        return depthMm() - plugMm();
    }

    @Override
    default boolean divisible() {
        return false;
    }

    /** @throws IllegalArgumentException when a plug is deeper than its hole */
    static void checkPlug(double plugMm, double depthMm) {
        if (!(plugMm >= 0 && plugMm < depthMm)) {
            throw new IllegalArgumentException("the plug must be 0 mm or more and less than the hole's depth of "
                    + Sizes.plain(depthMm) + " mm, was " + Sizes.plain(plugMm) + " mm");
        }
    }
}
