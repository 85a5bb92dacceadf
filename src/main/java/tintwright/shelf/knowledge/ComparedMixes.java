package tintwright.shelf.knowledge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import tintwright.colour.LabBatch;
import tintwright.optics.KubelkaMunk;
import tintwright.optics.Surface;
import tintwright.reading.FilmState;

/**
 * Colours of mixes beside something whose reading is off, for any values of the unknowns. Of the hundreds of unknowns
 * only those combinations are walked through that move one of these colours, found by their slopes; along them nothing
 * is taken for a straight line, for what an eye says leaves much of them as wide as it was. The others stay as they
 * were.
 *
 * <p>Judgements of ours: so many steps repeat a range to a tenth of it.
 */
final class ComparedMixes {
    private static final int N = Unknowns.WAVELENGTHS;
    private static final EllipticalSlice.Walk WALK = new EllipticalSlice.Walk(400, Ensemble.VERSIONS, 12, 53L);
    /** What nobody can see of a colour, Lab units: a way that moves none by more, one standard deviation long, is left out. */
    private static final double UNSEEN = 0.1;
    /** Those of 32 different dabs, and of what they were held against; a judgement of ours. */
    private static final int MOST_WAYS = 99;

    private final Unknowns unknowns;
    private final Factor curvature;
    private final double[] best;
    /** Orthonormal combinations of the unknowns, before the curvature's root is taken out; in rows. */
    private final double[][] ways = new double[MOST_WAYS][];

    private int count;
    private final SharedError beside;
    private final Mix[] mixes;
    private final LabBatch projection;
    private final Compared.Likelihood likelihood;
    /** What each way adds to ln K of every part at every wavelength, to ln S, to the theory; then to bias and wetness. */
    private final double[][] steps;

    private final double[] middle;
    private final double[] curves;
    private final double[][] lab;
    private final double[] more;
    private final double[] work = new double[N];

    /** One mix: what it is made of, and what it alone is off by. */
    private record Mix(Observation observation, double[] shares, double theorySize, Factor own) {}

    /**
     * @param films each mix as an observation whose reading stands for nothing
     * @param more  how many unknowns the caller has
     */
    ComparedMixes(
            Unknowns unknowns,
            Learning learning,
            SharedError beside,
            List<Observation> films,
            LabBatch projection,
            int more,
            Compared.Likelihood likelihood) {
        this.unknowns = unknowns;
        this.curvature = learning.forDraws();
        this.best = learning.best();
        this.beside = beside;
        this.projection = projection;
        this.likelihood = likelihood;
        this.more = new double[more];
        this.mixes = new Mix[films.size()];
        this.lab = new double[mixes.length][3];
        Unknowns.Curves at = unknowns.curves(best);
        for (double[] loading : beside.loadings()) {
            double[] slope = new double[best.length];
            System.arraycopy(loading, 0, slope, unknowns.photo(beside), loading.length);
            addWay(slope);
        }
        for (int m = 0; m < mixes.length; m++) {
            Observation film = films.get(m);
            double[] shares = film.sharesByPart();
            mixes[m] = new Mix(
                    film, shares, TheoryError.size(unknowns.tintShare(shares)), Factor.of(film.ownErrors(best, at)));
            for (double[] row : film.labSlope(best, at)) {
                double[] slope = new double[best.length];
                for (int c = 0; c < row.length; c++) {
                    slope[film.columns()[c]] = row[c];
                }
                addWay(slope);
            }
        }
        int size = places();
        this.middle = values(best, true);
        this.curves = new double[size];
        this.steps = new double[size][count];
        for (int way = 0; way < count; way++) {
            double[] z = ways[way].clone();
            curvature.backward(z);
            double[] step = values(z, false);
            for (int i = 0; i < size; i++) {
                steps[i][way] = step[i];
            }
        }
    }

    /** Keeps what this slope has that none before it has. */
    private void addWay(double[] slope) {
        curvature.forward(slope);
        for (int again = 0; again < 2; again++) {
            for (int i = 0; i < count; i++) {
                double along = 0;
                for (int j = 0; j < slope.length; j++) {
                    along += ways[i][j] * slope[j];
                }
                for (int j = 0; j < slope.length; j++) {
                    slope[j] -= along * ways[i][j];
                }
            }
        }
        double left = length(slope);
        if (left > UNSEEN && count < MOST_WAYS) {
            for (int j = 0; j < slope.length; j++) {
                slope[j] /= left;
            }
            ways[count++] = slope;
        }
    }

    private static double length(double[] row) {
        double sum = 0;
        for (double v : row) {
            sum += v * v;
        }
        return Math.sqrt(sum);
    }

    private int parts() {
        return unknowns.ids().size();
    }

    /** ln K and ln S of every part, the theory's error, bias, wet shift and each part's dose power, in one row. */
    private int places() {
        return 2 * parts() * N + N + 6 + parts();
    }

