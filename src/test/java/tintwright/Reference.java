package tintwright;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The published figures to check against. Those that may travel stand in the test resources, in {@code published/},
 * each with its source and licence. The others stand outside the project, in {@code ../shared/reference} or where
 * the system property {@code tintwright.reference} says; a test that needs one is skipped where it is absent.
 */
public final class Reference {
    /** How the reason of such a skip begins; {@link SkippedInOneLine} sums them up. */
    static final String ABSENT = "may not be passed on with the project: ";

    private Reference() {}

    /** @return the file; skips the calling test when it may not travel and is absent */
    public static Path file(String name) {
        URL travelling = Reference.class.getResource("/published/" + name);
        if (travelling != null) {
            try {
                return Path.of(travelling.toURI());
            } catch (URISyntaxException e) {
                throw new IllegalStateException(travelling + " is no path", e);
            }
        }
        Path folder = Path.of(System.getProperty("tintwright.reference", "../shared/reference"));
        Path file = folder.resolve(name);
        assumeTrue(Files.isReadable(file), () -> ABSENT + name);
        return file;
    }

    /** @return the cells of a table without its heading line; skips the calling test like {@link #file} */
    public static List<String[]> rows(String name) {
        List<String[]> rows = lines(name);
        return rows.subList(1, rows.size());
    }

    /** @return each line's cells by the heading above them; skips the calling test when it is absent */
    public static List<Map<String, String>> named(String name) {
        String[] headings = lines(name).get(0);
        List<Map<String, String>> rows = new ArrayList<>();
        for (String[] cells : rows(name)) {
            Map<String, String> row = new HashMap<>();
            for (int i = 0; i < headings.length; i++) {
                row.put(headings[i], cells[i]);
            }
            rows.add(row);
        }
        return rows;
    }

    private static List<String[]> lines(String name) {
        try (Stream<String> lines = Files.lines(file(name))) {
            return lines.filter(line -> !line.isBlank())
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
