package tintwright.fill;

/** The usual cautions of the trade, short. They defer to the data sheet, to local rules and to trained people. */
public enum Caution {
    DATA_SHEET("The product's data sheet and your local rules come first; when in doubt ask a trained person."),
    PEROXIDE("Peroxide catalyst: goggles and gloves on, a drop can cost an eye - rinse at once for 15 minutes and see "
            + "a doctor. Never let it meet an accelerator or acetone. Keep it cool, dark, in its own bottle."),
    STYRENE("Styrene: work with moving air and an organic-vapour mask; keep flames and sparks away."),
    ACETONE("Acetone burns at a spark: small amounts, lid on, no flame. It cleans tools; it never thins gel coat."),
    DUST("Dust: sand wet where you can, wear a dust mask and glasses, keep the slurry out of the water."),
    HOT_CUP("A catalysed cup heats itself: spread it out or set it outside on stone, never on or in other rubbish."),
    WASTE("Waste: let leftovers cure in thin layers outdoors before they go out; rags lie flat to dry, not in a heap.");

    private final String words;

    Caution(String words) {
        this.words = words;
    }

    /** @return the caution in full */
    public String words() {
        return words;
    }
}
