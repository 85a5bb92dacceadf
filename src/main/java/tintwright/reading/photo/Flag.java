package tintwright.reading.photo;

/**
 * Something about a photo that a person should know.
 *
 * @param kind    what it is
 * @param where   the patch or spot, or the whole photo
 * @param message what was found, one sentence
 */
public record Flag(Kind kind, String where, String message) {
    /** What can be wrong with a photo, and what to do about it. */
    public enum Kind {
        CLIPPED("Tap the brightest part of the picture to expose for it, or step the exposure down, and take it "
                + "again."),
        TOO_DARK("Take it again in brighter shade, or step the exposure up."),
        GLARE("Turn until no bright reflection lies on the spot or the card, and take it again."),
        UNEVEN_LIGHT("Move into open shade, or turn card and hull so that both get the same light."),
        SHADOW_EDGE("See that no shadow falls across the card or the hull, and take it again."),
        OTHER_GROUND(
                "Lay the card flat on the hull beside the spot and take it again. If it does lie on the hull, in the"
                        + " spot's light, say so: the tick beside the photo, or --card-on-hull after read."),
        CARD_TOO_SMALL(
                "Go nearer, or lay the card closer to the spot, so that the card fills a third of the " + "picture."),
        BLURRED("Hold the phone still, half a metre away, and wait until the picture is sharp."),
        FAR_FROM_REFERENCES("Lay something of about the hull's colour and known colour beside it: a measured chip, "
                + "or a card with such a patch."),
        STRONG_PROCESSING("Switch off filters, night mode and automatic enhancement on the phone, and take it again."),
        DOES_NOT_FIT("Clean the patch, or check that the card in the photo is the card that was named."),
        FLASH("Switch the flash off and take it in open shade."),
        NO_REFERENCE("Hold a white card, or better a chip of the base, flat beside the hull, and mark it."),
        PROFILE_BROKEN("Take the file straight from the phone, not from a program that changed it."),
        LINEAR_CODES("If the photo looks much too dark on the screen this is right; else mark the card again."),
        SECOND_SHEET(""),
        ANOTHER_SHOP("Print your own with the command sheet, or name the shelf that it belongs to."),
        WRONG_PLACE("Lay it where it is said to lie, or say what lies there, and take the photo again."),
        NOTHING_THERE("Lay the chip there and take the photo again, or say which chips lie on the sheet."),
        NOT_ONE_COLOUR("Move the mark so that it holds one colour only, or make it smaller.");

        private final String advice;

        Kind(String advice) {
            this.advice = advice;
        }

        /** @return what to do */
        public String advice() {
            return advice;
        }
    }

    /** @return the message and what to do */
    public String sentence() {
        return (message + " " + kind.advice()).strip();
    }
}
