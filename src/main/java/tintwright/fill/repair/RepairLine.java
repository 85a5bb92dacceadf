package tintwright.fill.repair;

import java.util.Set;

/**
 * One line of the list of repairs: so many of one kind in one place.
 *
 * @param name   what the person calls it, such as "old cleat holes"
 * @param repair one of them
 * @param lie    how the surface lies there
 * @param count  how many, 1 to 1000
 * @param found  what was found there beside its size; may be empty
 */
public record RepairLine(String name, Repair repair, Lie lie, int count, Set<Finding> found) {
    public RepairLine {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("a repair needs a name, such as \"old cleat holes\"");
        }
        Sizes.between("count of " + name, count, 1, 1000, "");
        found = Finding.copy(found);
    }

    /** A line where nothing but the size was found. */
    public RepairLine(String name, Repair repair, Lie lie, int count) {
        this(name, repair, lie, count, Set.of());
    }

    /** @return what is missing in all of them, ml */
    public double netMl() {
        return count * repair.volumeMm3() / 1000;
    }

    /** @return what it is made from */
    public Mix mix() {
        return Mix.of(repair, lie);
    }

    public boolean sprayed() {
        return repair instanceof SprayArea;
    }
}
