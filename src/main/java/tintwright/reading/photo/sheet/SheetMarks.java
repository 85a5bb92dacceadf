package tintwright.reading.photo.sheet;

import java.util.ArrayList;
import java.util.List;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.Region;
import tintwright.reading.photo.card.Spot;

/**
 * What is to be read where, on a sheet that was found.
 */
public final class SheetMarks {
    /** Radius of what is read in the window, on a chip, of bare paper, mm: clear of edges, a bend and its shadow; a judgement of ours. */
    private static final double HULL_RADIUS = 18;

    /** A judgement of ours. */
    private static final double CHIP_RADIUS = 9;

    /** A judgement of ours. */
    private static final double PAPER_RADIUS = 2.5;

    private SheetMarks() {}

    /** @return the hull first, then the chips in the order of the contents, then the dab */
    public static List<Spot> spots(SheetPose pose, SheetContents contents) {
        List<Spot> spots = new ArrayList<>();
        SheetLayout layout = pose.layout();
        Region.Disc hull = disc(pose, layout.window(), HULL_RADIUS);
        spots.add(Spot.hull(SheetContents.HULL, hull.centre().x(), hull.centre().y(), hull.radius()));
        for (SheetContents.Chip chip : contents.chips()) {
            spots.add(spot(pose, chip, layout.places().get(chip.place() - 1)));
        }
        contents.dab().ifPresent(dab -> spots.add(spot(pose, dab, layout.dab())));
        return spots;
    }

    private static Spot spot(SheetPose pose, SheetContents.Chip chip, Area place) {
        Region.Disc disc = disc(pose, place, CHIP_RADIUS);
        return new Spot(chip.name(), Spot.Purpose.CHIP, disc.centre(), disc.radius(), chip.film(), chip.parts());
    }

    /** @return the area on the sheet of each of {@link #spots} */
    public static List<Area> areas(SheetLayout layout, SheetContents contents) {
        List<Area> areas = new ArrayList<>(List.of(layout.window()));
        contents.chips().forEach(chip -> areas.add(layout.places().get(chip.place() - 1)));
        contents.dab().ifPresent(dab -> areas.add(layout.dab()));
        return areas;
    }

    /** @return a part of a patch of bare paper */
    public static Region paper(SheetPose pose, Area patch) {
        return disc(pose, patch, PAPER_RADIUS);
    }

    /** @return the middle of the tape */
    public static Region tape(SheetPose pose) {
        return disc(pose, pose.layout().tape(), CHIP_RADIUS);
    }

    /** @return the colour of so many layers of tape over the paper */
    public static Lab tapeColour(int layers, Viewing viewing) {
        return PlumbersTape.colour(layers, viewing);
    }

    /** @return how far that may be off, standard deviation in CIEDE2000 */
    public static double tapeSigma(int layers) {
        return PlumbersTape.sigma(layers);
    }

    private static Region.Disc disc(SheetPose pose, Area area, double radius) {
        PixelPoint centre = pose.at(area.middleX(), area.middleY());
        return new Region.Disc(centre, Math.max(1.5, radius * pose.pixelsPerMm(area.middleX(), area.middleY())));
    }
}
