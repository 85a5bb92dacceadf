package tintwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** How wide words are: all that setting a page must know of a typeface. */
interface Type {
    /** Where a line may break: at white space, but not between a number and its unit. */
    Pattern GAP = Pattern.compile("(?<![0-9])\\s+|\\s+(?!(?:%|mm|cm|m|cm²|m²|ml|g|oz|fl oz|in|ft|sq in|sq ft|mil|min|h"
            + "|°C|°F)(?![\\p{L}²]))");

    /** Width of the words at this size, pt. */
    double width(String words, double size);

    /** The words broken into lines no wider than {@code room} pt; a single word that is wider is cut in pieces. */
    default List<String> lines(String words, double size, double room) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : words.split("\n", -1)) {
            StringBuilder line = new StringBuilder();
            for (String word : GAP.split(paragraph.trim())) {
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
