package tintwright.window.pieces;

import java.util.Locale;
import tintwright.colour.Lab;

/** Figures as every station writes them, and as a person may type them. */
public final class Figures {
    private Figures() {}

    /** @throws IllegalArgumentException when nothing, or no number, was typed; the message names the quantity */
    public static double number(String quantity, String typed) {
        if (typed.isBlank()) {
            throw new IllegalArgumentException(quantity + " is still empty; type a number");
        }
        try {
            return Double.parseDouble(typed.trim().replace(',', '.').replace('\u2212', '-'));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(quantity + " must be a number, was \"" + typed.trim() + "\"");
        }
    }

    /** @return the three numbers of a colour */
    public static String lab(Lab lab) {
        return String.format(Locale.ROOT, "L* %.1f   a* %.1f   b* %.1f", lab.lightness(), lab.a(), lab.b());
    }

    /** @return grams as they are spoken of: three digits, no more than hundredths */
    public static String grams(double grams) {
        String pattern = grams < 10 ? "%.2f g" : grams < 100 ? "%.1f g" : "%.0f g";
        return String.format(Locale.ROOT, pattern, grams);
    }

    /** @return grams with as many decimals as the scale has */
    public static String scale(double grams, double step) {
        int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
        return String.format(Locale.ROOT, "%." + decimals + "f g", grams);
    }
}
