package tintwright.shelf.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Random;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.LabBatch;
import tintwright.optics.Surface;
import tintwright.reading.ColourReading;

/**
 * Equally likely versions of the whole shelf, drawn from what is known: each with K and S of every part. What a
 * mix does in all of them is how sure its colour is, without assuming that colours go wrong in straight lines.
 * The draws are fixed, so the same knowledge always gives the same answer.
 */
public final class Ensemble {
    /** Equally likely versions that are drawn: a chance of one in forty is then four of them; a bound on work, a judgement of ours. */
    static final int VERSIONS = 160;

    /** A seed, any would do. */
    private static final long SEED = 20260101L;

    private static final int N = Grid.INSIDE.count();

    private final List<String> ids;
    private final double[][][] k;
    private final double[][][] s;
    private final double[][] power;
    private final double[][] theory;
    private final boolean[] tint;
    private final Map<String, double[][]> photos;

    /**
     * @param power  of its share by which a part's strength changes, in each version
     * @param theory what the theory is off by in ln K/S in each version, 31 values, for a size of 1
     * @param tint   for each part whether it is a tint
     */
    Ensemble(
            List<String> ids,
            double[][][] k,
            double[][][] s,
            double[][] power,
            double[][] theory,
            boolean[] tint,
            Map<String, double[][]> photos) {
        this.power = power;
        this.theory = theory;
        this.tint = tint;
        this.ids = ids;
        this.k = k;
        this.s = s;
        this.photos = photos;
    }

    /** @param all equally likely values of the unknowns */
    static Ensemble of(Unknowns unknowns, double[][] all) {
        double[][][] k = new double[VERSIONS][][];
        double[][][] s = new double[VERSIONS][][];
        double[][] power = new double[VERSIONS][];
        double[][] theory = new double[VERSIONS][];
        Random stray = new Random(SEED + 1);
        double[] own = new double[TheoryError.directions()[0].length];
        for (int version = 0; version < VERSIONS; version++) {
            double[] z = all[version];
            Unknowns.Curves curve = unknowns.curves(z);
            k[version] = curve.k();
            s[version] = curve.s();
            power[version] = curve.power();
            for (int d = 0; d < own.length; d++) {
                own[d] = version % 2 == 1 ? -own[d] : stray.nextGaussian();
            }
            boolean read = unknowns.theory() >= 0;
            theory[version] = TheoryError.curve(own, read ? TheoryError.own() : 1);
            double[] shared = unknowns.theoryOfCup(z);
            for (int w = 0; w < shared.length; w++) {
                theory[version][w] += shared[w];
            }
        }
        return new Ensemble(unknowns.ids(), k, s, power, theory, unknowns.tints(), unknowns.photos(all));
    }

    /** @return equally likely values of the unknowns, by the curvature of the learning around the best estimate */
    static double[][] draws(Unknowns unknowns, Learning learning, double[] best) {
        Random random = new Random(SEED);
        double[][] all = new double[VERSIONS][unknowns.count()];
        Factor factor = learning.forDraws();
        double[] draw = new double[unknowns.count()];
        for (int version = 0; version < VERSIONS; version++) {
            double[] z = all[version];
            for (int i = 0; i < z.length; i++) {
                // Each draw is followed by its mirror image, so that the middle of all is the best estimate.
                draw[i] = version % 2 == 1 ? -draw[i] : random.nextGaussian();
                z[i] = draw[i];
            }
            factor.backward(z);
            for (int i = 0; i < z.length; i++) {
                z[i] += best[i];
            }
        }
        return all;
    }

    /** @return how many versions there are */
    public int size() {
        return k.length;
    }

    /**
     * The cured colour of a mix in one version.
     *
     * @param version   0 to {@link #size()} - 1
     * @param partIndex which bases and tints are in it, by their place in {@link Knowledge#ids()}
     * @param shares    share of each by mass, together 1
     * @param lab       filled with L*, a*, b*
     * @param work      31 values to work in
     */
    public void colour(
            int version,
            int[] partIndex,
            double[] shares,
            LabBatch projection,
            Geometry geometry,
            double[] lab,
            double[] work) {
        double tinted = 0;
        for (int i = 0; i < partIndex.length; i++) {
            tinted += tint[partIndex[i]] ? shares[i] : 0;
        }
        double size = TheoryError.size(tinted);
        double[] sumS = new double[N];
        java.util.Arrays.fill(work, 0);
        for (int i = 0; i < partIndex.length; i++) {
            double share = shares[i] * DosePower.times(power[version][partIndex[i]], shares[i]);
            double[] absorb = k[version][partIndex[i]];
            double[] scatter = s[version][partIndex[i]];
            for (int w = 0; w < N; w++) {
                work[w] += share * absorb[w];
                sumS[w] += share * scatter[w];
            }
        }
        double[] stray = theory[version];
        for (int w = 0; w < N; w++) {
            work[w] = work[w] / sumS[w] * TheoryError.times(size, stray[w]);
        }
        Surface.RESIN.measureFilm(work, geometry);
        projection.lab(work, lab);
    }

    /**
     * What the theory is off by for a mix, in one version.
     *
     * @param tintShare share of all tints together by mass, 0 to 1
     * @return what K/S is multiplied by at 31 wavelengths
     */
    public double[] stray(int version, double tintShare) {
        double[] out = new double[N];
        double size = TheoryError.size(tintShare);
        for (int w = 0; w < N; w++) {
            out[w] = TheoryError.times(size, theory[version][w]);
        }
        return out;
    }

    /**
     * Adds grams of one part to sums of K and S, 31 values each, as one version has them.
     *
     * @param share of this part in the mix, all of its grams together; strength goes with the dose
     */
    public void add(int version, int part, double grams, double share, double[] sumK, double[] sumS) {
        double counts = grams * DosePower.times(power[version][part], share);
        for (int w = 0; w < N; w++) {
            sumK[w] += counts * k[version][part][w];
            sumS[w] += counts * s[version][part][w];
        }
    }

    /**
     * What one photo shows too high in each version: as far as chips in it have taught it, otherwise as far as it
     * may be off at all.
     *
     * @return a row of L*, a*, b* for every version
     */
    public double[][] bias(ColourReading.PhotoBias photo) {
        SharedError shared = SharedError.of(photo);
        double[][] known = photos.get(shared.name());
        Random random = new Random(photo.photo().hashCode());
        double[][] out = new double[size()][];
        double[] draw = new double[shared.size()];
        for (int version = 0; version < out.length; version++) {
            for (int k = 0; k < draw.length; k++) {
                boolean taught = known != null && k < known[version].length;
                draw[k] = taught ? known[version][k] : version % 2 == 1 ? -draw[k] : random.nextGaussian();
            }
            out[version] = shared.times(draw);
        }
        return out;
    }

    /** @return the bases and tints, in the order of their places */
    public List<String> ids() {
        return ids;
    }
}
