package tintwright.fill.repair;

/**
 * A strip or patch worn thin, to be built up again: a rectangle of even thickness.
 *
 * @param lengthMm length
 * @param widthMm  width
 * @param depthMm  the thickness that is missing, on average
 */
public record WornArea(double lengthMm, double widthMm, double depthMm) implements Patch {
    public WornArea {
        Sizes.length("length of the worn area", lengthMm);
        Sizes.length("width of the worn area", widthMm);
        Sizes.depth("missing thickness of the worn area", depthMm);
    }

    @Override
    public double volumeToMm3(double toMm) {
        return lengthMm * widthMm * Math.min(toMm, depthMm);
    }

    @Override
    public double thickestMm() {
        return depthMm;
    }

    @Override
    public String kind() {
        return "worn area";
    }
}
