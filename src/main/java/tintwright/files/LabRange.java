package tintwright.files;

import tintwright.reading.Reading;

/** What a reading of a real surface can be; a number outside is a slip of the pen. */
public final class LabRange {
    /** Half a step above the white, as the matching takes it; from memory, no source. */
    private static final double MOST_LIGHTNESS = 100.5;

    private LabRange() {}

    /**
     * @param lightness L*, 0 to 100.5 (the noise of an instrument can pass the white a little, no paint does)
     * @param a         a*, -130 to 130
     * @param b         b*, -130 to 130
     * @return true
     * @throws IllegalArgumentException naming the axis, its range and what came
     */
    public static boolean check(double lightness, double a, double b) {
        within("L*", lightness, 0, MOST_LIGHTNESS);
        within("a*", a, -130, 130);
        within("b*", b, -130, 130);
        return true;
    }

    /**
     * The same for any reading, a spectrum in the light it is judged under.
     *
     * @return the reading
     */
    public static Reading checked(Reading reading) {
        reading.colour(reading.judgedUnder())
                .ifPresent(lab -> check(hundredths(lab.lightness()), hundredths(lab.a()), hundredths(lab.b())));
        return reading;
    }

    private static double hundredths(double value) {
        return Math.rint(100 * value) / 100;
    }

    private static void within(String axis, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    axis + " must be " + plain(least) + " to " + plain(most) + ", was " + value);
        }
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
