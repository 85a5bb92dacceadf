package tintwright.phone;

import static tintwright.phone.Html.safe;

import com.sun.net.httpserver.HttpExchange;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import tintwright.bench.log.BoatLog;
import tintwright.bench.log.BoatStory;
import tintwright.bench.log.GiveOut;
import tintwright.bench.log.ShopLog;
import tintwright.bench.top.BenchTop;
import tintwright.bench.top.BenchTop.Answer;
import tintwright.bench.top.BenchTop.Sight;
import tintwright.colour.Looks;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.paper.HtmlSheet;

/** What the log tells of the boat in hand, and the recipe of one of its cups. */
final class LogPage {
    private LogPage() {}

    static Reply show(BenchTop top, Optional<Answer> came) {
        Sight sight = top.sight();
        StringBuilder main = new StringBuilder(Html.said(came));
        main.append("<a class=\"second\" href=\"photo\">Photograph a cup's label to see its recipe</a>\n");
        Optional<BoatStory> story = top.log()
                .flatMap(log ->
                        log.book().boatsNamed(sight.boat()).stream().findFirst().map(boat -> BoatStory.of(log, boat)));
        if (story.isPresent()) {
            story.get().places().forEach(place -> place(place, main));
            List<BoatLog.Line> lines = BoatLog.of(top.log().orElseThrow(), story.get());
            for (int i = lines.size() - 1; i >= 0; i--) {
                line(lines.get(i), main);
            }
        } else {
            main.append("<section class=\"sheet\"><p>Nothing is written down of this boat yet.</p></section>\n");
        }
        String title = sight.boat().isEmpty() ? "Log" : sight.boat();
        return Reply.page(Reply.OK, Html.page(title, Place.LOG, "log", main.toString()));
    }

    private static void place(BoatStory.PlaceStory place, StringBuilder main) {
        String words = place.latest()
                .map(seen -> Looks.of(seen.lab()) + ", read " + seen.day())
                .orElse("not read yet");
        main.append("<section class=\"sheet\">\n<h2>")
                .append(safe(place.place().page().name()))
                .append("</h2>\n<p>")
                .append(safe(words))
                .append("</p>\n");
        place.moved()
                .ifPresent(moved -> main.append("<p class=\"soft\">")
                        .append(safe("since " + moved.from() + ": " + moved.words()))
                        .append("</p>\n"));
        main.append("</section>\n");
    }

    private static void line(BoatLog.Line line, StringBuilder main) {
        main.append("<section class=\"sheet\">\n<p class=\"soft\">")
                .append(safe(line.day()))
                .append("</p>\n<h2>")
                .append(safe(line.title()))
                .append("</h2>\n<p>")
                .append(safe(line.words()))
                .append("</p>\n");
        line.verdict()
                .ifPresent(outcome -> main.append("<p class=\"soft\">It came out ")
                        .append(safe(outcome.words()))
                        .append(".</p>\n"));
        if (line.cup()) {
            main.append("<a class=\"second\" href=\"").append(recipe(line.id())).append("\">Its recipe</a>\n");
        }
        main.append("</section>\n");
    }

    /** @return the page with the recipe of this cup */
    static String recipe(UUID cup) {
        return Place.RECIPE.path() + "?cup=" + cup;
    }

    static Reply recipe(BenchTop top, HttpExchange exchange) throws Refused {
        UUID cup = asked(exchange);
        String main = "<section class=\"sheet recipe\">\n"
                + HtmlSheet.inside(giving(top).cardSheet(cup(top, cup)))
                + "</section>\n<a class=\"second\" href=\"label?cup="
                + cup
                + "\" download>Label to print</a>\n<a class=\"quiet\" href=\"log\">Back to the log</a>\n";
        return Reply.page(Reply.OK, Html.page("Recipe", Place.RECIPE, cup.toString(), main));
    }

    /** The label as a file: kept by the phone or sent to its printer. */
    static Reply label(BenchTop top, HttpExchange exchange) throws Refused {
        byte[] pdf = giving(top).labelPdf(cup(top, asked(exchange)));
        return new Reply(
                Reply.OK,
                "application/pdf",
                pdf,
                Map.of("Content-Disposition", "attachment; filename=\"cup-label.pdf\""));
    }

    private static UUID asked(HttpExchange exchange) throws Refused {
        String asked = Form.ofQuery(exchange).text("cup");
        if (!asked.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")) {
            throw none();
        }
        return UUID.fromString(asked);
    }

    private static GiveOut giving(BenchTop top) throws Refused {
        return top.log().map(GiveOut::new).orElseThrow(LogPage::none);
    }

    private static Noted<Page.Cup> cup(BenchTop top, UUID cup) throws Refused {
        return top.log().flatMap((ShopLog log) -> log.cup(cup)).orElseThrow(LogPage::none);
    }

    private static Refused none() {
        return new Refused(Reply.NOT_FOUND, "The log of this bench has no such cup.");
    }
}
