package tintwright.window.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tintwright.bench.job.Job;
import tintwright.match.Aim;
import tintwright.reading.HullFamily;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;

/** The places of a job with readings put to them: what cannot stand together never gets onto a place. */
final class HullPlaces {
    private HullPlaces() {}

    /** What cannot be combined never gets onto the place. */
    static PlaceReadings more(PlaceReadings place, List<? extends Reading> readings) {
        boolean picked = onlyPicked(place)
                && readings.stream().anyMatch(each -> HullFamily.of(each).isEmpty());
        List<Reading> all = new ArrayList<>(picked ? List.of() : place.readings());
        all.addAll(readings);
        PlaceReadings more = new PlaceReadings(place.boat(), place.place(), all, picked ? "" : place.note());
        Aim.of(more);
        return more;
    }

    /** Two names are of one place when they differ in capitals and spaces only. */
    static int placeOf(String name, List<PlaceReadings> places) {
        for (int i = 0; i < places.size(); i++) {
            if (alike(places.get(i).place()).equals(alike(name))) {
                return i;
            }
        }
        return -1;
    }

    private static String alike(String name) {
        return name.replaceAll("\\s+", "").toLowerCase(Locale.ROOT);
    }

    /**
     * Takes readings to the place of that name, or begins it; the place is in hand then.
     *
     * @throws IllegalArgumentException when they cannot stand beside those that are there
     */
    static Job with(Job before, String name, List<Reading> readings) {
        List<PlaceReadings> places = new ArrayList<>(before.places());
        int known = placeOf(name, places);
        if (known < 0) {
            places.add(more(new PlaceReadings(before.boat(), name.trim(), readings, ""), List.of()));
        } else {
            places.set(known, more(places.get(known), readings));
        }
        return before.withPlaces(before.boat(), places, known < 0 ? places.size() - 1 : known);
    }

    static boolean onlyPicked(PlaceReadings place) {
        return place.readings().stream().allMatch(each -> HullFamily.of(each).isPresent());
    }

    static Job replaced(Job before, PlaceReadings changed) {
        List<PlaceReadings> places = new ArrayList<>(before.places());
        places.set(before.place(), changed);
        return before.withPlaces(before.boat(), places, before.place());
    }
}
