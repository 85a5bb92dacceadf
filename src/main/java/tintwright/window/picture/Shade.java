package tintwright.window.picture;

import java.util.Locale;
import tintwright.colour.Lab;
import tintwright.colour.RgbSpace;
import tintwright.colour.Viewing;

/**
 * A colour as the screen shows it.
 *
 * @param red    coded red, 0 to 1
 * @param green  coded green, 0 to 1
 * @param blue   coded blue, 0 to 1
 * @param shown  false when the screen cannot show the colour and this is only the nearest it can
 */
public record Shade(double red, double green, double blue, boolean shown) {
    public Shade {
        if (!(red >= 0 && red <= 1 && green >= 0 && green <= 1 && blue >= 0 && blue <= 1)) {
            throw new IllegalArgumentException("screen codes must be 0 to 1, were " + red + ", " + green + ", " + blue);
        }
    }

    /** @return the nearest a standard screen comes to this colour */
    public static Shade of(Lab colour) {
        RgbSpace.Code code = RgbSpace.SRGB.encode(colour);
        return new Shade(code.red(), code.green(), code.blue(), code.inGamut());
    }

    /** @return the style of a field in this colour */
    public String css() {
        return String.format(
                Locale.ROOT, "-fx-background-color: rgb(%.1f%%, %.1f%%, %.1f%%);", 100 * red, 100 * green, 100 * blue);
    }

    /** @param lightness L*, 0 to 100 */
    public static Shade grey(double lightness) {
        return of(new Lab(Math.max(0, Math.min(100, lightness)), 0, 0, Viewing.D65_2));
    }
}
