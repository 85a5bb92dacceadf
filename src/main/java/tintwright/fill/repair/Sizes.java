package tintwright.fill.repair;

import java.util.Locale;

/** One rule for what a person measured: a number in a range, or a refusal that says which, where and what came. */
public final class Sizes {
    private static final double LONGEST_MM = 20_000;
    private static final double DEEPEST_MM = 100;

    private Sizes() {}

    static void length(String quantity, double mm) {
        aboveZero(quantity, mm, LONGEST_MM, "mm");
    }

    static void depth(String quantity, double mm) {
        aboveZero(quantity, mm, DEEPEST_MM, "mm");
    }

    public static void aboveZero(String quantity, double value, double most, String unit) {
        if (!(value > 0 && value <= most)) {
            throw new IllegalArgumentException(quantity + " must be above 0 and at most " + plain(most) + " " + unit
                    + ", was " + plain(value) + " " + unit);
        }
    }

    public static void between(String quantity, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            String tail = unit.isEmpty() ? "" : " " + unit;
            throw new IllegalArgumentException(quantity + " must be " + plain(least) + " to " + plain(most) + tail
                    + ", was " + plain(value) + tail);
        }
    }

    /** The number to as many decimals as its step has: 0.2 of a step of 0.01 is "0.20". */
    public static String toStep(double value, double step) {
        String plain = plain(step);
        int decimals = plain.contains(".") ? plain.length() - plain.indexOf('.') - 1 : 0;
        return String.format(Locale.ROOT, "%." + decimals + "f", Math.rint(value / step) * step);
    }

    /** The number without trailing zeros, at most four decimals. */
    public static String plain(double value) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "not a number" : "endless";
        }
        String text = String.format(Locale.ROOT, "%.4f", value);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
