package tintwright.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tintwright.reading.photo.sheet.SheetContents;

/** What lies on the sheet, on disk. The shape is written down in docs/formats.md. */
public final class SheetFile {
    private static final String KIND = "sheet";
    private static final int VERSION = 1;

    private SheetFile() {}

    /** @throws FileProblem when it is missing, malformed, of a newer version, or says what cannot be */
    public static SheetContents read(Path file) throws FileProblem {
        return from(JsonPlace.read(file));
    }

    static SheetContents from(JsonPlace root) throws FileProblem {
        root.head(KIND, VERSION, "chips", "tapeLayers", "dab");
        List<SheetContents.Chip> chips = root.each("chips", one -> {
            one.only("place", "name", "parts", "film");
            return chip(one, one.at("place").whole());
        });
        int layers = root.whole("tapeLayers", 0);
        Optional<SheetContents.Chip> dab = root.optional("dab", one -> {
            one.only("name", "parts", "film");
            return chip(one, 0);
        });
        return root.make(() -> new SheetContents(chips, layers, dab));
    }

    /** @return what lies on the sheet, as it stands in a file */
    public static String text(SheetContents contents) {
        return JsonText.of(JsonText.head(KIND, VERSION)
                .each(
                        "chips",
                        contents.chips(),
                        chip -> Fields.of("place", chip.place()).and(fields(chip)))
                .with("tapeLayers", contents.tapeLayers())
                .with("dab", contents.dab().map(SheetFile::fields)));
    }

    private static Fields fields(SheetContents.Chip chip) {
        return Fields.of("name", chip.name()).with("film", chip.film()).with("parts", chip.parts());
    }

    private static SheetContents.Chip chip(JsonPlace one, int place) throws FileProblem {
        return one.make(() -> new SheetContents.Chip(
                place, one.at("name").text(), one.eachNamed("parts", ChipShape::mass), MarksFile.film(one)));
    }
}
