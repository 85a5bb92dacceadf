package tintwright.bench.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import tintwright.colour.Ciede2000;
import tintwright.colour.DifferenceWords;
import tintwright.colour.Lab;
import tintwright.logbook.MeanColour;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;

/**
 * Everything the log knows of one boat, and how its places have moved over the years.
 *
 * @param boat    the boat
 * @param places  its places, each with what was read there
 * @param entries everything else that counts, oldest first
 */
public record BoatStory(Noted<Page.Boat> boat, List<PlaceStory> places, List<Noted<Page>> entries) {
    public BoatStory {
        places = List.copyOf(places);
        entries = List.copyOf(entries);
    }

    /**
     * A place over the years.
     *
     * @param seen what was read there, oldest first
     */
    public record PlaceStory(Noted<Page.Place> place, List<Seen> seen) {
        public PlaceStory {
            seen = List.copyOf(seen);
        }

        /** @return how far it has moved from the first to the last day it was read; empty before there are two */
        public Optional<Moved> moved() {
            return seen.size() < 2 ? Optional.empty() : Moved.between(seen.get(0), seen.get(seen.size() - 1));
        }

        /** @return the last that was read */
        public Optional<Seen> latest() {
            return seen.isEmpty() ? Optional.empty() : Optional.of(seen.get(seen.size() - 1));
        }
    }

    /**
     * A place on one day.
     *
     * @param id  the entry of the log
     * @param lab the mean of what was read
     */
    public record Seen(UUID id, LocalDate day, Lab lab) {}

    /**
     * How a place has changed.
     *
     * @param deltaE   CIEDE2000 from the first to the last day
     * @param lighter  change of L*, above 0 for a hull that faded
     * @param yellower change of b*, above 0 for a hull that yellowed
     * @param words    such as "lighter and a touch yellower"
     */
    public record Moved(LocalDate from, LocalDate to, double deltaE, double lighter, double yellower, String words) {
        /** @return empty when the two days were read under different lights */
        static Optional<Moved> between(Seen first, Seen last) {
            if (!first.lab().viewing().equals(last.lab().viewing())) {
                return Optional.empty();
            }
            return Optional.of(new Moved(
                    first.day(),
                    last.day(),
                    Ciede2000.between(first.lab(), last.lab()),
                    last.lab().lightness() - first.lab().lightness(),
                    last.lab().b() - first.lab().b(),
                    DifferenceWords.of(last.lab(), first.lab()).phrase()));
        }
    }

    /** @return the story of a boat as the log tells it today */
    public static BoatStory of(ShopLog log, Noted<Page.Boat> boat) {
        List<Noted<Page>> all = log.book().of(boat.id());
        List<PlaceStory> places = new ArrayList<>();
        for (Noted<Page.Place> place : log.book().of(boat.id(), Page.Place.class)) {
            places.add(new PlaceStory(place, seen(all, place.id())));
        }
        return new BoatStory(
                boat,
                places,
                all.stream().filter(noted -> !noted.id().equals(boat.id())).toList());
    }

    private static List<Seen> seen(List<Noted<Page>> all, UUID place) {
        List<Seen> seen = new ArrayList<>();
        for (Noted<Page> noted : all) {
            if (noted.page() instanceof Page.Target target && target.place().equals(place)) {
                MeanColour.of(target.readings())
                        .ifPresent(mean -> seen.add(new Seen(noted.id(), target.day(), mean.lab())));
            }
        }
        seen.sort(Comparator.comparing(Seen::day));
        return seen;
    }
}
