package tintwright.window.log;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import tintwright.bench.job.Job;
import tintwright.bench.log.BoatLog;
import tintwright.bench.log.BoatStory;
import tintwright.bench.log.MixAgain;
import tintwright.bench.log.NearIt;
import tintwright.bench.log.ShopLog;
import tintwright.colour.Lab;
import tintwright.colour.Looks;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.match.Aim;
import tintwright.shelf.Shelf;
import tintwright.units.Grams;
import tintwright.window.picture.Shade;
import tintwright.window.pieces.Figures;

/** From the pages of the log to the lines the window shows, and from a cup to a page. */
final class LogSight {
    private static final int MOST_NEAR = 5;
    /** Several entries may belong to one cup. */
    private static final int MOST_LOOKED_AT = 60;

    private LogSight() {}

    /** @return all that is in sight of the log: the story of the boat in hand, and what came near her colour */
    static LogModel.Shown of(ShopLog log, Job now) {
        Optional<Noted<Page.Boat>> inHand =
                log.book().boatsNamed(now.boat()).stream().findFirst();
        List<LogModel.PlaceLine> places = new ArrayList<>();
        List<BoatLog.Line> entries = new ArrayList<>();
        inHand.ifPresent(boat -> {
            BoatStory story = BoatStory.of(log, boat);
            story.places().forEach(place -> places.add(line(place, now)));
            entries.addAll(BoatLog.of(log, story));
        });
        String trouble = String.join(
                " ", log.book().troubles().stream().map(each -> each.sentence()).toList());
        return new LogModel.Shown(now.boat(), places, entries, near(log, now), trouble);
    }

    private static LogModel.PlaceLine line(BoatStory.PlaceStory story, Job now) {
        int unwritten = now.places().stream()
                .filter(place ->
                        place.place().equalsIgnoreCase(story.place().page().name()))
                .mapToInt(place -> place.readings().size())
                .sum();
        String read = story.latest()
                .map(seen -> capital(Looks.of(seen.lab())))
                .orElse(
                        unwritten == 0
                                ? "not read yet"
                                : say(
                                        "%d %s, not written down here yet",
                                        unwritten, unwritten == 1 ? "reading" : "readings"));
        String moved = story.moved()
                .map(way -> say("since %s: %s (%.1f off)", way.from(), way.words(), way.deltaE()))
                .orElse("");
        return new LogModel.PlaceLine(
                story.place().page().name(),
                story.seen().stream()
                        .map(seen -> new LogModel.Look(seen.day().toString(), Shade.of(seen.lab())))
                        .toList(),
                read,
                story.latest()
                        .map(seen -> say("read %s: %s", seen.day(), Figures.lab(seen.lab())))
                        .orElse(""),
                moved);
    }

    /** The nearest cups, each once however many of its chips and leftovers come near, and never the one in hand. */
    private static List<LogModel.NearLine> near(ShopLog log, Job now) {
        if (now.place() < 0) {
            return List.of();
        }
        Lab hull = Aim.of(now.places().get(now.place())).target().colour();
        Map<UUID, LogModel.NearLine> lines = new LinkedHashMap<>();
        for (NearIt.Start start : NearIt.of(log, hull, MOST_LOOKED_AT).starts()) {
            Optional<Noted<Page>> cup =
                    cupOf(start.page()).flatMap(log.book()::find).filter(noted -> noted.page() instanceof Page.Cup);
            if (cup.isPresent() && inHand(cup.get(), now)) {
                continue;
            }
            lines.putIfAbsent(cup.map(Noted::id).orElse(start.page().id()), line(log, start, cup));
            if (lines.size() == MOST_NEAR) {
                break;
            }
        }
        return List.copyOf(lines.values());
    }

    private static LogModel.NearLine line(ShopLog log, NearIt.Start start, Optional<Noted<Page>> noted) {
        Optional<Page.Cup> cup = noted.map(page -> (Page.Cup) page.page());
        String name = cup.map(page -> "Cup " + BoatLog.named(page.name()))
                .orElse(
                        start.page().page() instanceof Page.LeftOver
                                ? "Left over " + BoatLog.named(start.name())
                                : "A chip");
        Optional<Page.Outcome> verdict =
                noted.flatMap(page -> BoatLog.verdict(log, page)).or(start::verdict);
        return new LogModel.NearLine(
                name,
                start.boat().orElse(""),
                start.words().isBlank()
                        ? say("%.1f off", start.deltaE())
                        : say(
                                "%s%s (%.1f off)",
                                capital(start.words()),
                                start.words().endsWith("to see") ? "" : " than the hull",
                                start.deltaE()),
                verdict.map(outcome -> "came out " + outcome.words()).orElse(""),
                noted.map(Noted::id),
                cup.map(page -> page.parts().total()).orElse(0.0));
    }

    private static Optional<UUID> cupOf(Noted<Page> noted) {
        Page page = noted.page();
        return page instanceof Page.Cup
                ? Optional.of(noted.id())
                : page instanceof Page.ChipMade made
                        ? made.cup()
                        : page instanceof Page.LeftOver left ? left.cup() : Optional.empty();
    }

    private static boolean inHand(Noted<Page> cup, Job now) {
        return now.cup()
                .map(held -> held.name().equals(((Page.Cup) cup.page()).name()))
                .orElse(false);
    }

    /** @return what to weigh to make a cup again, and what to know about it */
    static List<String> lines(MixAgain.Answer answer, Job now) {
        List<String> lines = new ArrayList<>();
        Shelf shelf = now.shelf();
        if (answer instanceof MixAgain.SameParts same) {
            same.parts()
                    .grams()
                    .forEach((id, grams) -> lines.add(Grams.onScale(grams, now.scaleStep()) + "  " + shelf.nameOf(id)));
        } else if (answer instanceof MixAgain.Matched matched) {
            matched.bench()
                    .order(matched.match().best(), now.scaleStep())
                    .forEach(part -> lines.add(Grams.onScale(part.grams(), now.scaleStep()) + "  " + part.name()));
        }
        answer.moved()
                .ifPresent(
                        way -> lines.add(say("The hull has moved since: %s (%.1f off).", way.words(), way.deltaE())));
        lines.addAll(answer.remarks());
        return lines;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
