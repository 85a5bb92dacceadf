package tintwright.units;

import java.util.Locale;

/** Grams as they are said: the one place that decides how many digits a mass is shown with. */
public final class Grams {
    private static final int MOST_DECIMALS = 4;

    private Grams() {}

    /** @return how many decimals show every multiple of this step of a scale, 0 to 4 */
    public static int decimals(double step) {
        int decimals = 0;
        double scaled = step;
        while (decimals < MOST_DECIMALS && Math.abs(scaled - Math.rint(scaled)) > 1e-6) {
            scaled *= 10;
            decimals++;
        }
        return decimals;
    }

    /** @return what a scale with this step shows, such as "0.42 g": the figure to weigh to */
    public static String onScale(double grams, double step) {
        return fixed(grams, decimals(step));
    }

    /** @return a mass to know of, not to weigh to: two decimals below 10 g, one below 100 g, none above */
    public static String about(double grams) {
        return fixed(grams, grams < 9.995 ? 2 : grams < 99.95 ? 1 : 0);
    }

    /** @return what a letdown brings in, finer than a scale: three decimals, below 0.01 g four */
    public static String fine(double grams) {
        return fixed(grams, grams < 0.01 ? 4 : 3);
    }

    /** @return what was written down, no digit more and none less, to a tenth of a milligram */
    public static String written(double grams) {
        String text = String.format(Locale.ROOT, "%." + MOST_DECIMALS + "f", grams);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "") + " g";
    }

    private static String fixed(double grams, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", grams);
        return (text.matches("-0(\\.0+)?") ? text.substring(1) : text) + " g";
    }
}
