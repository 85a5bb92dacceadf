package tintwright.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tintwright.fill.catalyst.NotedTime;

/** The times a shop noted of its cups, on disk; each stands as under {@code noted} in a fill job. */
public final class NotedTimesFile {
    private static final String KIND = "noted-times";
    private static final int VERSION = 1;

    private NotedTimesFile() {}

    /** @throws FileProblem when it is missing, malformed, of a newer version, or says what cannot be */
    public static List<NotedTime> read(Path file) throws FileProblem {
        return at(file).read();
    }

    /**
     * Keeps what was noted; what another window noted meanwhile stays.
     *
     * @param before as they were last read or written here; empty when there was no file
     * @return what stands there now, oldest first
     * @throws FileProblem when it cannot be written; what stood there still stands
     */
    public static List<NotedTime> keep(Path file, List<NotedTime> before, List<NotedTime> now) throws FileProblem {
        return at(file).keep(Optional.of(before), now, SharedFile::grown);
    }

    private static SharedFile<List<NotedTime>> at(Path file) {
        return SharedFile.of(file, NotedTimesFile::from, NotedTimesFile::text);
    }

    private static String text(List<NotedTime> noted) {
        return JsonText.of(JsonText.head(KIND, VERSION).each("noted", noted, CatalystShape::toTree));
    }

    static List<NotedTime> from(JsonPlace root) throws FileProblem {
        root.head(KIND, VERSION, "noted");
        return CatalystShape.noted(root);
    }
}