    private double[] values(double[] z, boolean withMiddle) {
        double[] out = new double[places()];
        double[][] logs = unknowns.logs(z, withMiddle);
        for (int row = 0; row < logs.length; row++) {
            System.arraycopy(logs[row], 0, out, row * N, N);
        }
        System.arraycopy(unknowns.theoryOfCup(z), 0, out, logs.length * N, N);
        int from = unknowns.photo(beside);
        System.arraycopy(
                beside.times(Arrays.copyOfRange(z, from, from + beside.size())), 0, out, (logs.length + 1) * N, 3);
        for (int axis = 0; axis < 3; axis++) {
            double none = withMiddle ? 0 : unknowns.wetShift(axis, new double[z.length]);
            out[(logs.length + 1) * N + 3 + axis] = unknowns.wetShift(axis, z) - none;
        }
        System.arraycopy(unknowns.powers(z), 0, out, (logs.length + 1) * N + 6, parts());
        return out;
    }

    /** Equally likely values of the unknowns, how the mixes look with them, and the mean. */
    record Drawn(double[] mean, double[][] rows, List<Compared.Version> versions) {}

    /** Draws in proportion to the likelihood: along the ways, then an error of each mix alone, then the caller's. */
    Drawn drawn() {
        EllipticalSlice.Draws draws = EllipticalSlice.draws(
                count + 3 * mixes.length + more.length, ComparedMixes::draw, this::likelihood, WALK);
        double[][] rows = new double[draws.rows().length][];
        List<Compared.Version> versions = new ArrayList<>();
        Random random = new Random(WALK.seed() + 1);
        double[] rest = new double[best.length];
        for (int v = 0; v < rows.length; v++) {
            for (int i = 0; i < rest.length; i++) {
                // What nobody looked at: each draw is followed by its mirror image.
                rest[i] = v % 2 == 1 ? -rest[i] : random.nextGaussian();
            }
            rows[v] = unknowns(draws.rows()[v], rest);
            version(draws.rows()[v]);
            versions.add(new Compared.Version(
                    Arrays.stream(lab).map(double[]::clone).toArray(double[][]::new), more.clone()));
        }
        double[] mean = unknowns(draws.mean(), new double[best.length]);
        double[] middle = new double[best.length];
        for (double[] row : rows) {
            for (int i = 0; i < middle.length; i++) {
                middle[i] += row[i] / rows.length;
            }
        }
        for (double[] row : rows) {
            for (int i = 0; i < middle.length; i++) {
                // All steps of the walk tell the middle better than those that are kept.
                row[i] += mean[i] - middle[i];
            }
        }
        return new Drawn(mean, rows, versions);
    }

    /** These amounts of the ways, and whatever this has beside them. */
    private double[] unknowns(double[] along, double[] rest) {
        double[] z = rest.clone();
        for (int way = 0; way < count; way++) {
            double by = along[way];
            for (int i = 0; i < z.length; i++) {
                by -= ways[way][i] * rest[i];
            }
            for (int i = 0; i < z.length; i++) {
                z[i] += by * ways[way][i];
            }
        }
        curvature.backward(z);
        for (int i = 0; i < z.length; i++) {
            z[i] += best[i];
        }
        return z;
    }

    private static void draw(Random random, double[] draw) {
        for (int i = 0; i < draw.length; i++) {
            draw[i] = random.nextGaussian();
        }
    }

    private double likelihood(double[] at) {
        version(at);
        return likelihood.ln(lab, more);
    }

    private void version(double[] at) {
        Arrays.fill(curves, Double.NaN);
        int bias = (2 * parts() + 1) * N;
        for (int m = 0; m < mixes.length; m++) {
            film(mixes[m], at);
            projection.lab(work, lab[m]);
            boolean wet = mixes[m].observation().film() == FilmState.WET;
            for (int axis = 0; axis < 3; axis++) {
                lab[m][axis] += value(bias + axis, at) + (wet ? value(bias + 3 + axis, at) : 0);
                for (int k = 0; k <= axis; k++) {
                    lab[m][axis] += mixes[m].own().at(axis, k) * at[count + 3 * m + k];
                }
            }
        }
        System.arraycopy(at, at.length - more.length, more, 0, more.length);
    }

    private double value(int place, double[] at) {
        double sum = middle[place];
        double[] row = steps[place];
        for (int way = 0; way < count; way++) {
            sum += row[way] * at[way];
        }
        return sum;
    }

    /** K or S of one part at one wavelength, worked out once for all mixes. */
    private double curve(int place, double[] at) {
        if (Double.isNaN(curves[place])) {
            curves[place] = Math.exp(value(place, at));
        }
        return curves[place];
    }

    private void film(Mix mix, double[] at) {
        int theory = 2 * parts() * N;
        double[] counts = new double[parts()];
        for (int part = 0; part < counts.length; part++) {
            double share = mix.shares()[part];
            counts[part] = share > 0 ? share * DosePower.times(value(theory + N + 6 + part, at), share) : 0;
        }
        for (int w = 0; w < N; w++) {
            double sumK = 0;
            double sumS = 0;
            for (int part = 0; part < parts(); part++) {
                if (counts[part] > 0) {
                    sumK += counts[part] * curve(2 * part * N + w, at);
                    sumS += counts[part] * curve((2 * part + 1) * N + w, at);
                }
            }
            if (Double.isNaN(curves[theory + w])) {
                curves[theory + w] = value(theory + w, at);
            }
            double ratio = sumK / sumS * TheoryError.times(mix.theorySize(), curves[theory + w]);
            work[w] = Surface.RESIN.measured(
                    KubelkaMunk.reflectance(ratio), mix.observation().geometry());
        }
    }
}
