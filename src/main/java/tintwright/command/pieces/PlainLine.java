package tintwright.command.pieces;

import java.util.regex.Pattern;

/**
 * Text for a terminal. Names and notes come from files of other people; a control character in them could move the
 * cursor, colour what follows or rename the window (ECMA-48), and a sign of direction could turn words round (Unicode,
 * UAX 9).
 */
public final class PlainLine {
    private static final Pattern NOT_PLAIN =
            Pattern.compile("[\\p{Cc}&&[^\\n]]|[\\u2028\\u2029\\u200e\\u200f\\u202a-\\u202e\\u2066-\\u2069]");

    private PlainLine() {}

    /** @return JSON with each of them as an escape: they stand inside texts only */
    static String ofJson(String json) {
        return NOT_PLAIN
                .matcher(json)
                .replaceAll(
                        sign -> String.format("\\\\u%04x", (int) sign.group().charAt(0)));
    }

    /** @return the same with a question mark in place of each of them */
    public static String of(String line) {
        return NOT_PLAIN.matcher(line).replaceAll("?");
    }
}
