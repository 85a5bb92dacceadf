package tintwright.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import tintwright.shelf.Base;
import tintwright.shelf.Chip;
import tintwright.shelf.Leftover;
import tintwright.shelf.Paste;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Stock;
import tintwright.shelf.Tint;

/** A shelf on disk. The shape is written down in docs/formats.md. */
public final class ShelfFile {
    private static final String KIND = "shelf";
    private static final int VERSION = 1;
    /** Usual density of a neutral gel paste, g/ml; common practice, no source. */
    private static final double USUAL_PASTE_DENSITY = 1.1;

    private static final SharedFile.Shape<Shelf> SHAPE = new SharedFile.Shape<>() {
        @Override
        public Shelf from(JsonPlace root) throws FileProblem {
            return ShelfFile.from(root);
        }

        @Override
        public String text(Shelf value) {
            return ShelfFile.text(value);
        }
    };

    private ShelfFile() {}

    /** @throws FileProblem when it is missing, malformed, of a newer version, or says what cannot be */
    public static Shelf read(Path file) throws FileProblem {
        return from(JsonPlace.read(file));
    }

    /** @return the file, to be changed while others may change it too */
    public static SharedFile<Shelf> at(Path file) {
        return SharedFile.of(file, SHAPE);
    }

    /** @throws FileProblem when it cannot be written; what stood there still stands */
    public static void write(Path file, Shelf shelf) throws FileProblem {
        TextFile.write(file, text(shelf));
    }

    static String text(Shelf shelf) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("formatVersion", VERSION);
        tree.put("kind", KIND);
        tree.put("name", shelf.name());
        tree.put("bases", each(shelf.bases(), ShelfFile::base));
        tree.put("tints", each(shelf.tints(), ShelfFile::tint));
        tree.put("pastes", each(shelf.pastes(), ShelfFile::paste));
        tree.put("leftovers", each(shelf.leftovers(), ShelfFile::leftover));
        tree.put("chips", each(shelf.chips(), ChipShape::toTree));
        return JsonText.of(tree);
    }

    private static <T> List<Object> each(List<T> things, Function<T, Map<String, Object>> shape) {
        List<Object> list = new ArrayList<>();
        things.forEach(thing -> list.add(shape.apply(thing)));
        return list;
    }

    private static Map<String, Object> named(String id, String name) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("id", id);
        tree.put("name", name);
        return tree;
    }

    private static Map<String, Object> base(Base base) {
        Map<String, Object> tree = named(base.id(), base.name());
        tree.put("density", base.density());
        tree.put("waxed", base.waxed());
        StockShape.write(base.stock(), tree);
        return tree;
    }

    private static Map<String, Object> tint(Tint tint) {
        Map<String, Object> tree = named(tint.id(), tint.name());
        tree.put("family", tint.family().code());
        tree.put("loadingLimit", tint.loadingLimit());
        tree.put("density", tint.density());
        tree.put("dropGrams", tint.dropGrams());
        StockShape.write(tint.stock(), tree);
        return tree;
    }

    private static Map<String, Object> paste(Paste paste) {
        Map<String, Object> tree = named(paste.id(), paste.name());
        tree.put("density", paste.density());
        StockShape.write(paste.stock(), tree);
        return tree;
    }

    private static Map<String, Object> leftover(Leftover leftover) {
        Map<String, Object> tree = named(leftover.id(), leftover.name());
        leftover.setAside().ifPresent(day -> tree.put("setAside", day.toString()));
        tree.put("parts", leftover.parts().grams());
        tree.put("readings", ReadingShape.toTree(leftover.readings()));
        return tree;
    }

    static Shelf from(JsonPlace root) throws FileProblem {
        root.version(KIND, VERSION);
        root.only("formatVersion", "kind", "name", "bases", "tints", "pastes", "leftovers", "chips");
        String name = root.text("name", "Shelf");
        List<Base> bases = new ArrayList<>();
        for (JsonPlace place : root.list("bases")) {
            bases.add(base(place));
        }
        List<Chip> chips = new ArrayList<>();
        Set<String> taught = new HashSet<>();
        for (JsonPlace place : root.list("chips")) {
            Chip chip = ChipShape.from(place);
            chips.add(chip);
            taught.addAll(chip.parts().grams().keySet());
        }
        List<Tint> tints = new ArrayList<>();
        for (JsonPlace place : root.list("tints")) {
            tints.add(tint(place, taught));
        }
        List<Paste> pastes = new ArrayList<>();
        for (JsonPlace place : root.list("pastes")) {
            pastes.add(paste(place));
        }
        List<Leftover> leftovers = new ArrayList<>();
        for (JsonPlace place : root.list("leftovers")) {
            leftovers.add(leftover(place));
        }
        return root.make(() -> new Shelf(name, bases, tints, pastes, leftovers, chips));
    }

    private static Base base(JsonPlace place) throws FileProblem {
        place.only(StockShape.beside("id", "name", "density", "waxed"));
        String id = place.at("id").text();
        String name = place.text("name", id);
        double density = place.number("density", Base.USUAL_DENSITY);
        boolean waxed = place.has("waxed") && place.at("waxed").truth();
        Stock stock = StockShape.read(place);
        return place.make(() -> new Base(id, name, density, waxed, stock));
    }

    /** @param taught the ids that at least one chip holds */
    private static Tint tint(JsonPlace place, Set<String> taught) throws FileProblem {
        place.only(StockShape.beside("id", "name", "family", "loadingLimit", "density", "dropGrams"));
        String id = place.at("id").text();
        String name = place.text("name", id);
        if (!place.has("family") && !taught.contains(id)) {
            throw place.problem("the tint \"" + name + "\" has neither a family nor a chip, so nothing is known of it;"
                    + " give it a \"family\" (\"unknown\" is allowed) or a chip");
        }
        PigmentFamily family = PigmentFamily.UNKNOWN;
        if (place.has("family")) {
            String code = place.at("family").text();
            family = place.at("family").make(() -> PigmentFamily.ofCode(code));
        }
        PigmentFamily known = family;
        double limit = place.number("loadingLimit", Tint.USUAL_LOADING_LIMIT);
        double density = place.number("density", Tint.USUAL_DENSITY);
        double drop = place.number("dropGrams", Tint.USUAL_DROP_GRAMS);
        Stock stock = StockShape.read(place);
        return place.make(() -> new Tint(id, name, known, limit, density, drop, stock));
    }

    private static Paste paste(JsonPlace place) throws FileProblem {
        place.only(StockShape.beside("id", "name", "density"));
        String id = place.at("id").text();
        String name = place.text("name", id);
        double density = place.number("density", USUAL_PASTE_DENSITY);
        Stock stock = StockShape.read(place);
        return place.make(() -> new Paste(id, name, density, stock));
    }

    private static Leftover leftover(JsonPlace place) throws FileProblem {
        place.only("id", "name", "setAside", "parts", "readings");
        String id = place.at("id").text();
        String name = place.text("name", id);
        var parts = ChipShape.parts(place.at("parts"));
        var readings = ReadingShape.from(place.list("readings"));
        var setAside = place.optionalDate("setAside");
        return place.make(() -> new Leftover(id, name, parts, readings, setAside));
    }
}
