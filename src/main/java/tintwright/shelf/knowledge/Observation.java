package tintwright.shelf.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;

/**
 * One reading of one mix of known parts, as an equation about the unknowns: what was read, minus what the film
 * model says, over how sure both are.
 */
final class Observation {
    private static final int N = Unknowns.WAVELENGTHS;
    /** What the film model itself is off by, in reflectance, as a share of it; common practice, no source. */
    private static final double MODEL_SHARE = 0.003;

    /** A judgement of ours. */
    private static final double MODEL_FLOOR = 0.0005;
    /** The same in Lab units; a judgement of ours. */
    private static final double MODEL_LAB = 0.1;
    /** How far the surface of one film strays from that of the resin, in reflectance; common practice, no source. */
    private static final double SURFACE = 0.001;
    /** How far one wet reading strays from the mean shift, in Lab units; common practice, no source. */
    private static final double WET_STRAY = 0.7;

    private final Unknowns unknowns;
    /** Whether this mix is of the cup that the unknowns know the theory's error of. */
    private final boolean ofCup;

    private final String chipId;
    private final FilmModel film;
    private final double theorySize;
    private final double[] grams;
    private final double[] shares;
    private final double total;
    private final double[] weighingGrams;
    private final Reading reading;
    private final double[] target;
    private final double[] variance;
    private final double[][] labCovariance;
    private final LabBatch projection;
    private final int[] columns;
    /** Null for a reading that shares nothing. */
    private final SharedError photoBias;

    private boolean sure;

    private final double[][] labSlope = new double[3][N];
    private Whitening whitening;
    /** Filled by {@link #evaluate}, whitened. */
    final double[] residual;
    /** Filled by {@link #differentiate}, whitened. */
    final double[][] slope;

    Observation(
            String chipId,
            Map<Integer, Double> gramsByPart,
            double[] weighingGrams,
            Reading reading,
            Unknowns unknowns,
            boolean ofCup) {
        this.unknowns = unknowns;
        this.ofCup = ofCup;
        this.chipId = chipId;
        this.weighingGrams = weighingGrams;
        this.reading = reading;
        int[] parts = gramsByPart.keySet().stream().mapToInt(Integer::intValue).toArray();
        this.grams =
                gramsByPart.values().stream().mapToDouble(Double::doubleValue).toArray();
        this.total = java.util.Arrays.stream(grams).sum();
        this.shares = new double[grams.length];
        for (int i = 0; i < grams.length; i++) {
            shares[i] = grams[i] / total;
        }
        this.film = new FilmModel(unknowns, parts);
        this.theorySize = TheoryError.size(film.tintShare(shares));
        boolean spectral = reading instanceof SpectralReading && reading.film() == FilmState.CURED;
        if (spectral) {
            SpectralReading spectrum = (SpectralReading) reading;
            target = spectrum.reflectance().resampled(Grid.INSIDE).toArray();
            variance = new double[N];
            for (int i = 0; i < N; i++) {
                double model = MODEL_FLOOR + MODEL_SHARE * target[i];
                variance[i] = spectrum.noise() * spectrum.noise() + model * model;
            }
            labCovariance = null;
            projection = null;
        } else {
            // A wet spectrum counts by its colour, for wetting shifts colours.
            Lab lab = reading.colour(reading.judgedUnder()).orElseThrow();
            projection = LabBatch.of(lab.viewing(), Grid.INSIDE);
            target = lab.axes();
            labCovariance = reading.scatter(lab.viewing())
                    .plus(Covariance.same(Math.hypot(MODEL_LAB, reading.film() == FilmState.WET ? WET_STRAY : 0)))
                    .toArray();
            variance = null;
        }
        int m = target.length;
        photoBias = SharedError.of(reading).orElse(null);
        columns = columns(unknowns);
        residual = new double[m];
        slope = new double[m][columns.length];
    }

    static double[][] positive(Covariance covariance) {
        double[][] m = covariance.toArray();
        for (int i = 0; i < 3; i++) {
            m[i][i] += 1e-6;
        }
        return m;
    }

