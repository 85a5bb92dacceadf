package tintwright.fill;

/**
 * One thing to fill or to spray, with its own geometry. Every size is in millimetres; what cannot be (zero, negative,
 * a countersink smaller than its hole) is refused when the repair is made.
 */
public sealed interface Repair permits Hole, Patch {

    /** @return what is missing, cubic millimetres, by a closed form; nothing added for loss */
    double volumeMm3();

    /** @return the opening seen from outside, square millimetres */
    double openingMm2();

    /** @return the length of the opening's bounding rectangle, mm */
    double acrossMm();

    /** @return the width of the opening's bounding rectangle, mm */
    double widthMm();

    /** @return the thickness of gel coat where it will be thickest, mm */
    double thickestMm();

    /** @return true when half of it can be done from one batch and half from the next */
    boolean divisible();

    /** @return the kind in the trade's words */
    String kind();
}
