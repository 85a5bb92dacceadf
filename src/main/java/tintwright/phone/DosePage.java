package tintwright.phone;

import static tintwright.phone.Html.safe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.bench.top.BenchTop;
import tintwright.bench.top.BenchTop.Act;
import tintwright.bench.top.BenchTop.Answer;
import tintwright.bench.top.BenchTop.CupNow;
import tintwright.bench.top.BenchTop.Sight;
import tintwright.cup.CupDeeds;
import tintwright.cup.CupDeeds.Todo;
import tintwright.cup.WayWords;

/** The cup on the phone: what goes in now, as large as the screen lets it. */
final class DosePage {
    /** More letters than this do not fit beside each other at the largest size on 360 px. */
    private static final int LONG_FIGURE = 5;

    private static final String LOOK = "<a class=\"second\" href=\"eye\">Say what you see of a dab</a>\n";
    private static final String TOO_DARK = "<a class=\"quiet\" href=\"dark\">It went too dark</a>\n";
    private static final String LOOK_EITHER_WAY = "<a class=\"main\" href=\"photo\">Take the photo</a>\n" + LOOK;

    private DosePage() {}

    static Reply show(Sight sight, Optional<Answer> came) {
        StringBuilder main = new StringBuilder(Html.said(came));
        if (sight.cup().isEmpty()) {
            main.append("<section class=\"sheet\"><p>No cup is begun. Its first dose stands here then.</p></section>\n")
                    .append(
                            "<form method=\"post\" action=\"dose\"><input type=\"hidden\" name=\"begin\" value=\"true\">")
                    .append("<button class=\"main\">Begin a cup</button></form>\n");
            return Reply.page(Reply.OK, Html.page(sight.job(), Place.DOSE, sight.job(), main.toString()));
        }
        CupNow cup = sight.cup().get();
        if (!cup.wrong().isEmpty()) {
            main.append("<p class=\"wrong\">").append(safe(cup.wrong())).append("</p>\n");
        }
        now(cup, main);
        CupDeeds deeds = cup.deeds();
        main.append("<section class=\"sheet\">\n<h2>")
                .append(safe(deeds.verdict()))
                .append("</h2>\n");
        if (!deeds.close().isEmpty()) {
            main.append("<p class=\"soft\">")
                    .append(safe(deeds.close() + " from the hull, " + deeds.sure() + "."))
                    .append("</p>\n");
        }
        deeds.notes().forEach(note -> main.append("<p>").append(safe(note)).append("</p>\n"));
        main.append("</section>\n");
        list("Then", deeds.next().stream().map(Todo::sentence).toList(), main);
        list("In the cup", deeds.done().stream().map(CupDeeds.Done::words).toList(), main);
        return Reply.page(Reply.OK, Html.page(sight.job(), Place.DOSE, cup.key(), main.toString()));
    }

    private static void now(CupNow cup, StringBuilder main) {
        Todo now = cup.deeds().now();
        main.append("<section class=\"sheet\">\n");
        if (now.amount().isPresent()) {
            CupDeeds.Amount amount = now.amount().get();
            String figure = amount.shown().replaceFirst(" \\S+$", "");
            String unit = amount.shown().substring(figure.length()).strip();
            String deed = now.kind() == CupDeeds.Kind.POUR_OFF ? "Pour off" : "Weigh in";
            main.append("<p class=\"soft\">")
                    .append(deed)
                    .append("</p>\n<div class=\"figure")
                    .append(figure.length() > LONG_FIGURE ? " long" : "")
                    .append("\">")
                    .append(safe(figure))
                    .append("</div>\n<p class=\"what\">")
                    .append(safe(unit + " " + amount.of()))
                    .append("</p>\n");
        } else {
            main.append("<p class=\"what\">").append(safe(now.sentence())).append("</p>\n");
        }
        List<String> lines = new ArrayList<>(now.details());
        lines.add(0, now.why());
        lines.removeIf(String::isEmpty);
        lines.forEach(line -> main.append("<p>").append(safe(line)).append("</p>\n"));
        main.append("</section>\n");
        switch (now.kind()) {
            case WEIGH, POUR_OFF -> field(cup, now, main);
            case READ_CHIP -> main.append(LOOK_EITHER_WAY).append(TOO_DARK);
            case CHOOSE_WAY -> main.append("<a class=\"main\" href=\"dark\">See the ways back</a>\n");
            case WHITE_FIRST, SETTLE -> main.append("<p class=\"soft middle\">Do this at the bench.</p>\n");
            case TRY_DAB, STOP -> main.append(LOOK).append(TOO_DARK);
        }
    }