    private int[] columns(Unknowns unknowns) {
        int[] own = film.columns();
        boolean wet = reading.film() == FilmState.WET;
        int shared = photoBias == null ? 0 : photoBias.size();
        int cup = ofCup ? TheoryError.directions()[0].length : 0;
        int[] all = java.util.Arrays.copyOf(own, own.length + cup + (wet ? 3 : 0) + shared);
        int next = own.length;
        for (int d = 0; d < cup; d++) {
            all[next++] = unknowns.theory() + d;
        }
        for (int axis = 0; wet && axis < 3; axis++) {
            all[next++] = unknowns.wetShift() + axis;
        }
        for (int k = 0; k < shared; k++) {
            all[next++] = unknowns.photo(photoBias) + k;
        }
        return all;
    }

    /** It is weighed as it stands, however far off: whether it is a slip was looked at before. */
    Observation sure() {
        sure = true;
        return this;
    }

    boolean isSure() {
        return sure;
    }

    /** @return whether this part, by its place, is in the mix */
    boolean holds(int part) {
        return java.util.Arrays.stream(film.parts()).anyMatch(p -> p == part);
    }

    String chipId() {
        return chipId;
    }

    int[] columns() {
        return columns;
    }

    int size() {
        return residual.length;
    }

    /** The whitened residual at these unknowns. */
    void evaluate(double[] z, Unknowns.Curves curves) {
        bend(z, curves);
        if (projection == null) {
            for (int w = 0; w < N; w++) {
                residual[w] = target[w] - film.reflectance()[w];
            }
            whitening = Whitening.of(variance, errors());
        } else {
            colour(z);
            whitening = Whitening.of(withErrors(labCovariance, errors()));
        }
        whitening.turn(residual);
    }

    /** The whitened slope, where it was evaluated last. */
    void differentiate() {
        if (projection == null) {
            spectralSlope();
        } else {
            colourSlope();
        }
        whitening.turn(slope, columns.length);
    }

    private void bend(double[] z, Unknowns.Curves curves) {
        double[] shift = ofCup ? unknowns.theoryOfCup(z) : new double[N];
        for (int w = 0; w < N; w++) {
            shift[w] *= theorySize;
        }
        film.evaluate(curves, shares, reading.geometry(), shift);
    }

    /** Slope of the reflectance at one wavelength against the cup's own unknowns, into a row from one place on. */
    private void addCup(int w, double by, double[] row, int from) {
        double size = by * theorySize * TheoryError.shared() * film.slopeOfLogRatio(w);
        double[] directions = TheoryError.directions()[w];
        for (int d = 0; ofCup && d < directions.length; d++) {
            row[from + d] += size * directions[d];
        }
    }

    private void spectralSlope() {
        film.differentiate();
        for (int w = 0; w < N; w++) {
            java.util.Arrays.fill(slope[w], 0);
            System.arraycopy(film.slope()[w], 0, slope[w], 0, film.columns().length);
            addCup(w, 1, slope[w], film.columns().length);
        }
    }

    private void colour(double[] z) {
        double[] lab = new double[3];
        projection.labAndSlopes(film.reflectance(), lab, labSlope);
        int photo = columns.length - (photoBias == null ? 0 : photoBias.size());
        for (int axis = 0; axis < 3; axis++) {
            lab[axis] += reading.film() == FilmState.WET ? unknowns.wetShift(axis, z) : 0;
            for (int j = photo; j < columns.length; j++) {
                lab[axis] += photoBias.loadings()[axis][j - photo] * z[columns[j]];
            }
            residual[axis] = target[axis] - lab[axis];
        }
    }

