package tintwright.cup;

import tintwright.colour.Lab;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;

/**
 * How likely one person is to give an answer, by how the dab really differs from the hull: the difference as it is
 * seen strays from the true one, and where it lies between two borders is what is said. Where the borders lie, how the
 * hues are named and how far the looks stray is this person's own: it is learned from the answers as all else is.
 *
 * <p>Differences in chroma and in hue count by the weights of CIEDE2000 (ISO/CIE 11664-6:2014, S_C and S_H, the latter
 * without its T). For a scale of what eyes can tell: a pair 1.0 apart (CIELAB) is the usual anchor of "just acceptable"
 * (Berns, Alman, Reniff, Snyder and Balonon-Rosen, Color Res. Appl. 16, 1991), and 2.3 is called just noticeable between
 * separate samples (Mahy, Van Eycken and Oosterlinck, Color Res. Appl. 19, 1994); both from memory. The borders and
 * how fast they blur are common practice, no source.
 */
final class EyeJudge {
    /** How many unit normals make a person. */
    static final int TRAITS = 4;

    /** Nearer than this on its axis a dab is called the same, Lab units; a judgement of ours. */
    private static final double SAME = 1.2;
    /** Farther than this it is called much; a judgement of ours. */
    private static final double MUCH = 4.5;
    /** What a look strays by on each axis, Lab units: about a just noticeable difference of 2.3 over three axes; a judgement of ours. */
    private static final double STRAY = 0.8;
    /** And by this share of the difference itself; a judgement of ours. */
    private static final double OF_ITS_SIZE = 0.2;
    /** Hue is judged worse by this share of the difference in depth; a judgement of ours. */
    private static final double OF_THE_DEPTH = 0.1;
    /** This share of the answers is a slip that says nothing, such as a dab held to the wrong place; a judgement of ours. */
    private static final double SLIP = 0.04;
    /** Depths times hues with their amounts: a slip may be any of them; a judgement of ours. */
    private static final double ANSWERS = 5 * 9;
    /** Standard deviation between people, in ln, of how far looks stray. */
    private static final double PEOPLE_STRAY = 0.4;
    /** Of where "the same" ends, and of where "much" begins; a judgement of ours. */
    private static final double PEOPLE_BORDER = 0.3;
    /** Of where the hues lie that they name, degrees; a judgement of ours. */
    private static final double PEOPLE_TILT = 12;

    /** Angles over a quarter of the circle at which what lies between two borders is summed; a judgement of ours. */
    private static final int RAYS = 8;

    private final double same;
    private final double much;
    private final double poorness;
    private final double tilt;

    private EyeJudge(double poorness, double same, double much, double tilt) {
        this.poorness = poorness;
        this.same = same;
        this.much = Math.max(1.2 * same, much);
        this.tilt = tilt;
    }

    /** @param unit {@link #TRAITS} unit normals */
    static EyeJudge of(double[] unit) {
        return new EyeJudge(
                Math.exp(PEOPLE_STRAY * unit[0]),
                SAME * Math.exp(PEOPLE_BORDER * unit[1]),
                MUCH * Math.exp(PEOPLE_BORDER * unit[2]),
                Math.toRadians(PEOPLE_TILT) * unit[3]);
    }

    /** @return how many times more this person's looks stray than usual */
    double poorness() {
        return poorness;
    }

    /** How differences in chroma and hue look beside a hull of this colour. */
    record Weights(double aa, double ab, double bb) {
        static Weights beside(Lab hull) {
            double chroma = Math.hypot(hull.a(), hull.b());
            double outward = 1 / (1 + 0.045 * chroma);
            double round = 1 / (1 + 0.015 * chroma);
            double cos = chroma > 0 ? hull.a() / chroma : 1;
            double sin = chroma > 0 ? hull.b() / chroma : 0;
            return new Weights(
                    cos * cos * outward + sin * sin * round,
                    cos * sin * (outward - round),
                    sin * sin * outward + cos * cos * round);
        }

        private double red(double[] apart) {
            return aa * apart[1] + ab * apart[2];
        }

