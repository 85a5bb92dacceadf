package tintwright.logbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import tintwright.colour.Lab;
import tintwright.colour.Looks;
import tintwright.files.ChipShape;
import tintwright.files.FileProblem;
import tintwright.files.JsonPlace;
import tintwright.files.JsonText;
import tintwright.files.ReadingShape;
import tintwright.logbook.disk.Entry;
import tintwright.reading.Reading;
import tintwright.shelf.Leftover;

/**
 * The pages of the log in JSON: version 1 of {@code docs/formats.md}. Fields nobody knows are passed over in
 * reading and stay on disk, for entries are never written again.
 */
final class PageShape {
    private PageShape() {}

    static String kind(Page page) {
        if (page instanceof Page.Boat) {
            return "boat";
        }
        if (page instanceof Page.Place) {
            return "place";
        }
        if (page instanceof Page.Target) {
            return "target";
        }
        if (page instanceof Page.Cup) {
            return "cup";
        }
        if (page instanceof Page.ChipMade) {
            return "chip";
        }
        if (page instanceof Page.Filled) {
            return "fill";
        }
        if (page instanceof Page.LeftOver) {
            return "leftover";
        }
        if (page instanceof Page.Verdict) {
            return "verdict";
        }
        return page instanceof Page.Unknown unknown ? unknown.kind() : "note";
    }

    /** @return the body, on one line */
    static String body(Page page) {
        if (page instanceof Page.Unknown unknown) {
            return unknown.body();
        }
        // Line breaks inside texts are written as \n, so every real one is only there to please the eye.
        return JsonText.of(tree(page)).replaceAll("\n *", "");
    }

    private static Map<String, Object> tree(Page page) {
        Map<String, Object> tree = new LinkedHashMap<>();
        if (page instanceof Page.Boat boat) {
            tree.put("name", boat.name());
            tree.put("type", boat.type());
            boat.year().ifPresent(year -> tree.put("year", year));
            tree.put("notes", boat.notes());
            tree.put("photos", boat.photos());
        } else if (page instanceof Page.Place place) {
            tree.put("name", place.name());
            tree.put("aged", place.aged());
            tree.put("photos", place.photos());
        } else if (page instanceof Page.Target target) {
            tree.put("place", target.place().toString());
            tree.put("day", target.day().toString());
            putReadings(tree, target.readings());
            tree.put("note", target.note());
        } else if (page instanceof Page.Cup cup) {
            cupTree(cup, tree);
        } else if (page instanceof Page.Verdict verdict) {
            tree.put("of", verdict.of().toString());
            tree.put("outcome", verdict.outcome().words());
            tree.put("day", verdict.day().toString());
            tree.put("note", verdict.note());
        } else if (page instanceof Page.Remark remark) {
            remark.of().ifPresent(id -> tree.put("of", id.toString()));
            tree.put("text", remark.text());
        } else {
            otherTree(page, tree);
        }
        return tree;
    }

    private static void cupTree(Page.Cup cup, Map<String, Object> tree) {
        tree.put("name", cup.name());
        tree.put("day", cup.day().toString());
        cup.place().ifPresent(id -> tree.put("place", id.toString()));
        tree.put("parts", cup.parts().grams());
        tree.put("shelf", shelfTree(cup.shelf()));
        List<Object> weighings = new ArrayList<>();
        for (Page.Weighing weighing : cup.weighings()) {
            weighings.add(fields("part", weighing.part(), "grams", weighing.grams(), "note", weighing.note()));
        }
        tree.put("weighings", weighings);
        putReadings(tree, cup.readings());
        tree.put("note", cup.note());
    }

    private static void otherTree(Page page, Map<String, Object> tree) {
        if (page instanceof Page.ChipMade made) {
            made.cup().ifPresent(id -> tree.put("cup", id.toString()));
            tree.put("chip", ChipShape.toTree(made.chip()));
            putColour(tree, made.chip().readings());
            tree.put("cured", made.cured());
        } else if (page instanceof Page.Filled fill) {
            fill.place().ifPresent(id -> tree.put("place", id.toString()));
            fill.cup().ifPresent(id -> tree.put("cup", id.toString()));
            tree.put("day", fill.day().toString());
            fill.grams().ifPresent(grams -> tree.put("grams", grams));
            tree.put("steps", fill.steps());
            tree.put("note", fill.note());
        } else if (page instanceof Page.LeftOver left) {
            left.cup().ifPresent(id -> tree.put("cup", id.toString()));
            tree.put("id", left.leftover().id());
            tree.put("name", left.leftover().name());
            left.leftover().setAside().ifPresent(day -> tree.put("setAside", day.toString()));
            tree.put("parts", left.leftover().parts().grams());
            tree.put("shelf", shelfTree(left.shelf()));
            putReadings(tree, left.leftover().readings());
            tree.put("used", left.used());
        }
    }

