package tintwright.units;

/**
 * Unit factors, each exact by definition.
 *
 * <p>Source: the international yard and pound agreement of 1959 (inch, pound) and the US gallon of 231 cubic inches,
 * as given in NIST Special Publication 811, appendix B.
 */
public final class Units {
    /** Millimetres in an inch. */
    public static final double MM_PER_INCH = 25.4;
    /** Millimetres in a mil, a thousandth of an inch. */
    public static final double MM_PER_MIL = MM_PER_INCH / 1000;
    /** Millimetres in a foot of twelve inches. */
    public static final double MM_PER_FOOT = 12 * MM_PER_INCH;
    /** Millilitres in a US gallon of 231 cubic inches. */
    public static final double ML_PER_US_GALLON = 231 * MM_PER_INCH * MM_PER_INCH * MM_PER_INCH / 1000;
    /** Millilitres in a US fluid ounce, a 128th of a US gallon. */
    public static final double ML_PER_US_FLUID_OUNCE = ML_PER_US_GALLON / 128;
    /** Millilitres in a US teaspoon, a sixth of a US fluid ounce. */
    public static final double ML_PER_US_TEASPOON = ML_PER_US_FLUID_OUNCE / 6;
    /** Millilitres in a US tablespoon of three teaspoons. */
    public static final double ML_PER_US_TABLESPOON = 3 * ML_PER_US_TEASPOON;
    /** Grams in an avoirdupois ounce, a 16th of the pound of 453.59237 g. */
    public static final double GRAMS_PER_OUNCE = 453.59237 / 16;
    /** Square feet that a US gallon covers one mil thick with nothing lost: about 1604. */
    public static final double SQUARE_FEET_PER_GALLON_MIL =
            ML_PER_US_GALLON * 1000 / MM_PER_MIL / (MM_PER_FOOT * MM_PER_FOOT);

    private Units() {}

    /** @return degrees Celsius */
    public static double celsius(double fahrenheit) {
        return (fahrenheit - 32) * 5 / 9;
    }

    /** @return degrees Fahrenheit */
    public static double fahrenheit(double celsius) {
        return celsius * 9 / 5 + 32;
    }
}
