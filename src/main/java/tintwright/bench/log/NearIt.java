package tintwright.bench.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.colour.DifferenceWords;
import tintwright.colour.Lab;
import tintwright.logbook.MeanColour;
import tintwright.logbook.Nearest;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;

/**
 * What was mixed before that comes nearest to a new target: a place to start.
 *
 * @param starts        nearest first
 * @param notComparable how many colours in the log were read under another light or observer
 */
public record NearIt(List<Start> starts, int notComparable) {
    public NearIt {
        starts = List.copyOf(starts);
    }

    /**
     * One of them.
     *
     * @param page   the cup, the chip or the leftover
     * @param boat   the boat it was for, when it was for one
     * @param name   what it is called
     * @param parts  what is in it, grams by name
     * @param deltaE CIEDE2000 to the target
     * @param words  how it looks beside the target
     * @param verdict how it came out, when somebody said so
     */
    public record Start(
            Noted<Page> page,
            Optional<String> boat,
            String name,
            Map<String, Double> parts,
            double deltaE,
            String words,
            Optional<Page.Outcome> verdict) {}

    /**
     * @param target with its light and observer; only what was read under the same can be compared
     * @param most   how many to give
     */
    public static NearIt of(ShopLog log, Lab target, int most) {
        Nearest nearest = log.book().nearest(target, most);
        List<Start> starts = new ArrayList<>();
        for (Nearest.Found found : nearest.found()) {
            log.book().find(found.id()).ifPresent(noted -> starts.add(start(log, noted, found.deltaE(), target)));
        }
        return new NearIt(starts, nearest.notComparable());
    }

    private static Start start(ShopLog log, Noted<Page> noted, double deltaE, Lab target) {
        Optional<String> boat = noted.boat()
                .flatMap(log.book()::find)
                .map(Noted::page)
                .filter(Page.Boat.class::isInstance)
                .map(page -> ((Page.Boat) page).name());
        Optional<Page.Outcome> verdict = noted.boat().stream()
                .flatMap(id -> log.book().of(id, Page.Verdict.class).stream())
                .filter(judged -> judged.page().of().equals(noted.id()))
                .map(judged -> judged.page().outcome())
                .reduce((first, last) -> last);
        Page page = noted.page();
        if (page instanceof Page.Cup cup) {
            return new Start(
                    noted,
                    boat,
                    cup.name(),
                    named(cup.parts(), cup.shelf()),
                    deltaE,
                    words(cup.readings(), target),
                    verdict);
        }
        if (page instanceof Page.LeftOver left) {
            return new Start(
                    noted,
                    boat,
                    left.leftover().name() + (left.used() ? " (used up)" : ""),
                    named(left.leftover().parts(), left.shelf()),
                    deltaE,
                    words(left.leftover().readings(), target),
                    verdict);
        }
        if (page instanceof Page.ChipMade made) {
            return new Start(
                    noted,
                    boat,
                    made.chip().id(),
                    named(made.chip().parts(), shelfOf(log, made)),
                    deltaE,
                    words(made.chip().readings(), target),
                    verdict);
        }
        return new Start(noted, boat, "an entry of a newer version", Map.of(), deltaE, "", verdict);
    }

    /** A chip knows ids only; what they were stands in the cup it was drawn from. */
    private static List<Page.Ingredient> shelfOf(ShopLog log, Page.ChipMade made) {
        return made.cup()
                .flatMap(log.book()::find)
                .map(Noted::page)
                .filter(Page.Cup.class::isInstance)
                .map(cup -> ((Page.Cup) cup).shelf())
                .orElse(List.of());
    }

    private static Map<String, Double> named(Parts parts, List<Page.Ingredient> shelf) {
        Map<String, String> names = new HashMap<>();
        shelf.forEach(one -> names.put(one.id(), one.name()));
        Map<String, Double> named = new LinkedHashMap<>();
        parts.grams().forEach((id, grams) -> named.merge(names.getOrDefault(id, id), grams, Double::sum));
        return named;
    }

    private static String words(List<Reading> readings, Lab target) {
        return MeanColour.of(readings)
                .map(MeanColour::lab)
                .filter(lab -> lab.viewing().equals(target.viewing()))
                .map(lab -> DifferenceWords.of(lab, target).phrase())
                .orElse("");
    }
}
