package tintwright.fill;

/**
 * A straight hole: a cylinder, with a plug at the bottom when it goes through.
 *
 * @param holeMm  diameter
 * @param depthMm depth; for a through hole the thickness of the laminate
 * @param plugMm  how much of the bottom a plug or putty takes up, 0 for none; less than the depth
 */
public record PlainHole(double holeMm, double depthMm, double plugMm) implements Repair {
    public PlainHole {
        Sizes.length("diameter of the hole", holeMm);
        Sizes.depth("depth of the hole", depthMm);
        checkPlug(plugMm, depthMm);
    }

    static void checkPlug(double plugMm, double depthMm) {
        if (!(plugMm >= 0 && plugMm < depthMm)) {
            throw new IllegalArgumentException("the plug must be 0 mm or more and less than the hole's depth of "
                    + Sizes.plain(depthMm) + " mm, was " + Sizes.plain(plugMm) + " mm");
        }
    }

    @Override
    public double volumeMm3() {
        return openingMm2() * thickestMm();
    }

    @Override
    public double openingMm2() {
        return Math.PI / 4 * holeMm * holeMm;
    }

    @Override
    public double acrossMm() {
        return holeMm;
    }

    @Override
    public double widthMm() {
        return holeMm;
    }

    @Override
    public double thickestMm() {
        return depthMm - plugMm;
    }

    @Override
    public boolean divisible() {
        return false;
    }

    @Override
    public String kind() {
        return "plain hole";
    }
}
