package tintwright.study;

import java.util.Map;
import org.ejml.simple.SimpleMatrix;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.optics.KubelkaMunk;
import tintwright.optics.Surface;

/** Plain ways to foretell a mix of one tint in white from other mixes of the two, each from its published form. */
final class PaintRivals {
    private static final int N = OilPaints.N;

    private final OilPaints paints;
    private final double[] white = new double[N];
    private final Map<String, Double> known;
    private final double wanted;

    /** @param known code and tint share of the mixes that may be used */
    PaintRivals(OilPaints paints, String white, Map<String, Double> known, double wanted) {
        this.paints = paints;
        this.known = known;
        this.wanted = wanted;
        for (int w = 0; w < N; w++) {
            this.white[w] = ratio(paints.spectrum(white).at(w));
        }
    }

    private static double ratio(double measured) {
        double internal = Surface.RESIN.internal(measured, Geometry.SPECULAR_INCLUDED);
        return KubelkaMunk.ratio(Math.min(0.999, Math.max(0.001, internal)));
    }

    private static double read(double ratio) {
        return Surface.RESIN.measured(KubelkaMunk.reflectance(Math.max(0, ratio)), Geometry.SPECULAR_INCLUDED);
    }

    private static Lab lab(double[] r) {
        return Lab.of(Spectrum.of(Grid.INSIDE, r), Viewing.D65_10);
    }

    /** The known mix whose share is nearest in proportion, the pure paint last. */
    private String nearest() {
        return known.entrySet().stream()
                .min(java.util.Comparator.comparingDouble(
                        mix -> mix.getValue() == 1 ? 100 : Math.abs(Math.log(mix.getValue() / wanted))))
                .orElseThrow()
                .getKey();
    }

    /** K/S of the white plus K/S per share of the tint; Duncan (1940), Proc. Phys. Soc. 52, 390. */
    Lab singleConstant() {
        String from = nearest();
        double share = known.get(from);
        double[] r = new double[N];
        for (int w = 0; w < N; w++) {
            double perShare = Math.max(0, ratio(paints.spectrum(from).at(w)) - white[w]) * (1 - share) / share;
            r[w] = read(white[w] + perShare * wanted / (1 - wanted));
        }
        return lab(r);
    }

    /** K and S of the tint at each wavelength alone, by least squares over all known mixes; the white's S is 1. */
    Lab twoConstant() {
        double[] r = new double[N];
        for (int w = 0; w < N; w++) {
            double kk = 1e-12;
            double ks = 0;
            double ss = 1e-12;
            double right1 = 0;
            double right2 = 0;
            for (Map.Entry<String, Double> mix : known.entrySet()) {
                double c = mix.getValue();
                double q = ratio(paints.spectrum(mix.getKey()).at(w));
                // c K - c q S = (1 - c) (q - q of the white), weighed by what a reading of q is worth.
                double weight = 1 / (q * q + 1e-4);
                kk += weight * c * c;
                ks -= weight * c * c * q;
                ss += weight * c * c * q * q;
                right1 += weight * c * (1 - c) * (q - white[w]);
                right2 -= weight * c * q * (1 - c) * (q - white[w]);
            }
            double det = kk * ss - ks * ks;
            double k = Math.max(0, (right1 * ss - right2 * ks) / det);
            double s = Math.max(0, (right2 * kk - right1 * ks) / det);
            r[w] = read(((1 - wanted) * white[w] + wanted * k) / (1 - wanted + wanted * s));
        }
        return lab(r);
    }

    /** The same with ln K and ln S held smooth by their second differences; Whittaker (1922), Proc. Edinb. 41, 63. */
    Lab smooth() {
        double[] x = new double[2 * N];
        for (int i = 0; i < N; i++) {
            x[N + i] = -1;
        }
        for (int step = 0; step < 60; step++) {
            SimpleMatrix h = new SimpleMatrix(2 * N, 2 * N);
            SimpleMatrix g = new SimpleMatrix(2 * N, 1);
            for (int i = 0; i < 2 * N; i++) {
                h.set(i, i, h.get(i, i) + 0.05);
                g.set(i, g.get(i) - 0.05 * (x[i] - (i < N ? 0 : -1)));
            }
            for (int part = 0; part < 2; part++) {
                for (int i = 1; i < N - 1; i++) {
                    double[] by = {1, -2, 1};
                    double bend = x[part * N + i - 1] - 2 * x[part * N + i] + x[part * N + i + 1];
                    for (int a = 0; a < 3; a++) {
                        int row = part * N + i - 1 + a;
                        g.set(row, g.get(row) - 20 * by[a] * bend);
                        for (int b = 0; b < 3; b++) {
                            int column = part * N + i - 1 + b;
                            h.set(row, column, h.get(row, column) + 20 * by[a] * by[b]);
                        }
                    }
                }
            }
            for (Map.Entry<String, Double> mix : known.entrySet()) {
                for (int w = 0; w < N; w++) {
                    double[] slope = new double[2];
                    double miss = (paints.spectrum(mix.getKey()).at(w) - mixed(x, w, mix.getValue(), slope)) / 0.005;
                    int[] at = {w, N + w};
                    for (int a = 0; a < 2; a++) {
                        g.set(at[a], g.get(at[a]) + slope[a] / 0.005 * miss);
                        for (int b = 0; b < 2; b++) {
                            h.set(at[a], at[b], h.get(at[a], at[b]) + slope[a] * slope[b] / 2.5e-5);
                        }
                    }
                }
            }
            SimpleMatrix moved = h.solve(g);
            for (int i = 0; i < 2 * N; i++) {
                x[i] += Math.max(-0.7, Math.min(0.7, moved.get(i)));
            }
        }
        double[] r = new double[N];
        for (int w = 0; w < N; w++) {
            r[w] = mixed(x, w, wanted, new double[2]);
        }
        return lab(r);
    }

    private double mixed(double[] x, int w, double c, double[] slope) {
        double k = Math.exp(x[w]);
        double s = Math.exp(x[N + w]);
        double sumS = 1 - c + c * s;
        double q = ((1 - c) * white[w] + c * k) / sumS;
        double up = read(q * 1.001);
        double byLog = (up - read(q)) / 0.001;
        slope[0] = byLog * c * k / (q * sumS);
        slope[1] = -byLog * c * s / sumS;
        return read(q);
    }
}
