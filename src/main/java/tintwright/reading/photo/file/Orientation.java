package tintwright.reading.photo.file;

/**
 * How the camera was held: which way the stored rows and columns must be turned to stand upright.
 *
 * <p>Source: the orientation values 1 to 8 of TIFF 6.0, as EXIF uses them.
 *
 * @param swapped   stored rows are upright columns
 * @param mirroredX upright left is stored right (after the swap)
 * @param mirroredY upright top is stored bottom (after the swap)
 */
public record Orientation(boolean swapped, boolean mirroredX, boolean mirroredY) {
    static final Orientation UPRIGHT = new Orientation(false, false, false);

    /** @param tag 1 to 8; anything else counts as upright, as cameras write 0 when they do not know */
    public static Orientation of(int tag) {
        return switch (tag) {
            case 2 -> new Orientation(false, true, false);
            case 3 -> new Orientation(false, true, true);
            case 4 -> new Orientation(false, false, true);
            case 5 -> new Orientation(true, false, false);
            case 6 -> new Orientation(true, true, false);
            case 7 -> new Orientation(true, true, true);
            case 8 -> new Orientation(true, false, true);
            default -> UPRIGHT;
        };
    }

    /** @return stored column of an upright pixel; sizes are the upright ones */
    int storedColumn(int x, int y, int width, int height) {
        int along = mirroredX ? width - 1 - x : x;
        int down = mirroredY ? height - 1 - y : y;
        return swapped ? down : along;
    }

    /** @return stored row of an upright pixel; sizes are the upright ones */
    int storedRow(int x, int y, int width, int height) {
        int along = mirroredX ? width - 1 - x : x;
        int down = mirroredY ? height - 1 - y : y;
        return swapped ? along : down;
    }

    /** @return upright column of a stored pixel; sizes are the upright ones */
    int uprightX(int column, int row, int width, int height) {
        int along = swapped ? row : column;
        return mirroredX ? width - 1 - along : along;
    }

    /** @return upright row of a stored pixel; sizes are the upright ones */
    int uprightY(int column, int row, int width, int height) {
        int down = swapped ? column : row;
        return mirroredY ? height - 1 - down : down;
    }
}
