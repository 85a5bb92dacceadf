package tintwright.reading.photo.card;

import java.util.List;

/**
 * A card of known colours in rows and columns.
 *
 * @param name       what it is called
 * @param rows       1 to 40
 * @param columns    1 to 40
 * @param patches    row by row from the top left
 * @param patchShare side of a patch over the distance from patch to patch, above 0.2, at most 1
 * @param sigma      how far the stated colours may be off, standard deviation in CIEDE2000: about 0.3 for a card
 *                   that was measured, 0.6 for published averages of a kind of card (common practice, no source)
 */
public record ReferenceCard(
        String name, int rows, int columns, List<CardPatch> patches, double patchShare, double sigma) {
    /** The usual {@link #patchShare}; a judgement of ours. */
    public static final double USUAL_SHARE = 0.85;
    /** The usual {@link #sigma}; a judgement of ours. */
    public static final double USUAL_SIGMA = 0.5;

    public ReferenceCard {
        if (rows < 1 || rows > 40 || columns < 1 || columns > 40) {
            throw new IllegalArgumentException("a card has 1 to 40 rows and columns, was " + rows + " by " + columns);
        }
        patches = List.copyOf(patches);
        if (patches.size() != rows * columns) {
            throw new IllegalArgumentException("a card of " + rows + " rows and " + columns + " columns needs "
                    + rows * columns + " colours, got " + patches.size());
        }
        if (!(patchShare > 0.2 && patchShare <= 1)) {
            throw new IllegalArgumentException("a patch takes 0.2 to 1 of the distance to the next, was " + patchShare);
        }
        if (!(sigma >= 0 && sigma <= 10)) {
            throw new IllegalArgumentException("the colours of a card may be off by 0 to 10, was " + sigma);
        }
    }

    public CardPatch patch(int row, int column) {
        return patches.get(row * columns + column);
    }
}
