package tintwright.reading;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;

/** What somebody says of a dab in their own words, as one of the answers there are. */
public final class EyeWords {
    private static final Set<String> MUCH = Set.of("much", "far", "very", "lot", "way", "clearly", "plainly");
    private static final Set<String> LITTLE =
            Set.of("little", "bit", "touch", "slightly", "slight", "hair", "tad", "hint", "trifle");
    private static final Set<String> SAME = Set.of("same", "equal", "right", "none", "no", "ok", "good", "neutral");
    private static final Set<String> DARK = Set.of("dark", "darker", "deep", "deeper");
    private static final Set<String> LIGHT = Set.of("light", "lighter", "pale", "paler", "bright", "brighter");
    private static final Map<String, Hue> HUES = Map.ofEntries(
            Map.entry("red", Hue.TOO_RED),
            Map.entry("redder", Hue.TOO_RED),
            Map.entry("reddish", Hue.TOO_RED),
            Map.entry("pink", Hue.TOO_RED),
            Map.entry("pinker", Hue.TOO_RED),
            Map.entry("yellow", Hue.TOO_YELLOW),
            Map.entry("yellower", Hue.TOO_YELLOW),
            Map.entry("yellowish", Hue.TOO_YELLOW),
            Map.entry("green", Hue.TOO_GREEN),
            Map.entry("greener", Hue.TOO_GREEN),
            Map.entry("greenish", Hue.TOO_GREEN),
            Map.entry("blue", Hue.TOO_BLUE),
            Map.entry("bluer", Hue.TOO_BLUE),
            Map.entry("bluish", Hue.TOO_BLUE));
    /** Words that change nothing. */
    private static final Set<String> BESIDE =
            Set.of("a", "too", "the", "it", "is", "looks", "of", "in", "depth", "hue", "other", "than", "hull", "dab");

    private EyeWords() {}

    /**
     * @param said such as "a little too dark", "much lighter", "same"
     * @throws IllegalArgumentException for words that are no answer, or dark or light without how much
     */
    public static Depth depth(String said) {
        Optional<Boolean> dark = Optional.empty();
        boolean same = false;
        Amount amount = Amount.NOT_SAID;
        for (String word : words(said)) {
            if (DARK.contains(word) || LIGHT.contains(word)) {
                refuse(dark.isPresent(), said);
                dark = Optional.of(DARK.contains(word));
            } else if (SAME.contains(word)) {
                same = true;
            } else {
                amount = amount(word, amount, said);
            }
        }
        refuse(same == dark.isPresent() || same && amount != Amount.NOT_SAID, said);
        if (same) {
            return Depth.SAME;
        }
        if (amount == Amount.NOT_SAID) {
            throw new IllegalArgumentException("\"" + said + "\" does not say how much: say a little or much, such as"
                    + " \"a little too " + (dark.get() ? "dark" : "light") + "\"");
        }
        boolean much = amount == Amount.MUCH;
        return dark.get()
                ? much ? Depth.MUCH_TOO_DARK : Depth.A_LITTLE_TOO_DARK
                : much ? Depth.MUCH_TOO_LIGHT : Depth.A_LITTLE_TOO_LIGHT;
    }

    /**
     * A hue as it was said.
     *
     * @param hue    which
     * @param amount how much of it, where that was said
     */
    public record SaidHue(Hue hue, Amount amount) {}

    /**
     * @param said such as "much red", "a touch too yellow", "none"
     * @throws IllegalArgumentException for words that are no answer
     */
    public static SaidHue hue(String said) {
        Optional<Hue> hue = Optional.empty();
        Amount amount = Amount.NOT_SAID;
        for (String word : words(said)) {
            if (HUES.containsKey(word) || SAME.contains(word)) {
                Hue meant = HUES.getOrDefault(word, Hue.NONE);
                refuse(hue.filter(one -> one != meant).isPresent(), said);
                hue = Optional.of(meant);
            } else {
                amount = amount(word, amount, said);
            }
        }
        refuse(hue.isEmpty() || hue.get() == Hue.NONE && amount != Amount.NOT_SAID, said);
        return new SaidHue(hue.get(), amount);
    }

    private static Amount amount(String word, Amount before, String said) {
        if (BESIDE.contains(word)) {
            return before;
        }
        Amount meant = MUCH.contains(word) ? Amount.MUCH : Amount.LITTLE;
        refuse(!MUCH.contains(word) && !LITTLE.contains(word) || before != Amount.NOT_SAID && before != meant, said);
        return meant;
    }

    private static String[] words(String said) {
        return said.toLowerCase(Locale.ROOT).strip().split("[^a-z]+");
    }

    private static void refuse(boolean refused, String said) {
        if (refused) {
            throw new IllegalArgumentException("\"" + said + "\" is no answer this bench knows. Depth: much or a little"
                    + " too dark, the same, a little or much too light. Hue: a little or much too red, yellow, green or"
                    + " blue, or none");
        }
    }
}
