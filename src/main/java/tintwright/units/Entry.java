package tintwright.units;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a person types at the bench turned into the program's metric amounts: "12", "12 mm", "3/8 in", "1 1/2 in",
 * "12 mil", "70 F", "2.5 oz". The decimal sign is a point or a comma; a comma before just three digits is refused,
 * because 1,000 is one to one reader and a thousand to the other. Without a unit the person's own system decides.
 */
public final class Entry {
    private static final Pattern SHAPE = Pattern.compile(
            "\\s*(-?)(?:(\\d+)\\s+)?(\\d+(?:\\.\\d*)?|\\.\\d+)(?:\\s*/\\s*(\\d+))?\\s*(°?[a-z\"µ ]*?)\\s*");
    private static final Pattern GROUPED = Pattern.compile("\\d,\\d{3}(?!\\d)");
    private static final Map<String, Double> LENGTHS = Map.of(
            "mm",
            1.0,
            "cm",
            10.0,
            "m",
            1000.0,
            "in",
            Units.MM_PER_INCH,
            "inch",
            Units.MM_PER_INCH,
            "\"",
            Units.MM_PER_INCH,
            "ft",
            Units.MM_PER_FOOT,
            "mil",
            Units.MM_PER_MIL,
            "µm",
            0.001,
            "um",
            0.001);
    private static final Map<String, Double> MASSES =
            Map.of("g", 1.0, "kg", 1000.0, "oz", Units.GRAMS_PER_OUNCE, "lb", 16 * Units.GRAMS_PER_OUNCE);

    private static final Map<String, Double> VOLUMES = Map.of(
            "ml",
            1.0,
            "tsp",
            Units.ML_PER_US_TEASPOON,
            "tbsp",
            Units.ML_PER_US_TABLESPOON,
            "fl oz",
            Units.ML_PER_US_FLUID_OUNCE);

    private Entry() {}

    /**
     * @param quantity what is asked for, for the refusal: "depth"
     * @return millimetres; a bare number is millimetres or inches
     */
    public static double lengthMm(String quantity, String typed, UnitSystem system) {
        return amount(quantity, typed, LENGTHS, system == UnitSystem.US ? "in" : "mm");
    }

    /** @return millimetres; a bare number is millimetres or mils */
    public static double filmMm(String quantity, String typed, UnitSystem system) {
        return amount(quantity, typed, LENGTHS, system == UnitSystem.US ? "mil" : "mm");
    }

    /** @return grams; a bare number is grams or ounces */
    public static double grams(String quantity, String typed, UnitSystem system) {
        return amount(quantity, typed, MASSES, system == UnitSystem.US ? "oz" : "g");
    }

    /** @return millilitres; a bare number is millilitres or teaspoons */
    public static double ml(String quantity, String typed, UnitSystem system) {
        return amount(quantity, typed, VOLUMES, system == UnitSystem.US ? "tsp" : "ml");
    }

    /** @return degrees Celsius; a bare number is Celsius or Fahrenheit */
    public static double celsius(String quantity, String typed, UnitSystem system) {
        Matcher entry = match(quantity, typed, "a number with C or F, as in \"21 C\"");
        String unit = entry.group(5).replace("°", "").trim();
        if (unit.isEmpty()) {
            unit = system == UnitSystem.US ? "f" : "c";
        }
        double value = value(quantity, typed, entry);
        if (unit.equals("c")) {
            return value;
        }
        if (unit.equals("f")) {
            return Units.celsius(value);
        }
        throw new IllegalArgumentException(quantity + " must be in C or F, was \"" + typed.trim() + "\"");
    }

    private static double amount(String quantity, String typed, Map<String, Double> units, String usual) {
        Matcher entry = match(quantity, typed, "a number with a unit, as in \"12 " + usual + "\"");
        String unit = entry.group(5).isEmpty() ? usual : entry.group(5);
        Double factor = units.get(unit);
        if (factor == null) {
            throw new IllegalArgumentException(quantity + " must be in one of "
                    + String.join(", ", units.keySet().stream().sorted().toList()) + ", was \"" + typed.trim() + "\"");
        }
        return value(quantity, typed, entry) * factor;
    }

    private static Matcher match(String quantity, String typed, String wanted) {
        if (GROUPED.matcher(typed).find()) {
            throw new IllegalArgumentException(quantity + " could be read in two ways, was \"" + typed.trim()
                    + "\": leave the comma out, or write a point for the decimals");
        }
        Matcher entry = SHAPE.matcher(typed.toLowerCase(Locale.ROOT).replace(',', '.'));
        if (!entry.matches()) {
            throw new IllegalArgumentException(quantity + " must be " + wanted + ", was \"" + typed.trim() + "\"");
        }
        return entry;
    }

    private static double value(String quantity, String typed, Matcher entry) {
        double value = Double.parseDouble(entry.group(3));
        if (entry.group(4) != null) {
            double below = Double.parseDouble(entry.group(4));
            if (below == 0) {
                throw new IllegalArgumentException(quantity + " must not divide by zero, was \"" + typed.trim() + "\"");
            }
            value /= below;
        } else if (entry.group(2) != null) {
            throw new IllegalArgumentException(quantity + " must be one number, was \"" + typed.trim() + "\"");
        }
        if (entry.group(2) != null) {
            value += Double.parseDouble(entry.group(2));
        }
        return entry.group(1).isEmpty() ? value : -value;
    }
}
