package tintwright.reading.photo.card;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tintwright.reading.photo.file.Pixels;

/**
 * How wide the edges between the patches of a card are: the card itself shows whether the photo is sharp.
 */
public final class Sharpness {
    /** Codes by which two places along a line must differ to show an edge, over the largest code; a judgement of ours. */
    private static final double LEAST_CONTRAST = 0.08;

    /** A judgement of ours. */
    private static final int LEAST_EDGES = 3;

    private Sharpness() {}

    /** @return the middle width of the edges over the distance from patch to patch; empty when none is plain */
    public static OptionalDouble edgeWidth(Pixels pixels, PlacedCard placed) {
        List<Double> widths = new ArrayList<>();
        for (int row = 0; row < placed.card().rows(); row++) {
            for (int column = 0; column + 1 < placed.card().columns(); column++) {
                widthBetween(pixels, placed.centre(row, column), placed.centre(row, column + 1))
                        .ifPresent(widths::add);
            }
        }
        if (widths.size() < LEAST_EDGES) {
            return OptionalDouble.empty();
        }
        widths.sort(null);
        return OptionalDouble.of(widths.get(widths.size() / 2));
    }

    private static OptionalDouble widthBetween(Pixels pixels, PixelPoint from, PixelPoint to) {
        double distance = from.distance(to);
        int steps = (int) Math.ceil(distance / pixels.step());
        double[] code = new double[steps + 1];
        int[] rgb = new int[8];
        for (int i = 0; i <= steps; i++) {
            double part = i / (double) steps;
            // Three lines side by side: noise must not look like an edge.
            double across = 0;
            for (int k = -1; k <= 1; k++) {
                double off = k * pixels.step() * 2 / distance;
                int x = (int) Math.round(from.x() + part * (to.x() - from.x()) - off * (to.y() - from.y()));
                int y = (int) Math.round(from.y() + part * (to.y() - from.y()) + off * (to.x() - from.x()));
                if (!pixels.codes(x, y, rgb)) {
                    return OptionalDouble.empty();
                }
                across += (rgb[0] + rgb[1] + rgb[2]) / (9.0 * pixels.largest());
            }
            code[i] = across;
        }
        double most = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        double steepest = 0;
        for (int i = 0; i <= steps; i++) {
            most = Math.max(most, code[i]);
            least = Math.min(least, code[i]);
            if (i >= 2) {
                steepest = Math.max(steepest, Math.abs(code[i] - code[i - 2]) / 2);
            }
        }
        if (most - least < LEAST_CONTRAST || steepest == 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of((most - least) / steepest / steps);
    }
}
