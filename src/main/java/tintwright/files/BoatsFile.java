package tintwright.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Which boats were worked on lately, on disk; each one's job stands in a bench file of its own. */
public final class BoatsFile {
    private static final String KIND = "boats";
    private static final int VERSION = 1;

    private BoatsFile() {}

    /**
     * A boat that was left.
     *
     * @param boat   its name
     * @param places how many places it had
     * @param cup    name of the cup in hand; empty when there was none
     * @param slot   number of its folder
     */
    public record Left(String boat, int places, String cup, int slot) {}

    /**
     * @return last left first; empty when there is no such file yet
     * @throws FileProblem when it is malformed or of a newer version
     */
    public static List<Left> read(Path file) throws FileProblem {
        return Files.exists(file) ? at(file).read() : List.of();
    }

    /** @return the file, to be made or changed while another window may change it too */
    public static SharedFile<List<Left>> at(Path file) {
        return SharedFile.of(file, BoatsFile::from, BoatsFile::text);
    }

    private static String text(List<Left> boats) {
        return JsonText.of(JsonText.head(KIND, VERSION)
                .each(
                        "boats",
                        boats,
                        left -> Fields.of("boat", left.boat())
                                .with("places", left.places())
                                .with("cup", left.cup())
                                .with("slot", left.slot())));
    }

    static List<Left> from(JsonPlace root) throws FileProblem {
        root.head(KIND, VERSION, "boats");
        return root.each("boats", boat -> {
            boat.only("boat", "places", "cup", "slot");
            return new Left(
                    boat.text("boat", ""),
                    boat.at("places").whole(),
                    boat.text("cup", ""),
                    boat.at("slot").whole());
        });
    }
}
