package tintwright.fill.repair;

/**
 * A scratch opened to a V with the corner of a scraper: a prism on a triangle.
 *
 * @param lengthMm along the scratch
 * @param widthMm  across the V at the surface
 * @param depthMm  at the bottom of the V
 */
public record ScratchGroove(double lengthMm, double widthMm, double depthMm) implements Patch {
    public ScratchGroove {
        Sizes.length("length of the scratch", lengthMm);
        Sizes.length("width of the scratch", widthMm);
        Sizes.depth("depth of the scratch", depthMm);
    }

    @Override
    public double volumeToMm3(double toMm) {
        double part = Math.min(1, toMm / depthMm);
        return lengthMm * widthMm * depthMm * part * (1 - part / 2);
    }

    @Override
    public double thickestMm() {
        return depthMm;
    }

    @Override
    public String kind() {
        return "scratch groove";
    }
}
