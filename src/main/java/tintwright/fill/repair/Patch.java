package tintwright.fill.repair;

/** A repair that is longer and wider than it is deep, measured by its length and its width at the surface. */
sealed interface Patch extends Repair permits Gouge, ScratchGroove, WornArea, SprayArea {
    /** @return the longest way across the opening, mm */
    double lengthMm();

    @Override
    default double acrossMm() {
        return lengthMm();
    }

    /** {@inheritDoc} A rectangle, where the kind does not say otherwise. */
    @Override
    default double openingMm2() {
        return lengthMm() * widthMm();
    }

    /** {@inheritDoc} One end of it may be done from one batch and the rest from the next. */
    @Override
    default boolean divisible() {
        return true;
    }
}
