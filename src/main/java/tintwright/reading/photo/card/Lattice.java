package tintwright.reading.photo.card;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Blobs that stand in rows and columns, numbered from one of them.
 */
final class Lattice {
    /** A neighbour may lie this far from where it is expected, over the step; a judgement of ours. */
    private static final double OFF = 0.28;
    /** Sine of the least angle between rows and columns: less would take a diagonal for a column; a judgement of ours. */
    private static final double UPRIGHT = 0.75;

    /** A judgement of ours. */
    private static final double SAME_AREA = 2.2;
    /** Steps between blobs, over the side of a blob; a judgement of ours. */
    private static final double LEAST_STEP = 1.0;

    /** A judgement of ours. */
    private static final double MOST_STEP = 2.4;

    /** A blob and its number. */
    record Node(int column, int row, FlatBlobs.Blob blob) {}

    private record Seat(int column, int row) {}

    private Lattice() {}

    /** @return the lattices found, the one with most blobs first */
    static List<List<Node>> find(List<FlatBlobs.Blob> blobs) {
        List<List<Node>> found = new ArrayList<>();
        for (FlatBlobs.Blob seed : blobs) {
            List<FlatBlobs.Blob> near = neighbours(seed, blobs);
            for (FlatBlobs.Blob right : near) {
                double ax = right.x() - seed.x();
                double ay = right.y() - seed.y();
                for (FlatBlobs.Blob down : near) {
                    double bx = down.x() - seed.x();
                    double by = down.y() - seed.y();
                    double cross = ax * by - ay * bx;
                    double lengths = Math.hypot(ax, ay) * Math.hypot(bx, by);
                    double ratio = Math.hypot(ax, ay) / Math.hypot(bx, by);
                    if (cross > UPRIGHT * lengths && ratio > 0.4 && ratio < 2.5) {
                        List<Node> nodes = grow(seed, ax, ay, bx, by, blobs);
                        if (nodes.size() >= 4) {
                            found.add(nodes);
                        }
                    }
                }
            }
        }
        found.sort((one, other) -> other.size() - one.size());
        return found;
    }

    private static List<FlatBlobs.Blob> neighbours(FlatBlobs.Blob seed, List<FlatBlobs.Blob> blobs) {
        double side = Math.sqrt(seed.area());
        List<FlatBlobs.Blob> out = new ArrayList<>();
        for (FlatBlobs.Blob other : blobs) {
            double apart = Math.hypot(other.x() - seed.x(), other.y() - seed.y());
            if (other != seed && alike(seed, other) && apart > LEAST_STEP * side && apart < MOST_STEP * side) {
                out.add(other);
            }
        }
        return out;
    }

    private static boolean alike(FlatBlobs.Blob one, FlatBlobs.Blob other) {
        double ratio = one.area() / other.area();
        return ratio < SAME_AREA && ratio > 1 / SAME_AREA;
    }

    private record Step(double ax, double ay, double bx, double by) {}

    private static List<Node> grow(
            FlatBlobs.Blob seed, double ax, double ay, double bx, double by, List<FlatBlobs.Blob> blobs) {
        Map<Seat, FlatBlobs.Blob> seats = new HashMap<>();
        Map<FlatBlobs.Blob, Step> steps = new HashMap<>();
        Deque<Node> open = new ArrayDeque<>();
        Node first = new Node(0, 0, seed);
        seats.put(new Seat(0, 0), seed);
        steps.put(seed, new Step(ax, ay, bx, by));
        open.add(first);
        int[][] ways = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}};
        while (!open.isEmpty()) {
            Node at = open.poll();
            Step step = steps.get(at.blob());
            for (int[] way : ways) {
                Seat seat = new Seat(at.column() + way[0], at.row() + way[1]);
                if (seats.containsKey(seat)) {
                    continue;
                }
                double dx = way[0] * step.ax() + way[1] * step.bx();
                double dy = way[0] * step.ay() + way[1] * step.by();
                FlatBlobs.Blob next = nearest(at.blob(), dx, dy, blobs);
                if (next == null || steps.containsKey(next)) {
                    continue;
                }
                // The step follows the perspective: half from here, half as found.
                double fx = (next.x() - at.blob().x()) * (way[0] + way[1]);
                double fy = (next.y() - at.blob().y()) * (way[0] + way[1]);
                Step own = way[0] != 0
                        ? new Step((step.ax() + fx) / 2, (step.ay() + fy) / 2, step.bx(), step.by())
                        : new Step(step.ax(), step.ay(), (step.bx() + fx) / 2, (step.by() + fy) / 2);
                seats.put(seat, next);
                steps.put(next, own);
                open.add(new Node(seat.column(), seat.row(), next));
            }
        }
        List<Node> nodes = new ArrayList<>();
        seats.forEach((seat, blob) -> nodes.add(new Node(seat.column(), seat.row(), blob)));
        return nodes;
    }

    private static FlatBlobs.Blob nearest(FlatBlobs.Blob from, double dx, double dy, List<FlatBlobs.Blob> blobs) {
        FlatBlobs.Blob best = null;
        double least = OFF * Math.hypot(dx, dy);
        for (FlatBlobs.Blob other : blobs) {
            double apart = Math.hypot(other.x() - from.x() - dx, other.y() - from.y() - dy);
            if (apart < least && alike(from, other)) {
                least = apart;
                best = other;
            }
        }
        return best;
    }
}
