package tintwright.colour;

/**
 * A few plain words for a colour, so that "the light green one" can be found again. The borders are ours: common
 * practice, no source; blue reaches as far as the blue and navy of CSS Color Module Level 4, 6.1, green to its turquoise.
 */
public final class Looks {
    private static final double GREY_BELOW = 4;
    private static final double GREYISH_BELOW = 16;
    private static final double STRONG_FROM = 45;

    private Looks() {}

    /** @return such as "light greyish green", "warm white", "dark grey" */
    public static String of(Lab colour) {
        double light = colour.lightness();
        double chroma = colour.chroma();
        String warmth = colour.b() > 1.5 ? "warm " : colour.b() < -1.5 ? "cool " : "";
        if (chroma < GREY_BELOW) {
            return warmth + (light > 88 ? "white" : light < 18 ? "black" : depth(light) + "grey");
        }
        double hue = colour.hueDegrees();
        if (light > 80 && chroma < GREYISH_BELOW * 1.5 && hue > 70 && hue < 110) {
            return light > 88 && chroma < 10 ? "off-white, cream" : "cream, ivory";
        }
        String strength = chroma < GREYISH_BELOW ? "greyish " : chroma > STRONG_FROM ? "strong " : "";
        return depth(light) + strength + hueWord(hue, light);
    }

    private static String depth(double lightness) {
        return lightness > 70 ? "light " : lightness < 35 ? "dark " : "";
    }

    private static String hueWord(double hue, double lightness) {
        if (hue < 15 || hue >= 345) {
            return lightness > 65 ? "pink" : "red";
        }
        if (hue < 45) {
            return lightness > 65 ? "pink" : lightness < 45 ? "red, brown" : "red";
        }
        if (hue < 75) {
            return lightness < 55 ? "brown" : "orange";
        }
        if (hue < 105) {
            return lightness < 55 ? "brown, olive" : lightness < 75 ? "sand, yellow" : "yellow";
        }
        if (hue < 135) {
            return "yellow green";
        }
        if (hue < 180) {
            return "green";
        }
        if (hue < 225) {
            return "blue green, turquoise";
        }
        return hue < 308 ? "blue" : "violet";
    }
}