    private static void field(CupNow cup, Todo now, StringBuilder main) {
        String figure = now.amount().orElseThrow().shown().replaceFirst(" \\S+$", "");
        main.append("<form method=\"post\" action=\"dose\">\n<input type=\"hidden\" name=\"key\" value=\"")
                .append(safe(cup.key()))
                .append("\">\n<label class=\"field\"><input name=\"grams\" inputmode=\"decimal\" autocomplete=\"off\"")
                .append(" aria-label=\"what the scale showed, in grams\" value=\"")
                .append(safe(figure))
                .append("\"> g</label>\n<button class=\"main\">")
                .append(now.kind() == CupDeeds.Kind.POUR_OFF ? "It is poured off" : "It is in")
                .append("</button>\n</form>\n")
                .append(cup.deeds().done().isEmpty() ? "" : LOOK)
                .append(TOO_DARK);
    }

    private static void list(String title, List<String> lines, StringBuilder main) {
        if (lines.isEmpty()) {
            return;
        }
        main.append("<section class=\"sheet\">\n<h2>").append(title).append("</h2>\n<ol>\n");
        lines.forEach(
                line -> main.append("<li class=\"row\">").append(safe(line)).append("</li>\n"));
        main.append("</ol>\n</section>\n");
    }

    /** @return the ways back; where the bench does not know yet that it is too dark, how to show it that */
    static Reply ways(Sight sight, Optional<Answer> came) {
        StringBuilder main = new StringBuilder(Html.said(came));
        Optional<CupNow> cup = sight.cup();
        if (cup.isEmpty() || cup.get().ways().isEmpty()) {
            main.append("<section class=\"sheet\">\n<p class=\"what\">Put nothing more in.</p>\n<p>")
                    .append(cup.map(now -> "By what was weighed and read the bench says: "
                                    + safe(now.deeds().verdict()) + " ")
                            .orElse(""))
                    .append(
                            "If your eye says too dark, show it to the bench: put a dab on a card, let it cure, hold it to the")
                    .append(
                            " hull and say what you see, or take a photo of both. The ways back then stand here.</p>\n</section>\n")
                    .append(LOOK_EITHER_WAY);
        }
        cup.ifPresent(now -> {
            for (int i = 0; i < now.ways().size(); i++) {
                way(now, i, main);
            }
        });
        main.append("<a class=\"quiet\" href=\"dose\">Back to the dose</a>\n");
        String key = cup.map(CupNow::key).orElse("");
        return Reply.page(Reply.OK, Html.page("It went too dark", Place.DARK, key, main.toString()));
    }

    private static void way(CupNow cup, int number, StringBuilder main) {
        WayWords.Said way = cup.ways().get(number);
        main.append("<section class=\"sheet\">\n<h2>").append(safe(way.title())).append("</h2>\n<p>");
        main.append(safe(way.purpose())).append("</p>\n");
        way.why()
                .ifPresent(why -> main.append("<p class=\"right\">Recommended: ")
                        .append(safe(why))
                        .append(".</p>\n"));
        main.append("<ol>\n");
        way.deeds()
                .forEach(deed -> main.append("<li class=\"row\">")
                        .append(safe(deed.text()))
                        .append("</li>\n"));
        main.append("</ol>\n");
        way.rows()
                .forEach(row -> main.append("<p class=\"soft\">")
                        .append(safe(row.question() + ": " + row.answer()))
                        .append("</p>\n"));
        way.how().forEach(line -> main.append("<p>").append(safe(line)).append("</p>\n"));
        if (!way.deeds().isEmpty()) {
            main.append("<form method=\"post\" action=\"dark\"><input type=\"hidden\" name=\"key\" value=\"")
                    .append(safe(cup.key()))
                    .append("\"><input type=\"hidden\" name=\"way\" value=\"")
                    .append(number)
                    .append("\"><button class=\"")
                    .append(number == 0 ? "main" : "second")
                    .append("\">Go this way</button></form>\n");
        }
        main.append("</section>\n");
    }

    static Answer weighed(BenchTop top, Form form) throws InterruptedException {
        return Answers.wait(
                form.text("begin").isEmpty()
                        ? top.act(form.text("key"), new Act.Weighed(form.text("grams")))
                        : top.act("", new Act.Begin()));
    }

    static Answer follow(BenchTop top, Form form) throws InterruptedException, Refused {
        return Answers.wait(top.act(form.text("key"), new Act.Follow(form.number("way"))));
    }
}
