package tintwright.fill;

/**
 * One line of the list of repairs: so many of one kind in one place.
 *
 * @param name   what the person calls it, such as "old cleat holes"
 * @param repair one of them
 * @param lie    how the surface lies there
 * @param count  how many, 1 to 1000
 */
public record RepairLine(String name, Repair repair, Lie lie, int count) {
    public RepairLine {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("a repair needs a name, such as \"old cleat holes\"");
        }
        Sizes.between("count of " + name, count, 1, 1000, "");
    }

    /** @return what is missing in all of them, ml */
    public double netMl() {
        return count * repair.volumeMm3() / 1000;
    }

    /** @return what it is made from */
    public Mix mix() {
        return Mix.of(repair, lie);
    }

    boolean sprayed() {
        return repair instanceof SprayArea;
    }
}
