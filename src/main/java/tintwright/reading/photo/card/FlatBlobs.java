package tintwright.reading.photo.card;

import java.util.ArrayList;
import java.util.List;
import tintwright.reading.photo.file.Preview;

/**
 * Finds patches in a preview: connected pixels of one colour whose outline is a slanted rectangle.
 */
final class FlatBlobs {
    /** Relative steps between neighbours that still count as one colour; each finds what the others miss; a judgement of ours. */
    private static final double[] SAME = {0.035, 0.06, 0.10, 0.16};
    /** Against noise in the dark: this code is added before steps are related; a judgement of ours. */
    private static final double DARK_CODE = 12;

    /** A judgement of ours. */
    private static final int LEAST_AREA = 20;

    /** A judgement of ours. */
    private static final double MOST_AREA = 0.15;
    /** A uniform slanted rectangle has an area of 12 times the root of the determinant of its second moments; a judgement of ours. */
    private static final double RECTANGLE = 12;

    /** A judgement of ours. */
    private static final double LEAST_FULL = 0.86;

    /** A judgement of ours. */
    private static final double MOST_FULL = 1.06;

    /** A judgement of ours. */
    private static final double MOST_STRETCH = 3.5;

    private FlatBlobs() {}

    /**
     * A patch-like blob.
     *
     * @param x    centre
     * @param y    centre
     * @param area pixels
     * @param full area over that of the rectangle with the same moments, 1 for a rectangle
     */
    record Blob(double x, double y, double area, double full) {}

    static List<Blob> find(Preview preview) {
        List<Blob> all = new ArrayList<>();
        double[] step = steps(preview);
        for (double same : SAME) {
            for (Blob blob : components(preview, step, same)) {
                merge(all, blob);
            }
        }
        return all;
    }

    /** The same patch found at several steps counts once, in its most rectangular form. */
    private static void merge(List<Blob> all, Blob blob) {
        double reach = 0.25 * Math.sqrt(blob.area());
        for (int i = 0; i < all.size(); i++) {
            Blob other = all.get(i);
            if (Math.hypot(other.x() - blob.x(), other.y() - blob.y()) < reach) {
                if (blob.area() > other.area() * 0.8 && Math.abs(1 - blob.full()) < Math.abs(1 - other.full()) + 0.02) {
                    all.set(i, blob);
                }
                return;
            }
        }
        all.add(blob);
    }

    /** The largest relative step of a pixel to its right and lower neighbours. */
    private static double[] steps(Preview preview) {
        int w = preview.width();
        int h = preview.height();
        double[] out = new double[w * h];
        for (int y = 0; y < h - 1; y++) {
            for (int x = 0; x < w - 1; x++) {
                int here = preview.at(x, y);
                out[y * w + x] = Math.max(step(here, preview.at(x + 1, y)), step(here, preview.at(x, y + 1)));
            }
        }
        return out;
    }

    private static double step(int one, int other) {
        double most = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            int a = one >> shift & 255;
            int b = other >> shift & 255;
            most = Math.max(most, Math.abs(a - b) / (DARK_CODE + 0.5 * (a + b)));
        }
        return most;
    }

    private static List<Blob> components(Preview preview, double[] step, double same) {
        int w = preview.width();
        int h = preview.height();
        boolean[] taken = new boolean[w * h];
        int[] queue = new int[w * h];
        List<Blob> out = new ArrayList<>();
        for (int start = 0; start < step.length; start++) {
            if (taken[start] || step[start] > same) {
                continue;
            }
            int from = 0;
            int to = 0;
            queue[to++] = start;
            taken[start] = true;
            double sx = 0;
            double sy = 0;
            double sxx = 0;
            double sxy = 0;
            double syy = 0;
            while (from < to) {
                int at = queue[from++];
                int x = at % w;
                int y = at / w;
                sx += x;
                sy += y;
                sxx += (double) x * x;
                sxy += (double) x * y;
                syy += (double) y * y;
                int[] next = {x > 0 ? at - 1 : -1, x < w - 1 ? at + 1 : -1, y > 0 ? at - w : -1, y < h - 1 ? at + w : -1
                };
                for (int n : next) {
                    if (n >= 0 && !taken[n] && step[n] <= same) {
                        taken[n] = true;
                        queue[to++] = n;
                    }
                }
            }
            if (to < LEAST_AREA || to > MOST_AREA * w * h) {
                continue;
            }
            double mx = sx / to;
            double my = sy / to;
            // A pixel is itself a little square, with a second moment of 1/12.
            double cxx = sxx / to - mx * mx + 1.0 / 12;
            double cyy = syy / to - my * my + 1.0 / 12;
            double cxy = sxy / to - mx * my;
            double det = cxx * cyy - cxy * cxy;
            double full = to / (RECTANGLE * Math.sqrt(Math.max(1e-9, det)));
            double half = (cxx + cyy) / 2;
            double root = Math.sqrt(Math.max(0, half * half - det));
            double stretch = Math.sqrt((half + root) / Math.max(1e-9, half - root));
            if (full >= LEAST_FULL && full <= MOST_FULL && stretch <= MOST_STRETCH) {
                out.add(new Blob(mx, my, to, full));
            }
        }
        return out;
    }
}
