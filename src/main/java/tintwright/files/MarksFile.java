package tintwright.files;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.reading.FilmState;
import tintwright.reading.photo.card.CardPatch;
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
        Map<String, Object> tree = JsonText.head(KIND, VERSION);
        tree.put("linearCodes", marks.linearCodes());
        List<Object> cards = new ArrayList<>();
        for (PlacedCard placed : marks.cards()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("corners", placed.corners().stream().map(MarksFile::pair).toList());
            one.put("card", CardFile.toTree(placed.card()));
            cards.add(one);
        }
        tree.put("cards", cards);
        List<Object> known = new ArrayList<>();
        for (KnownPatch patch : marks.known()) {
            Map<String, Object> one = new LinkedHashMap<>(CardFile.toTree(patch.patch()));
            patch.patch().lab().ifPresent(lab -> {
                one.put("light", lab.viewing().light().name());
                one.put("observer", lab.viewing().observer().degrees());
            });
            one.put("sigma", patch.sigma());
            one.put("at", pair(patch.centre()));
            one.put("radius", tenth(patch.radius()));
            known.add(one);
        }
        tree.put("known", known);
        List<Object> spots = new ArrayList<>();
        List<Object> chips = new ArrayList<>();
        for (Spot spot : marks.spots()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("name", spot.name());
            one.put("at", pair(spot.centre()));
            one.put("radius", tenth(spot.radius()));
            one.put("film", spot.film() == FilmState.WET ? "wet" : "cured");
            if (spot.purpose() == Spot.Purpose.CHIP) {
                one.put("parts", spot.parts());
            }
            (spot.purpose() == Spot.Purpose.CHIP ? chips : spots).add(one);
        }
        tree.put("spots", spots);
        tree.put("chips", chips);
        return JsonText.of(tree);
    }

    private static double[] pair(PixelPoint point) {
        return new double[] {tenth(point.x()), tenth(point.y())};
    }

    /** A tenth of a pixel is finer than any hand. */
    private static double tenth(double pixels) {
        return Math.rint(pixels * 10) / 10;
    }

    static Marks from(JsonPlace root, Path folder) throws FileProblem {
        root.head(KIND, VERSION, "linearCodes", "cards", "known", "spots", "chips");
        List<PlacedCard> cards = root.each("cards", one -> placed(one, folder));
        List<KnownPatch> known = new ArrayList<>();
        for (JsonPlace one : root.list("known")) {
            one.only("name", "lab", "spectrum", "light", "observer", "sigma", "at", "radius");
            CardPatch patch = CardFile.patch(one, CardFile.viewing(one));
            PixelPoint at = point(one.at("at"));
            double radius = one.at("radius").number();
            double sigma = one.number("sigma", ReferenceCard.USUAL_SIGMA);
            known.add(one.make(() -> new KnownPatch(patch, at, radius, sigma)));
        }
        List<Spot> spots = new ArrayList<>();
        for (JsonPlace one : root.list("spots")) {
            one.only("name", "at", "radius", "film");
            spots.add(spot(one, Spot.Purpose.HULL, Map.of()));
        }
        for (JsonPlace one : root.list("chips")) {
            one.only("name", "at", "radius", "film", "parts");
            Map<String, Double> parts = new LinkedHashMap<>();
            for (Map.Entry<String, JsonPlace> part : one.at("parts").fields().entrySet()) {
                double share = part.getValue().number();
                if (!(share >= 0)) {
                    throw part.getValue().problem("must be 0 or more, was " + share);
                }
                parts.put(part.getKey(), share);
            }
            spots.add(spot(one, Spot.Purpose.CHIP, parts));
        }
        boolean linear = root.truth("linearCodes");
        return root.make(() -> new Marks(cards, known, spots, linear));
    }

    private static Spot spot(JsonPlace one, Spot.Purpose purpose, Map<String, Double> parts) throws FileProblem {
        String name = one.at("name").text();
        PixelPoint at = point(one.at("at"));
        double radius = one.at("radius").number();
        String film = one.text("film", "cured");
        if (!film.equals("cured") && !film.equals("wet")) {
            throw one.at("film").problem("must be \"wet\" or \"cured\", was \"" + film + "\"");
        }
        return one.make(
                () -> new Spot(name, purpose, at, radius, film.equals("wet") ? FilmState.WET : FilmState.CURED, parts));
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
        List<PixelPoint> points = new ArrayList<>();
        for (JsonPlace point : one.at(which).list()) {
            points.add(point(point));
        }
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
        double[] xy = place.numbers();
        if (xy.length != 2) {
            throw place.problem("must be two numbers [x, y] in pixels from the top left, were " + xy.length);
        }
        return place.make(() -> new PixelPoint(xy[0], xy[1]));
    }
}
