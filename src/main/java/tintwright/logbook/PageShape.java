package tintwright.logbook;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import tintwright.colour.Lab;
import tintwright.colour.Looks;
import tintwright.files.ChipShape;
import tintwright.files.Fields;
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

    private static Fields tree(Page page) {
        if (page instanceof Page.Boat boat) {
            return Fields.of("name", boat.name())
                    .with("type", boat.type())
                    .with("year", boat.year())
                    .with("notes", boat.notes())
                    .with("photos", boat.photos());
        } else if (page instanceof Page.Place place) {
            return Fields.of("name", place.name()).with("aged", place.aged()).with("photos", place.photos());
        } else if (page instanceof Page.Target target) {
            return Fields.of("place", target.place())
                    .with("day", target.day())
                    .and(readings(target.readings()))
                    .with("note", target.note());
        } else if (page instanceof Page.Cup cup) {
            return Fields.of("name", cup.name())
                    .with("day", cup.day())
                    .with("place", cup.place())
                    .with("parts", cup.parts().grams())
                    .each("shelf", cup.shelf(), PageShape::tree)
                    .each(
                            "weighings",
                            cup.weighings(),
                            one -> Fields.of("part", one.part())
                                    .with("grams", one.grams())
                                    .with("note", one.note()))
                    .and(readings(cup.readings()))
                    .with("note", cup.note());
        } else if (page instanceof Page.ChipMade made) {
            return Fields.none()
                    .with("cup", made.cup())
                    .with("chip", ChipShape.toTree(made.chip()))
                    .and(colour(made.chip().readings()))
                    .with("cured", made.cured());
        } else if (page instanceof Page.Filled fill) {
            return Fields.none()
                    .with("place", fill.place())
                    .with("cup", fill.cup())
                    .with("day", fill.day())
                    .with("grams", fill.grams())
                    .with("steps", fill.steps())
                    .with("note", fill.note());
        } else if (page instanceof Page.LeftOver left) {
            return Fields.none()
                    .with("cup", left.cup())
                    .with("id", left.leftover().id())
                    .with("name", left.leftover().name())
                    .with("setAside", left.leftover().setAside())
                    .with("parts", left.leftover().parts().grams())
                    .each("shelf", left.shelf(), PageShape::tree)
                    .and(readings(left.leftover().readings()))
                    .with("used", left.used());
        } else if (page instanceof Page.Verdict verdict) {
            return Fields.of("of", verdict.of())
                    .with("outcome", verdict.outcome().words())
                    .with("day", verdict.day())
                    .with("note", verdict.note());
        } else if (page instanceof Page.Remark remark) {
            return Fields.none().with("of", remark.of()).with("text", remark.text());
        }
        return Fields.none();
    }

    private static Fields tree(Page.Ingredient one) {
        return Fields.of("id", one.id())
                .with("name", one.name())
                .with("role", one.role())
                .with("family", one.family());
    }

    private static Fields readings(List<Reading> readings) {
        return Fields.none().each("readings", readings, ReadingShape::toTree).and(colour(readings));
    }

    /** The readings in one colour and in plain words: for the eye, the search and the nearest; never read back. */
    private static Fields colour(List<Reading> readings) {
        Fields said = Fields.none();
        MeanColour.of(readings).ifPresent(mean -> {
            Lab lab = mean.lab();
            said.with(
                            "colour",
                            Fields.none()
                                    .colour(new Lab(
                                            round(lab.lightness()), round(lab.a()), round(lab.b()), lab.viewing()))
                                    .with("film", mean.film()))
                    .with("looks", Looks.of(lab));
        });
        return said;
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
                                body.each("photos", JsonPlace::text));
                    case "place" ->
                        new Page.Place(
                                body.at("name").text(), body.text("aged", ""), body.each("photos", JsonPlace::text));
                    case "target" ->
                        new Page.Target(
                                id(body.at("place")),
                                body.at("day").date(),
                                body.each("readings", ReadingShape::from),
                                body.text("note", ""));
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
                                body.each("steps", JsonPlace::text),
                                body.text("note", ""));
                    case "leftover" ->
                        new Page.LeftOver(
                                optionalId(body, "cup"),
                                new Leftover(
                                        body.at("id").text(),
                                        body.at("name").text(),
                                        ChipShape.parts(body, "parts"),
                                        body.each("readings", ReadingShape::from),
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
                ChipShape.parts(body, "parts"),
                shelf(body),
                weighings,
                body.each("readings", ReadingShape::from),
                body.text("note", ""));
    }

    private static List<Page.Ingredient> shelf(JsonPlace body) throws FileProblem {
        return body.each(
                "shelf",
                one -> new Page.Ingredient(
                        one.at("id").text(), one.at("name").text(), one.text("role", ""), one.text("family", "")));
    }

    private static UUID id(JsonPlace place) throws FileProblem {
        return UUID.fromString(place.text());
    }

    private static Optional<UUID> optionalId(JsonPlace body, String field) throws FileProblem {
        return body.optional(field, PageShape::id);
    }
}
