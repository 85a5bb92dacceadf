package tintwright.optics;

import tintwright.colour.Geometry;
import tintwright.colour.LabBatch;

/**
 * From amounts to colour for many mixes of the same stocks, opaque film, nothing allocated after construction.
 *
 * <p>K and S of a mix are the sums over its parts (Duncan 1940, Proc. Phys. Soc. 52, 390); then the film, the surface
 * and the colour. The same answers as {@link KubelkaMunk}, {@link Surface} and {@code Lab} one after the other, to
 * 1e-9. Not for two threads at once.
 */
public final class MixBatch {
    private final double[][] absorption;
    private final double[][] scattering;
    private final LabBatch colour;
    private final int count;
    private final double through;
    private final double inside;
    private final double gloss;
    private final double[] k;
    private final double[] s;
    private final double[] reflectance;

    /**
     * @param absorption K of each stock, one row per stock, one column per wavelength of {@code colour.grid()}
     * @param scattering S of each stock, likewise
     */
    public MixBatch(double[][] absorption, double[][] scattering, Surface surface, Geometry geometry, LabBatch colour) {
        this.count = colour.grid().count();
        if (absorption.length != scattering.length) {
            throw new IllegalArgumentException(
                    "expected as many rows of S as of K, " + absorption.length + ", got " + scattering.length);
        }
        this.absorption = copy(absorption);
        this.scattering = copy(scattering);
        this.colour = colour;
        this.through = (1 - surface.outside()) * (1 - surface.inside());
        this.inside = surface.inside();
        this.gloss = geometry == Geometry.SPECULAR_INCLUDED ? surface.outside() : 0;
        this.k = new double[count];
        this.s = new double[count];
        this.reflectance = new double[count];
    }

    private double[][] copy(double[][] rows) {
        double[][] out = new double[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            if (rows[i].length != count) {
                throw new IllegalArgumentException(
                        "expected " + count + " wavelengths of stock " + i + ", got " + rows[i].length);
            }
            out[i] = rows[i].clone();
        }
        return out;
    }

    /** @return how many stocks */
    public int stocks() {
        return absorption.length;
    }

    /**
     * One mix.
     *
     * @param amounts 0 or more of each stock, from index {@code from} on; only their ratios matter, one above 0
     * @param lab     L*, a*, b* are written from {@code at} on
     */
    public void lab(double[] amounts, int from, double[] lab, int at) {
        java.util.Arrays.fill(k, 0);
        java.util.Arrays.fill(s, 0);
        for (int stock = 0; stock < absorption.length; stock++) {
            double amount = amounts[from + stock];
            if (amount != 0) {
                add(amount, absorption[stock], k);
                add(amount, scattering[stock], s);
            }
        }
        film(k, s, reflectance);
        colour.lab(reflectance, 0, lab, at);
    }

    /** Many mixes: amounts of one mix after the other, L*, a*, b* of one after the other. */
    public void labs(double[] amounts, int mixes, double[] lab) {
        for (int m = 0; m < mixes; m++) {
            lab(amounts, m * stocks(), lab, 3 * m);
        }
    }

    private static void add(double amount, double[] row, double[] sum) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += amount * row[i];
        }
    }

    private void film(double[] k, double[] s, double[] out) {
        for (int i = 0; i < out.length; i++) {
            // S / (K + S + sqrt(K (K + 2 S))): the film without a quotient of its own.
            double internal = s[i] / (k[i] + s[i] + Math.sqrt(k[i] * (k[i] + 2 * s[i])));
            out[i] = gloss + through * internal / (1 - inside * internal);
        }
    }
}
