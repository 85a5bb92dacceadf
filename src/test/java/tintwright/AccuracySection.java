package tintwright;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes one section of docs/accuracy.md and leaves the others alone. */
public final class AccuracySection {
    private static final Path FILE = Path.of("docs/accuracy.md");

    private AccuracySection() {}

    /** @param lines of the section, without its heading */
    public static void write(String heading, List<String> lines) throws IOException {
        String all = Files.exists(FILE) ? Files.readString(FILE) : "# How near it comes\n";
        String mine = "## " + heading + "\n" + String.join("\n", lines) + "\n";
        int start = all.indexOf("## " + heading + "\n");
        if (start < 0) {
            all = all.stripTrailing() + "\n\n" + mine;
        } else {
            int end = all.indexOf("\n## ", start + 3);
            all = all.substring(0, start) + mine + (end < 0 ? "" : all.substring(end));
        }
        Files.writeString(FILE, all);
    }
}
