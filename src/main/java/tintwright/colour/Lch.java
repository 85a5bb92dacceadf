package tintwright.colour;

/**
 * A colour in the polar form of CIELAB: how light, how far from grey, which hue.
 *
 * <p>Source: ISO/CIE 11664-4, clause on chroma and hue angle.
 *
 * @param lightness  L*, 0 (black) to 100 (the white)
 * @param chroma     C*, 0 (grey) to about 150
 * @param hueDegrees h, 0 up to 360: red 0, yellow 90, green 180, blue 270; 0 for grey
 * @param viewing    light and observer
 */
public record Lch(double lightness, double chroma, double hueDegrees, Viewing viewing) {
    public Lch {
        if (!Double.isFinite(lightness)) {
            throw new IllegalArgumentException("L* must be finite, was " + lightness);
        }
        if (!(chroma >= 0 && chroma < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("chroma must be 0 or more, was " + chroma);
        }
        if (!(hueDegrees >= 0 && hueDegrees < 360)) {
            throw new IllegalArgumentException("hue must be 0 up to 360 degrees, was " + hueDegrees);
        }
        if (viewing == null) {
            throw new IllegalArgumentException("L*, C*, h need the light and observer they are stated for");
        }
    }

    public static Lch of(Lab colour) {
        return new Lch(colour.lightness(), colour.chroma(), colour.hueDegrees(), colour.viewing());
    }

    public Lab toLab() {
        double radians = Math.toRadians(hueDegrees);
        return new Lab(lightness, chroma * Math.cos(radians), chroma * Math.sin(radians), viewing);
    }
}
