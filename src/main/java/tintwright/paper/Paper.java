package tintwright.paper;

/**
 * A size of paper, in points of 1/72 inch.
 *
 * @param width    full width, pt
 * @param height   full height, pt
 * @param margin   kept free on every side, pt
 * @param mostType the size of type to start from, pt
 * @param leastType the smallest type used to bring a sheet onto one page, pt
 */
public record Paper(double width, double height, double margin, double mostType, double leastType) {
    private static final double POINTS_PER_MM = 72 / 25.4;

    /** ISO 216 A4, 210 by 297 mm. */
    public static final Paper A4 = new Paper(210 * POINTS_PER_MM, 297 * POINTS_PER_MM, 30, 10, 7.5);
    /** US letter, 8.5 by 11 inches. */
    public static final Paper LETTER = new Paper(8.5 * 72, 11 * 72, 30, 10, 7.5);

    public Paper {
        if (!(margin >= 0 && width > 2 * margin && height > 2 * margin && width < 14_400 && height < 14_400)) {
            throw new IllegalArgumentException("paper must be wider and higher than its two margins and below "
                    + "14400 pt, was " + width + " by " + height + " pt with margins of " + margin + " pt");
        }
        if (!(leastType > 0 && mostType >= leastType)) {
            throw new IllegalArgumentException("type must be above 0 pt and the smallest not above the largest, "
                    + "were " + leastType + " and " + mostType + " pt");
        }
    }

    /** A label or card of this size in millimetres, with narrow margins. */
    public static Paper card(double widthMm, double heightMm) {
        return new Paper(widthMm * POINTS_PER_MM, heightMm * POINTS_PER_MM, 8, 10, 5.5);
    }

    double usableWidth() {
        return width - 2 * margin;
    }
}
