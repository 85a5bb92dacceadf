package tintwright.files.instrument;

import java.nio.file.Path;
import java.util.List;
import tintwright.files.ChipShape;
import tintwright.files.FileProblem;
import tintwright.files.JsonPlace;
import tintwright.files.JsonText;
import tintwright.files.TextFile;
import tintwright.reading.Conditions;
import tintwright.shelf.Chip;

/** Chips on disk, apart from a shelf: what is to be learned next. The shape is written down in docs/formats.md. */
public final class ChipsFile {
    private static final String KIND = "chips";
    private static final int VERSION = 1;

    private ChipsFile() {}

    /** @throws FileProblem when it is missing, malformed, of a newer version, or says what cannot be */
    public static List<Chip> read(Path file) throws FileProblem {
        return from(JsonPlace.read(file));
    }

    /**
     * Chips from our own JSON or from a spreadsheet's CSV; which one it is shows in its first character.
     *
     * @param unsaid what to assume where a spreadsheet does not say
     * @throws FileProblem when it is missing, malformed, or says what cannot be
     */
    public static List<Chip> read(Path file, Conditions unsaid) throws FileProblem {
        String text = TextFile.read(file);
        return text.stripLeading().startsWith("{")
                ? from(JsonPlace.parse(file.toString(), text))
                : ChipsCsv.parse(file.toString(), text, unsaid);
    }

    /** @return the chips as they stand in a file */
    public static String text(List<Chip> chips) {
        return JsonText.of(JsonText.head(KIND, VERSION).each("chips", chips, ChipShape::toTree));
    }

    public static List<Chip> from(JsonPlace root) throws FileProblem {
        root.head(KIND, VERSION, "chips");
        root.at("chips");
        return root.each("chips", ChipShape::from);
    }
}
