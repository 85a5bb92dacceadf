package tintwright.shelf.knowledge;

import java.util.Arrays;
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
    /** K, then S, of every part: rows by wavelength, columns by version. */
    private final double[][][][] byWavelength;

    private final double[][] theoryByWavelength;
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
        this.byWavelength = new double[ids.size()][2][N][VERSIONS];
        this.theoryByWavelength = new double[N][VERSIONS];
        for (int version = 0; version < VERSIONS; version++) {
            for (int w = 0; w < N; w++) {
                theoryByWavelength[w][version] = theory[version][w];
                for (int part = 0; part < byWavelength.length; part++) {
                    byWavelength[part][0][w][version] = k[version][part][w];
                    byWavelength[part][1][w][version] = s[version][part][w];
                }
            }
        }
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
        // Each draw is followed by its mirror image, so that the middle of all is the best estimate.
        for (int version = 0; version < VERSIONS; version += 2) {
            for (int i = 0; i < draw.length; i++) {
                draw[i] = random.nextGaussian();
            }
            factor.backward(draw);
            for (int i = 0; i < draw.length; i++) {
                all[version][i] = best[i] + draw[i];
                all[version + 1][i] = best[i] - draw[i];
            }
        }
        return all;
    }

    /** @return how many versions there are */
    public int size() {
        return k.length;
    }

    /** @return whether this part is a tint */
    public boolean isTint(int part) {
        return tint[part];
    }

    /**
     * The cured colour of a mix in every version.
     *
     * @param parts  which bases and tints are in it, by their place in {@link Knowledge#ids()}
     * @param shares a row for each of them: its share by mass in each version
     * @param tinted share of all tints together by mass, in each version
     * @param labs   filled with a row of L*, a*, b* for each version
     */
    public void colours(
            int[] parts, double[][] shares, double[] tinted, LabBatch projection, Geometry geometry, double[][] labs) {
        double[][] counts = new double[parts.length][VERSIONS];
        for (int i = 0; i < parts.length; i++) {
            for (int version = 0; version < VERSIONS; version++) {
                double share = shares[i][version];
                counts[i][version] = share * DosePower.times(power[version][parts[i]], share);
            }
        }
        double[] size = new double[VERSIONS];
        for (int version = 0; version < VERSIONS; version++) {
            size[version] = TheoryError.size(tinted[version]);
        }
        double[][] film = new double[N][VERSIONS];
        double[] sumK = new double[VERSIONS];
        double[] sumS = new double[VERSIONS];
        for (int w = 0; w < N; w++) {
            Arrays.fill(sumK, 0);
            Arrays.fill(sumS, 0);
            for (int i = 0; i < parts.length; i++) {
                addTimes(counts[i], byWavelength[parts[i]][0][w], sumK);
                addTimes(counts[i], byWavelength[parts[i]][1][w], sumS);
            }
            double[] stray = theoryByWavelength[w];
            for (int version = 0; version < VERSIONS; version++) {
                sumK[version] *= TheoryError.times(size[version], stray[version]);
            }
            Surface.RESIN.measureFilms(sumK, sumS, geometry, film[w]);
        }
        projection.labs(film, labs);
    }

    /** Long rows without a branch, which the compiler does four at a time. */
    private static void addTimes(double[] counts, double[] values, double[] sums) {
        for (int version = 0; version < sums.length; version++) {
            sums[version] += counts[version] * values[version];
        }
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
