package tintwright.reading.photo.card;

/**
 * A single thing of known colour in a photo: a white card, a grey card, a chip that was measured.
 *
 * @param patch  its name and colour
 * @param centre where it lies
 * @param radius pixels around the centre that show nothing else
 * @param sigma  how far its stated colour may be off, standard deviation in CIEDE2000
 */
public record KnownPatch(CardPatch patch, PixelPoint centre, double radius, double sigma) {
    public KnownPatch {
        Spot.checkRadius(patch.name(), radius);
        if (!(sigma >= 0 && sigma <= 10)) {
            throw new IllegalArgumentException(
                    "the colour of \"" + patch.name() + "\" may be off by 0 to 10, was " + sigma);
        }
    }
}
