package tintwright.cup;

/**
 * What a number in a cup may be.
 */
final class Checks {
    /** Nobody mixes more than this in a cup, grams; a judgement of ours. */
    static final double MOST = 100_000;

    private Checks() {}

    static void mass(String what, double grams) {
        if (!(grams > 0 && grams <= MOST)) {
            throw new IllegalArgumentException(what + " must be above 0 and at most 100000 g, was " + grams + " g");
        }
    }

    static void step(double grams) {
        if (!(grams >= 0.0001 && grams <= 10)) {
            throw new IllegalArgumentException("the scale's step must be 0.0001 to 10 g, was " + grams + " g");
        }
    }
}
