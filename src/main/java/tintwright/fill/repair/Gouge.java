package tintwright.fill.repair;

/**
 * A gouge, deepest in its middle: half an ellipsoid.
 *
 * @param lengthMm longest way across the opening
 * @param widthMm  the other way across
 * @param depthMm  at the deepest place
 */
public record Gouge(double lengthMm, double widthMm, double depthMm) implements Patch {
    public Gouge {
        Sizes.length("length of the gouge", lengthMm);
        Sizes.length("width of the gouge", widthMm);
        Sizes.depth("depth of the gouge", depthMm);
    }

    @Override
    public double volumeToMm3(double toMm) {
        double part = Math.min(1, toMm / depthMm);
        return openingMm2() * depthMm * part * (1 - part * part / 3);
    }

    @Override
    public double openingMm2() {
        return Math.PI / 4 * lengthMm * widthMm;
    }

    @Override
    public double thickestMm() {
        return depthMm;
    }

    @Override
    public boolean divisible() {
        return false;
    }

    @Override
    public String kind() {
        return "gouge";
    }
}
