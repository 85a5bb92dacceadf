package tintwright.bench;

/**
 * What a CIEDE2000 means to someone who looks at a repair.
 *
 * <p>The limits are common practice, no source: about 1 is what a practised eye finds with both patches edge to
 * edge in daylight.
 */
public final class Closeness {
    private Closeness() {
    }

    /** @return such as "cannot be seen" */
    public static String words(double deltaE) {
        if (deltaE < 0.5) {
            return "cannot be seen";
        }
        if (deltaE < 1) {
            return "a practised eye may find it edge to edge";
        }
        if (deltaE < 2) {
            return "seen edge to edge, hardly from a metre";
        }
        if (deltaE < 4) {
            return "seen at a glance";
        }
        return "plainly another colour";
    }
}
