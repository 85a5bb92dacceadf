package tintwright.command.holes;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import tintwright.command.pieces.Figures;
import tintwright.fill.repair.Finding;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairKind;
import tintwright.fill.repair.RepairLine;
import tintwright.units.Entry;
import tintwright.units.UnitSystem;

/** One line of repairs as it is typed: {@code gouge:length=60,width=12,depth=3,count=2,lie=vertical,name=fender}. */
public final class RepairWords {
    private RepairWords() {}

    /**
     * @param number       which repair it is, from 1; its name when it has none
     * @param hidingFilmMm for an area to spray without a film of its own
     */
    static RepairLine parse(String typed, int number, UnitSystem system, OptionalDouble hidingFilmMm) {
        int colon = typed.indexOf(':');
        if (colon < 0) {
            throw new IllegalArgumentException("a repair is typed as kind:size=...,size=..., was \"" + typed + "\"");
        }
        RepairKind kind = RepairKind.ofCode(typed.substring(0, colon));
        Map<String, Double> sizes = new LinkedHashMap<>();
        String name = kind.code() + " " + number;
        Lie lie = null;
        Set<Finding> found = Set.of();
        int count = 1;
        for (String part : typed.substring(colon + 1).split(",")) {
            int equals = part.indexOf('=');
            if (equals < 0) {
                throw new IllegalArgumentException(
                        "in repair " + number + " every part is name=value, was \"" + part.trim() + "\"");
            }
            String field = part.substring(0, equals).trim();
            String value = part.substring(equals + 1).trim();
            switch (field) {
                case "name" -> name = value;
                case "lie" -> lie = Lie.named(value);
                case "found" ->
                    found = Arrays.stream(value.split("\\+"))
                            .map(Finding::named)
                            .collect(Collectors.toSet());
                case "count" -> count = whole(value, number);
                case RepairKind.ANGLE -> sizes.put(field, Figures.parse(value));
                case "film" -> sizes.put(field, Entry.filmMm(field, value, system));
                default -> sizes.put(field, Entry.lengthMm(field, value, system));
            }
        }
        if (lie == null) {
            throw new IllegalArgumentException("repair " + number + " must say how its surface lies: lie=facing-up, "
                    + "vertical, overhead or deep-overhead");
        }
        return new RepairLine(name, kind.make(sizes, hidingFilmMm), lie, count, found);
    }

    private static int whole(String value, int number) {
        if (!value.matches("\\d{1,6}")) {
            throw new IllegalArgumentException(
                    "count of repair " + number + " must be a whole number, was \"" + value + "\"");
        }
        return Integer.parseInt(value);
    }
}
