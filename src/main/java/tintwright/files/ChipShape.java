package tintwright.files;

import java.util.Map;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;

/** A chip in JSON, and the parts of any mix: an object of grams by id. */
public final class ChipShape {
    private ChipShape() {}

    /** @return the chip as maps, lists and numbers for {@link JsonText} */
    public static Fields toTree(Chip chip) {
        return Fields.of("id", chip.id())
                .with("madeOn", chip.madeOn())
                .with("parts", chip.parts().grams())
                .with("note", chip.note())
                .each("readings", chip.readings(), ReadingShape::toTree);
    }

    public static Chip from(JsonPlace place) throws FileProblem {
        place.only("id", "madeOn", "parts", "note", "readings");
        return place.make(() -> new Chip(
                place.at("id").text(),
                parts(place, "parts"),
                place.each("readings", ReadingShape::from),
                place.optionalDate("madeOn"),
                place.text("note", "")));
    }

    /** @throws FileProblem for a negative mass, or when nothing is in it */
    public static Parts parts(JsonPlace place, String field) throws FileProblem {
        place.at(field);
        Map<String, Double> grams = place.eachNamed(field, ChipShape::mass);
        return place.at(field).make(() -> Parts.of(grams));
    }

    static double mass(JsonPlace place) throws FileProblem {
        double mass = place.number();
        if (mass < 0) {
            throw place.problem("a mass must be 0 g or more, was " + mass + " g; correct it there");
        }
        return mass;
    }
}
