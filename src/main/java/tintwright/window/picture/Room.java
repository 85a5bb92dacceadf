package tintwright.window.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The room of a picture in which words find their place: what is taken stays free of words, and what has no place
 * is left out rather than written over something else. Lengths are pixels, y runs down.
 */
final class Room {
    private static final int DIRECTIONS = 24;

    private final Box inside;
    private final List<Box> taken = new ArrayList<>();
    private final List<double[]> lines = new ArrayList<>();
    private double[] round = {0, 0, Double.POSITIVE_INFINITY};

    /** A rectangle with its sides upright. */
    record Box(double x, double y, double width, double height) {
        static Box around(double middleX, double middleY, double width, double height) {
            return new Box(middleX - width / 2, middleY - height / 2, width, height);
        }

        boolean overlaps(Box other) {
            return x < other.x + other.width
                    && other.x < x + width
                    && y < other.y + other.height
                    && other.y < y + height;
        }

        boolean within(Box other) {
            return x >= other.x
                    && y >= other.y
                    && x + width <= other.x + other.width
                    && y + height <= other.y + other.height;
        }

        /** @return true when any part of the line from the first point to the second lies inside */
        boolean crossedBy(double x1, double y1, double x2, double y2) {
            double from = 0;
            double to = 1;
            double[][] sides = {{x - x1, x + width - x1, x2 - x1}, {y - y1, y + height - y1, y2 - y1}};
            for (double[] side : sides) {
                if (Math.abs(side[2]) < 1e-9) {
                    if (side[0] > 0 || side[1] < 0) {
                        return false;
                    }
                    continue;
                }
                double enter = Math.min(side[0] / side[2], side[1] / side[2]);
                double leave = Math.max(side[0] / side[2], side[1] / side[2]);
                from = Math.max(from, enter);
                to = Math.min(to, leave);
            }
            return from <= to;
        }

        double middleX() {
            return x + width / 2;
        }

        double middleY() {
            return y + height / 2;
        }
    }

    Room(Box inside) {
        this.inside = inside;
    }

    /** Keeps all words inside a circle, too. */
    void round(double middleX, double middleY, double radius) {
        round = new double[] {middleX, middleY, radius};
    }

    void take(Box box) {
        taken.add(box);
    }

    void line(double x1, double y1, double x2, double y2) {
        lines.add(new double[] {x1, y1, x2, y2});
    }

    boolean free(Box box) {
        double cornerX = Math.abs(box.middleX() - round[0]) + box.width() / 2;
        double cornerY = Math.abs(box.middleY() - round[1]) + box.height() / 2;
        return Math.hypot(cornerX, cornerY) <= round[2]
                && box.within(inside)
                && taken.stream().noneMatch(box::overlaps)
                && lines.stream().noneMatch(line -> box.crossedBy(line[0], line[1], line[2], line[3]));
    }

    /** Takes the first of these places that is free. */
    Optional<Box> first(List<Box> places) {
        Optional<Box> found = places.stream().filter(this::free).findFirst();
        found.ifPresent(this::take);
        return found;
    }

    /**
     * Takes the free place nearest to a mark.
     *
     * @param from    distance of the words' edge from the mark's middle at which the search starts
     * @param to      distance at which it gives up
     * @param prefer  direction tried first, radians anticlockwise from the right
     */
    Optional<Box> near(double markX, double markY, double width, double height, double from, double to, double prefer) {
        List<Integer> turns = new ArrayList<>();
        for (int i = 0; i < DIRECTIONS; i++) {
            turns.add(i);
        }
        turns.sort(Comparator.comparingInt(i -> Math.min(i, DIRECTIONS - i)));
        double step = Math.max(2, height / 4);
        List<Box> places = new ArrayList<>();
        for (double away = from; away <= to; away += step) {
            for (int turn : turns) {
                double angle = prefer + 2 * Math.PI * turn / DIRECTIONS;
                double ux = Math.cos(angle);
                double uy = -Math.sin(angle);
                places.add(
                        Box.around(markX + ux * (away + width / 2), markY + uy * (away + height / 2), width, height));
            }
        }
        return first(places);
    }

    /**
     * Moves boxes of one column apart until none overlaps, as little as a pass down and a pass up allow.
     *
     * @param middles wanted middles; changed in place
     * @param heights of each box
     * @param gap     least distance of two boxes
     * @return false when they do not fit between top and bottom
     */
    static boolean stack(double[] middles, double[] heights, double gap, double top, double bottom) {
        Integer[] order = new Integer[middles.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        java.util.Arrays.sort(order, Comparator.comparingDouble(i -> middles[i]));
        double least = top;
        for (int i : order) {
            middles[i] = Math.max(middles[i], least + heights[i] / 2);
            least = middles[i] + heights[i] / 2 + gap;
        }
        double most = bottom;
        for (int k = order.length - 1; k >= 0; k--) {
            int i = order[k];
            middles[i] = Math.min(middles[i], most - heights[i] / 2);
            most = middles[i] - heights[i] / 2 - gap;
        }
        return most + gap >= top - 1e-6;
    }
}
