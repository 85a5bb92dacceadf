package tintwright.reading.photo.card;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import tintwright.colour.Matrix3;

/** From places on a flat card to places in a photo, the camera held at any angle. */
public final class Homography {
    private final double[] h;
    private final double[] back;

    private Homography(double[] h) {
        this.h = h;
        this.back = inverse(h);
    }

    /**
     * @param from four places on the card, no three in line
     * @param to   where they lie in the photo, no three in line
     */
    static Homography of(double[][] from, List<PixelPoint> to) {
        DMatrixRMaj a = new DMatrixRMaj(8, 8);
        DMatrixRMaj b = new DMatrixRMaj(8, 1);
        for (int i = 0; i < 4; i++) {
            double u = from[i][0];
            double v = from[i][1];
            double x = to.get(i).x();
            double y = to.get(i).y();
            double[][] rows = {{u, v, 1, 0, 0, 0, -u * x, -v * x}, {0, 0, 0, u, v, 1, -u * y, -v * y}};
            for (int k = 0; k < 2; k++) {
                for (int c = 0; c < 8; c++) {
                    a.set(2 * i + k, c, rows[k][c]);
                }
                b.set(2 * i + k, k == 0 ? x : y);
            }
        }
        DMatrixRMaj out = new DMatrixRMaj(8, 1);
        if (!CommonOps_DDRM.solve(a, b, out)) {
            throw new IllegalArgumentException("three of the four corners lie in one line");
        }
        double[] h = new double[9];
        System.arraycopy(out.data, 0, h, 0, 8);
        h[8] = 1;
        return new Homography(h);
    }

    /** @return the map with the least squared error of four or more pairs; empty when they lie in one line */
    static Optional<Homography> nearest(List<double[]> from, List<PixelPoint> to) {
        int n = from.size();
        double cx = 0;
        double cy = 0;
        for (PixelPoint p : to) {
            cx += p.x() / n;
            cy += p.y() / n;
        }
        double spread = 1e-9;
        for (PixelPoint p : to) {
            spread += Math.hypot(p.x() - cx, p.y() - cy) / n;
        }
        double[] weight = new double[n];
        Arrays.fill(weight, 1);
        double[] h = null;
        for (int round = 0; round < 3; round++) {
            DMatrixRMaj a = new DMatrixRMaj(2 * n, 8);
            DMatrixRMaj b = new DMatrixRMaj(2 * n, 1);
            for (int i = 0; i < n; i++) {
                double u = from.get(i)[0];
                double v = from.get(i)[1];
                double x = (to.get(i).x() - cx) / spread;
                double y = (to.get(i).y() - cy) / spread;
                double[][] rows = {{u, v, 1, 0, 0, 0, -u * x, -v * x}, {0, 0, 0, u, v, 1, -u * y, -v * y}};
                for (int k = 0; k < 2; k++) {
                    for (int c = 0; c < 8; c++) {
                        a.set(2 * i + k, c, weight[i] * rows[k][c]);
                    }
                    b.set(2 * i + k, weight[i] * (k == 0 ? x : y));
                }
            }
            DMatrixRMaj out = new DMatrixRMaj(8, 1);
            if (!CommonOps_DDRM.solve(a, b, out)) {
                return Optional.empty();
            }
            h = out.data.clone();
            for (int i = 0; i < n; i++) {
                // The next round weighs by distance, so that errors count in pixels.
                weight[i] = 1 / Math.max(0.2, Math.abs(h[6] * from.get(i)[0] + h[7] * from.get(i)[1] + 1));
            }
        }
        double[] full = new double[9];
        for (int c = 0; c < 3; c++) {
            double w = c < 2 ? h[6 + c] : 1;
            full[c] = spread * h[c] + cx * w;
            full[3 + c] = spread * h[3 + c] + cy * w;
            full[6 + c] = w;
        }
        try {
            return Optional.of(new Homography(full));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    PixelPoint at(double u, double v) {
        double w = h[6] * u + h[7] * v + h[8];
        return new PixelPoint((h[0] * u + h[1] * v + h[2]) / w, (h[3] * u + h[4] * v + h[5]) / w);
    }

    /** @return true when a place in the photo shows a place on the card within a square about another */
    boolean within(double x, double y, double u, double v, double half) {
        double w = back[6] * x + back[7] * y + back[8];
        return Math.abs((back[0] * x + back[1] * y + back[2]) / w - u) <= half
                && Math.abs((back[3] * x + back[4] * y + back[5]) / w - v) <= half;
    }

    private static double[] inverse(double[] m) {
        double[][] i = Matrix3.inverse(new double[][] {{m[0], m[1], m[2]}, {m[3], m[4], m[5]}, {m[6], m[7], m[8]}});
        return new double[] {i[0][0], i[0][1], i[0][2], i[1][0], i[1][1], i[1][2], i[2][0], i[2][1], i[2][2]};
    }
}
