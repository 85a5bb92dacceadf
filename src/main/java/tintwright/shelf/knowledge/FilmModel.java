package tintwright.shelf.knowledge;

import tintwright.colour.Geometry;
import tintwright.optics.KubelkaMunk;
import tintwright.optics.Surface;

/**
 * Reflectance of a mix as read, and its slope against every unknown of its parts: Kubelka-Munk over mass-weighted
 * K and S, with the surface of a resin. The film is taken to hide.
 */
final class FilmModel {
    private static final int N = Unknowns.WAVELENGTHS;
    private static final Surface SURFACE = Surface.RESIN;

    private final Unknowns unknowns;
    private final int[] parts;
    private final int[] columns;
    private final double[] reflectance = new double[N];
    private final double[] slopeOfRatio = new double[N];
    private final double[] k = new double[N];
    private final double[] s = new double[N];
    private final double[][] slope;
    private Unknowns.Curves curves;
    private double[] shares;
    /** The shares, each as strong as it is at that share. */
    private final double[] counts;

    /** @param parts which parts of the shelf are in the mix */
    FilmModel(Unknowns unknowns, int[] parts) {
        this.unknowns = unknowns;
        this.parts = parts;
        this.counts = new double[parts.length];
        int count = 1;
        for (int part : parts) {
            count += unknowns.end(part) - unknowns.start(part);
        }
        columns = new int[count];
        int next = 0;
        for (int part : parts) {
            for (int z = unknowns.start(part); z < unknowns.end(part); z++) {
                columns[next++] = z;
            }
        }
        columns[next] = unknowns.sharedStrength();
        slope = new double[N][count];
    }

    /**
     * Fills {@link #reflectance()}.
     *
     * @param shares by mass, together 1
     * @param shift  what is added to ln K/S at each wavelength
     */
    void evaluate(Unknowns.Curves curves, double[] shares, Geometry geometry, double[] shift) {
        this.curves = curves;
        this.shares = shares;
        for (int i = 0; i < parts.length; i++) {
            counts[i] = curves.counts(parts[i], shares[i]);
        }
        for (int w = 0; w < N; w++) {
            double sumK = 0;
            double sumS = 0;
            for (int i = 0; i < parts.length; i++) {
                sumK += counts[i] * curves.k()[parts[i]][w];
                sumS += counts[i] * curves.s()[parts[i]][w];
            }
            k[w] = sumK;
            s[w] = sumS;
            double times = Math.exp(shift[w]);
            double q = times * sumK / sumS;
            double internal = KubelkaMunk.reflectance(q);
            reflectance[w] = SURFACE.measured(internal, geometry);
            slopeOfRatio[w] = -times * internal / Math.sqrt(q * (q + 2)) * SURFACE.slope(internal);
        }
    }

    /** Fills {@link #slope()} where it was evaluated last. */
    void differentiate() {
        double[] reach = new double[parts.length];
        for (int i = 0; i < reach.length; i++) {
            reach[i] = DosePower.reach(shares[i]);
        }
        for (int w = 0; w < N; w++) {
            fillSlope(w, k[w] / s[w], reach);
        }
    }

    private void fillSlope(int w, double q, double[] reach) {
        int next = 0;
        double shared = 0;
        for (int i = 0; i < parts.length; i++) {
            PartPrior prior = unknowns.prior(parts[i]);
            double byK = slopeOfRatio[w] * counts[i] * curves.k()[parts[i]][w] / s[w];
            double byS = -slopeOfRatio[w] * q * counts[i] * curves.s()[parts[i]][w] / s[w];
            for (double b : prior.absorption().basis(w)) {
                slope[w][next++] = byK * b;
            }
            for (double b : prior.scattering().basis(w)) {
                slope[w][next++] = byS * b;
            }
            if (prior.paste()) {
                slope[w][next++] = (byK + byS) * DosePower.DEVIATION * reach[i];
                shared += (byK + byS) * PartPrior.SHARED_STRENGTH;
            }
        }
        slope[w][next] = shared;
    }

    /** Change of the reflectance for one more gram of a part in a mix of {@code total} grams. */
    double slopeOfMass(int w, int i, double total) {
        double strong = DosePower.times(curves.power()[parts[i]], shares[i]);
        double dK = (strong * curves.k()[parts[i]][w] - k[w]) / total;
        double dS = (strong * curves.s()[parts[i]][w] - s[w]) / total;
        return slopeOfRatio[w] * (dK - k[w] / s[w] * dS) / s[w];
    }

    /** @return change of the reflectance with ln K/S, as it stands after the last evaluation */
    double slopeOfLogRatio(int w) {
        return slopeOfRatio[w] * k[w] / s[w];
    }

    /** @return share of tint by mass, 0 to 1 */
    double tintShare(double[] shares) {
        double sum = 0;
        for (int i = 0; i < parts.length; i++) {
            sum += unknowns.prior(parts[i]).paste() ? shares[i] : 0;
        }
        return sum;
    }

    int[] parts() {
        return parts;
    }

    /** @return which unknown each column of the slope belongs to */
    int[] columns() {
        return columns;
    }

    /** @return as read, 31 values; overwritten by the next evaluation */
    double[] reflectance() {
        return reflectance;
    }

    /** @return rows: wavelengths; columns as in {@link #columns()}; overwritten by the next differentiation */
    double[][] slope() {
        return slope;
    }
}
