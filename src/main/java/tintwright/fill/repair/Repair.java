package tintwright.fill.repair;

import java.util.ArrayList;
import java.util.List;
import tintwright.units.UnitSystem;

/**
 * One thing to fill or to spray, with its own geometry. Every size is in millimetres; what cannot be (zero, negative,
 * a countersink smaller than its hole) is refused when the repair is made.
 */
public sealed interface Repair permits Hole, Patch {

    /**
     * What its top takes, by a closed form; nothing added for loss.
     *
     * @param toMm from the surface down, 0 or more; deeper than the repair is the whole of it
     * @return cubic millimetres
     */
    double volumeToMm3(double toMm);

    /** @return what is missing, cubic millimetres; nothing added for loss */
    default double volumeMm3() {
        return volumeToMm3(thickestMm());
    }

    /** @return how deep it goes into the hull, a plug counted in, mm; 0 for what only lies on it */
    double depthMm();

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

    /** @return its sizes in one line: "hole 6 mm, depth 9 mm" */
    default String sizeWords(UnitSystem units) {
        List<String> words = new ArrayList<>();
        RepairKind.sizes(this).forEach((name, mm) -> {
            if (mm > 0) {
                words.add(name + " " + (name.equals("film") ? units.film(mm) : units.length(mm)));
            }
        });
        return String.join(", ", words);
    }

    /** @return the kind in the trade's words */
    String kind();
}
