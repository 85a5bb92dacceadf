package tintwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every published table in the test resources says where it comes from and why it may travel. */
class PublishedTest {
    @TempDir
    Path tmp;

    @Test
    void everyTableNamesItsSourceAndItsLicence() throws IOException {
        assertEquals(List.of(), missing(Path.of("src/test/resources/published")));
    }

    @Test
    void aTableWithoutALicenceIsFound() throws IOException {
        Files.writeString(tmp.resolve("bare.csv"), "a,b\n1,2\n");
        Files.writeString(tmp.resolve("half.csv"), "a,b\n1,2\n");
        Files.writeString(tmp.resolve("half.source.txt"), "Source: somewhere\nLicence:\n");
        assertEquals(List.of("bare", "half"), missing(tmp));
    }

    @Test
    void whatWasSkippedIsSaidInOneLine() {
        TreeMap<String, Integer> reasons = new TreeMap<>();
        reasons.put(Reference.ABSENT + "photos/one.jpg", 2);
        reasons.put("no small disk", 1);
        assertEquals(
                "Skipped 3: 2 (may not be passed on with the project: photos/one.jpg); 1 (no small disk)",
                SkippedInOneLine.line(reasons));
    }

    private static List<String> missing(Path folder) throws IOException {
        List<Path> tables;
        try (Stream<Path> files = Files.walk(folder)) {
            tables = files.filter(file -> file.toString().endsWith(".csv"))
                    .sorted()
                    .toList();
        }
        assertTrue(!tables.isEmpty(), "no tables");
        List<String> missing = new ArrayList<>();
        for (Path table : tables) {
            String name = table.getFileName().toString().replace(".csv", "");
            Path said = table.resolveSibling(name + ".source.txt");
            String words = Files.isReadable(said) ? Files.readString(said) : "";
            if (!words.matches("(?s)Source: \\S.*\nLicence: \\S.*")) {
                missing.add(name);
            }
        }
        return missing;
    }
}
