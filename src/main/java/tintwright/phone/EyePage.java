package tintwright.phone;

import static tintwright.phone.Html.safe;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import tintwright.bench.top.BenchTop;
import tintwright.bench.top.BenchTop.Act;
import tintwright.bench.top.BenchTop.Answer;
import tintwright.bench.top.BenchTop.CupNow;
import tintwright.bench.top.BenchTop.Sight;
import tintwright.colour.Lab;
import tintwright.colour.RgbSpace;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.reading.FilmState;

/** What the eye sees of a dab held against the hull: the same answers as in the window, drawn. */
final class EyePage {
    private EyePage() {}

    static Reply show(Sight sight, Optional<Answer> came) {
        StringBuilder main = new StringBuilder(Html.said(came));
        Optional<CupNow> cup = sight.cup();
        cup.ifPresentOrElse(
                now -> ask(now, main),
                () -> main.append(
                        "<section class=\"sheet\"><p>No cup is begun, so there is no dab of it.</p></section>\n"));
        main.append("<a class=\"quiet\" href=\"dose\">Back to the dose</a>\n");
        String key = cup.map(CupNow::key).orElse("");
        return Reply.page(Reply.OK, Html.page(sight.job(), Place.EYE, key, main.toString()));
    }

    private static void ask(CupNow cup, StringBuilder main) {
        main.append("<section class=\"sheet\">\n<p class=\"what small\">Hold the cured dab against the hull.</p>\n")
                .append("<p class=\"soft\">Daylight, no direct sun, gloss against gloss. Left the hull, right the dab;")
                .append(" go by the words, this screen is no swatch.</p>\n</section>\n")
                .append("<form method=\"post\" action=\"eye\">\n<input type=\"hidden\" name=\"key\" value=\"")
                .append(safe(cup.key()))
                .append("\">\n");
        nearest(cup.deeds().now().pots(), main);
        main.append("<fieldset class=\"sheet\">\n<legend>The dab is</legend>\n");
        for (Depth depth : Depth.values()) {
            pick("depth", depth, pair(cup.hull(), depth.shade(cup.hull())), depth.words(), main);
        }
        main.append("</fieldset>\n<fieldset class=\"sheet\">\n<legend>and</legend>\n");
        for (Hue hue : Hue.values()) {
            pick("hue", hue, pair(cup.hull(), hue.shade(cup.hull(), Amount.NOT_SAID)), hue.words(), main);
        }
        main.append("</fieldset>\n<fieldset class=\"sheet\">\n<legend>and if so, how much</legend>\n");
        pick("amount", Amount.LITTLE, "", "a little", main);
        pick("amount", Amount.MUCH, "", "much", main);
        main.append("</fieldset>\n");
        main.append("<label class=\"pick\"><input type=\"checkbox\" name=\"wet\" value=\"true\">")
                .append(" The dab is still wet</label>\n<button class=\"main\">That is what I see</button>\n")
                .append(
                        "<button class=\"second\" name=\"untold\" value=\"true\" formnovalidate>I cannot tell</button>\n")
                .append("</form>\n");
    }

    /** Which dab is meant, where trial dabs are asked for: one of several must be chosen. */
    private static void nearest(List<String> pots, StringBuilder main) {
        if (pots.isEmpty()) {
            return;
        }
        main.append("<fieldset class=\"sheet\">\n<legend>")
                .append(pots.size() == 1 ? "Which dab is it?" : "Which dab comes nearest to the hull?")
                .append("</legend>\n");
        for (int i = 1; i <= pots.size(); i++) {
            dab(String.valueOf(i), "from pot " + i + ": " + pots.get(i - 1), pots.size() == 1, main);
        }
        dab("0", "the cup's own", false, main);
        dab("", "no pot was made, only a dab of the cup", false, main);
        main.append("</fieldset>\n");
    }

    private static void dab(String number, String words, boolean chosen, StringBuilder main) {
        main.append("<label class=\"pick\"><input type=\"radio\" required name=\"trial\" value=\"")
                .append(number)
                .append(chosen ? "\" checked> " : "\"> ")
                .append(safe(words))
                .append("</label>\n");
    }

    private static void pick(String name, Enum<?> answer, String picture, String words, StringBuilder main) {
        main.append("<label class=\"pick\"><input type=\"radio\" required name=\"")
                .append(name)
                .append("\" value=\"")
                .append(answer.name())
                .append(answer == Amount.LITTLE ? "\" checked> " : "\"> ")
                .append(picture)
                .append(safe(words))
                .append("</label>\n");
    }

    /** Hull and dab edge to edge, as a picture in the page itself: its style may come from nowhere but a file. */
    private static String pair(Lab hull, Lab dab) {
        String drawn = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"96\" height=\"48\">" + half(0, hull)
                + half(48, dab) + "</svg>";
        return "<img alt=\"\" width=\"96\" height=\"48\" src=\"data:image/svg+xml,"
                + URLEncoder.encode(drawn, StandardCharsets.UTF_8).replace("+", "%20") + "\">";
    }

    private static String half(int left, Lab lab) {
        RgbSpace.Code code = RgbSpace.SRGB.encode(lab);
        return String.format(
                Locale.ROOT,
                "<rect x=\"%d\" width=\"48\" height=\"48\" fill=\"rgb(%.0f,%.0f,%.0f)\"/>",
                left,
                code.red() * 255,
                code.green() * 255,
                code.blue() * 255);
    }

    static Answer looked(BenchTop top, Form form) throws Refused, InterruptedException {
        FilmState film = form.text("wet").isEmpty() ? FilmState.CURED : FilmState.WET;
        EyeVerdict verdict = EyeVerdict.cannotTell(film);
        if (form.text("untold").isEmpty()) {
            if (form.text("depth").isEmpty() || form.text("hue").isEmpty()) {
                return new Answer(false, "Choose one of each row, or that you cannot tell.");
            }
            Hue hue = form.choice("hue", Hue.class);
            verdict = new EyeVerdict(
                    Optional.of(form.choice("depth", Depth.class)),
                    Optional.of(hue),
                    hue == Hue.NONE || form.text("amount").isEmpty()
                            ? Amount.NOT_SAID
                            : form.choice("amount", Amount.class),
                    film);
        }
        return Answers.wait(top.act(form.text("key"), new Act.Looked(verdict, nearest(form.text("trial")))));
    }

    /** What the page sends is checked by whoever knows how many dabs there are. */
    private static OptionalInt nearest(String typed) {
        return typed.matches("[0-9]") ? OptionalInt.of(Integer.parseInt(typed)) : OptionalInt.empty();
    }
}
