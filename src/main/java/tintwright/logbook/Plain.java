package tintwright.logbook;

import java.text.Normalizer;
import java.util.Locale;

/** Words as the search compares them: lower case, without accents, every run of spaces one space. */
final class Plain {
    private Plain() {}

    static String of(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return squeeze(isAscii(lower) ? lower : withoutAccents(lower));
    }

    static boolean isAscii(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > 0x7f) {
                return false;
            }
        }
        return true;
    }

    /** Marks that Unicode writes apart fall away; letters it never takes apart are spelt out. */
    private static String withoutAccents(String lower) {
        String apart = Normalizer.normalize(lower, Normalizer.Form.NFKD);
        StringBuilder plain = new StringBuilder(apart.length() + 4);
        for (int i = 0; i < apart.length(); i++) {
            char letter = apart.charAt(i);
            switch (letter) {
                case '\u00df' -> plain.append("ss");
                case '\u00e6' -> plain.append("ae");
                case '\u0153' -> plain.append("oe");
                case '\u00f8' -> plain.append('o');
                case '\u0111', '\u00f0' -> plain.append('d');
                case '\u0142' -> plain.append('l');
                case '\u00fe' -> plain.append("th");
                case '\u0131' -> plain.append('i');
                default -> {
                    if (Character.getType(letter) != Character.NON_SPACING_MARK) {
                        plain.append(letter);
                    }
                }
            }
        }
        return plain.toString();
    }

    private static String squeeze(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        boolean gap = false;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter <= ' ' || letter == '\u00a0') {
                gap = plain.length() > 0;
            } else {
                if (gap) {
                    plain.append(' ');
                    gap = false;
                }
                plain.append(letter);
            }
        }
        return plain.toString();
    }
}
