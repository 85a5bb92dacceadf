package tintwright.logbook.disk;

import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * One line of a log file: a JSON object whose first field is a check over everything after it.
 *
 * <pre>{"crc":"5f3a11c0","n":1,"id":"..."}</pre>
 *
 * <p>The check is CRC-32 (ITU-T V.42; {@link CRC32}) as eight lower-case hex digits over the bytes that follow the
 * comma, up to and including the closing brace. It finds every damage of up to 32 neighbouring bits, and misses
 * any other with a chance of one in four thousand million. The bytes before the comma must match to the letter,
 * so that no byte of a line is outside the check.
 */
final class Line {
    private static final byte[] BEFORE = "{\"crc\":\"".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] AFTER = "\",".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] HEX = "0123456789abcdef".getBytes(StandardCharsets.US_ASCII);
    private static final int CHECK_DIGITS = 8;
    /** Where the checked part begins. */
    static final int CHECKED_FROM = BEFORE.length + CHECK_DIGITS + AFTER.length;
    /** The longest line that is written: far more than any entry, far less than any memory. */
    static final int LONGEST = 1 << 20;

    private Line() {}

    /**
     * @param fields the fields of the object and its closing brace, without the opening one
     * @return the whole line with its check and its line feed
     */
    static byte[] seal(byte[] fields) {
        byte[] line = new byte[CHECKED_FROM + fields.length + 1];
        System.arraycopy(BEFORE, 0, line, 0, BEFORE.length);
        putCheck(check(fields, 0, fields.length), line, BEFORE.length);
        System.arraycopy(AFTER, 0, line, BEFORE.length + CHECK_DIGITS, AFTER.length);
        System.arraycopy(fields, 0, line, CHECKED_FROM, fields.length);
        line[line.length - 1] = '\n';
        return line;
    }

    /** @return whether the bytes from {@code from} to before {@code to}, without line feed, are a line unharmed */
    static boolean holds(byte[] bytes, int from, int to) {
        if (to - from <= CHECKED_FROM
                || !matches(BEFORE, bytes, from)
                || !matches(AFTER, bytes, from + BEFORE.length + CHECK_DIGITS)) {
            return false;
        }
        byte[] expected = new byte[CHECK_DIGITS];
        putCheck(check(bytes, from + CHECKED_FROM, to - from - CHECKED_FROM), expected, 0);
        return matches(expected, bytes, from + BEFORE.length);
    }

    private static boolean matches(byte[] expected, byte[] bytes, int at) {
        for (int i = 0; i < expected.length; i++) {
            if (bytes[at + i] != expected[i]) {
                return false;
            }
        }
        return true;
    }

    private static int check(byte[] bytes, int from, int length) {
        CRC32 crc = new CRC32();
        crc.update(bytes, from, length);
        return (int) crc.getValue();
    }

    private static void putCheck(int check, byte[] into, int at) {
        for (int i = 0; i < CHECK_DIGITS; i++) {
            into[at + i] = HEX[check >>> (28 - 4 * i) & 0xf];
        }
    }
}
