package tintwright.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import tintwright.fill.FillOrder;
import tintwright.reading.PlaceReadings;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.shelf.Shelf;

/** The invented shop and boat that travel inside the program: {@code swatches/} in the project. */
public final class Demo {
    private static final List<String> PLACES = List.of("tarrowmere/port-bow.json", "tarrowmere/stern-quarter.json");

    /** The photo of the first place, with the sheet on it; its readings and those of the chips carry this name. */
    public static final String PHOTO = "port-bow.jpg";

    private Demo() {}

    /**
     * Lays the photo of the first place down where it can be opened like any other.
     *
     * @throws IOException when it cannot be written there
     */
    public static void copyPhoto(Path file) throws IOException {
        try (InputStream in = Demo.class.getResourceAsStream("/swatches/tarrowmere/" + PHOTO)) {
            if (in == null) {
                throw new IllegalStateException("the program is damaged: " + PHOTO + " is not in it");
            }
            Files.copy(in, file);
        }
    }

    /** @return what lies on the sheet in that photo: chips by weight only, and tape */
    public static SheetContents onSheet() {
        try {
            return SheetFile.from(open("tarrowmere/on-sheet.json"));
        } catch (FileProblem e) {
            throw broken(e);
        }
    }

    /** @return the demo shelf: one white, four tints, chips that were weighed and lay in the photo, one leftover */
    public static Shelf shelf() {
        try {
            return ShelfFile.from(open("shelf.json"));
        } catch (FileProblem e) {
            throw broken(e);
        }
    }

    /** @return what was read on the demo boat, one entry for each place; the first is the one to begin with */
    public static List<PlaceReadings> places() {
        return PLACES.stream().map(Demo::place).toList();
    }

    private static PlaceReadings place(String name) {
        try {
            return TargetFile.from(open(name));
        } catch (FileProblem e) {
            throw broken(e);
        }
    }

    /** @return the repairs on the first place of the demo boat */
    public static FillOrder fillOrder() {
        try {
            return FillJobFile.from(open("tarrowmere/fill-job.json"));
        } catch (FileProblem e) {
            throw broken(e);
        }
    }

    private static JsonPlace open(String name) throws FileProblem {
        String resource = "/swatches/" + name;
        try (InputStream in = Demo.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw FileProblem.unusable(resource + " is not in the program");
            }
            return JsonPlace.parse(resource, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw FileProblem.unusable(resource + " cannot be read", e);
        }
    }

    /** The tests read these files; only a damaged program gets here. */
    private static IllegalStateException broken(FileProblem e) {
        return new IllegalStateException("the program is damaged: " + e.getMessage(), e);
    }
}
