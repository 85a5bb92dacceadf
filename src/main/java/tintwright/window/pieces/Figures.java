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
}
