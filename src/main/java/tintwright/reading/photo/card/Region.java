package tintwright.reading.photo.card;

import java.awt.Rectangle;

/** A part of a photo that shows one colour. */
public sealed interface Region {
    PixelPoint centre();

    boolean contains(double x, double y);

    Rectangle bounds();

    /** A round spot. */
    record Disc(PixelPoint centre, double radius) implements Region {
        @Override
        public boolean contains(double x, double y) {
            double dx = x - centre.x();
            double dy = y - centre.y();
            return dx * dx + dy * dy <= radius * radius;
        }

        @Override
        public Rectangle bounds() {
            int left = (int) Math.floor(centre.x() - radius);
            int top = (int) Math.floor(centre.y() - radius);
            return new Rectangle(
                    left,
                    top,
                    (int) Math.ceil(centre.x() + radius) - left + 1,
                    (int) Math.ceil(centre.y() + radius) - top + 1);
        }
    }

    /** The middle of a patch of a card. */
    record Cell(Homography grid, int row, int column, double half) implements Region {
        @Override
        public PixelPoint centre() {
            return grid.at(column, row);
        }

        @Override
        public boolean contains(double x, double y) {
            return grid.within(x, y, column, row, half);
        }

        @Override
        public Rectangle bounds() {
            double left = Double.POSITIVE_INFINITY;
            double right = Double.NEGATIVE_INFINITY;
            double top = Double.POSITIVE_INFINITY;
            double bottom = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < 4; i++) {
                PixelPoint p = grid.at(column + (i % 2 == 0 ? -half : half), row + (i < 2 ? -half : half));
                left = Math.min(left, p.x());
                right = Math.max(right, p.x());
                top = Math.min(top, p.y());
                bottom = Math.max(bottom, p.y());
            }
            int x = (int) Math.floor(left);
            int y = (int) Math.floor(top);
            return new Rectangle(x, y, (int) Math.ceil(right) - x + 1, (int) Math.ceil(bottom) - y + 1);
        }
    }
}
