package tintwright.window.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import tintwright.reading.ColourReading;
import tintwright.reading.FilmState;
import tintwright.reading.photo.PhotoReadings;
import tintwright.reading.photo.SpotReading;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.Spot;

/** One chip of the cup and, beside it in the same photo, the hull: what the photo gets wrong it gets wrong for both. */
final class ChipTask implements PhotoTask {
    private final BiConsumer<ColourReading, Optional<ColourReading>> taker;
    private FilmState film = FilmState.CURED;

    /** @param taker takes the chip, and the hull when it was marked too */
    ChipTask(BiConsumer<ColourReading, Optional<ColourReading>> taker) {
        this.taker = taker;
    }

    @Override
    public String toClick() {
        return "click on the chip, then on the hull beside it";
    }

    @Override
    public List<Spot> marked(List<Spot> spots, PixelPoint at, double radius) {
        // The chip first; every later click is the hull, of which there is one.
        boolean chip = find(spots, Spot.Purpose.CHIP).isEmpty();
        Optional<Spot> other = find(spots, chip ? Spot.Purpose.HULL : Spot.Purpose.CHIP);
        List<Spot> now = new ArrayList<>(other.map(List::of).orElse(List.of()));
        now.add(new Spot(
                chip ? "chip" : "hull",
                chip ? Spot.Purpose.CHIP : Spot.Purpose.HULL,
                at,
                radius,
                chip ? film : FilmState.CURED,
                Map.of()));
        return now;
    }

    private static Optional<Spot> find(List<Spot> spots, Spot.Purpose purpose) {
        return spots.stream().filter(spot -> spot.purpose() == purpose).findFirst();
    }

    /** @return the spots with the chip's film as it is said to be */
    List<Spot> filmed(List<Spot> spots, FilmState now) {
        film = now;
        return spots.stream()
                .map(spot -> spot.purpose() == Spot.Purpose.HULL
                        ? spot
                        : new Spot(spot.name(), spot.purpose(), spot.centre(), spot.radius(), now, spot.parts()))
                .toList();
    }

    FilmState film() {
        return film;
    }

    @Override
    public String missing(List<Spot> spots) {
        return find(spots, Spot.Purpose.CHIP).isEmpty()
                ? "Click on the chip."
                : find(spots, Spot.Purpose.HULL).isEmpty()
                        ? "Click on the hull beside the chip, if it is in the photo."
                        : "";
    }

    @Override
    public String take(PhotoReadings readings) {
        Optional<ColourReading> chip = reading(readings, Spot.Purpose.CHIP);
        Optional<ColourReading> hull = reading(readings, Spot.Purpose.HULL);
        if (chip.isEmpty()) {
            throw new IllegalArgumentException("the chip could not be read in this photo: click on a part of it that "
                    + "does not shine, or take the photo again");
        }
        taker.accept(chip.get(), hull);
        return hull.isPresent() ? "the chip and the hull beside it" : "the chip alone";
    }

    private static Optional<ColourReading> reading(PhotoReadings readings, Spot.Purpose purpose) {
        return readings.spots().stream()
                .filter(one -> one.spot().purpose() == purpose)
                .map(SpotReading::reading)
                .findFirst();
    }
}
