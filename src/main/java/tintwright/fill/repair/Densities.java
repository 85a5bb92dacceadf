package tintwright.fill.repair;

/**
 * Grams per millilitre of what is mixed; the shelf or the products' data sheets know them.
 *
 * @param gelCoat  the coloured gel coat
 * @param paste    the neutral gel paste
 * @param catalyst the peroxide catalyst as sold
 * @param wax      the wax solution
 */
public record Densities(double gelCoat, double paste, double catalyst, double wax) {
    /** Where no data sheet is at hand: ordinary values from memory, no source. */
    public static final Densities USUAL = new Densities(1.3, 1.1, 1.1, 0.91);

    public Densities {
        check("gel coat", gelCoat);
        check("gel paste", paste);
        check("catalyst", catalyst);
        check("wax solution", wax);
    }

    private static void check(String what, double density) {
        if (!(density >= 0.3 && density <= 5)) {
            throw new IllegalArgumentException("density of the " + what + " must be 0.3 to 5 g/ml, was "
                    + Sizes.plain(density) + " g/ml; the data sheet gives it");
        }
    }
}
