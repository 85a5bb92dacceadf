package tintwright.files;

/** What a reading of a real surface can be; a number outside is a slip of the pen. */
public final class LabRange {
    private LabRange() {}

    /**
     * @param lightness L*, 0 to 110 (gloss can pass the white a little)
     * @param a         a*, -130 to 130
     * @param b         b*, -130 to 130
     * @return true
     * @throws IllegalArgumentException naming the axis, its range and what came
     */
    public static boolean check(double lightness, double a, double b) {
        within("L*", lightness, 0, 110);
        within("a*", a, -130, 130);
        within("b*", b, -130, 130);
        return true;
    }

    private static void within(String axis, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    axis + " must be " + (int) least + " to " + (int) most + ", was " + value);
        }
    }
}
