package tintwright.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tintwright.bench.Aim;
import tintwright.bench.BoatStory;
import tintwright.bench.MixAgain;
import tintwright.bench.NearIt;
import tintwright.bench.ShopLog;
import tintwright.colour.Lab;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.shelf.Shelf;
import tintwright.window.picture.Shade;

/** From the pages of the log to the lines the window shows, and from a cup to a page. */
final class LogSight {
    private static final int MOST_BOATS = 40;
    private static final int MOST_NEAR = 5;

    private LogSight() {
    }

    /** @return all that is in sight of the log: boats that hold these words, and the story of the one in hand */
    static LogModel.Shown of(ShopLog log, String words, Job now) {
        List<LogModel.BoatLine> boats = new ArrayList<>();
        List<Noted<Page.Boat>> found = words.isBlank() ? log.book().boats() : log.book().search(words, MOST_BOATS);
        Optional<Noted<Page.Boat>> inHand = log.book().boatsNamed(now.boat()).stream().findFirst();
        for (Noted<Page.Boat> boat : found.subList(0, Math.min(MOST_BOATS, found.size()))) {
            boats.add(new LogModel.BoatLine(boat.id(), boat.page().name(), about(boat.page()),
                    inHand.isPresent() && inHand.get().id().equals(boat.id())));
        }
        List<LogModel.PlaceLine> places = new ArrayList<>();
        List<LogModel.EntryLine> entries = new ArrayList<>();
        inHand.ifPresent(boat -> {
            BoatStory story = BoatStory.of(log, boat);
            story.places().forEach(place -> places.add(line(place)));
            story.entries().forEach(entry -> line(log, entry).ifPresent(entries::add));
        });
        String trouble = String.join(" ", log.book().troubles().stream().map(each -> each.sentence()).toList());
        return new LogModel.Shown(boats, now.boat(), places, entries, near(log, now), trouble);
    }

    private static String about(Page.Boat boat) {
        List<String> words = new ArrayList<>();
        if (!boat.type().isBlank()) {
            words.add(boat.type());
        }
        boat.year().ifPresent(year -> words.add(Integer.toString(year)));
        return String.join(", ", words);
    }

    private static LogModel.PlaceLine line(BoatStory.PlaceStory story) {
        String read = story.latest().map(seen -> say("read %s: L* %.1f a* %.1f b* %.1f", seen.day(),
                seen.lab().lightness(), seen.lab().a(), seen.lab().b())).orElse("not read yet");
        String moved = story.moved().map(way -> say("; since %s %s (%.1f)", way.from(), way.words(), way.deltaE()))
                .orElse("");
        return new LogModel.PlaceLine(story.place().page().name(), story.seen().stream()
                .map(seen -> new LogModel.Look(seen.day().toString(), Shade.of(seen.lab()))).toList(),
                read + moved);
    }

    private static Optional<LogModel.EntryLine> line(ShopLog log, Noted<Page> noted) {
        Page page = noted.page();
        String day = noted.at().toString().substring(0, 10);
        if (page instanceof Page.Cup cup) {
            List<String> parts = new ArrayList<>();
            cup.parts().grams().forEach((id, grams) -> parts.add(Drawn.grams(grams) + " " + cup.nameOf(id)));
            return Optional.of(new LogModel.EntryLine(noted.id(), cup.day().toString(), say("Cup \u201c%s\u201d: %s", cup.name(),
                    String.join(", ", parts)), true, cup.parts().total()));
        }
        String words = page instanceof Page.Filled filled ? "Filled. " + String.join("; ", filled.steps())
                : page instanceof Page.Verdict verdict ? "Looked at: " + verdict.outcome().words()
                        + (verdict.note().isBlank() ? "" : ", " + verdict.note())
                : page instanceof Page.LeftOver left ? say("Left over: %s, %s%s", left.leftover().name(),
                        Drawn.grams(left.leftover().parts().total()), left.used() ? ", used up" : "")
                : page instanceof Page.Remark remark ? remark.text()
                : page instanceof Page.ChipMade chip ? "Chip " + chip.chip().id() : "";
        return words.isEmpty() ? Optional.empty() : Optional.of(new LogModel.EntryLine(noted.id(), day, words, false, 0));
    }

    private static List<LogModel.NearLine> near(ShopLog log, Job now) {
        if (now.place() < 0) {
            return List.of();
        }
        Lab hull = Aim.of(now.places().get(now.place())).target().colour();
        List<LogModel.NearLine> lines = new ArrayList<>();
        for (NearIt.Start start : NearIt.of(log, hull, MOST_NEAR).starts()) {
            lines.add(new LogModel.NearLine(say("%s%s: %.1f apart%s%s", start.name(),
                    start.boat().map(boat -> " (" + boat + ")").orElse(""), start.deltaE(),
                    start.words().isBlank() ? "" : ", " + start.words(),
                    start.verdict().map(verdict -> "; came out " + verdict.words()).orElse(""))));
        }
        return lines;
    }

    /** @return what to weigh to make a cup again, and what to know about it */
    static List<String> lines(MixAgain.Answer answer, Job now) {
        List<String> lines = new ArrayList<>();
        Shelf shelf = now.shelf();
        if (answer instanceof MixAgain.SameParts same) {
            same.parts().grams().forEach((id, grams) ->
                    lines.add(PlanModel.scale(grams, now.scaleStep()) + "  " + shelf.nameOf(id)));
        } else if (answer instanceof MixAgain.Matched matched) {
            matched.bench().order(matched.match().best(), now.scaleStep()).forEach(part ->
                    lines.add(PlanModel.scale(part.grams(), now.scaleStep()) + "  " + part.name()));
        }
        answer.moved().ifPresent(way -> lines.add(say("The hull has moved since: %s (%.1f).", way.words(),
                way.deltaE())));
        lines.addAll(answer.remarks());
        return lines;
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
