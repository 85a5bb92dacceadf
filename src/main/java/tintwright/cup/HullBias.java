package tintwright.cup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.match.Aim;
import tintwright.match.Target;
import tintwright.reading.ColourReading;
import tintwright.reading.ColourReading.Direction;
import tintwright.reading.ColourReading.PhotoBias;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;

/**
 * The hull as it was read, and by how much that may be off.
 *
 * <p>All that the reading of the hull may be off by is treated as one bias shared with every chip that is read
 * beside the hull: in the difference of the two it cancels, whatever its size.
 *
 * @param target the colour as read
 * @param bias   name and width of what it may be off by
 */
record HullBias(Target target, PhotoBias bias) {
    static HullBias of(PlaceReadings hull) {
        Target target = Aim.of(hull).target();
        return new HullBias(target, new PhotoBias(name(hull), target.covariance(), directions(hull)));
    }

    /**
     * How a single photo errs, colour by colour: chips of the shelf in it have taught what of that is the hull's; then
     * what the reading of the hull alone is off by, which every dab held beside it shares.
     */
    private static List<Direction> directions(PlaceReadings hull) {
        List<Direction> photo = hull.readings().size() > 1
                ? List.of()
                : hull.readings().get(0).photo().map(PhotoBias::directions).orElse(List.of());
        if (photo.isEmpty()) {
            return List.of();
        }
        List<Direction> all = new ArrayList<>(photo);
        all.addAll(Direction.of(((ColourReading) hull.readings().get(0)).covariance()));
        return all;
    }

    /** The photo's own name when all of the hull stands in one: then chips of the shelf in it share its bias. */
    private static String name(PlaceReadings hull) {
        List<String> photos = hull.readings().stream()
                .map(reading -> reading.photo().map(PhotoBias::photo).orElse(""))
                .distinct()
                .toList();
        return photos.size() == 1 && !photos.get(0).isEmpty()
                ? photos.get(0)
                : "hull " + hull.boat() + " " + hull.place();
    }

    /**
     * A reading as learning is to see it: one with the hull beside it becomes the hull as first read plus the
     * difference of the two, off by what that difference may be off and by the hull's own bias.
     */
    Reading seen(Deed.Read read) {
        if (read.hull().isEmpty() || read.hullByMeter()) {
            return read.reading();
        }
        ColourReading chip = (ColourReading) read.reading();
        ColourReading hull = read.hull().get();
        Lab first = target.colour();
        if (!chip.lab().viewing().equals(first.viewing())
                || !hull.lab().viewing().equals(first.viewing())) {
            return read.reading();
        }
        double[] apart = {
            chip.lab().lightness() - hull.lab().lightness(),
            chip.lab().a() - hull.lab().a(),
            chip.lab().b() - hull.lab().b()
        };
        return beside(apart, chip.covariance().plus(hull.covariance()), chip.geometry(), chip.film());
    }

    /**
     * @param apart chip minus hull in L*, a*, b*
     * @param off   how far that difference may be off
     * @return a chip that was only seen beside the hull, as learning is to see it
     */
    ColourReading beside(double[] apart, Covariance off, Geometry geometry, FilmState film) {
        Lab first = target.colour();
        Lab moved = new Lab(first.lightness() + apart[0], first.a() + apart[1], first.b() + apart[2], first.viewing());
        return new ColourReading(moved, off, geometry, film, Optional.of(bias));
    }
}
