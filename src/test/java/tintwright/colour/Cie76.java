package tintwright.colour;

/**
 * The straight-line difference in CIELAB, for reports that ask for it; the eye is better served by
 * {@link Ciede2000}.
 *
 * <p>Source: ISO/CIE 11664-4, the CIE 1976 L*a*b* colour difference.
 */
public final class Cie76 {
    private Cie76() {}

    /** @return the distance, 0 or more */
    public static double between(Lab first, Lab second) {
        first.viewing().mustEqual(second.viewing());
        return Math.hypot(
                first.lightness() - second.lightness(), Math.hypot(first.a() - second.a(), first.b() - second.b()));
    }
}
