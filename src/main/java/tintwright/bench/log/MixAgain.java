package tintwright.bench.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import tintwright.bench.MatchBench;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.match.Aim;
import tintwright.match.MatchAnswer;
import tintwright.match.Wish;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;

/** "Sixty grams of last year's": mixes a recorded cup again from what stands on the shelf today. */
public final class MixAgain {
    private final ShopLog log;
    private final Shelf shelf;

    /** @param shelf what stands on the shelf today */
    public MixAgain(ShopLog log, Shelf shelf) {
        this.log = log;
        this.shelf = shelf;
    }

    /** What to weigh, and how that follows from the cup. */
    public sealed interface Answer {
        /** @return how far the hull has moved since the cup was mixed; empty when that is not known */
        Optional<BoatStory.Moved> moved();

        /** @return sentences for the person; may be none */
        List<String> remarks();
    }

    /**
     * Everything in the cup is on the shelf unchanged: the same parts again.
     *
     * @param parts grams of each, as the scale can show them
     */
    public record SameParts(Noted<Page.Cup> cup, Parts parts, Optional<BoatStory.Moved> moved, List<String> remarks)
            implements Answer {}

    /**
     * Matched anew: to the recorded colour because the shelf has changed, or to the hull as it reads today.
     *
     * @param bench what to ask about the recipes
     */
    public record Matched(
            Noted<Page.Cup> cup,
            MatchBench bench,
            Aim aim,
            Wish wish,
            MatchAnswer match,
            Optional<BoatStory.Moved> moved,
            List<String> remarks)
            implements Answer {}

    /**
     * The colour of the cup again.
     *
     * @param grams     how much, above 0
     * @param scaleStep smallest step of the scale, g
     * @throws IllegalArgumentException when the shelf has changed and no colour of the cup was recorded
     */
    public Answer cup(Noted<Page.Cup> cup, double grams, double scaleStep) {
        List<String> changed = changes(cup.page());
        Optional<BoatStory.Moved> moved = moved(cup);
        List<String> remarks = new ArrayList<>(newTubs(cup.page()));
        if (changed.isEmpty()) {
            return new SameParts(cup, weighable(cup.page().parts(), grams, scaleStep), moved, remarks);
        }
        changed.forEach(what -> remarks.add(what + "."));
        remarks.add("So it was matched anew to the colour recorded then.");
        return match(cup, recorded(cup), grams, scaleStep, moved, remarks);
    }

    /**
     * The hull as it was last read at the place the cup was for.
     *
     * @throws IllegalArgumentException when the cup was for no place, or the place was never read
     */
    public Answer hullToday(Noted<Page.Cup> cup, double grams, double scaleStep) {
        UUID place = cup.page()
                .place()
                .orElseThrow(() -> new IllegalArgumentException(
                        "the cup \"" + cup.page().name() + "\" was for no place, so there is no hull to follow"));
        Noted<Page.Target> latest = targets(cup, place)
                .reduce((first, last) -> last)
                .orElseThrow(() ->
                        new IllegalArgumentException("that place was never read; read it and write it down first"));
        PlaceReadings hull = new PlaceReadings("", nameOf(place), latest.page().readings(), "");
        List<String> remarks = new ArrayList<>();
        remarks.add("Matched to the hull as it was read on " + latest.page().day() + ".");
        return match(cup, Aim.of(hull), grams, scaleStep, moved(cup), remarks);
    }

    private Answer match(
            Noted<Page.Cup> cup,
            Aim recorded,
            double grams,
            double scaleStep,
            Optional<BoatStory.Moved> moved,
            List<String> remarks) {
        MatchBench bench = MatchBench.of(shelf);
        Aim aim = recorded.through(bench.knowledge());
        Wish wish = new Wish(aim.target(), grams, scaleStep, Set.of(), Optional.empty(), Optional.empty());
        return new Matched(cup, bench, aim, wish, bench.match(wish), moved, remarks);
    }

    /** @return what is not as it was, a sentence without a full stop each */
    private List<String> changes(Page.Cup cup) {
        List<String> changed = new ArrayList<>();
        for (String id : cup.parts().grams().keySet()) {
            Page.Ingredient then = cup.shelf().stream()
                    .filter(one -> one.id().equals(id))
                    .findFirst()
                    .orElseThrow();
            Optional<String> now = shelf.base(id)
                    .map(base -> base.name())
                    .or(() -> shelf.tint(id).map(tint -> tint.name()));
            if (now.isEmpty()) {
                changed.add("There is no " + then.name() + " on the shelf any more");
            } else if (!now.get().equalsIgnoreCase(then.name())) {
                changed.add("What was " + then.name() + " then is " + now.get() + " on the shelf now");
            } else if (!then.family().isEmpty()
                    && shelf.tint(id)
                            .filter(tint -> tint.family().code().equals(then.family()))
                            .isEmpty()) {
                changed.add(then.name() + " holds another pigment than it did then");
            }
        }
        return changed;
    }

