package tintwright.phone;

import java.util.Optional;
import tintwright.bench.top.BenchTop;
import tintwright.paper.HtmlSheet;

/** What is around every page. */
final class Html {
    private Html() {}

    /** @return words without any mark-up of their own */
    static String safe(String words) {
        return HtmlSheet.safe(words);
    }

    /**
     * A whole page of a phone that is let in.
     *
     * @param title in the first line, plain words
     * @param here  which of the pages this is, to be marked at the foot
     * @param key   changes when what the person works on is another
     * @param main  what is on it, made safe already
     */
    static String page(String title, Place here, String key, String main) {
        StringBuilder html = start(title);
        html.append("<main data-key=\"").append(safe(key)).append("\">\n<h1>");
        html.append(safe(title)).append("</h1>\n").append(main).append("</main>\n<nav>\n");
        for (Place place : Place.values()) {
            if (!place.atTheFoot()) {
                continue;
            }
            html.append("<a href=\"")
                    .append(place.path())
                    .append(place == here ? "\" aria-current=\"page\">" : "\">")
                    .append(place.words())
                    .append("</a>\n");
        }
        html.append(
                        "</nav>\n<p id=\"silent\" hidden>The bench does not answer. Is its window open, and this phone on the")
                .append(" same Wi-Fi?</p>\n<script src=\"bench.js\"></script>\n");
        return html.append("</body>\n</html>\n").toString();
    }

    /** @return what came of the last deed, in one line; empty when nothing did */
    static String said(Optional<BenchTop.Answer> came) {
        return came.map(answer -> "<p class=\"" + (answer.done() ? "right" : "wrong") + "\" role=\"status\">"
                        + safe(answer.said()) + "</p>\n")
                .orElse("");
    }

    private static StringBuilder start(String title) {
        return new StringBuilder(4096)
                .append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
                .append("<link rel=\"icon\" href=\"data:,\">\n<link rel=\"stylesheet\" href=\"bench.css\">\n<title>")
                .append(safe(title))
                .append("</title>\n</head>\n<body>\n");
    }

    /**
     * A page that says one sentence.
     *
     * @param back where to go on; empty for one who is not let in
     */
    static String refusal(String sentence, Optional<Place> back) {
        String on = back.map(page -> "<a class=\"second\" href=\"" + page.path() + "\">Go on</a>\n")
                .orElse("");
        return start("Tintwright")
                .append("<main>\n<p class=\"wrong\">")
                .append(safe(sentence))
                .append("</p>\n")
                .append(on)
                .append("</main>\n</body>\n</html>\n")
                .toString();
    }

    /** @return the page behind the code: one press, so that a camera that only looks ahead does not use the code up */
    static String door() {
        return start("Tintwright")
                .append("<main>\n<h1>The bench</h1>\n<form method=\"post\" action=\"in\">\n")
                .append("<button class=\"main\">Use this phone at the bench</button>\n</form>\n")
                .append(
                        "<p class=\"soft\">It talks to the bench and to nobody else. The code is used up by this.</p>\n")
                .append("</main>\n</body>\n</html>\n")
                .toString();
    }
}
