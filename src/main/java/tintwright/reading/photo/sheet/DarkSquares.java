package tintwright.reading.photo.sheet;

import java.util.ArrayList;
import java.util.List;
import tintwright.reading.photo.card.PixelPoint;

/**
 * Finds the sheet's black squares near where a plane sheet would have them: how far off they are is its bend.
 */
final class DarkSquares {
    /** How far from its place on a plane a square is looked for, mm: a sheet bent over a side of 0.5 m radius; a judgement of ours. */
    private static final double REACH = 10;
    /** Darker than this share of the paper about it, a pixel belongs to a square; a judgement of ours. */
    private static final double DARK = 0.55;
    /** Fewer pixels than this on a side do not tell where a square is; a judgement of ours. */
    private static final double LEAST_SIDE = 4;

    private DarkSquares() {}

    /** @return the squares that were found, with their places in the photo */
    static List<SheetPose.Seen> near(SheetPose pose, GreyPicture picture) {
        List<SheetPose.Seen> found = new ArrayList<>();
        for (Area dot : pose.layout().dots()) {
            double side = pose.pixelsPerMm(dot.middleX(), dot.middleY()) / picture.scale() * dot.width();
            if (side >= LEAST_SIDE) {
                PixelPoint middle = find(pose, dot, picture);
                if (middle != null) {
                    found.add(new SheetPose.Seen(dot.middleX(), dot.middleY(), middle));
                }
            }
        }
        return found;
    }

    private static PixelPoint find(SheetPose pose, Area dot, GreyPicture picture) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 4; i++) {
            PixelPoint p =
                    pose.at(dot.middleX() + (i % 2 == 0 ? -REACH : REACH), dot.middleY() + (i < 2 ? -REACH : REACH));
            left = Math.min(left, p.x() / picture.scale());
            right = Math.max(right, p.x() / picture.scale());
            top = Math.min(top, p.y() / picture.scale());
            bottom = Math.max(bottom, p.y() / picture.scale());
        }
        int x0 = (int) Math.floor(left);
        int y0 = (int) Math.floor(top);
        int w = (int) Math.ceil(right) - x0;
        int h = (int) Math.ceil(bottom) - y0;
        if (x0 < 0 || y0 < 0 || x0 + w >= picture.width() || y0 + h >= picture.height()) {
            return null;
        }
        int[] counts = new int[256];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                counts[picture.at(x0 + x, y0 + y)]++;
            }
        }
        int paper = 255;
        for (int left10 = w * h / 10; paper > 0 && left10 > counts[paper]; paper--) {
            left10 -= counts[paper];
        }
        double wanted = areaOf(pose, dot) / (picture.scale() * picture.scale());
        return nearestBlob(picture, x0, y0, w, h, DARK * paper, wanted);
    }

    private static double areaOf(SheetPose pose, Area dot) {
        PixelPoint a = pose.at(dot.left(), dot.top());
        PixelPoint b = pose.at(dot.right(), dot.top());
        PixelPoint c = pose.at(dot.left(), dot.bottom());
        return Math.abs((b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x()));
    }

    /** The dark blob of about the wanted area nearest to the middle that does not touch the border. */
    private static PixelPoint nearestBlob(
            GreyPicture picture, int x0, int y0, int w, int h, double dark, double wanted) {
        boolean[] seen = new boolean[w * h];
        int[] stack = new int[w * h];
        PixelPoint best = null;
        double nearest = Double.POSITIVE_INFINITY;
        for (int start = 0; start < seen.length; start++) {
            if (seen[start] || picture.at(x0 + start % w, y0 + start / w) >= dark) {
                continue;
            }
            int size = 1;
            stack[0] = start;
            seen[start] = true;
            double sumX = 0;
            double sumY = 0;
            int count = 0;
            boolean border = false;
            while (size > 0) {
                int at = stack[--size];
                int x = at % w;
                int y = at / w;
                sumX += x;
                sumY += y;
                count++;
                border |= x == 0 || y == 0 || x == w - 1 || y == h - 1;
                for (int side = 0; side < 4; side++) {
                    int nx = x + (side == 0 ? 1 : side == 1 ? -1 : 0);
                    int ny = y + (side == 2 ? 1 : side == 3 ? -1 : 0);
                    if (nx >= 0 && ny >= 0 && nx < w && ny < h) {
                        int next = ny * w + nx;
                        if (!seen[next] && picture.at(x0 + nx, y0 + ny) < dark) {
                            seen[next] = true;
                            stack[size++] = next;
                        }
                    }
                }
            }
            double away = Math.hypot(sumX / count - w / 2.0, sumY / count - h / 2.0);
            if (!border && count > 0.45 * wanted && count < 1.9 * wanted && away < nearest) {
                nearest = away;
                best = new PixelPoint(
                        (x0 + sumX / count + 0.5) * picture.scale(), (y0 + sumY / count + 0.5) * picture.scale());
            }
        }
        return best;
    }
}
