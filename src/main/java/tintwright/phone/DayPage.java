package tintwright.phone;

import static tintwright.phone.Html.safe;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tintwright.bench.top.BenchTop;
import tintwright.bench.top.BenchTop.Act;
import tintwright.bench.top.BenchTop.Answer;
import tintwright.bench.top.BenchTop.DayNow;
import tintwright.bench.top.BenchTop.Sight;
import tintwright.bench.top.CureClock;
import tintwright.bench.top.DayTicks;
import tintwright.fill.Batch;
import tintwright.fill.Caution;
import tintwright.fill.DayWords;
import tintwright.units.Grams;

/** The day at the holes on the phone: the step that comes, the clocks that run, and all steps to tick off. */
final class DayPage {
    private static final double SCALE = 0.01;

    private DayPage() {}

    static Reply show(Sight sight, Optional<Answer> came, Instant now) {
        StringBuilder main = new StringBuilder(Html.said(came));
        if (sight.day().isEmpty()) {
            main.append(
                            "<section class=\"sheet\"><p>Nothing is to be filled yet. Put the holes on the list at the bench;")
                    .append(" the steps stand here then.</p></section>\n");
            return Reply.page(Reply.OK, Html.page(sight.job(), Place.DAY, "", main.toString()));
        }
        DayNow day = sight.day().get();
        List<DayWords.Line> lines = DayWords.of(day.plan(), day.units());
        if (!day.hold().isEmpty()) {
            main.append("<p class=\"wrong\">").append(safe(day.hold())).append("</p>\n");
        }
        for (Map.Entry<Integer, CureClock> one : day.running().entrySet()) {
            clock(one.getKey(), one.getValue(), now, main);
        }
        Set<String> ticked = day.ticked();
        int next = 0;
        while (next < lines.size() && ticked.contains(DayTicks.name(lines.get(next)))) {
            next++;
        }
        if (next < lines.size()) {
            next(day, lines, next, main);
        } else {
            main.append("<p class=\"right\">Every step is done. Write down how it came out.</p>\n");
        }
        steps(lines, ticked, main);
        main.append("<section class=\"sheet\">\n<details>\n<summary>Cautions</summary>\n");
        day.plan()
                .cautions()
                .forEach(one -> main.append("<p>").append(safe(one.words())).append("</p>\n"));
        main.append("</details>\n</section>\n");
        return Reply.page(Reply.OK, Html.page(sight.job(), Place.DAY, "day " + next, main.toString()));
    }

    private static void clock(int batch, CureClock running, Instant now, StringBuilder main) {
        main.append("<section class=\"sheet\">\n<h2>Batch ").append(batch).append("</h2>\n");
        for (CureClock.Standing one : running.at(now)) {
            boolean waits = one.phase() == CureClock.Phase.WAIT;
            Duration left = Duration.between(now, running.opens(one.timer()));
            main.append("<p class=\"soft\">").append(safe(one.timer().cue())).append("</p>\n<div class=\"clock");
            main.append(waits ? "\" data-left=\"" + left.toMillis() + "\">" : " due\">")
                    .append(waits ? "in " + minutes(left) : "look now")
                    .append("</div>\n<p>")
                    .append(safe(waits ? one.timer().test() : one.words()))
                    .append("</p>\n");
            form("seen", main);
            hidden("batch", Integer.toString(batch), main);
            hidden("cue", one.timer().cue(), main);
            main.append("<button class=\"second\">Done: ")
                    .append(safe(one.timer().cue()))
                    .append("</button></form>\n");
        }
        main.append("</section>\n");
    }

    private static String minutes(Duration left) {
        long minutes = (left.toSeconds() + 59) / 60;
        return minutes < 120 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    private static void next(DayNow day, List<DayWords.Line> lines, int index, StringBuilder main) {
        DayWords.Line line = lines.get(index);
        main.append("<section class=\"sheet\">\n<p class=\"soft\">")
                .append(safe(line.when()))
                .append("</p>\n<p class=\"what small\">")
                .append(safe(line.words()))
                .append("</p>\n");
        if (!line.why().isEmpty()) {
            main.append("<p class=\"soft\">").append(safe(line.why())).append("</p>\n");
        }
        boolean catalyst = line.batch() > 0 && !day.running().containsKey(line.batch());
        if (line.batch() > 0) {
            batch(day, line.batch(), main);
        }
        main.append("</section>\n");
        if (catalyst && day.hold().isEmpty()) {
            form("catalysed", main);
            hidden("batch", Integer.toString(line.batch()), main);
            main.append("<button class=\"main\">The catalyst is in: start its times</button></form>\n");
        }
        tick(lines, index, true, catalyst ? "second" : "main", "This step is done", main);
    }

    private static void batch(DayNow day, int number, StringBuilder main) {
        Batch batch = day.plan().batches().get(number - 1);
        main.append("<ul>\n<li class=\"row\">")
                .append(safe(Grams.onScale(batch.gelCoatGrams(), SCALE)))
                .append(" coloured gel coat</li>\n");
        if (batch.pasteGrams() > 0) {
            main.append("<li class=\"row\">")
                    .append(safe(Grams.onScale(batch.pasteGrams(), SCALE)))
                    .append(" gel paste</li>\n");
        }
        main.append("<li class=\"row\">Catalyst, last of all: ")
                .append(safe(batch.catalyst().words(day.units())))
                .append("</li>\n</ul>\n<p>")
                .append(safe(Caution.PEROXIDE.words()))
                .append("</p>\n");
    }

    private static void steps(List<DayWords.Line> lines, Set<String> ticked, StringBuilder main) {
        main.append("<section class=\"sheet\">\n<h2>All steps</h2>\n<ol>\n");
        for (int i = 0; i < lines.size(); i++) {
            boolean done = ticked.contains(DayTicks.name(lines.get(i)));
            main.append("<li>");
            tick(
                    lines,
                    i,
                    !done,
                    done ? "tick done" : "tick",
                    lines.get(i).when() + ": " + lines.get(i).words(),
                    main);
            main.append("</li>\n");
        }
        main.append("</ol>\n</section>\n");
    }

    private static void tick(
            List<DayWords.Line> lines, int index, boolean done, String look, String words, StringBuilder main) {
        form("tick", main);
        hidden("step", DayTicks.name(lines.get(index)), main);
        hidden("done", Boolean.toString(done), main);
        main.append("<button class=\"")
                .append(look)
                .append(look.startsWith("tick") ? "\" aria-pressed=\"" + !done + "\">" : "\">")
                .append(safe(words))
                .append("</button></form>\n");
    }

    private static void form(String deed, StringBuilder main) {
        main.append("<form method=\"post\" action=\"day\">");
        hidden("deed", deed, main);
    }

    private static void hidden(String name, String value, StringBuilder main) {
        main.append("<input type=\"hidden\" name=\"")
                .append(name)
                .append("\" value=\"")
                .append(safe(value))
                .append("\">");
    }

    static Answer deed(BenchTop top, Form form) throws Refused, InterruptedException {
        switch (form.text("deed")) {
            case "tick" -> {
                return Answers.wait(top.act(
                        "", new Act.Ticked(form.text("step"), form.text("done").equals("true"))));
            }
            case "catalysed" -> {
                int batch = form.number("batch");
                return Answers.wait(top.act("", new Act.Catalysed(batch)));
            }
            case "seen" -> {
                return Answers.wait(top.act("", new Act.Seen(form.number("batch"), form.text("cue"))));
            }
            default -> throw new Refused(Reply.BAD_REQUEST, "That is not the form of this page. Load the page anew.");
        }
    }
}
