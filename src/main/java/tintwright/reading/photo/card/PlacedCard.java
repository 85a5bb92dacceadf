package tintwright.reading.photo.card;

import java.util.ArrayList;
import java.util.List;

/**
 * A card where it lies in a photo.
 *
 * @param card    the card
 * @param corners the four outer corners of its patches: of the first patch of the first row, the last of the first
 *                row, the last of the last row, the first of the last row
 */
public record PlacedCard(ReferenceCard card, List<PixelPoint> corners) {
    private static final String[] NAMES = {
        "first row, first patch", "first row, last patch", "last row, last patch", "last row, first patch"
    };

    public PlacedCard {
        corners = List.copyOf(corners);
        if (corners.size() != 4) {
            throw new IllegalArgumentException("a card has four corners, got " + corners.size());
        }
        for (int i = 0; i < 4; i++) {
            PixelPoint a = corners.get(i);
            PixelPoint b = corners.get((i + 1) % 4);
            PixelPoint c = corners.get((i + 2) % 4);
            double turn = (b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x());
            double sides = Math.hypot(b.x() - a.x(), b.y() - a.y()) * Math.hypot(c.x() - b.x(), c.y() - b.y());
            if (!(turn > 0.05 * sides)) {
                throw new IllegalArgumentException("the corners of the card \"" + card.name() + "\" are crossed, in "
                        + "one line or the wrong way round at the " + NAMES[(i + 1) % 4]
                        + ": go round the card in the order " + String.join("; ", NAMES));
            }
        }
    }

    /** @param centres the centres of the four corner patches, in the order of {@link #corners} */
    public static PlacedCard byCentres(ReferenceCard card, List<PixelPoint> centres) {
        if (card.rows() < 2 || card.columns() < 2) {
            throw new IllegalArgumentException("a card of one row is placed by its outer corners");
        }
        if (centres.size() != 4) {
            throw new IllegalArgumentException("a card has four corners, got " + centres.size());
        }
        Homography grid = Homography.of(square(card.columns() - 1, card.rows() - 1, 0), centres);
        List<PixelPoint> corners = new ArrayList<>();
        for (double[] corner : square(card.columns() - 1, card.rows() - 1, card.patchShare() / 2)) {
            corners.add(grid.at(corner[0], corner[1]));
        }
        return new PlacedCard(card, corners);
    }

    /** From patch numbers (column, row; the first patch's centre is 0, 0) to the photo. */
    public Homography grid() {
        return Homography.of(square(card.columns() - 1, card.rows() - 1, card.patchShare() / 2), corners);
    }

    private static double[][] square(double right, double bottom, double out) {
        return new double[][] {{-out, -out}, {right + out, -out}, {right + out, bottom + out}, {-out, bottom + out}};
    }

    /**
     * Discs round the card, one beside each outer patch.
     *
     * @param beyond how far from the edge of the outer patches, in patches
     * @param radius of each, in patches
     * @param least  no radius is smaller, pixels
     */
    public List<Region.Disc> round(double beyond, double radius, double least) {
        Homography grid = grid();
        double out = card.patchShare() / 2 + beyond;
        List<Region.Disc> discs = new ArrayList<>();
        for (int column = 0; column < card.columns(); column++) {
            discs.add(disc(grid, column, -out, radius, least));
            discs.add(disc(grid, column, card.rows() - 1 + out, radius, least));
        }
        for (int row = 0; row < card.rows(); row++) {
            discs.add(disc(grid, -out, row, radius, least));
            discs.add(disc(grid, card.columns() - 1 + out, row, radius, least));
        }
        return discs;
    }

    private static Region.Disc disc(Homography grid, double column, double row, double radius, double least) {
        PixelPoint at = grid.at(column, row);
        return new Region.Disc(at, Math.max(least, radius * at.distance(grid.at(column + 1, row))));
    }

    /** @return true when a point of the photo lies between the outer corners */
    public boolean holds(PixelPoint point) {
        for (int i = 0; i < 4; i++) {
            PixelPoint a = corners.get(i);
            PixelPoint b = corners.get((i + 1) % 4);
            if ((b.x() - a.x()) * (point.y() - a.y()) - (b.y() - a.y()) * (point.x() - a.x()) < 0) {
                return false;
            }
        }
        return true;
    }

    /** @return the centre of a patch in the photo */
    public PixelPoint centre(int row, int column) {
        return grid().at(column, row);
    }

    /** @return the outlines of all patches, row by row, four corners each: for drawing */
    public List<List<PixelPoint>> outlines() {
        Homography grid = grid();
        double half = card.patchShare() / 2;
        List<List<PixelPoint>> out = new ArrayList<>();
        for (int row = 0; row < card.rows(); row++) {
            for (int column = 0; column < card.columns(); column++) {
                out.add(List.of(
                        grid.at(column - half, row - half),
                        grid.at(column + half, row - half),
                        grid.at(column + half, row + half),
                        grid.at(column - half, row + half)));
            }
        }
        return out;
    }
}
