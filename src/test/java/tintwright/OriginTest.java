package tintwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No number without a word on where it comes from. In the rooms that estimate and decide, every constant with digits
 * of its own names a source, a study, common practice, memory or a judgement of ours: in its own comment, in a
 * comment above that speaks for those below it, or in a sentence of its class that speaks for all.
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
    private static final Pattern FOR_ALL = Pattern.compile("Figures here that name no source are judgements of ours");

    /** Here decisions fall: each constant speaks for itself. */
    private static final Set<String> ONE_BY_ONE =
            Set.of("DosePlanner", "Ways", "SafeShare", "NextChip", "Dose", "PartPrior");

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
                    boolean alone =
                            ONE_BY_ONE.contains(file.getFileName().toString().replace(".java", ""));
                    bare(lines, alone).forEach(name -> bare.add(file.getFileName() + " " + name));
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
        assertEquals(List.of("NEAR", "MOST"), bare(lines, false));
        List<String> all = new ArrayList<>(lines);
        all.set(0, "/** A class. Figures here that name no source are judgements of ours. */");
        assertEquals(List.of(), bare(all, false));
        assertEquals(List.of("NEAR", "MOST"), bare(all, true));
    }

    private static boolean counts(String line) {
        Matcher constant = CONSTANT.matcher(line);
        return constant.matches() && constant.group(2).matches(".*(?<![A-Za-z_0-9])\\d.*|");
    }

    /** @return the names of the constants that say nothing of their origin; the sentence for all counts or not */
    private static List<String> bare(List<String> lines, boolean oneByOne) {
        if (!oneByOne && lines.stream().anyMatch(line -> FOR_ALL.matcher(line).find())) {
            return List.of();
        }
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
