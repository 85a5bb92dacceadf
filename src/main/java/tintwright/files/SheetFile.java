package tintwright.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.reading.FilmState;
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
        int layers = root.has("tapeLayers") ? root.at("tapeLayers").whole() : 0;
        Optional<SheetContents.Chip> dab = root.optional("dab", one -> {
            one.only("name", "parts", "film");
            return chip(one, 0);
        });
        return root.make(() -> new SheetContents(chips, layers, dab));
    }

    /** @return what lies on the sheet, as it stands in a file */
    public static String text(SheetContents contents) {
        Map<String, Object> tree = JsonText.head(KIND, VERSION);
        List<Object> chips = new ArrayList<>();
        for (SheetContents.Chip chip : contents.chips()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("place", chip.place());
            one.putAll(fields(chip));
            chips.add(one);
        }
        tree.put("chips", chips);
        tree.put("tapeLayers", contents.tapeLayers());
        contents.dab().ifPresent(dab -> tree.put("dab", fields(dab)));
        return JsonText.of(tree);
    }

    private static Map<String, Object> fields(SheetContents.Chip chip) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("name", chip.name());
        fields.put("film", chip.film() == FilmState.WET ? "wet" : "cured");
        fields.put("parts", chip.parts());
        return fields;
    }

    private static SheetContents.Chip chip(JsonPlace one, int place) throws FileProblem {
        Map<String, Double> parts = new LinkedHashMap<>();
        if (one.has("parts")) {
            for (Map.Entry<String, JsonPlace> part : one.at("parts").fields().entrySet()) {
                double grams = part.getValue().number();
                if (!(grams >= 0)) {
                    throw part.getValue().problem("must be 0 g or more, was " + grams);
                }
                parts.put(part.getKey(), grams);
            }
        }
        String name = one.at("name").text();
        String film = one.text("film", "cured");
        if (!film.equals("cured") && !film.equals("wet")) {
            throw one.at("film").problem("must be \"wet\" or \"cured\", was \"" + film + "\"");
        }
        return one.make(
                () -> new SheetContents.Chip(place, name, parts, film.equals("wet") ? FilmState.WET : FilmState.CURED));
    }
}
