package tintwright.files;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tintwright.fill.NotedTime;

/** The times a shop noted of its cups, on disk; each stands as under {@code noted} in a fill job. */
public final class NotedTimesFile {
    private static final String KIND = "noted-times";
    private static final int VERSION = 1;

    private NotedTimesFile() {}

    /** @throws FileProblem when it is missing, malformed, of a newer version, or says what cannot be */
    public static List<NotedTime> read(Path file) throws FileProblem {
        JsonPlace root = JsonPlace.read(file);
        root.version(KIND, VERSION);
        root.only("formatVersion", "kind", "noted");
        return CatalystShape.noted(root);
    }

    /** @throws FileProblem when it cannot be written; what stood there still stands */
    public static void write(Path file, List<NotedTime> noted) throws FileProblem {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("formatVersion", VERSION);
        tree.put("kind", KIND);
        tree.put("noted", CatalystShape.toTree(noted));
        TextFile.write(file, JsonText.of(tree));
    }
}
