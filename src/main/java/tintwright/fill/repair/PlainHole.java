package tintwright.fill.repair;

/**
 * A straight hole: a cylinder, with a plug at the bottom when it goes through.
 *
 * @param holeMm  diameter
 * @param depthMm depth; for a through hole the thickness of the laminate
 * @param plugMm  how much of the bottom a plug or putty takes up, 0 for none; less than the depth
 */
public record PlainHole(double holeMm, double depthMm, double plugMm) implements Hole {
    public PlainHole {
        Sizes.length("diameter of the hole", holeMm);
        Sizes.depth("depth of the hole", depthMm);
        Hole.checkPlug(plugMm, depthMm);
    }

    @Override
    public double volumeToMm3(double toMm) {
        return openingMm2() * Math.min(toMm, thickestMm());
    }

    @Override
    public double mouthMm() {
        return holeMm;
    }

    @Override
    public String kind() {
        return "plain hole";
    }
}
