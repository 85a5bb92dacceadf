package tintwright.window.picture;

import java.util.List;
import java.util.Optional;

/**
 * What the depth gauge shows: lightness as depth, white at the surface.
 *
 * @param white     L* of the untinted base: the surface
 * @param hull      L* of the hull
 * @param hullShade the hull's colour
 * @param cup       L* of the cup now
 * @param cupShade  the cup's colour
 * @param cupName   what the float is called, such as "Cup" or "This recipe"
 * @param unsure    half the height of the band the cup lies in with 95 %, in L*; 0 when nothing is unsure
 * @param stepsFrom L* the stairs begin at: the cup's own when the doses are still to come, white for a whole recipe
 * @param steps     doses, in order
 * @param climb     what white would do, when it is known
 */
public record DepthState(
        double white,
        double hull,
        Shade hullShade,
        double cup,
        Shade cupShade,
        String cupName,
        double unsure,
        double stepsFrom,
        List<Step> steps,
        Optional<Climb> climb) {
    /**
     * @param words what to add, such as "0.42 g black"
     * @param cup   L* of the cup after it
     */
    public record Step(String words, double cup) {
        /** Below this a dose does not move the cup to speak of, L*; common practice, no source. */
        private static final double HARDLY = 0.05;

        /** @param before L* of the cup before it */
        Move after(double before) {
            return Math.abs(cup - before) < HARDLY ? Move.LEVEL : cup < before ? Move.DOWN : Move.UP;
        }
    }

    /** Which way a dose takes the cup. */
    enum Move {
        DOWN,
        UP,
        LEVEL
    }

    /**
     * @param from  L* the climb starts from
     * @param to    L* it ends at
     * @param words grams of white, such as "38 g white"
     */
    public record Climb(double from, double to, String words) {}

    public DepthState {
        if (!Double.isFinite(white + hull + cup + stepsFrom) || !(unsure >= 0)) {
            throw new IllegalArgumentException("depths must be finite and the band 0 or more, were " + white + ", "
                    + hull + ", " + cup + ", " + unsure);
        }
        steps = List.copyOf(steps);
    }
}