        private double yellow(double[] apart) {
            return ab * apart[1] + bb * apart[2];
        }

        private double size(double[] apart) {
            return Math.hypot(apart[0], Math.hypot(red(apart), yellow(apart)));
        }
    }

    /**
     * @param apart dab minus hull in L*, a*, b*
     * @return chance of the answer when it is no slip
     */
    double chance(EyeVerdict said, double[] apart, Weights weights) {
        double chance = said.depth().isEmpty() ? 1 : ofDepth(said.depth().get(), apart[0]);
        if (said.hue().isEmpty() || chance < 1e-12) {
            return chance;
        }
        return chance * ofHue(said.hue().get(), said.amount(), apart[0], weights.red(apart), weights.yellow(apart));
    }

    /** @return the chance that the first of two dabs in a row looks nearer to the hull, slips counted */
    double nearer(double[] near, double[] far, Weights weights) {
        double first = weights.size(near);
        double second = weights.size(far);
        double stray =
                poorness * Math.hypot(Math.hypot(STRAY, OF_ITS_SIZE * first), Math.hypot(STRAY, OF_ITS_SIZE * second));
        return (1 - SLIP) * Normal.below((second - first) / stray) + SLIP / 2;
    }

    /** @return the chance of the answer, slips counted */
    static double withSlips(double chance) {
        return (1 - SLIP) * chance + ofSlip();
    }

    /** @return the chance that an answer was given and is a slip */
    static double ofSlip() {
        return SLIP / ANSWERS;
    }

    private double ofDepth(Depth depth, double lightness) {
        double stray = poorness * Math.hypot(STRAY, OF_ITS_SIZE * lightness);
        return switch (depth) {
            case MUCH_TOO_DARK -> between(-1e9, -much, lightness, stray);
            case A_LITTLE_TOO_DARK -> between(-much, -same, lightness, stray);
            case SAME -> between(-same, same, lightness, stray);
            case A_LITTLE_TOO_LIGHT -> between(same, much, lightness, stray);
            case MUCH_TOO_LIGHT -> between(much, 1e9, lightness, stray);
        };
    }

    private static double between(double low, double high, double middle, double stray) {
        return Math.max(0, Normal.below((high - middle) / stray) - Normal.below((low - middle) / stray));
    }

    private double ofHue(Hue hue, Amount amount, double depth, double a, double b) {
        double size = Math.hypot(a, b);
        double stray = poorness * Math.hypot(STRAY, Math.hypot(OF_ITS_SIZE * size, OF_THE_DEPTH * depth));
        double towards = Math.atan2(b, a) + tilt;
        if (hue == Hue.NONE) {
            return sector(-Math.PI, Math.PI, 4 * RAYS, 0, same, size, towards, stray);
        }
        double low = amount == Amount.MUCH ? much : same;
        double high = amount == Amount.LITTLE ? much : size + same + much + 8 * stray;
        return sector(hue.from(), hue.to(), RAYS, low, high, size, towards, stray);
    }

    /** Chance that a point strayed from this far out in this direction lies in a piece of a ring. */
    private static double sector(
            double from, double to, int rays, double low, double high, double size, double towards, double stray) {
        double sum = 0;
        double two = 2 * stray * stray;
        for (int i = 0; i < rays; i++) {
            double angle = from + (to - from) * (i + 0.5) / rays - towards;
            double along = size * Math.cos(angle);
            double aside = size * Math.sin(angle);
            double beside = aside * aside / two;
            if (beside < 30) {
                // Of r exp(-(r - along)^2 / 2 s^2) over r, in closed form.
                double ends = Math.exp(-(low - along) * (low - along) / two)
                        - Math.exp(-(high - along) * (high - along) / two);
                double middle = Normal.below((high - along) / stray) - Normal.below((low - along) / stray);
                sum += Math.exp(-beside) * (ends / (2 * Math.PI) + along / stray / Math.sqrt(2 * Math.PI) * middle);
            }
        }
        return Math.max(0, sum * (to - from) / rays);
    }
}
