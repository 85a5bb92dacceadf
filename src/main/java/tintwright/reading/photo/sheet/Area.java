package tintwright.reading.photo.sheet;

/**
 * A rectangle on the sheet, millimetres from its upper left corner.
 *
 * @param left   mm
 * @param top    mm, downwards
 * @param width  mm, above 0
 * @param height mm, above 0
 */
public record Area(double left, double top, double width, double height) {
    public Area {
        if (!(width > 0 && height > 0 && Double.isFinite(left + top + width + height))) {
            throw new IllegalArgumentException(
                    "an area must be wider and higher than 0 mm, was " + width + " by " + height + " mm");
        }
    }

    /** @param x its middle, mm */
    static Area about(double x, double y, double width, double height) {
        return new Area(x - width / 2, y - height / 2, width, height);
    }

    public double right() {
        return left + width;
    }

    public double bottom() {
        return top + height;
    }

    /** @return mm from the sheet's left edge to its middle */
    public double middleX() {
        return left + width / 2;
    }

    /** @return mm from the sheet's upper edge to its middle */
    public double middleY() {
        return top + height / 2;
    }

    /** @return true when some of this lies on that */
    boolean overlaps(Area that) {
        return left < that.right() && that.left < right() && top < that.bottom() && that.top < bottom();
    }
}
