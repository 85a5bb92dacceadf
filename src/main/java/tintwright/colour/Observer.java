package tintwright.colour;

/**
 * A CIE standard colorimetric observer.
 *
 * <p>Source: ISO/CIE 11664-1 (colour-matching functions, 360 to 830 nm every 1 nm).
 */
public enum Observer {
    /** CIE 1931, for fields of 1 to 4 degrees. */
    CIE_1931_2_DEGREE(2, 0),
    /** CIE 1964, for fields above 4 degrees: what a hull is. */
    CIE_1964_10_DEGREE(10, 3);

    static final Grid TABLE = Grid.between(360, 830, 1);

    /** Read when first needed, once for both. */
    private static final class Matching {
        static final double[][] COLUMNS = CieTable.columns("observers.csv", 1, 6);
    }

    private final int degrees;
    private final int firstColumn;

    Observer(int degrees, int firstColumn) {
        this.degrees = degrees;
        this.firstColumn = firstColumn;
    }

    /** @return the field of view, 2 or 10 degrees */
    public int degrees() {
        return degrees;
    }

    /** @return the observer for 2 or for 10 degrees */
    public static Observer ofDegrees(int degrees) {
        for (Observer observer : values()) {
            if (observer.degrees == degrees) {
                return observer;
            }
        }
        throw new IllegalArgumentException("observer must be 2 or 10 degrees, was " + degrees);
    }

    /** Colour-matching value: axis 0 for x, 1 for y, 2 for z; zero outside 360 to 830 nm. */
    double matching(int axis, int nm) {
        return nm < TABLE.firstNm() || nm > TABLE.lastNm()
                ? 0
                : Matching.COLUMNS[firstColumn + axis][nm - TABLE.firstNm()];
    }
}
