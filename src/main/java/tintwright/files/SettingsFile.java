package tintwright.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Small settings of this machine by their names. The shape is written down in docs/formats.md. */
public final class SettingsFile {
    private static final String KIND = "settings";
    private static final int VERSION = 1;

    private SettingsFile() {}

    /** @throws FileProblem when it is missing, malformed or of a newer version */
    public static Map<String, String> read(Path file) throws FileProblem {
        return at(file).read();
    }

    /**
     * @return what was kept; nothing when there is no such file. One that cannot be read is put aside under its name
     *     with "-unreadable" behind it, since nothing could ever be kept in its place
     */
    public static Map<String, String> readOrPutAside(Path file) {
        try {
            return Files.exists(file) ? at(file).read() : Map.of();
        } catch (FileProblem unreadable) {
            try {
                Files.move(
                        file,
                        file.resolveSibling(file.getFileName() + "-unreadable"),
                        StandardCopyOption.REPLACE_EXISTING);
            } catch (IOException | SecurityException staysWhereItIs) {
                return Map.of();
            }
            return Map.of();
        }
    }

    /**
     * Keeps settings; those that another window changed meanwhile and this one did not stay as that one has them.
     *
     * @param before as they were last read or written here
     * @throws FileProblem when it cannot be written; what stood there still stands
     */
    public static void keep(Path file, Map<String, String> before, Map<String, String> now) throws FileProblem {
        at(file).keep(Optional.of(before), now, (first, theirs, mine) -> {
            Map<String, String> both = new TreeMap<>(theirs);
            first.keySet().stream().filter(name -> !mine.containsKey(name)).forEach(both::remove);
            mine.forEach((name, value) -> {
                if (!value.equals(first.get(name))) {
                    both.put(name, value);
                }
            });
            return both;
        });
    }

    private static SharedFile<Map<String, String>> at(Path file) {
        return SharedFile.of(file, SettingsFile::from, SettingsFile::text);
    }

    private static String text(Map<String, String> settings) {
        return JsonText.of(JsonText.head(KIND, VERSION).with("settings", new TreeMap<>(settings)));
    }

    static Map<String, String> from(JsonPlace root) throws FileProblem {
        root.head(KIND, VERSION, "settings");
        root.at("settings");
        return new TreeMap<>(root.eachNamed("settings", JsonPlace::text));
    }
}
