package tintwright.files;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.reading.Reading;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;

/** A chip in JSON, and the parts of any mix: an object of grams by id. */
public final class ChipShape {
    private ChipShape() {}

    /** @return the chip as maps, lists and numbers for {@link JsonText} */
    public static Map<String, Object> toTree(Chip chip) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("id", chip.id());
        chip.madeOn().ifPresent(day -> tree.put("madeOn", day.toString()));
        tree.put("parts", chip.parts().grams());
        tree.put("note", chip.note());
        tree.put("readings", ReadingShape.toTree(chip.readings()));
        return tree;
    }

    public static Chip from(JsonPlace place) throws FileProblem {
        place.only("id", "madeOn", "parts", "note", "readings");
        String id = place.at("id").text();
        Optional<LocalDate> madeOn = place.optionalDate("madeOn");
        Parts parts = parts(place.at("parts"));
        String note = place.text("note", "");
        List<Reading> readings = ReadingShape.from(place.at("readings").list());
        return place.make(() -> new Chip(id, parts, readings, madeOn, note));
    }

    /** @throws FileProblem for a negative mass, or when nothing is in it */
    public static Parts parts(JsonPlace place) throws FileProblem {
        Map<String, Double> grams = new LinkedHashMap<>();
        for (Map.Entry<String, JsonPlace> part : place.fields().entrySet()) {
            double mass = part.getValue().number();
            if (mass < 0) {
                throw part.getValue().problem("a mass must be 0 g or more, was " + mass + " g; correct it there");
            }
            grams.put(part.getKey(), mass);
        }
        return place.make(() -> Parts.of(grams));
    }
}
