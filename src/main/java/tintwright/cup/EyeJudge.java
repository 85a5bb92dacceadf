package tintwright.cup;

import java.util.ArrayList;
import java.util.List;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;

/**
 * How likely a person is to give an answer, by how the dab really differs from the hull: the difference as it is seen
 * strays from the true one, and where it lies between two borders is what is said.
 *
 * <p>For a scale of what eyes can tell: a pair 1.0 apart (CIELAB) is the usual anchor of "just acceptable" (Berns,
 * Alman, Reniff, Snyder and Balonon-Rosen, Color Res. Appl. 16, 1991), and 2.3 is called just noticeable between
 * separate samples (Mahy, Van Eycken and Oosterlinck, Color Res. Appl. 19, 1994); both from memory. The borders and
 * how fast they blur are common practice, no source. Figures here that name no source are judgements of ours.
 */
final class EyeJudge {
    /** Nearer than this on its axis a dab is called the same, Lab units. */
    private static final double SAME = 1.2;
    /** Farther than this it is called much. */
    private static final double MUCH = 4.5;
    /** What a look strays by on each axis, Lab units: about a just noticeable difference of 2.3 over three axes. */
    private static final double STRAY = 0.9;
    /** And by this share of the difference itself: where "much" begins, people differ. */
    private static final double OF_ITS_SIZE = 0.25;
    /** Hue is judged worse by this share of the difference in depth. */
    private static final double OF_THE_DEPTH = 0.1;
    /** One answer in so many is a slip that says nothing, such as a dab held to the wrong place. */
    static final double SLIP = 0.04;
    /** Depths times hues with their amounts: a slip may be any of them. */
    private static final double ANSWERS = 5 * 9;

    private static final int RINGS = 4;
    private static final int SPOKES = 6;
    private static final double[][] STRAYED = strayed();

    private EyeJudge() {}

    /** Equally likely steps of two unit normals. */
    private static double[][] strayed() {
        List<double[]> all = new ArrayList<>();
        for (int ring = 0; ring < RINGS; ring++) {
            double radius = Math.sqrt(-2 * Math.log(1 - (ring + 0.5) / RINGS));
            for (int spoke = 0; spoke < SPOKES; spoke++) {
                double angle = 2 * Math.PI * (spoke + ring % 2 / 2.0) / SPOKES;
                all.add(new double[] {radius * Math.cos(angle), radius * Math.sin(angle)});
            }
        }
        return all.toArray(double[][]::new);
    }

    /**
     * @param difference dab minus hull in L*, a*, b*
     * @param poorness   how many times more this person's looks stray than usual
     * @return chance of the answer when it is no slip
     */
    static double chance(EyeVerdict said, double[] difference, double poorness) {
        double chance = said.depth()
                .map(depth -> ofDepth(depth, difference[0], poorness))
                .orElse(1.0);
        return said.hue().isEmpty() || chance < 1e-12
                ? chance
                : chance * ofHue(said.hue().get(), said.amount(), difference, poorness);
    }

    /** @return the chance of the answer, slips counted */
    static double withSlips(double chance) {
        return (1 - SLIP) * chance + ofSlip();
    }

    /** @return the chance that an answer was given and is a slip */
    static double ofSlip() {
        return SLIP / ANSWERS;
    }

    private static double ofDepth(Depth depth, double lightness, double poorness) {
        double stray = poorness * Math.hypot(STRAY, OF_ITS_SIZE * lightness);
        double much = Normal.below((-MUCH - lightness) / stray);
        double dark = Normal.below((-SAME - lightness) / stray);
        double notLight = Normal.below((SAME - lightness) / stray);
        double notMuch = Normal.below((MUCH - lightness) / stray);
        return Math.max(
                0,
                switch (depth) {
                    case MUCH_TOO_DARK -> much;
                    case A_LITTLE_TOO_DARK -> dark - much;
                    case SAME -> notLight - dark;
                    case A_LITTLE_TOO_LIGHT -> notMuch - notLight;
                    case MUCH_TOO_LIGHT -> 1 - notMuch;
                });
    }

    private static double ofHue(Hue hue, Amount amount, double[] difference, double poorness) {
        double size = Math.hypot(difference[1], difference[2]);
        double stray = poorness * Math.hypot(STRAY, Math.hypot(OF_ITS_SIZE * size, OF_THE_DEPTH * difference[0]));
        int hits = 0;
        for (double[] step : STRAYED) {
            hits += fits(hue, amount, difference[1] + stray * step[0], difference[2] + stray * step[1]) ? 1 : 0;
        }
        return hits / (double) STRAYED.length;
    }

    private static boolean fits(Hue hue, Amount amount, double a, double b) {
        double size = Math.hypot(a, b);
        if (size < SAME || hue == Hue.NONE) {
            return size < SAME && hue == Hue.NONE;
        }
        return hue == Hue.nearest(a, b) && (amount == Amount.NOT_SAID || amount == Amount.MUCH == size >= MUCH);
    }
}