    private void colourSlope() {
        film.differentiate();
        int own = film.columns().length;
        for (int axis = 0; axis < 3; axis++) {
            double[] row = slope[axis];
            java.util.Arrays.fill(row, 0);
            RowSum.add(row, own, labSlope[axis], film.slope(), N);
            for (int w = 0; w < N; w++) {
                addCup(w, labSlope[axis][w], row, own);
            }
            int next = own + (ofCup ? TheoryError.directions()[0].length : 0);
            if (reading.film() == FilmState.WET) {
                row[next + axis] = Unknowns.wetShiftDeviation(axis);
                next += 3;
            }
            for (int j = 0; photoBias != null && j < photoBias.size(); j++) {
                row[next + j] = photoBias.loadings()[axis][j];
            }
        }
    }

    private static double[][] withErrors(double[][] covariance, double[][] errors) {
        double[][] sum = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                sum[i][j] = covariance[i][j];
                for (double[] error : errors) {
                    sum[i][j] += error[i] * error[j];
                }
            }
        }
        return sum;
    }

    /**
     * Independent errors of this one mix as steps of what is read, each one standard deviation long: a slip of the
     * scale for each part, the directions in which the theory may be off, and the surface.
     */
    private double[][] errors() {
        List<double[]> steps = new ArrayList<>();
        for (int part = 0; part < grams.length; part++) {
            if (weighingGrams[part] > 0) {
                double[] step = new double[N];
                for (int w = 0; w < N; w++) {
                    step[w] = weighingGrams[part] * film.slopeOfMass(w, part, total);
                }
                steps.add(step);
            }
        }
        steps.addAll(theory());
        double[] surface = new double[N];
        java.util.Arrays.fill(surface, SURFACE);
        steps.add(surface);
        return steps.stream().map(this::asRead).toArray(double[][]::new);
    }

    private List<double[]> theory() {
        List<double[]> steps = new ArrayList<>();
        double size = theorySize * (ofCup ? TheoryError.own() : 1);
        for (int d = 0; d < TheoryError.directions()[0].length; d++) {
            double[] step = new double[N];
            for (int w = 0; w < N; w++) {
                step[w] = size * film.slopeOfLogRatio(w) * TheoryError.directions()[w][d];
            }
            steps.add(step);
        }
        return steps;
    }

    /** A step of the spectrum as a step of what is read: itself, or L*, a*, b*. */
    private double[] asRead(double[] bySpectrum) {
        if (projection == null) {
            return bySpectrum;
        }
        double[] out = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            for (int w = 0; w < N; w++) {
                out[axis] += labSlope[axis][w] * bySpectrum[w];
            }
        }
        return out;
    }

    /** @return covariance of what this one mix is off by alone: its scale, its film, the theory; as read in Lab */
    double[][] ownErrors(double[] z, Unknowns.Curves curves) {
        bend(z, curves);
        colour(z);
        double[][] own = withErrors(new double[3][3], errors());
        double model = Math.hypot(MODEL_LAB, reading.film() == FilmState.WET ? WET_STRAY : 0);
        for (int axis = 0; axis < 3; axis++) {
            own[axis][axis] += model * model;
        }
        return own;
    }

    /** @return share by mass of every part of the shelf, by its place */
    double[] sharesByPart() {
        double[] all = new double[unknowns.ids().size()];
        for (int i = 0; i < shares.length; i++) {
            all[film.parts()[i]] = shares[i];
        }
        return all;
    }

    FilmState film() {
        return reading.film();
    }

    Geometry geometry() {
        return reading.geometry();
    }

    /** @return the reflectance the film model foretells, a copy */
    double[] film(double[] z, Unknowns.Curves curves) {
        bend(z, curves);
        return film.reflectance().clone();
    }

    /** @return what the theory may be off by in L*, a*, b* for this mix, after {@link #labSlope} */
    double[][] theoryInLab() {
        return withErrors(new double[3][3], theory().stream().map(this::asRead).toArray(double[][]::new));
    }

    /** @return the slope of L*, a*, b* against the columns, not whitened */
    double[][] labSlope(double[] z, Unknowns.Curves curves) {
        bend(z, curves);
        colour(z);
        colourSlope();
        return slope;
    }

    /** Squared length of the whitened residual. */
    double misfit() {
        double sum = 0;
        for (double r : residual) {
            sum += r * r;
        }
        return sum;
    }
}
