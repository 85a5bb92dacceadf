package tintwright.disk;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;

/** What happens to a file on its way: cut off, a byte changed, some taken out, a striking sign put in. */
public final class Damage {
    private static final String STRIKING = "{}[]\",:;<>&-+.0159eE\n\r\t #%\0\uFEFF\u00e9\u2028";

    private Damage() {}

    /** @return one damaged copy; by chance, and by a small one the same as before */
    public static byte[] to(byte[] good, Random chance) {
        int at = chance.nextInt(good.length);
        return switch (chance.nextInt(4)) {
            case 0 -> Arrays.copyOf(good, at);
            case 1 -> {
                byte[] bad = good.clone();
                bad[at] = (byte) chance.nextInt(256);
                yield bad;
            }
            case 2 -> {
                int to = Math.min(good.length, at + 1 + chance.nextInt(40));
                String text = new String(good, 0, at, StandardCharsets.ISO_8859_1)
                        + new String(good, to, good.length - to, StandardCharsets.ISO_8859_1);
                yield text.getBytes(StandardCharsets.ISO_8859_1);
            }
            default -> {
                char one = STRIKING.charAt(chance.nextInt(STRIKING.length()));
                String text = new String(good, StandardCharsets.UTF_8);
                int place = Math.min(at, text.length());
                yield (text.substring(0, place) + one + text.substring(place)).getBytes(StandardCharsets.UTF_8);
            }
        };
    }
}
