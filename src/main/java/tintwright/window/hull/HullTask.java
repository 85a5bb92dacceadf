package tintwright.window.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.reading.photo.PhotoReadings;
import tintwright.reading.photo.SpotReading;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.Spot;

/** Spots on the hull, as many as the person likes. */
final class HullTask implements PhotoTask {
    private final Consumer<List<Reading>> taker;

    HullTask(Consumer<List<Reading>> taker) {
        this.taker = taker;
    }

    @Override
    public String toClick() {
        return "click on the hull";
    }

    @Override
    public List<Spot> marked(List<Spot> spots, PixelPoint at, double radius) {
        int number = spots.size() + 1;
        while (named(spots, "spot " + number)) {
            number++;
        }
        List<Spot> more = new ArrayList<>(spots);
        more.add(new Spot("spot " + number, Spot.Purpose.HULL, at, radius, FilmState.CURED, Map.of()));
        return more;
    }

    private static boolean named(List<Spot> spots, String name) {
        return spots.stream().anyMatch(spot -> spot.name().equals(name));
    }

    @Override
    public String missing(List<Spot> spots) {
        return spots.stream().anyMatch(spot -> spot.purpose() == Spot.Purpose.HULL) ? "" : "Click on the hull.";
    }

    @Override
    public String take(PhotoReadings readings) {
        List<Reading> hull = new ArrayList<>();
        for (SpotReading spot : readings.spots()) {
            if (spot.spot().purpose() == Spot.Purpose.HULL) {
                hull.add(spot.reading());
            }
        }
        taker.accept(hull);
        return hull.size() + (hull.size() == 1 ? " reading" : " readings");
    }
}