    private static List<Object> shelfTree(List<Page.Ingredient> shelf) {
        List<Object> tree = new ArrayList<>();
        for (Page.Ingredient one : shelf) {
            tree.add(fields("id", one.id(), "name", one.name(), "role", one.role(), "family", one.family()));
        }
        return tree;
    }

    private static Map<String, Object> fields(Object... namesAndValues) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            fields.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return fields;
    }

    private static void putReadings(Map<String, Object> tree, List<Reading> readings) {
        List<Object> shapes = new ArrayList<>();
        readings.forEach(reading -> shapes.add(ReadingShape.toTree(reading)));
        tree.put("readings", shapes);
        putColour(tree, readings);
    }

    /** The readings in one colour and in plain words: for the eye, the search and the nearest; never read back. */
    private static void putColour(Map<String, Object> tree, List<Reading> readings) {
        MeanColour.of(readings).ifPresent(mean -> {
            Lab lab = mean.lab();
            tree.put(
                    "colour",
                    fields(
                            "lab",
                            new double[] {round(lab.lightness()), round(lab.a()), round(lab.b())},
                            "light",
                            lab.viewing().light().name(),
                            "observer",
                            lab.viewing().observer().degrees(),
                            "film",
                            mean.film().name().toLowerCase(Locale.ROOT)));
            tree.put("looks", Looks.of(lab));
        });
    }

    private static double round(double value) {
        return Math.rint(value * 100) / 100;
    }

    /** @return what the entry says; {@link Page.Unknown} if this version cannot tell */
    static Page read(Entry entry) {
        try {
            return read(entry.kind(), JsonPlace.parse(entry.toString(), entry.body()))
                    .orElseGet(() -> new Page.Unknown(entry.kind(), entry.body()));
        } catch (FileProblem | IllegalArgumentException anotherShapeThanOurs) {
            return new Page.Unknown(entry.kind(), entry.body());
        }
    }

    private static Optional<Page> read(String kind, JsonPlace body) throws FileProblem {
        return Optional.ofNullable(
                switch (kind) {
                    case "boat" ->
                        new Page.Boat(
                                body.at("name").text(),
                                body.text("type", ""),
                                body.optional("year", JsonPlace::whole),
                                body.text("notes", ""),
                                texts(body, "photos"));
                    case "place" ->
                        new Page.Place(body.at("name").text(), body.text("aged", ""), texts(body, "photos"));
                    case "target" ->
                        new Page.Target(
                                id(body.at("place")), body.at("day").date(), readings(body), body.text("note", ""));
                    case "cup" -> cup(body);
                    case "chip" ->
                        new Page.ChipMade(
                                optionalId(body, "cup"), ChipShape.from(body.at("chip")), body.text("cured", ""));
                    case "fill" ->
                        new Page.Filled(
                                optionalId(body, "place"),
                                optionalId(body, "cup"),
                                body.at("day").date(),
                                body.optionalNumber("grams"),
                                texts(body, "steps"),
                                body.text("note", ""));
                    case "leftover" ->
                        new Page.LeftOver(
                                optionalId(body, "cup"),
                                new Leftover(
                                        body.at("id").text(),
                                        body.at("name").text(),
                                        ChipShape.parts(body.at("parts")),
                                        readings(body),
                                        body.optionalDate("setAside")),
                                shelf(body),
                                body.truth("used"));
                    case "verdict" ->
                        new Page.Verdict(
                                id(body.at("of")),
                                Page.Outcome.of(body.at("outcome").text()),
                                body.at("day").date(),
                                body.text("note", ""));
                    case "note" ->
                        new Page.Remark(optionalId(body, "of"), body.at("text").text());
                    default -> null;
                });
    }

    private static Page cup(JsonPlace body) throws FileProblem {
        List<Page.Weighing> weighings = body.each(
                "weighings",
                one -> new Page.Weighing(one.at("part").text(), one.at("grams").number(), one.text("note", "")));
        return new Page.Cup(
                body.at("name").text(),
                body.at("day").date(),
                optionalId(body, "place"),
                ChipShape.parts(body.at("parts")),
                shelf(body),
                weighings,
                readings(body),
                body.text("note", ""));
    }

    private static List<Page.Ingredient> shelf(JsonPlace body) throws FileProblem {
        List<Page.Ingredient> shelf = body.each(
                "shelf",
                one -> new Page.Ingredient(
                        one.at("id").text(), one.at("name").text(), one.text("role", ""), one.text("family", "")));
        return shelf;
    }

    private static List<Reading> readings(JsonPlace body) throws FileProblem {
        List<Reading> readings = body.each("readings", ReadingShape::from);
        return readings;
    }

    private static List<String> texts(JsonPlace body, String field) throws FileProblem {
        List<String> texts = body.each(field, JsonPlace::text);
        return texts;
    }

    private static UUID id(JsonPlace place) throws FileProblem {
        return UUID.fromString(place.text());
    }

    private static Optional<UUID> optionalId(JsonPlace body, String field) throws FileProblem {
        return body.optional(field, PageShape::id);
    }
}
