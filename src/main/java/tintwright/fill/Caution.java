package tintwright.fill;

/** The usual cautions of the trade, short. They defer to the data sheet, to local rules and to trained people. */
public enum Caution {
    DATA_SHEET(
            "The product's data sheet and your local rules come first; when in doubt ask a trained person. Limits below "
                    + "are from memory: look up those that hold where you are."),
    PEROXIDE("Peroxide catalyst: goggles and gloves on, a drop can cost an eye - rinse at once for 15 minutes and see "
            + "a doctor. Never let it meet accelerator (promoter), acetone or metal dust. Keep it cool, dark, in its own "
            + "bottle. In the air at most 0.2 ppm at any moment (NIOSH). A spill: wet sand or vermiculite, never sawdust, "
            + "paper or rags."),
    STYRENE(
            "Styrene: work with moving air and an organic-vapour mask; keep flames and sparks away. Limits over 8 hours: "
                    + "100 ppm (HSE EH40/2005, UK; 250 ppm for 15 minutes), 100 ppm (OSHA 29 CFR 1910.1000 Table Z-2, US; ceiling "
                    + "200 ppm), 10 ppm (ACGIH 2020; 20 ppm for 15 minutes)."),
    ACETONE("Acetone burns at a spark: small amounts, lid on, no flame. It cleans tools; it never thins gel coat."),
    DUST("Dust: sand wet where you can, wear a dust mask and glasses, keep the slurry out of the water. Limits over 8 "
            + "hours: 5 mg/m3 that reaches the lungs, 15 in all (OSHA Table Z-1, US), 4 and 10 (COSHH 2002, UK)."),
    HOT_CUP("A catalysed cup heats itself: 100 g in a cup can smoke and crack it. Spread it out or set it outside on "
            + "stone, never on or in other rubbish."),
    WASTE("Waste: let leftovers cure in thin layers outdoors before they go out; rags with resin or peroxide lie flat "
            + "and wet, outdoors, not in a heap.");

    private final String words;

    Caution(String words) {
        this.words = words;
    }

    /** @return the caution in full */
    public String words() {
        return words;
    }
}
