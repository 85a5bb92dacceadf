package tintwright.command.pieces;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import picocli.CommandLine.TypeConversionException;
import tintwright.colour.Lab;

/** Numbers as they are typed and shown: a decimal point in every country. */
public final class Figures {
    private Figures() {}

    /**
     * @param typed digits with an optional sign, point and exponent
     * @throws TypeConversionException for anything else, also a decimal comma: 1,000 is a gram to one reader and
     *         a kilogram to the other
     */
    public static double parse(String typed) {
        if (!typed.strip().matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?")) {
            throw new TypeConversionException("\"" + typed + "\" is not a number such as 12.5");
        }
        double value = Double.parseDouble(typed.strip());
        if (Double.isInfinite(value)) {
            throw new TypeConversionException("\"" + typed + "\" is too large a number");
        }
        return value;
    }

    /**
     * @param option the option the numbers came with, for the complaint
     * @return L*, a*, b* as typed; their ranges are not checked here
     * @throws IllegalArgumentException when it is not three numbers such as 62.1,-3.4,11.0
     */
    public static double[] lab(String option, String typed) {
        String[] words = typed.split(",", -1);
        if (words.length != 3) {
            throw new IllegalArgumentException(
                    option + " must be three numbers such as 62.1,-3.4,11.0, was \"" + typed + "\"");
        }
        double[] numbers = new double[3];
        for (int i = 0; i < 3; i++) {
            try {
                numbers[i] = parse(words[i]);
            } catch (TypeConversionException e) {
                throw new IllegalArgumentException(
                        option + " must be three numbers such as 62.1,-3.4,11.0, but " + e.getMessage(), e);
            }
        }
        return numbers;
    }

    /** @return the value with this many decimals, never a minus before zero */
    public static String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
    }

    /** @return a colour with one decimal, and what it is stated for */
    public static String colour(Lab lab) {
        return axes(lab) + " (" + lab.viewing() + ")";
    }

    /** @return the same without what it is stated for */
    public static String axes(Lab lab) {
        return "L* " + fixed(lab.lightness(), 1) + ", a* " + fixed(lab.a(), 1) + ", b* " + fixed(lab.b(), 1);
    }

    /** @throws IllegalArgumentException when it is not a date such as 2026-05-31 */
    public static LocalDate date(String option, String typed) {
        try {
            return LocalDate.parse(typed.strip());
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(option + " must be a date such as 2026-05-31, was \"" + typed + "\"", e);
        }
    }
}
