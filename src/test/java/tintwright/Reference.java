package tintwright;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The published figures to check against. They stand outside the project, in {@code ../shared/reference} or
 * where the system property {@code tintwright.reference} says; a test that needs them is skipped where they are
 * absent, and says so.
 */
public final class Reference {
    private Reference() {}

    /** @return the file; skips the calling test when it is absent */
    public static Path file(String name) {
        Path folder = Path.of(System.getProperty("tintwright.reference", "../shared/reference"));
        Path file = folder.resolve(name);
        assumeTrue(
                Files.isReadable(file),
                () -> "skipped: the published figures " + name + " are not at "
                        + folder.toAbsolutePath().normalize());
        return file;
    }

    /** @return the cells of a table without its heading line; skips the calling test when it is absent */
    public static List<String[]> rows(String name) {
        List<String[]> rows = new ArrayList<>();
        try {
            List<String> lines = Files.readAllLines(file(name));
            for (String line : lines.subList(1, lines.size())) {
                if (!line.isBlank()) {
                    rows.add(line.split(",", -1));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }
}
