package tintwright.window.picture;

import java.util.List;

/**
 * What the hue rose shows: the a*, b* plane around the cup.
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
public record RoseState(
        Point hull,
        Shade hullShade,
        Point cup,
        Shade cupShade,
        String cupName,
        double unsure,
        List<Pull> pulls,
        List<Point> reach) {
    /**
     * @param a a*, green (-) to red (+)
     * @param b b*, blue (-) to yellow (+)
     */
    public record Point(double a, double b) {}

    /**
     * @param tint    name of the tint
     * @param a       change of a* for a small addition
     * @param b       change of b* for the same addition
     * @param planned true when the plan uses it
     */
    public record Pull(String tint, double a, double b, boolean planned) {
        double size() {
            return Math.hypot(a, b);
        }
    }

    /** @return whether the hull lies inside the outline of the reach; true when there is none */
    boolean hullInReach() {
        boolean inside = reach.size() < 3;
        for (int i = 0, j = reach.size() - 1; i < reach.size(); j = i++) {
            Point p = reach.get(i);
            Point q = reach.get(j);
            if (reach.size() >= 3
                    && p.b() > hull.b() != q.b() > hull.b()
                    && hull.a() < (q.a() - p.a()) * (hull.b() - p.b()) / (q.b() - p.b()) + p.a()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** @return from the cup to the hull */
    double apart() {
        return Math.hypot(hull.a() - cup.a(), hull.b() - cup.b());
    }

    public RoseState {
        pulls = List.copyOf(pulls);
        reach = List.copyOf(reach);
    }
}