    /** The same name on another tub is not always the same paste. */
    private List<String> newTubs(Page.Cup cup) {
        List<String> newer = new ArrayList<>();
        for (String id : cup.parts().grams().keySet()) {
            shelf.item(id)
                    .flatMap(item -> item.stock().openedOn())
                    .filter(day -> day.isAfter(cup.day()))
                    .ifPresent(day -> newer.add(shelf.nameOf(id) + " (" + day + ")"));
        }
        return newer.isEmpty()
                ? List.of()
                : List.of(
                        "Opened after this cup: " + String.join(", ", newer) + ". Read a chip before you trust them.");
    }

    private static Parts weighable(Parts parts, double grams, double scaleStep) {
        if (!(grams > 0 && grams <= 100_000)) {
            throw new IllegalArgumentException("grams must be above 0 and at most 100000, were " + grams);
        }
        if (!(scaleStep >= 0.0001 && scaleStep <= 10)) {
            throw new IllegalArgumentException("the step of the scale must be 0.0001 to 10 g, was " + scaleStep);
        }
        Map<String, Double> weighed = new LinkedHashMap<>();
        parts.times(grams / parts.total())
                .grams()
                .forEach((id, mass) -> weighed.put(id, Math.rint(mass / scaleStep) * scaleStep));
        return Parts.of(weighed);
    }

    /** The cup itself if it was read cured, else a chip of it, else the place it was mixed for, as read then. */
    private Aim recorded(Noted<Page.Cup> cup) {
        List<Reading> cured = cured(cup.page().readings());
        UUID boat = cup.boat().orElseThrow(() -> new IllegalArgumentException("the cup belongs to no boat"));
        if (cured.isEmpty()) {
            cured = log.book().of(boat, Page.ChipMade.class).stream()
                    .filter(made -> made.page().cup().filter(cup.id()::equals).isPresent())
                    .map(made -> cured(made.page().chip().readings()))
                    .filter(list -> !list.isEmpty())
                    .reduce((first, last) -> last)
                    .orElse(List.of());
        }
        if (cured.isEmpty() && cup.page().place().isPresent()) {
            cured = targets(cup, cup.page().place().get())
                    .filter(target -> !target.page().day().isAfter(cup.page().day()))
                    .reduce((first, last) -> last)
                    .map(target -> cured(target.page().readings()))
                    .orElse(List.of());
        }
        if (cured.isEmpty()) {
            throw new IllegalArgumentException(
                    "the shelf has changed since the cup \"" + cup.page().name()
                            + "\", and neither it nor a chip of it nor its place was read cured: match the hull itself");
        }
        return Aim.of(new PlaceReadings(
                "", "the cup \"" + cup.page().name() + "\" of " + cup.page().day(), cured, ""));
    }

    private static List<Reading> cured(List<Reading> readings) {
        return readings.stream()
                .filter(reading -> reading.film() == FilmState.CURED)
                .toList();
    }

    private Stream<Noted<Page.Target>> targets(Noted<Page.Cup> cup, UUID place) {
        return log.book().of(cup.boat().orElseThrow(), Page.Target.class).stream()
                .filter(target -> target.page().place().equals(place))
                .sorted(Comparator.comparing(target -> target.page().day()));
    }

    private String nameOf(UUID place) {
        return log.book()
                .find(place)
                .map(Noted::page)
                .filter(Page.Place.class::isInstance)
                .map(page -> ((Page.Place) page).name())
                .orElse("the place");
    }

    /** From the last reading before the cup, or the first after it, to the last of all. */
    private Optional<BoatStory.Moved> moved(Noted<Page.Cup> cup) {
        LocalDate day = cup.page().day();
        return cup.page()
                .place()
                .flatMap(place -> cup.boat()
                        .flatMap(log.book()::find)
                        .filter(noted -> noted.page() instanceof Page.Boat)
                        .map(noted -> new Noted<>(noted.id(), noted.at(), noted.boat(), (Page.Boat) noted.page()))
                        .flatMap(boat -> BoatStory.of(log, boat).places().stream()
                                .filter(story -> story.place().id().equals(place))
                                .findFirst())
                        .flatMap(story -> {
                            List<BoatStory.Seen> seen = story.seen();
                            Optional<BoatStory.Seen> then = seen.stream()
                                    .filter(one -> !one.day().isAfter(day))
                                    .reduce((first, last) -> last)
                                    .or(() -> seen.stream().findFirst());
                            return then.filter(first -> seen.size() > 1)
                                    .flatMap(first -> BoatStory.Moved.between(first, seen.get(seen.size() - 1)));
                        }));
    }
}
