package tintwright.bench.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import tintwright.colour.Lab;
import tintwright.colour.Looks;
import tintwright.logbook.MeanColour;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.reading.Reading;
import tintwright.units.Grams;

/** What was done to a boat, a line each, as every face with a screen tells it. */
public final class BoatLog {
    private BoatLog() {}

    /**
     * An entry of the log.
     *
     * @param title   what it is, such as the name of a cup
     * @param words   what was in it or what was done
     * @param cup     true for a cup, which can be made again, labelled and judged
     * @param grams   how much was in it
     * @param verdict how a cup came out, when somebody said so
     * @param colour  what was read of it last; empty when nothing was
     */
    public record Line(
            UUID id,
            String day,
            String title,
            String words,
            boolean cup,
            double grams,
            Optional<Page.Outcome> verdict,
            Optional<Lab> colour) {}

    /** @return everything but boat and places, oldest first */
    public static List<Line> of(ShopLog log, BoatStory story) {
        List<Line> lines = new ArrayList<>();
        story.entries().forEach(entry -> line(log, entry).ifPresent(lines::add));
        return lines;
    }

    private static Optional<Line> line(ShopLog log, Noted<Page> noted) {
        Page page = noted.page();
        if (page instanceof Page.Cup cup) {
            List<String> parts = new ArrayList<>();
            cup.parts().grams().forEach((id, grams) -> parts.add(Grams.about(grams) + " " + cup.nameOf(id)));
            List<Reading> readings = cup.readings();
            Optional<Lab> last = MeanColour.of(readings.subList(Math.max(0, readings.size() - 1), readings.size()))
                    .map(MeanColour::lab);
            return Optional.of(new Line(
                    noted.id(),
                    cup.day().toString(),
                    "Cup " + named(cup.name()),
                    String.join(", ", parts)
                            + last.map(lab -> ". Its last chip: " + words(lab)).orElse(""),
                    true,
                    cup.parts().total(),
                    verdict(log, noted),
                    last));
        }
        if (page instanceof Page.Filled filled) {
            return done(
                    noted,
                    "Filled" + filled.cup().map(id -> " from " + what(log, id)).orElse(""),
                    String.join("; ", filled.steps()));
        }
        if (page instanceof Page.Verdict verdict) {
            String of = what(log, verdict.of());
            return done(
                    noted,
                    Character.toUpperCase(of.charAt(0)) + of.substring(1) + " came out "
                            + verdict.outcome().words(),
                    verdict.note());
        }
        if (page instanceof Page.LeftOver left) {
            return done(
                    noted,
                    "Left over" + left.cup().map(id -> " from " + what(log, id)).orElse(""),
                    say(
                            "%s, %s%s",
                            left.leftover().name(),
                            Grams.about(left.leftover().parts().total()),
                            left.used() ? ", used up" : ""));
        }
        if (page instanceof Page.ChipMade made) {
            Optional<Lab> read = MeanColour.of(made.chip().readings()).map(MeanColour::lab);
            return Optional.of(line(
                    noted,
                    "Chip" + made.cup().map(id -> " of " + what(log, id)).orElse(""),
                    read.map(BoatLog::words).orElse("not read") + (made.cured().isBlank() ? "" : ", " + made.cured()),
                    read));
        }
        if (page instanceof Page.Remark remark) {
            return done(noted, remark.of().map(id -> "About " + what(log, id)).orElse("Note"), remark.text());
        }
        return Optional.empty();
    }

    private static Optional<Line> done(Noted<Page> noted, String title, String words) {
        return Optional.of(line(noted, title, words, Optional.empty()));
    }

    private static Line line(Noted<Page> noted, String title, String words, Optional<Lab> colour) {
        String day = noted.at().toString().substring(0, 10);
        return new Line(noted.id(), day, title, words, false, 0, Optional.empty(), colour);
    }

    /** @return a colour in plain words, its numbers behind them: "greyish green (L* 62.7 a* -9.0 b* 2.8)" */
    private static String words(Lab lab) {
        return say("%s (L* %.1f a* %.1f b* %.1f)", Looks.of(lab), lab.lightness(), lab.a(), lab.b());
    }

    /** @return what an entry is about, such as: the cup "bow 2" */
    private static String what(ShopLog log, UUID id) {
        Optional<Page> page = log.book().find(id).map(Noted::page);
        if (page.isPresent() && page.get() instanceof Page.Cup cup) {
            return "the cup " + named(cup.name());
        }
        if (page.isPresent() && page.get() instanceof Page.ChipMade made) {
            return "a chip" + made.cup().map(cup -> " of " + what(log, cup)).orElse("");
        }
        return page.isPresent() && page.get() instanceof Page.Filled ? "the fill" : "an earlier entry";
    }

    /** @return a name as it stands in a sentence */
    public static String named(String name) {
        return "\u201c" + name + "\u201d";
    }

    /** @return how a cup came out, when somebody said so */
    public static Optional<Page.Outcome> verdict(ShopLog log, Noted<Page> cup) {
        return cup.boat().stream()
                .flatMap(boat -> log.book().of(boat, Page.Verdict.class).stream())
                .filter(judged -> judged.page().of().equals(cup.id()))
                .map(judged -> judged.page().outcome())
                .reduce((first, last) -> last);
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
