package tintwright.files;

import java.nio.file.Path;
import tintwright.reading.PlaceReadings;

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
    public static Fields tree(PlaceReadings target) {
        return JsonText.head(KIND, VERSION).and(fields(target));
    }

    /** @return what it says, without what a file says of itself */
    static Fields fields(PlaceReadings target) {
        return Fields.of("boat", target.boat())
                .with("place", target.place())
                .with("note", target.note())
                .each("readings", target.readings(), ReadingShape::toTree);
    }

    public static PlaceReadings from(JsonPlace root) throws FileProblem {
        root.head(KIND, VERSION, "boat", "place", "note", "readings");
        return fromFields(root);
    }

    static PlaceReadings fromFields(JsonPlace root) throws FileProblem {
        root.at("readings");
        return root.make(() -> new PlaceReadings(
                root.text("boat", ""),
                root.at("place").text(),
                root.each("readings", ReadingShape::from),
                root.text("note", "")));
    }
}
