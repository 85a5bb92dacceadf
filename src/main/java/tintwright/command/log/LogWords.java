package tintwright.command.log;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import tintwright.bench.log.BoatStory;
import tintwright.bench.log.GiveOut;
import tintwright.colour.Lab;
import tintwright.colour.Looks;
import tintwright.command.pieces.Figures;
import tintwright.files.Fields;
import tintwright.logbook.MeanColour;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;

/** The pages of the log in words, one line each. */
public final class LogWords {
    /** So many steps of lightness make one block of the little picture. */
    private static final double LIGHTNESS_A_BLOCK = 4;

    private LogWords() {}

    /** @return day, colour and a bar as long as the hull was light */
    static String seen(BoatStory.Seen seen) {
        int blocks = (int) Math.round(Math.max(0, Math.min(100, seen.lab().lightness())) / LIGHTNESS_A_BLOCK);
        return seen.day() + "  " + show(seen.lab()) + "  |" + "#".repeat(blocks)
                + " ".repeat((int) (100 / LIGHTNESS_A_BLOCK) - blocks) + "|  " + Looks.of(seen.lab());
    }

    static String moved(BoatStory.Moved moved) {
        return "From " + moved.from() + " to " + moved.to() + " it has moved by " + Figures.fixed(moved.deltaE(), 1)
                + ": " + moved.words() + " (L* " + signed(moved.lighter()) + ", b* " + signed(moved.yellower()) + ").";
    }

    private static String signed(double value) {
        String text = Figures.fixed(value, 1);
        return text.startsWith("-") ? text : "+" + text;
    }

    static String show(Lab lab) {
        return "L* " + Figures.fixed(lab.lightness(), 1) + "  a* " + Figures.fixed(lab.a(), 1) + "  b* "
                + Figures.fixed(lab.b(), 1) + " (" + lab.viewing() + ")";
    }

    /** @return everything but boat and places, oldest first, a line each with the end of its name in front */
    static List<String> entries(BoatStory story) {
        Map<UUID, Page> pages = pages(story);
        return story.entries().stream()
                .filter(noted -> !(noted.page() instanceof Page.Place))
                .map(noted -> GiveOut.shortName(noted.id()) + "  " + line(noted, pages))
                .toList();
    }

    private static Map<UUID, Page> pages(BoatStory story) {
        Map<UUID, Page> pages = new HashMap<>();
        story.entries().forEach(noted -> pages.put(noted.id(), noted.page()));
        return pages;
    }

    private static String line(Noted<Page> noted, Map<UUID, Page> pages) {
        Page page = noted.page();
        if (page instanceof Page.Target target) {
            return target.day() + "  read  " + place(target.place(), pages) + colour(target.readings())
                    + note(target.note());
        }
        if (page instanceof Page.Cup cup) {
            return cup.day() + "  cup  \"" + cup.name() + "\""
                    + cup.place().map(id -> ", " + place(id, pages)).orElse("") + ": " + parts(cup.parts(), cup.shelf())
                    + colour(cup.readings()) + note(cup.note());
        }
        if (page instanceof Page.ChipMade made) {
            return made.chip().madeOn().map(day -> day + "  ").orElse("") + "chip  \""
                    + made.chip().id() + "\"" + colour(made.chip().readings()) + note(made.cured());
        }
        if (page instanceof Page.Filled fill) {
            return fill.day() + "  filled  "
                    + fill.place().map(id -> place(id, pages)).orElse("")
                    + (fill.grams().isPresent()
                            ? ", " + Figures.fixed(fill.grams().getAsDouble(), 1) + " g"
                            : "")
                    + ": " + String.join("; ", fill.steps()) + note(fill.note());
        }
        if (page instanceof Page.LeftOver left) {
            return left.leftover().setAside().map(day -> day + "  ").orElse("") + "left over  \""
                    + left.leftover().name() + "\", "
                    + Figures.fixed(left.leftover().parts().total(), 1) + " g"
                    + (left.used() ? ", used up" : "") + colour(left.leftover().readings());
        }
        if (page instanceof Page.Verdict verdict) {
            String of = pages.get(verdict.of()) instanceof Page.Cup cup ? "\"" + cup.name() + "\": " : "";
            return verdict.day() + "  verdict  " + of + verdict.outcome().words() + note(verdict.note());
        }
        if (page instanceof Page.Remark remark) {
            return noted.at().toString().substring(0, 10) + "  note  " + remark.text();
        }
        return noted.at().toString().substring(0, 10) + "  "
                + (page instanceof Page.Unknown unknown
                        ? unknown.kind() + " (of a newer version)  " + unknown.body()
                        : "");
    }

    private static String place(UUID id, Map<UUID, Page> pages) {
        return pages.get(id) instanceof Page.Place place ? place.name() : "a place";
    }

    private static String note(String note) {
        return note.isBlank() ? "" : "; " + note;
    }

    private static String colour(List<Reading> readings) {
        return MeanColour.of(readings)
                .map(mean -> "  " + show(mean.lab()) + (mean.film() == FilmState.WET ? " wet" : ""))
                .orElse("");
    }

    static String parts(Parts parts, List<Page.Ingredient> shelf) {
        Map<String, String> names = new HashMap<>();
        shelf.forEach(one -> names.put(one.id(), one.name()));
        return parts.grams().entrySet().stream()
                .map(part ->
                        Figures.fixed(part.getValue(), 2) + " g " + names.getOrDefault(part.getKey(), part.getKey()))
                .collect(Collectors.joining(", "));
    }

    static Fields fields(BoatStory.PlaceStory place) {
        return Fields.of("id", place.place().id())
                .with("name", place.place().page().name())
                .with("aged", place.place().page().aged())
                .each("seen", place.seen(), one -> Fields.of("day", one.day()).colour(one.lab()))
                .orNull("moved", place.moved().map(LogWords::fields));
    }

    static Fields fields(BoatStory.Moved moved) {
        return Fields.of("from", moved.from())
                .with("to", moved.to())
                .with("deltaE", moved.deltaE())
                .with("lighter", moved.lighter())
                .with("yellower", moved.yellower())
                .with("words", moved.words());
    }

    static List<Fields> entryFields(BoatStory story) {
        Map<UUID, Page> pages = pages(story);
        return story.entries().stream()
                .filter(noted -> !(noted.page() instanceof Page.Place))
                .map(noted ->
                        Fields.of("id", noted.id()).with("written", noted.at()).with("words", line(noted, pages)))
                .toList();
    }
}
