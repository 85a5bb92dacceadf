package tintwright.files;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;

/** A target on disk: what was read at one place of a boat. The shape is written down in docs/formats.md. */
public final class TargetFile {
    private static final String KIND = "target";
    private static final int VERSION = 1;

    private TargetFile() {}

    /** @throws FileProblem when it is missing, malformed, of a newer version, or holds no reading that can be used */
    public static PlaceReadings read(Path file) throws FileProblem {
        return at(file).read();
    }

    /** @return the file, to be made or changed while others may change it too */
    public static SharedFile<PlaceReadings> at(Path file) {
        return SharedFile.of(file, TargetFile::from, TargetFile::text);
    }

    /** @return the target as it stands in a file */
    public static String text(PlaceReadings target) {
        return JsonText.of(tree(target));
    }

    /** @return the same as it stands in a larger file */
    public static Map<String, Object> tree(PlaceReadings target) {
        Map<String, Object> tree = JsonText.head(KIND, VERSION);
        tree.putAll(fields(target));
        return tree;
    }

    /** @return what it says, without what a file says of itself */
    static Map<String, Object> fields(PlaceReadings target) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("boat", target.boat());
        tree.put("place", target.place());
        tree.put("note", target.note());
        tree.put("readings", ReadingShape.toTree(target.readings()));
        return tree;
    }

    public static PlaceReadings from(JsonPlace root) throws FileProblem {
        root.head(KIND, VERSION, "boat", "place", "note", "readings");
        return fromFields(root);
    }

    static PlaceReadings fromFields(JsonPlace root) throws FileProblem {
        String boat = root.text("boat", "");
        String place = root.at("place").text();
        String note = root.text("note", "");
        List<Reading> readings = ReadingShape.from(root.at("readings").list());
        return root.make(() -> new PlaceReadings(boat, place, readings, note));
    }
}
