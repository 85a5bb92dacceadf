package tintwright.window.holes;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.Repair;
import tintwright.fill.repair.RepairKind;
import tintwright.fill.repair.RepairLine;
import tintwright.units.Entry;
import tintwright.units.UnitSystem;

/** What a person types at the fill, read; whatever cannot be is an IllegalArgumentException with one sentence. */
final class FillTyped {
    private FillTyped() {}

    /**
     * @param sizes the size fields by name as typed; a blank one is left out
     * @param hides asked only for an area to spray without a film of its own
     */
    static RepairLine line(
            String name,
            RepairKind kind,
            Map<String, String> sizes,
            Lie lie,
            String count,
            UnitSystem units,
            List<RepairLine> there,
            Supplier<OptionalDouble> hides) {
        Repair repair = repair(kind, sizes, units, hides);
        String called = name.isBlank() ? unusedName(kind, there) : name.trim();
        if (there.stream().anyMatch(other -> other.name().equals(called))) {
            throw new IllegalArgumentException("\"" + called + "\" is on the list already; give this one its own name");
        }
        return new RepairLine(called, repair, lie, whole(count));
    }

    /** One repair by its sizes alone. */
    static Repair repair(RepairKind kind, Map<String, String> sizes, UnitSystem units, Supplier<OptionalDouble> hides) {
        Map<String, Double> read = new LinkedHashMap<>();
        sizes.forEach((size, typed) -> {
            if (!typed.isBlank()) {
                read.put(
                        size,
                        RepairKind.ANGLE.equals(size)
                                ? number("the angle", typed, "degrees, such as 90")
                                : "film".equals(size)
                                        ? Entry.filmMm(size, typed, units)
                                        : Entry.lengthMm(size, typed, units));
            }
        });
        return kind.make(
                read, kind == RepairKind.SPRAY && !read.containsKey("film") ? hides.get() : OptionalDouble.empty());
    }

    private static String unusedName(RepairKind kind, List<RepairLine> there) {
        List<String> taken = there.stream().map(RepairLine::name).toList();
        int number = 1;
        while (taken.contains(kind.code() + " " + number)) {
            number++;
        }
        return kind.code() + " " + number;
    }

    /** @param example what it must be, in words with an example */
    static double number(String what, String typed, String example) {
        try {
            return Double.parseDouble(typed.replace("%", "").trim().replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(what + " must be " + example + ", was \"" + typed.trim() + "\"", e);
        }
    }

    private static int whole(String typed) {
        try {
            return typed.isBlank() ? 1 : Integer.parseInt(typed.trim());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "how many must be a whole number, such as 6, was \"" + typed.trim() + "\"", e);
        }
    }
}
