package tintwright.reading;

import java.util.Optional;
import tintwright.colour.Lab;

/**
 * What a person saw of a dab held against the hull. "I cannot tell" is an answer too: then both are empty.
 *
 * @param depth  how deep the dab is beside the hull; empty when that could not be told
 * @param hue    what hue it has that the hull has not; empty when that could not be told
 * @param amount how much of that hue; {@link Amount#NOT_SAID} without a hue
 * @param film   whether the dab had cured
 */
public record EyeVerdict(Optional<Depth> depth, Optional<Hue> hue, Amount amount, FilmState film) {
    /** How deep the dab is beside the hull, darkest first. */
    public enum Depth {
        MUCH_TOO_DARK("much too dark", -8),
        A_LITTLE_TOO_DARK("a little too dark", -2.5),
        SAME("the same depth", 0),
        A_LITTLE_TOO_LIGHT("a little too light", 2.5),
        MUCH_TOO_LIGHT("much too light", 8);

        private final String words;
        private final double lightness;

        Depth(String words, double lightness) {
            this.words = words;
            this.lightness = lightness;
        }

        /** @return what is said, such as "a little too dark" */
        public String words() {
            return words;
        }

        /** @return a dab as this answer would look: for drawing, chosen by us */
        public Lab shade(Lab hull) {
            return moved(hull, lightness, 0, 0);
        }
    }

    /**
     * What hue the dab has that the hull has not. A hue is called by the nearest of the four unique hues; their angles
     * are those of CIE 159:2004, table of unique hue data, from memory, taken for angles of a* and b*.
     */
    public enum Hue {
        TOO_RED("too red", 20.14),
        TOO_YELLOW("too yellow", 90),
        TOO_GREEN("too green", 164.25),
        TOO_BLUE("too blue", 237.53),
        NONE("no other hue", Double.NaN);

        private static final Hue[] ALL = values();
        /** All but the last: red, yellow, green, blue round the circle. */
        private static final int UNIQUE = 4;

        private final String words;
        private final double radians;
        private final double a;
        private final double b;

        Hue(String words, double degrees) {
            this.words = words;
            this.radians = Math.toRadians(degrees);
            this.a = Double.isNaN(degrees) ? 0 : Math.cos(Math.toRadians(degrees));
            this.b = Double.isNaN(degrees) ? 0 : Math.sin(Math.toRadians(degrees));
        }

        /** @return what is said, such as "too red" */
        public String words() {
            return words;
        }

        /** @return a dab as this answer would look: for drawing, chosen by us */
        public Lab shade(Lab hull, Amount amount) {
            double far = amount == Amount.LITTLE ? 3 : amount == Amount.MUCH ? 9 : 6;
            return moved(hull, 0, far * a, far * b);
        }

        /** @return where the differences begin that are called by this hue: angle of a* and b*, radians */
        public double from() {
            Hue before = ALL[(ordinal() + UNIQUE - 1) % UNIQUE];
            return (before.radians - (ordinal() == 0 ? 2 * Math.PI : 0) + radians) / 2;
        }

        /** @return where they end, above {@link #from()} */
        public double to() {
            Hue after = ALL[(ordinal() + 1) % UNIQUE];
            return (after.radians + (ordinal() == UNIQUE - 1 ? 2 * Math.PI : 0) + radians) / 2;
        }
    }

    /** How much of a hue. */
    public enum Amount {
        LITTLE("a little "),
        MUCH("much "),
        NOT_SAID("");

        private final String words;

        Amount(String words) {
            this.words = words;
        }
    }

    public EyeVerdict {
        if (amount != Amount.NOT_SAID && hue.filter(one -> one != Hue.NONE).isEmpty()) {
            throw new IllegalArgumentException(
                    "how much of a hue was said, but not which: say too red, too yellow," + " too green or too blue");
        }
    }

    /** @return nothing could be told */
    public static EyeVerdict cannotTell(FilmState film) {
        return new EyeVerdict(Optional.empty(), Optional.empty(), Amount.NOT_SAID, film);
    }

    /** @return false for "I cannot tell" */
    public boolean tells() {
        return depth.isPresent() || hue.isPresent();
    }

    /** @return true when dab and hull were seen to look the same */
    public boolean alike() {
        return depth.equals(Optional.of(Depth.SAME)) && hue.equals(Optional.of(Hue.NONE));
    }

    /** @return such as "a little too light and much too red", or "cannot tell" */
    public String words() {
        String ofHue = hue.map(one -> amount.words + one.words).orElse("");
        if (depth.isEmpty()) {
            return ofHue.isEmpty() ? "cannot tell" : ofHue;
        }
        return depth.get().words + (ofHue.isEmpty() ? "" : " and " + ofHue);
    }

    private static Lab moved(Lab hull, double lightness, double a, double b) {
        return new Lab(
                Math.max(0, Math.min(100, hull.lightness() + lightness)), hull.a() + a, hull.b() + b, hull.viewing());
    }
}
