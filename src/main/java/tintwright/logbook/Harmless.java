package tintwright.logbook;

import java.util.regex.Pattern;

/**
 * Text for a cell of a table that a spreadsheet will open. A cell that begins like a formula is run by some
 * programs as one; an apostrophe in front makes it text. Plain numbers stay numbers.
 *
 * <p>Source: OWASP Cheat Sheet on CSV injection, from memory: the signs =, +, -, @, tab and carriage return.
 */
final class Harmless {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    private Harmless() {}

    static String cell(String text) {
        String begins = text.stripLeading();
        boolean formula = !begins.isEmpty() && "=+-@\uff1d\uff0b\uff0d\uff20".indexOf(begins.charAt(0)) >= 0;
        boolean control =
                !text.isEmpty() && (text.charAt(0) == '\t' || text.charAt(0) == '\r' || text.charAt(0) == '\n');
        return (formula || control) && !NUMBER.matcher(text).matches() ? "'" + text : text;
    }
}
