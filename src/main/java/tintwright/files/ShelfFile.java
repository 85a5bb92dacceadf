package tintwright.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tintwright.shelf.Base;
import tintwright.shelf.Chip;
import tintwright.shelf.ItemKind;
import tintwright.shelf.Leftover;
import tintwright.shelf.Paste;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.StockItem;
import tintwright.shelf.Sundry;
import tintwright.shelf.Tint;

/** A shelf on disk. The shape is written down in docs/formats.md. */
public final class ShelfFile {
    private static final String KIND = "shelf";
    /** Four of so many tints are tried in about a second; chosen, no source. */
    private static final int MOST_OF_A_KIND = 60;
    /** Thirty years of a chip a day; chosen, no source. */
    private static final int MOST_CHIPS = 10_000;

    private static final int VERSION = 2;
    /** Usual density of a neutral gel paste, g/ml; common practice, no source. */
    private static final double USUAL_PASTE_DENSITY = 1.1;

    private ShelfFile() {}

    /** @throws FileProblem when it is missing, malformed, of a newer version, or says what cannot be */
    public static Shelf read(Path file) throws FileProblem {
        return at(file).read();
    }

    /** @return the file, to be changed while others may change it too */
    public static SharedFile<Shelf> at(Path file) {
        return SharedFile.of(file, ShelfFile::from, ShelfFile::text);
    }

    /** @return the shelf as it stands in a file */
    public static String text(Shelf shelf) {
        return JsonText.of(tree(shelf));
    }

    /** @return the same as it stands in a larger file */
    public static Fields tree(Shelf shelf) {
        Fields tree = JsonText.head(KIND, VERSION).with("name", shelf.name());
        for (ItemKind kind : ItemKind.values()) {
            tree.each(
                    list(kind),
                    shelf.items().stream().filter(item -> item.kind() == kind).toList(),
                    ShelfFile::toTree);
        }
        return tree.each("chips", shelf.chips(), ChipShape::toTree);
    }

    /** @return what the list of all of a kind is called */
    private static String list(ItemKind kind) {
        return switch (kind) {
            case BASE -> "bases";
            case TINT -> "tints";
            case PASTE -> "pastes";
            case LEFTOVER -> "leftovers";
            case CATALYST -> "catalysts";
            case WAX -> "waxes";
            case KIT -> "kits";
        };
    }

    private static Fields toTree(StockItem item) {
        Fields tree = Fields.of("id", item.id()).with("name", item.name());
        if (item instanceof Leftover leftover) {
            return tree.with("setAside", leftover.setAside())
                    .with("parts", leftover.parts().grams())
                    .each("readings", leftover.readings(), ReadingShape::toTree);
        }
        if (item instanceof Base base) {
            tree.with("density", base.density()).with("waxed", base.waxed());
        } else if (item instanceof Tint tint) {
            tree.with("family", tint.family().code())
                    .with("loadingLimit", tint.loadingLimit())
                    .with("density", tint.density())
                    .with("dropGrams", tint.dropGrams());
        } else if (item instanceof Paste paste) {
            tree.with("density", paste.density());
        }
        return tree.and(StockShape.toTree(item.stock()));
    }

    public static Shelf from(JsonPlace root) throws FileProblem {
        List<String> known = new ArrayList<>(List.of("name", "chips"));
        for (ItemKind kind : ItemKind.values()) {
            known.add(list(kind));
        }
        root.head(KIND, VERSION, known.toArray(String[]::new));
        String name = root.text("name", "Shelf");
        List<Chip> chips = new ArrayList<>();
        Set<String> taught = new HashSet<>();
        for (JsonPlace place : atMost(MOST_CHIPS, root.list("chips"), root, "chips")) {
            Chip chip = ChipShape.from(place);
            chips.add(chip);
            taught.addAll(chip.parts().grams().keySet());
        }
        List<StockItem> items = new ArrayList<>();
        for (ItemKind kind : ItemKind.values()) {
            for (JsonPlace place : atMost(MOST_OF_A_KIND, root.list(list(kind)), root, list(kind))) {
                items.add(
                        switch (kind) {
                            case BASE -> base(place);
                            case TINT -> tint(place, taught);
                            case PASTE -> paste(place);
                            case LEFTOVER -> leftover(place);
                            case CATALYST, WAX, KIT -> sundry(place, kind);
                        });
            }
        }
        return root.make(() -> new Shelf(name, items, chips));
    }

    private static List<JsonPlace> atMost(int most, List<JsonPlace> found, JsonPlace root, String what)
            throws FileProblem {
        if (found.size() > most) {
            throw root.problem("the shelf holds " + found.size() + " " + what + ", at most " + most
                    + " can be worked with; put those that are used on a shelf of their own");
        }
        return found;
    }

    private static String name(JsonPlace place) throws FileProblem {
        return place.text("name", place.at("id").text());
    }

    private static Sundry sundry(JsonPlace place, ItemKind kind) throws FileProblem {
        place.only(StockShape.beside("id", "name"));
        return place.make(() -> new Sundry(place.at("id").text(), name(place), kind, StockShape.read(place)));
    }

    private static Base base(JsonPlace place) throws FileProblem {
        place.only(StockShape.beside("id", "name", "density", "waxed"));
        return place.make(() -> new Base(
                place.at("id").text(),
                name(place),
                place.number("density", Base.USUAL_DENSITY),
                place.truth("waxed"),
                StockShape.read(place)));
    }

    /** @param taught the ids that at least one chip holds */
    private static Tint tint(JsonPlace place, Set<String> taught) throws FileProblem {
        place.only(StockShape.beside("id", "name", "family", "loadingLimit", "density", "dropGrams"));
        String id = place.at("id").text();
        if (!place.has("family") && !taught.contains(id)) {
            throw place.problem(
                    "the tint \"" + name(place) + "\" has neither a family nor a chip, so nothing is known of"
                            + " it; give it a \"family\" (\"unknown\" is allowed) or a chip");
        }
        return place.make(() -> new Tint(
                id,
                name(place),
                place.optional("family", named -> named.named(PigmentFamily::ofCode))
                        .orElse(PigmentFamily.UNKNOWN),
                place.number("loadingLimit", Tint.USUAL_LOADING_LIMIT),
                place.number("density", Tint.USUAL_DENSITY),
                place.number("dropGrams", Tint.USUAL_DROP_GRAMS),
                StockShape.read(place)));
    }

    private static Paste paste(JsonPlace place) throws FileProblem {
        place.only(StockShape.beside("id", "name", "density"));
        return place.make(() -> new Paste(
                place.at("id").text(),
                name(place),
                place.number("density", USUAL_PASTE_DENSITY),
                StockShape.read(place)));
    }

    private static Leftover leftover(JsonPlace place) throws FileProblem {
        place.only("id", "name", "setAside", "parts", "readings");
        return place.make(() -> new Leftover(
                place.at("id").text(),
                name(place),
                ChipShape.parts(place, "parts"),
                place.each("readings", ReadingShape::from),
                place.optionalDate("setAside")));
    }
}
