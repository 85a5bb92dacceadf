package tintwright.files;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.FilmState;
import tintwright.reading.photo.card.KnownPatch;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.PlacedCard;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.reading.photo.card.Spot;

/** What is where in a photo, on disk beside the photo. The shape is written down in docs/formats.md. */
public final class MarksFile {
    private static final String KIND = "marks";
    private static final int VERSION = 1;

    private MarksFile() {}

    /** @return where the marks of a photo are kept: beside it, under its name with {@code .marks.json} */
    public static Path beside(Path photo) {
        return photo.resolveSibling(photo.getFileName() + ".marks.json");
    }

    /** @throws FileProblem when it is missing, malformed, of a newer version, or names a card that cannot be used */
    public static Marks read(Path file) throws FileProblem {
        return at(file).read();
    }

    /**
     * Keeps the marks of a photo.
     *
     * @param before as they were last read or written here; {@link Marks#NONE} when there were none
     * @throws FileProblem when another window marked the photo otherwise meanwhile, or it cannot be written; what stood
     *     there still stands
     */
    public static void keep(Path file, Marks before, Marks now) throws FileProblem {
        at(file).keep(Optional.of(before), now, (first, theirs, mine) -> {
            throw FileProblem.unusable("another window marked this photo otherwise meanwhile, so " + file
                    + " was left as it was: open the photo again and mark it there");
        });
    }

    private static SharedFile<Marks> at(Path file) {
        return SharedFile.of(file, root -> from(root, file.toAbsolutePath().getParent()), MarksFile::text);
    }

    static String text(Marks marks) {
        Map<Boolean, List<Spot>> chips =
                marks.spots().stream().collect(Collectors.partitioningBy(spot -> spot.purpose() == Spot.Purpose.CHIP));
        return JsonText.of(JsonText.head(KIND, VERSION)
                .with("linearCodes", marks.linearCodes())
                .with("cardOnHull", marks.cardOnHull())
                .each(
                        "cards",
                        marks.cards(),
                        placed -> Fields.none()
                                .each("corners", placed.corners(), MarksFile::pair)
                                .with("card", CardFile.toTree(placed.card())))
                .each("known", marks.known(), MarksFile::fields)
                .each("spots", chips.get(false), MarksFile::fields)
                .each("chips", chips.get(true), chip -> fields(chip).with("parts", chip.parts())));
    }

    private static Fields fields(KnownPatch known) {
        Optional<Viewing> viewing = known.patch().lab().map(Lab::viewing);
        return CardFile.toTree(known.patch())
                .with("light", viewing.map(seen -> seen.light().name()))
                .with("observer", viewing.map(seen -> seen.observer().degrees()))
                .with("sigma", known.sigma())
                .with("at", pair(known.centre()))
                .with("radius", tenth(known.radius()));
    }

    private static Fields fields(Spot spot) {
        return Fields.of("name", spot.name())
                .with("at", pair(spot.centre()))
                .with("radius", tenth(spot.radius()))
                .with("film", spot.film());
    }

    private static double[] pair(PixelPoint point) {
        return new double[] {tenth(point.x()), tenth(point.y())};
    }

    /** A tenth of a pixel is finer than any hand. */
    private static double tenth(double pixels) {
        return Math.rint(pixels * 10) / 10;
    }

    static Marks from(JsonPlace root, Path folder) throws FileProblem {
        root.head(KIND, VERSION, "linearCodes", "cardOnHull", "cards", "known", "spots", "chips");
        List<PlacedCard> cards = root.each("cards", one -> placed(one, folder));
        List<KnownPatch> known = root.each("known", one -> {
            one.only("name", "lab", "spectrum", "light", "observer", "sigma", "at", "radius");
            return one.make(() -> new KnownPatch(
                    CardFile.patch(one, CardFile.viewing(one)),
                    point(one.at("at")),
                    one.at("radius").number(),
                    one.number("sigma", ReferenceCard.USUAL_SIGMA)));
        });
        List<Spot> spots = new ArrayList<>(root.each("spots", one -> {
            one.only("name", "at", "radius", "film");
            return spot(one, Spot.Purpose.HULL, Map.of());
        }));
        spots.addAll(root.each("chips", one -> {
            one.only("name", "at", "radius", "film", "parts");
            one.at("parts");
            return spot(one, Spot.Purpose.CHIP, one.eachNamed("parts", ChipShape::mass));
        }));
        return root.make(() -> new Marks(cards, known, spots, root.truth("linearCodes"), root.truth("cardOnHull")));
    }

    private static Spot spot(JsonPlace one, Spot.Purpose purpose, Map<String, Double> parts) throws FileProblem {
        return one.make(() -> new Spot(
                one.at("name").text(),
                purpose,
                point(one.at("at")),
                one.at("radius").number(),
                film(one),
                parts));
    }

    /** @return cured when it is not said */
    static FilmState film(JsonPlace one) throws FileProblem {
        return one.has("film") ? ReadingShape.choice(one.at("film"), FilmState.values()) : FilmState.CURED;
    }

    private static PlacedCard placed(JsonPlace one, Path folder) throws FileProblem {
        one.only("card", "corners", "centres");
        if (one.has("corners") == one.has("centres")) {
            throw one.problem("a card is placed either by \"corners\", the four outer corners of its patches, or by "
                    + "\"centres\", the centres of its four corner patches; give one of them");
        }
        JsonPlace named = one.at("card");
        ReferenceCard card = named.isText() ? fromFile(named, folder) : inside(named);
        String which = one.has("corners") ? "corners" : "centres";
        List<PixelPoint> points = one.each(which, MarksFile::point);
        return one.at(which)
                .make(() ->
                        which.equals("corners") ? new PlacedCard(card, points) : PlacedCard.byCentres(card, points));
    }

    private static ReferenceCard inside(JsonPlace card) throws FileProblem {
        card.only("name", "rows", "columns", "patchShare", "sigma", "light", "observer", "patches");
        return CardFile.cardOf(card);
    }

    private static ReferenceCard fromFile(JsonPlace named, Path folder) throws FileProblem {
        String name = named.text();
        if (CardFile.SHIPPED.contains(name)) {
            return CardFile.shipped(name);
        }
        if (!name.endsWith(".json")) {
            throw named.problem("no card \"" + name + "\" travels with the program; name one of "
                    + String.join(", ", CardFile.SHIPPED) + ", or a card file such as \"my-card.json\"");
        }
        try {
            return CardFile.read(Optional.ofNullable(folder).orElse(Path.of("")).resolve(name));
        } catch (InvalidPathException e) {
            throw named.problem("\"" + name + "\" is not the name of a file; correct it there");
        }
    }

    private static PixelPoint point(JsonPlace place) throws FileProblem {
        double[] xy = place.numbers(2, "two numbers [x, y] in pixels from the top left");
        return place.make(() -> new PixelPoint(xy[0], xy[1]));
    }
}
