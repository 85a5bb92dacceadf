package tintwright.paper;

/** Something that has found its place on a page; points from the page's lower left corner. */
sealed interface Mark {
    /** Words on a base line. */
    record Words(double x, double y, double size, boolean bold, String text) implements Mark {}

    /** A rectangle; {@code fill} is 0xRRGGBB or {@link #NONE}, and so is {@code line}. */
    record Box(double x, double y, double width, double height, int fill, int line) implements Mark {}

    /** No ink. */
    int NONE = -1;
}
