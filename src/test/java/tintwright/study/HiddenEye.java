package tintwright.study;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import tintwright.colour.Lab;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.reading.FilmState;

/**
 * Somebody's eyes, of which the engine knows nothing: differences are seen on the axes of depth, chroma and hue with
 * the weights of CIE94 (CIE 116-1995), not in plain L*, a*, b*; where "a little" and "much" begin, and where red ends
 * and yellow begins, is this person's own. All numbers are invented, plausible.
 */
public final class HiddenEye {
    /** Elementary hues as a person may name them, degrees of a* and b*; invented near those often published. */
    private static final double[] NAMED = {25, 92, 162, 246};

    private final Random random;
    private final double sameBelow;
    private final double muchAbove;
    private final double tilt;
    private final double stray;
    private final double share;
    private final double slips;
    /** What a difference in depth counts beside one in hue when two dabs are compared. */
    private final double depthWeighs;

    /** @param poorness 0 for one who never strays, 1 for a usual person, 2 for one whose looks stray twice as much */
    public HiddenEye(long seed, double poorness) {
        this.random = new Random(seed * 17 + 3);
        this.sameBelow = Math.exp(0.25 * random.nextGaussian());
        this.muchAbove = 3.5 * Math.exp(0.25 * random.nextGaussian());
        this.tilt = 10 * random.nextGaussian();
        this.stray = 0.6 * poorness;
        this.share = 0.15 * poorness;
        this.slips = 0.02 * poorness;
        this.depthWeighs = Math.exp(0.3 * random.nextGaussian());
    }

    /** @return which of a row looks nearest, 0 for the first */
    public int nearest(List<Lab> dabs, Lab hull) {
        int nearest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < dabs.size(); i++) {
            double[] seen = seen(dabs.get(i), hull);
            double size = Math.hypot(depthWeighs * seen[0], Math.hypot(seen[1], seen[2]));
            nearest = size < least ? i : nearest;
            least = Math.min(size, least);
        }
        return random.nextDouble() < slips ? random.nextInt(dabs.size()) : nearest;
    }

    public EyeVerdict look(Lab dab, Lab hull) {
        double[] differs = seen(dab, hull);
        double seen = differs[0];
        double outward = differs[1];
        double round = differs[2];
        boolean slip = random.nextDouble() < slips;
        Depth said = slip ? Depth.values()[random.nextInt(5)] : depth(seen);
        double size = Math.hypot(outward, round);
        if (size < sameBelow) {
            return new EyeVerdict(Optional.of(said), Optional.of(Hue.NONE), Amount.NOT_SAID, FilmState.CURED);
        }
        double towards = Math.toDegrees(Math.atan2(round, outward) + Math.atan2(hull.b(), hull.a())) + tilt;
        return new EyeVerdict(
                Optional.of(said),
                Optional.of(slip ? Hue.values()[random.nextInt(4)] : named(towards)),
                size < muchAbove ? Amount.LITTLE : Amount.MUCH,
                FilmState.CURED);
    }

    /** A difference as it is seen this time: depth, more or less chroma, round the hues. */
    private double[] seen(Lab dab, Lab hull) {
        double depth = dab.lightness() - hull.lightness();
        double chroma = hull.chroma();
        double angle = Math.atan2(hull.b(), hull.a());
        double a = dab.a() - hull.a();
        double b = dab.b() - hull.b();
        double outward = (Math.cos(angle) * a + Math.sin(angle) * b) / (1 + 0.045 * chroma);
        double round = (Math.cos(angle) * b - Math.sin(angle) * a) / (1 + 0.015 * chroma);
        double off = Math.hypot(stray, share * Math.hypot(Math.hypot(outward, round), depth / 2));
        outward += off * random.nextGaussian();
        round += off * random.nextGaussian();
        double seen = depth + Math.hypot(stray, share * depth) * random.nextGaussian();
        return new double[] {seen, outward, round};
    }

    private Depth depth(double seen) {
        double size = Math.abs(seen);
        if (size < sameBelow) {
            return Depth.SAME;
        } else if (seen < 0) {
            return size < muchAbove ? Depth.A_LITTLE_TOO_DARK : Depth.MUCH_TOO_DARK;
        }
        return size < muchAbove ? Depth.A_LITTLE_TOO_LIGHT : Depth.MUCH_TOO_LIGHT;
    }

    private static Hue named(double degrees) {
        int nearest = 0;
        for (int i = 1; i < NAMED.length; i++) {
            nearest = Math.cos(Math.toRadians(degrees - NAMED[i])) > Math.cos(Math.toRadians(degrees - NAMED[nearest]))
                    ? i
                    : nearest;
        }
        return Hue.values()[nearest];
    }
}
