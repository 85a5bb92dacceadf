package tintwright.paper;

import java.util.ArrayList;
import java.util.List;

/** How wide words are: all that setting a page must know of a typeface. */
interface Type {
    /** Width of the words at this size, pt. */
    double width(String words, double size);

    /** The words broken into lines no wider than {@code room} pt; a single word that is wider is cut in pieces. */
    default List<String> lines(String words, double size, double room) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : words.split("\n", -1)) {
            StringBuilder line = new StringBuilder();
            for (String word : paragraph.trim().split("\\s+")) {
                String longer = line.isEmpty() ? word : line + " " + word;
                if (width(longer, size) <= room) {
                    line.setLength(0);
                    line.append(longer);
                    continue;
                }
                if (!line.isEmpty()) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(restOfWord(word, size, room, lines));
            }
            lines.add(line.toString());
        }
        return lines;
    }

    private String restOfWord(String word, double size, double room, List<String> lines) {
        String rest = word;
        while (rest.codePointCount(0, rest.length()) > 1 && width(rest, size) > room) {
            int cut = rest.offsetByCodePoints(0, 1);
            int next = cut;
            while (next < rest.length() && width(rest.substring(0, next), size) <= room) {
                cut = next;
                next = rest.offsetByCodePoints(next, 1);
            }
            lines.add(rest.substring(0, cut));
            rest = rest.substring(cut);
        }
        return rest;
    }
}
