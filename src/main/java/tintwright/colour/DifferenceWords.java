package tintwright.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * How a mix differs from its target, in the words of someone who mixes paint.
 *
 * <p>The sizes are the parts of {@link Ciede2000}, so the word that stands first is the one the eye minds most.
 * Below {@value #UNSEEN} nothing is said; from there to {@value #PLAIN} it is a touch, from {@value #MUCH} on it is
 * much (common practice, no source).
 *
 * @param parts  target to mix, by the eye's weights: positive lightness is a mix that is too light
 * @param said   what is worth saying, the most important first; empty when the two look alike
 */
public record DifferenceWords(Ciede2000.Parts parts, List<Said> said) {
    /** A part of CIEDE2000 below this is not worth a word. */
    public static final double UNSEEN = 0.35;
    /** From here on the difference is named without "a touch". */
    public static final double PLAIN = 1.2;
    /** What {@link #likely} means as a figure; the studies held 88 to 98 of 100 to it. */
    public static final String LIKELY_MEANS = "Likely: nine times in ten.";
    /** Up to here a pair is hard to see even edge to edge; the usual anchor of "just acceptable", a judgement of ours. */
    private static final double HARD_TO_SEE = 1;
    /** Up to here it takes the two edge to edge; a judgement of ours. */
    private static final double EDGE_TO_EDGE = 2;
    /** Up to here it takes the two side by side; a judgement of ours. */
    private static final double SIDE_BY_SIDE = 4;
    /** A smaller CIEDE2000 is not given a figure: no reading can tell it. */
    private static final double LEAST_SAID = 0.1;
    /** From here on it is much. */
    public static final double MUCH = 5;
    /** Below this chroma hue and dirt say nothing: a white is redder, yellower, greener or bluer, not cleaner. */
    private static final double NEARLY_GREY = 8;
    /** From this a* or b* on, either way, an eye names the tint of a grey; common practice, no source. */
    private static final double PLAINLY_TINTED = 3;
    /** Below this a* or b*, either way, it does not. */
    private static final double NO_TINT = 1;
    /** A turn of hue is named after the next of red, yellow, green, blue, at least this many degrees ahead. */
    private static final double AHEAD = 12;

    /** The words for a difference. */
    public enum Word {
        LIGHTER("lighter"),
        DARKER("darker"),
        CLEANER("cleaner"),
        DIRTIER("dirtier"),
        REDDER("redder"),
        YELLOWER("yellower"),
        GREENER("greener"),
        BLUER("bluer"),
        LESS_RED("less red"),
        LESS_YELLOW("less yellow"),
        LESS_GREEN("less green"),
        LESS_BLUE("less blue");

        private final String text;

        Word(String text) {
            this.text = text;
        }

        /** @return the word as it stands in a sentence */
        public String text() {
            return text;
        }
    }

    /**
     * One word and how much of it.
     *
     * @param word what
     * @param size how much the eye minds it, in CIEDE2000, above 0
     */
    public record Said(Word word, double size) {
        /** @return such as "a touch redder", "darker", "much bluer" */
        public String text() {
            return size < PLAIN ? "a touch " + word.text() : size < MUCH ? word.text() : "much " + word.text();
        }
    }

    public DifferenceWords {
        said = List.copyOf(said);
    }

    /** @return how the mix looks beside the target; both under the same light and observer */
    public static DifferenceWords of(Lab mix, Lab target) {
        Ciede2000.Parts parts = Ciede2000.parts(target, mix);
        List<Said> said = new ArrayList<>();
        say(said, parts.lightness() > 0 ? Word.LIGHTER : Word.DARKER, Math.abs(parts.lightness()));
        if ((mix.chroma() + target.chroma()) / 2 < NEARLY_GREY) {
            sayTints(
                    said,
                    mix,
                    target,
                    Math.sqrt(Math.max(
                            0, parts.chroma() * parts.chroma() + parts.hue() * parts.hue() + parts.rotation())));
        } else {
            say(said, parts.chroma() > 0 ? Word.CLEANER : Word.DIRTIER, Math.abs(parts.chroma()));
            say(said, turn(target, mix, parts.hue() > 0), Math.abs(parts.hue()));
        }
        said.sort(Comparator.comparingDouble(Said::size).reversed());
        return new DifferenceWords(parts, said);
    }

    /**
     * Near grey: straight along the red-green and the yellow-blue axis, each with its share. A grey beside a greenish
     * hull lacks green and holds no red, so it is less green, not redder.
     */
    private static void sayTints(List<Said> said, Lab mix, Lab target, double size) {
        double da = mix.a() - target.a();
        double db = mix.b() - target.b();
        double length = Math.hypot(da, db);
        if (length > 0) {
            say(
                    said,
                    lacks(mix.a(), target.a())
                            ? target.a() > 0 ? Word.LESS_RED : Word.LESS_GREEN
                            : da > 0 ? Word.REDDER : Word.GREENER,
                    size * Math.abs(da) / length);
            say(
                    said,
                    lacks(mix.b(), target.b())
                            ? target.b() > 0 ? Word.LESS_YELLOW : Word.LESS_BLUE
                            : db > 0 ? Word.YELLOWER : Word.BLUER,
                    size * Math.abs(db) / length);
        }
    }

    /** True when the target plainly has some of a tint and the mix less of it, without crossing over to its opposite. */
    private static boolean lacks(double mix, double target) {
        return Math.abs(target) > PLAINLY_TINTED
                && mix * Math.signum(target) < Math.abs(target)
                && mix * Math.signum(target) > -NO_TINT;
    }

    private static void say(List<Said> said, Word word, double size) {
        if (size >= UNSEEN) {
            said.add(new Said(word, size));
        }
    }

    /** The next of red, yellow, green, blue that the hue turns toward. */
    private static Word turn(Lab from, Lab to, boolean anticlockwise) {
        double hue = Math.toDegrees(Math.atan2(
                from.b() / from.chroma() + to.b() / to.chroma(), from.a() / from.chroma() + to.a() / to.chroma()));
        Word[] round = {Word.REDDER, Word.YELLOWER, Word.GREENER, Word.BLUER};
        Word nearest = Word.REDDER;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 4; i++) {
            double ahead = anticlockwise ? 90 * i - hue : hue - 90 * i;
            double positive = ((ahead - AHEAD) % 360 + 360) % 360;
            if (positive < least) {
                least = positive;
                nearest = round[i];
            }
        }
        return nearest;
    }

    /**
     * A difference as a number a person reads, the same in every place that names it.
     *
     * @param deltaE CIEDE2000, 0 or more
     * @return such as "0.3"; "under 0.1" for less than any reading can tell, never "0.0"
     */
    public static String size(double deltaE) {
        return deltaE < LEAST_SAID ? "under 0.1" : String.format(Locale.ROOT, "%.1f", deltaE);
    }

    /** @return {@link #size} with its word, such as "0.3 off" */
    public static String off(double deltaE) {
        return size(deltaE) + " off";
    }

    /** @return what an eye makes of a difference, such as "seen edge to edge" */
    public static String seen(double deltaE) {
        if (deltaE < UNSEEN) {
            return "no eye sees it";
        }
        return deltaE <= HARD_TO_SEE
                ? "hard to see"
                : deltaE <= EDGE_TO_EDGE
                        ? "seen edge to edge"
                        : deltaE <= SIDE_BY_SIDE ? "seen side by side" : "seen at a glance";
    }

    /**
     * How sure a difference is as a person says it, the same wording in every place that says it.
     *
     * @param nine CIEDE2000 that nine of ten stay within, 0 or more
     * @return such as "likely within 1.4: seen edge to edge"
     */
    public static String likely(double nine) {
        return "likely " + within(nine) + ": " + seen(nine);
    }

    /**
     * How sure a difference is, as a figure.
     *
     * @param nine CIEDE2000 that nine of ten stay within, 0 or more
     * @return such as "within 0.4", rounded up
     */
    public static String within(double nine) {
        return String.format(Locale.ROOT, "within %.1f", Math.max(LEAST_SAID, Math.ceil(nine * 10 - 1e-6) / 10));
    }

    /**
     * A chance as far as the studies of stated ranges support it: never as good as certain.
     *
     * @param chance 0 to 1
     * @return such as "about 80 %", "more than 95 %", "hardly any chance"
     */
    public static String chance(double chance) {
        if (chance > 0.95) {
            return "more than 95 %";
        }
        return chance < 0.05 ? "hardly any chance" : "about " + Math.round(chance * 20) * 5 + " %";
    }

    /** @return such as "darker and a touch redder"; "no difference to see" when nothing is worth a word */
    public String phrase() {
        if (said.isEmpty()) {
            return parts.total() < UNSEEN ? "no difference to see" : "hardly a difference to see";
        }
        List<String> texts = new ArrayList<>();
        for (Said one : said) {
            texts.add(one.text());
        }
        int last = texts.size() - 1;
        return last == 0 ? texts.get(0) : String.join(", ", texts.subList(0, last)) + " and " + texts.get(last);
    }

    /**
     * The same of what is only reckoned: a best guess must not sound like a promise.
     *
     * @param nine CIEDE2000 that nine of ten stay within, 0 or more
     * @return "no difference to see" only where nine of ten would show none worth a word
     */
    public String phrase(double nine) {
        return said.isEmpty() && nine > HARD_TO_SEE ? "alike as far as is known" : phrase();
    }

    /**
     * @param nine as in {@link #phrase(double)}
     * @return the mix beside the hull and how sure that is, the part that matters most named when there are several
     */
    public String sentence(double nine) {
        String how = said.isEmpty()
                ? "Beside the hull: " + phrase(nine)
                : "The mix is " + phrase() + " than the hull"
                        + (said.size() == 1 ? "" : "; " + first() + " is what the eye sees first");
        return how + ". It is " + likely(nine) + (nine > HARD_TO_SEE ? ", and a dab tells." : ".");
    }

    private String first() {
        Word word = said.get(0).word();
        return switch (word) {
            case LIGHTER, DARKER -> "the value";
            case CLEANER, DIRTIER -> "how clean it is";
            default -> "the hue";
        };
    }
}
