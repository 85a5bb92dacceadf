package tintwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No number without a word on where it comes from. In the rooms that estimate and decide, every constant with digits
 * of its own names a source, a study, common practice, memory or a judgement of ours: in its own comment, or in a
 * comment above that says that it speaks for those below it.
 */
class OriginTest {
    private static final List<String> ROOMS = List.of("shelf", "match", "cup", "reading/photo");
    private static final Pattern CONSTANT =
            Pattern.compile("\\s+(?:(?:public|private|protected) )?static final (?:double|float|int|long)(?:\\[])* "
                    + "([A-Z][A-Z_0-9]*) = ?(.*)");
    private static final Pattern ORIGIN = Pattern.compile(
            "common practice|from memory|[Jj]udgements? of ours|no source|[Cc]hosen|\\b(?:ISO|CIE|ICC|IEC|"
                    + "ITU|TIFF|PNG)\\b|[Ss]tudy|[Ss]ettled|[Dd]erived|docs/accuracy|docs/decisions|[Ff]ollows from|"
                    + "(?:normal|percentile|deviation)|[Nn]ot a figure|[Ss]eed|published|Test\\b");

    @Test
    void everyConstantSaysWhereItComesFrom() throws IOException {
        List<String> bare = new ArrayList<>();
        int seen = 0;
        for (String room : ROOMS) {
            try (Stream<Path> files = Files.walk(Path.of("src/main/java/tintwright", room))) {
                for (Path file : files.filter(f -> f.toString().endsWith(".java"))
                        .sorted()
                        .toList()) {
                    List<String> lines = Files.readAllLines(file);
                    seen += (int) lines.stream().filter(OriginTest::counts).count();
                    bare(lines).forEach(name -> bare.add(file.getFileName() + " " + name));
                }
            }
        }
        assertTrue(seen > 200, "only " + seen + " constants were found");
        assertEquals(List.of(), bare);
    }

    @Test
    void aBareConstantIsFound() {
        List<String> lines = List.of(
                "/** A class. */",
                "final class Planted {",
                "    /** How near is near. */",
                "    private static final double NEAR = 0.3;",
                "",
                "    /** How far is far; common practice, no source. */",
                "    private static final double FAR = 3;",
                "    private static final double FARTHER = 4;",
                "",
                "    /** A judgement of ours, as are those below. */",
                "    private static final double LOW = 1;",
                "",
                "    private static final double LOWER = 2;",
                "    static final int COUNT = Grid.INSIDE.count();",
                "",
                "    /** Most of them. */",
                "    private static final int MOST = 8;",
                "}");
        assertEquals(List.of("NEAR", "MOST"), bare(lines));
    }

    private static boolean counts(String line) {
        Matcher constant = CONSTANT.matcher(line);
        return constant.matches() && constant.group(2).matches(".*(?<![A-Za-z_0-9])\\d.*|");
    }

    /** @return the names of the constants that say nothing of their origin */
    private static List<String> bare(List<String> lines) {
        List<String> bare = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (counts(lines.get(i)) && !ORIGIN.matcher(comments(lines, i)).find()) {
                Matcher constant = CONSTANT.matcher(lines.get(i));
                assertTrue(constant.matches());
                bare.add(constant.group(1));
            }
        }
        return bare;
    }

    /** The comment above a constant; past a blank line only when it says that it is for those below as well. */
    private static String comments(List<String> lines, int at) {
        StringBuilder words = new StringBuilder(lines.get(at));
        int i = at - 1;
        boolean apart = false;
        while (i >= 0
                && (CONSTANT.matcher(lines.get(i)).matches() || lines.get(i).isBlank())) {
            apart |= lines.get(i).isBlank();
            i--;
        }
        int end = i;
        while (i >= 0 && lines.get(i).strip().matches("(/\\*\\*|\\*|//|@).*")) {
            words.insert(0, lines.get(i).strip().replaceFirst("^\\*\\s?", "") + " ");
            i--;
        }
        // The formatter parts a constant with a comment from those after it; the comment says that it is for all.
        return apart && !String.join(" ", lines.subList(i + 1, end + 1)).contains("those below")
                ? ""
                : words.toString();
    }
}
