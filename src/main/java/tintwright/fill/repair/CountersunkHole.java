package tintwright.fill.repair;

/**
 * A screw hole with a countersink for the screw's head: a frustum over a cylinder, with a plug at the bottom.
 *
 * @param holeMm        diameter of the straight hole
 * @param topMm         diameter of the countersink at the surface, larger than the hole
 * @param countersinkMm depth of the countersink, at most the depth of the hole
 * @param depthMm       depth of the whole hole; for a through hole the thickness of the laminate
 * @param plugMm        how much of the bottom a plug or putty takes up, 0 for none; less than the depth
 */
public record CountersunkHole(double holeMm, double topMm, double countersinkMm, double depthMm, double plugMm)
        implements Hole {
    public CountersunkHole {
        Sizes.length("diameter of the screw hole", holeMm);
        Sizes.length("diameter of the countersink", topMm);
        Sizes.depth("depth of the countersink", countersinkMm);
        Sizes.depth("depth of the screw hole", depthMm);
        if (topMm <= holeMm) {
            throw new IllegalArgumentException("the countersink must be wider than its hole of "
                    + Sizes.plain(holeMm) + " mm, was " + Sizes.plain(topMm)
                    + " mm; measure across the top, or enter a plain hole");
        }
        if (countersinkMm > depthMm) {
            throw new IllegalArgumentException("the countersink must be no deeper than the hole of "
                    + Sizes.plain(depthMm) + " mm, was " + Sizes.plain(countersinkMm) + " mm");
        }
        Hole.checkPlug(plugMm, depthMm);
    }

    /**
     * A countersink given by its angle.
     *
     * @param angleDegrees full angle between the flanks, 40 to 140 degrees; screws are usually 82 (inch) or 90
     *                     (metric)
     */
    public static CountersunkHole ofAngle(
            double holeMm, double topMm, double angleDegrees, double depthMm, double plugMm) {
        Sizes.between("angle of the countersink", angleDegrees, 40, 140, "degrees");
        double countersink = (topMm - holeMm) / 2 / Math.tan(Math.toRadians(angleDegrees / 2));
        // A wrong pair of diameters is refused by name below, not as a depth that came out negative.
        return new CountersunkHole(holeMm, topMm, topMm > holeMm ? countersink : 1, depthMm, plugMm);
    }

    @Override
    public double volumeToMm3(double toMm) {
        double fill = Math.min(toMm, thickestMm());
        double cone = Math.min(fill, countersinkMm);
        double low = topMm - (topMm - holeMm) * cone / countersinkMm;
        double frustum = Math.PI * cone / 12 * (topMm * topMm + topMm * low + low * low);
        return frustum + Math.PI / 4 * holeMm * holeMm * (fill - cone);
    }

    @Override
    public double mouthMm() {
        return topMm;
    }

    @Override
    public String kind() {
        return "countersunk screw hole";
    }
}
