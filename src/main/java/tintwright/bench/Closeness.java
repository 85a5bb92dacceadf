package tintwright.bench;

import java.util.List;

/**
 * What a CIEDE2000 means to someone who looks at a repair.
 *
 * <p>The limits are common practice, no source: about 1 is what a practised eye finds with both patches edge to
 * edge in daylight.
 */
public final class Closeness {
    private static final List<Double> LIMITS = List.of(0.5, 1.0, 2.0, 4.0);

    private Closeness() {}

    /** @return such as "cannot be seen" */
    public static String words(double deltaE) {
        if (deltaE < LIMITS.get(0)) {
            return "cannot be seen";
        }
        if (deltaE < LIMITS.get(1)) {
            return "a practised eye may find it edge to edge";
        }
        if (deltaE < LIMITS.get(2)) {
            return "seen edge to edge, hardly from a metre";
        }
        if (deltaE < LIMITS.get(3)) {
            return "seen at a glance";
        }
        return "plainly another colour";
    }
}
