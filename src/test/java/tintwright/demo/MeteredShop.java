package tintwright.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import tintwright.files.Demo;
import tintwright.files.FileProblem;
import tintwright.files.ShelfFile;
import tintwright.files.TargetFile;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Shelf;

/**
 * The invented boat as a shop with a meter knows her: eight tints, two measured chips of each, three curves of each
 * place. Made by {@link DemoGenerator}; for tests whose figures need to be sharp.
 */
public final class MeteredShop {
    /** Its shelf, for commands. */
    public static final String SHELF_FILE = "src/test/resources/tintwright/demo/metered-shelf.json";
    /** Its readings of the port bow, for commands. */
    public static final String BOW_FILE = "src/test/resources/tintwright/demo/metered-port-bow.json";

    private MeteredShop() {}

    public static Shelf shelf() {
        try {
            return ShelfFile.read(Path.of(SHELF_FILE));
        } catch (FileProblem e) {
            throw new UncheckedIOException(new IOException(e));
        }
    }

    /** @return the port bow and the stern quarter */
    public static List<PlaceReadings> places() {
        try {
            return List.of(TargetFile.read(Path.of(BOW_FILE)), Demo.places().get(1));
        } catch (FileProblem e) {
            throw new UncheckedIOException(new IOException(e));
        }
    }
}
