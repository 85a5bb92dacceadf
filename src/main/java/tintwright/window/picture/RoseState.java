package tintwright.window.picture;

import java.util.List;

/**
 * What the hue rose shows: the a*, b* plane, neutral in the middle.
 *
 * @param hull      where the hull lies
 * @param hullShade the hull's colour
 * @param cup       where the cup lies
 * @param cupShade  the cup's colour
 * @param cupName   what the cup's mark is called
 * @param unsure    radius in which the cup lies with 95 %, in a*, b* units; 0 when nothing is unsure
 * @param pulls     which way each tint pulls from the cup
 * @param reach     outline of what today's tints reach at the hull's lightness, in order; may be empty
 */
public record RoseState(Point hull, Shade hullShade, Point cup, Shade cupShade, String cupName, double unsure,
        List<Pull> pulls, List<Point> reach) {
    /**
     * @param a a*, green (-) to red (+)
     * @param b b*, blue (-) to yellow (+)
     */
    public record Point(double a, double b) {
        double chroma() {
            return Math.hypot(a, b);
        }
    }

    /**
     * @param tint name of the tint
     * @param a    change of a* for a small addition
     * @param b    change of b* for the same addition
     */
    public record Pull(String tint, double a, double b) {
    }

    public RoseState {
        pulls = List.copyOf(pulls);
        reach = List.copyOf(reach);
    }
}
