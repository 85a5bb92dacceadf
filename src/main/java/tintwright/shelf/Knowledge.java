package tintwright.shelf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.optics.KubelkaMunk;
import tintwright.optics.Surface;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;

/**
 * What the chips of a shelf have taught: absorption and scattering of every base and tint, and how sure each is.
 *
 * <p>Derived from the chips alone, and the same bit for bit whenever it is made again from the same chips, in
 * whatever order they stand. Immutable; safe to share between threads.
 */
public final class Knowledge {
    /** How far a weighing on a pocket scale may be off, in grams: half its 0.01 g step; common practice. */
    public static final double WEIGHING_GRAMS = 0.006;
    /** The step of a usual pocket scale, grams; common practice, no source. */
    private static final double USUAL_STEP = 0.01;

    /** Shares this near are of one mix; small beside all that it is held against, a judgement of ours. */
    private static final double SAME_SHARE = 1e-9;

    /** Chance that a tub holds another pigment than its family says; common practice, no source. */
    private static final double ANOTHER_PIGMENT = 0.1;
    /**
     * Squared deviations of a tint from its family, all directions together, above which it is asked whether it is
     * that family at all: below it no looser one can explain the chips so much better.
     */
    private static final double FAR_OFF_ITS_FAMILY = 24;

    /** Equally likely versions that are drawn: a chance of one in forty is then four of them; a bound on work, a judgement of ours. */
    static final int VERSIONS = 160;

    /** A seed, any would do. */
    private static final long SEED = 20260101L;

    private final Shelf shelf;
    private final List<Chip> extra;
    private final Map<String, Map<String, Double>> weighedWithin;
    private final Set<String> sure;
    private final Set<String> loose;
    private final Unknowns unknowns;
    private final List<Observation> observations;
    private final Learning learning;
    /** The best estimate of the unknowns: where the learning ended, or the mean of what comparing left. */
    private final double[] best;
    /** Equally likely values of the unknowns; null where the curvature of the learning says them. */
    private final double[][] drawn;

    private final Unknowns.Curves curves;
    private Ensemble ensemble;
    private List<Doubt> doubts;
    private Knowledge ofCup;
    private SharedError ofCupBeside;
    private Comparison lastCompared;

    private Knowledge(
            Shelf shelf,
            List<Chip> extra,
            Map<String, Map<String, Double>> weighedWithin,
            Set<String> sure,
            Knowledge from) {
        this.shelf = shelf;
        this.extra = List.copyOf(extra);
        this.weighedWithin = Map.copyOf(weighedWithin);
        this.sure = Set.copyOf(sure);
        List<Chip> chips = new ArrayList<>(shelf.chips());
        chips.addAll(extra);
        chips.sort(Comparator.comparing(Chip::id));
        Collection<SharedError> photos = photos(chips).values();
        Fit best = fit(chips, photos, from == null ? Set.of() : from.loose, from == null ? null : from.fitted());
        for (String tint : from == null ? best.suspects(shelf) : List.<String>of()) {
            Set<String> more = new TreeSet<>(best.loose());
            more.add(tint);
            Fit other = fit(chips, photos, more, best);
            if (other.learning().evidence() + Math.log(ANOTHER_PIGMENT)
                    <= best.learning().evidence() + Math.log(1 - ANOTHER_PIGMENT)) {
                break;
            }
            best = other;
        }
        this.unknowns = best.unknowns();
        this.observations = best.observations();
        this.learning = best.learning();
        this.loose = best.loose();
        this.best = learning.best();
        this.drawn = null;
        this.curves = unknowns.curves(this.best);
    }

    /** The same, ready for dabs of one cup held beside one thing: both have errors that they share. */
    private Knowledge(Knowledge from, SharedError beside) {
        this.shelf = from.shelf;
        this.extra = from.extra;
        this.weighedWithin = from.weighedWithin;
        this.sure = from.sure;
        this.loose = from.loose;
        List<Chip> chips = new ArrayList<>(shelf.chips());
        chips.addAll(extra);
        chips.sort(Comparator.comparing(Chip::id));
        Map<String, SharedError> photos = photos(chips);
        photos.merge(beside.name(), beside, SharedError::larger);
        this.unknowns = new Unknowns(shelf, photos.values(), loose, true);
        this.observations = observations(chips, unknowns);
        this.learning = new Learning(unknowns, observations).run(unknowns.carried(from.unknowns, from.best));
        this.best = learning.best();
        this.drawn = null;
        this.curves = unknowns.curves(best);
    }

    /** The same, with other versions. */
    private Knowledge(Knowledge from, double[] best, double[][] drawn) {
        this.shelf = from.shelf;
        this.extra = from.extra;
        this.weighedWithin = from.weighedWithin;
        this.sure = from.sure;
        this.loose = from.loose;
        this.unknowns = from.unknowns;
        this.observations = from.observations;
        this.learning = from.learning;
        this.best = best;
        this.drawn = drawn;
        this.curves = unknowns.curves(best);
    }

    private Knowledge ofCup(SharedError beside) {
        if (ofCup == null || !ofCupBeside.name().equals(beside.name())) {
            ofCup = new Knowledge(this, beside);
            ofCupBeside = beside;
        }
        return ofCup;
    }

    /** What was asked of {@link #compared} last, and the answer: looked at a cup is more often than changed. */
    private record Comparison(
            List<Compared> mixes, SharedError beside, Compared.Likelihood likelihood, Compared.Seen seen) {
        boolean asks(List<Compared> others, SharedError other, Compared.Likelihood likely) {
            return mixes.equals(others) && beside.name().equals(other.name()) && likelihood.equals(likely);
        }
    }

    /**
     * What is known after mixes of one cup were held against something whose own reading may be off: a likelihood of
     * any shape, such as that of "a little too dark". Chips of the cup that were read count before it, with
     * {@link #with(List, Map)}; the answer to a later {@code with} forgets what was compared.
     *
     * @param mixes  what was held against it, first to last
     * @param beside name and width of what its reading may be off by
     * @param more   how many unknowns of the caller's own there are
     * @param likelihood asked the same again, one that is equal gets the same answer at once
     */
    public synchronized Compared.Seen compared(
            List<Compared> mixes,
            ColourReading.PhotoBias beside,
            Viewing viewing,
            Geometry geometry,
            int more,
            Compared.Likelihood likelihood) {
        SharedError error = SharedError.of(beside);
        if (lastCompared != null && lastCompared.asks(mixes, error, likelihood)) {
            return lastCompared.seen();
        }
        Knowledge of = ofCup(error);
        List<Observation> films = new ArrayList<>();
        for (Compared mix : mixes) {
            Map<Integer, Double> grams = new LinkedHashMap<>();
            of.spread(mix.parts(), 1, grams, of.unknowns);
            double[] off = grams.keySet().stream()
                    .mapToDouble(
                            part -> mix.off().getOrDefault(of.unknowns.ids().get(part), 0.0))
                    .toArray();
            Reading stands = new ColourReading(
                    new Lab(50, 0, 0, viewing), Covariance.same(1), geometry, mix.film(), Optional.empty());
            films.add(new Observation("", grams, off, stands, of.unknowns, true));
        }
        ComparedMixes.Drawn seen = new ComparedMixes(
                        of.unknowns, of.learning, error, films, LabBatch.of(viewing, Grid.INSIDE), more, likelihood)
                .drawn();
        Compared.Seen answer = new Compared.Seen(new Knowledge(of, seen.mean(), seen.rows()), seen.versions());
        lastCompared = new Comparison(List.copyOf(mixes), error, likelihood, answer);
        return answer;
    }

    /** One estimate, with some tints taken for any pigment. */
    private record Fit(Set<String> loose, Unknowns unknowns, List<Observation> observations, Learning learning) {
        /** Tints that their family explains badly, or that stand in a chip which counts little, the worst first. */
        List<String> suspects(Shelf shelf) {
            Map<String, Double> found = new LinkedHashMap<>();
            for (Tint tint : shelf.tints()) {
                int part = unknowns.indexOf(tint.id());
                double far = 0;
                for (int i = unknowns.start(part); i < unknowns.end(part); i++) {
                    far += learning.best()[i] * learning.best()[i];
                }
                boolean doubted = false;
                for (int o = 0; o < observations.size(); o++) {
                    doubted |= learning.weight(o) < Learning.DOUBTED
                            && observations.get(o).holds(part);
                }
                if ((doubted || far > FAR_OFF_ITS_FAMILY) && tint.family() != PigmentFamily.UNKNOWN) {
                    found.put(tint.id(), -far);
                }
            }
            return found.entrySet().stream()
                    .sorted(Map.Entry.comparingByValue())
                    .map(Map.Entry::getKey)
                    .toList();
        }
    }

    private Fit fitted() {
        return new Fit(loose, unknowns, observations, learning);
    }

    /** @param near an estimate to start from, with other chips or other tints let loose; null for none */
    private Fit fit(List<Chip> chips, Collection<SharedError> photos, Set<String> any, Fit near) {
        Unknowns all = new Unknowns(shelf, photos, any, !extra.isEmpty());
        List<Observation> seen = observations(chips, all);
        double[] start = near == null
                ? null
                : all.carried(near.unknowns(), near.learning().best());
        return new Fit(any, all, seen, new Learning(all, seen).run(start));
    }

    /**
     * How far one weighing may be off.
     *
     * @param scaleStep smallest step of the scale, grams, above 0
     * @return standard deviation, grams: {@link #WEIGHING_GRAMS} at the step of a pocket scale, in proportion to others
     */
    public static double weighingGrams(double scaleStep) {
        return WEIGHING_GRAMS * scaleStep / USUAL_STEP;
    }

    /** @return what the chips on this shelf teach */
    public static Knowledge of(Shelf shelf) {
        return new Knowledge(shelf, List.of(), Map.of(), Set.of(), null);
    }

    /** @return what a shelf that differs by a chip teaches: learned from where this one stands, a few steps away */
    Knowledge near(Shelf other) {
        return new Knowledge(other, List.of(), weighedWithin, sure, this);
    }

    /** @return what is known with these samples beside the shelf's own: readings of a cup, for instance */
    public Knowledge with(List<Chip> more) {
        return with(more, Map.of());
    }

    /**
     * The same as {@link #with(List)}, for samples weighed better or worse than usual.
     *
     * @param within by chip id, then by part: standard deviation of its weighing in grams; a part that is not
     *               named is off by {@link #WEIGHING_GRAMS}
     */
    public Knowledge with(List<Chip> more, Map<String, Map<String, Double>> within) {
        return with(more, within, Set.of());
    }

    /**
     * The same as {@link #with(List, Map)}.
     *
     * @param taken ids of chips whose readings count as they stand, however far they lie from all else: whether they
     *              are slips was looked at before
     */
    public Knowledge with(List<Chip> more, Map<String, Map<String, Double>> within, Set<String> taken) {
        List<Chip> all = new ArrayList<>(extra);
        all.addAll(more);
        Set<String> known = new HashSet<>(sure);
        known.addAll(taken);
        Map<String, Map<String, Double>> both = new LinkedHashMap<>(weighedWithin);
        both.putAll(within);
        return new Knowledge(shelf, all, both, known, this);
    }

    private static Map<String, SharedError> photos(List<Chip> chips) {
        Map<String, SharedError> named = new LinkedHashMap<>();
        for (Chip chip : chips) {
            for (Reading reading : chip.readings()) {
                SharedError.of(reading).ifPresent(one -> named.merge(one.name(), one, SharedError::larger));
            }
        }
        return named;
    }

    /**
     * A reading of something else in a photo whose chips have been learned from: what they taught of the camera is
     * taken out of it, and what is still unsure of the camera is stated.
     *
     * @return the reading as it came when none of the chips stood in its photo
     */
    public ColourReading throughChips(ColourReading reading) {
        Optional<SharedError> photo = SharedError.of(reading).filter(unknowns::knows);
        if (photo.isEmpty()) {
            return reading;
        }
        SharedError shared = photo.get();
        int from = unknowns.photo(shared);
        double[] bias = shared.times(Arrays.copyOfRange(best, from, from + shared.size()));
        double[][] left = new double[3][unknowns.count()];
        for (int axis = 0; axis < 3; axis++) {
            System.arraycopy(shared.loadings()[axis], 0, left[axis], from, shared.size());
            left[axis] = learning.whitened(left[axis]);
        }
        Lab lab = reading.lab();
        return new ColourReading(
                new Lab(lab.lightness() - bias[0], lab.a() - bias[1], lab.b() - bias[2], lab.viewing()),
                reading.covariance(),
                reading.geometry(),
                reading.film(),
                Optional.of(new ColourReading.PhotoBias(
                        reading.photo().orElseThrow().photo(), Covariance.of(products(left, left)))));
    }

    private List<Observation> observations(List<Chip> chips, Unknowns unknowns) {
        List<Observation> list = new ArrayList<>();
        for (Chip chip : chips) {
            Map<Integer, Double> grams = new LinkedHashMap<>();
            spread(chip.parts(), 1, grams, unknowns);
            double[] off = new double[grams.size()];
            Map<String, Double> stated = weighedWithin.getOrDefault(chip.id(), Map.of());
            int place = 0;
            for (int part : grams.keySet()) {
                off[place++] = stated.getOrDefault(unknowns.ids().get(part), WEIGHING_GRAMS);
            }
            for (Reading reading : chip.readings()) {
                Observation one = new Observation(chip.id(), grams, off, reading, unknowns, extra.contains(chip));
                list.add(sure.contains(chip.id()) ? one.sure() : one);
            }
        }
        return list;
    }

    /** Grams of bases and tints alone: a leftover counts as what is in it. */
    private void spread(Parts parts, double factor, Map<Integer, Double> grams, Unknowns unknowns) {
        parts.grams().forEach((id, mass) -> {
            if (shelf.leftover(id).isPresent()) {
                Parts inside = shelf.leftover(id).get().parts();
                spread(inside, factor * mass / inside.total(), grams, unknowns);
            } else if (shelf.base(id).isPresent() || shelf.tint(id).isPresent()) {
                grams.merge(unknowns.indexOf(id), mass * factor, Double::sum);
            } else {
                throw new IllegalArgumentException("\"" + id + "\" is not a base, tint or leftover of this shelf");
            }
        });
    }

    public Shelf shelf() {
        return shelf;
    }

    /** @return ids of the bases, then of the tints: the places of the rows of {@link #absorption()} */
    public List<String> ids() {
        return List.copyOf(unknowns.ids());
    }

    /**
     * @return K of every part at 31 wavelengths, a copy; the first base's scattering is about 1; what a cup that was
     *     read has shown of it is in it
     */
    public double[][] absorption() {
        double[][] k = copy(curves.k());
        double[] shift = unknowns.theoryOfCup(best);
        for (double[] row : k) {
            for (int w = 0; w < row.length; w++) {
                row[w] *= Math.exp(TheoryError.size(0) * shift[w]);
            }
        }
        return k;
    }

    /** @return S of every part at 31 wavelengths, a copy */
    public double[][] scattering() {
        return copy(curves.s());
    }

    private static double[][] copy(double[][] rows) {
        double[][] out = new double[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            out[i] = rows[i].clone();
        }
        return out;
    }

    /**
     * Shares by mass of every base and tint, leftovers taken apart.
     *
     * @return one share for each of {@link #ids()}, together 1
     */
    public double[] shares(Parts parts) {
        Map<Integer, Double> grams = new LinkedHashMap<>();
        spread(parts, 1, grams, unknowns);
        double[] shares = new double[unknowns.ids().size()];
        double total = grams.values().stream().mapToDouble(Double::doubleValue).sum();
        grams.forEach((part, mass) -> shares[part] = mass / total);
        return shares;
    }

    /** @return the cured colour of a mix, and how sure that is */
    public Prediction predict(Parts parts, Viewing viewing, Geometry geometry) {
        Observation mix = observation(parts, viewing, geometry);
        double[] reflectance = mix.film(best, curves);
        double[][] whitened = whitenedSlope(mix);
        Spectrum spectrum = Spectrum.of(Grid.INSIDE, reflectance);
        Covariance sure = Covariance.of(products(whitened, whitened)).plus(Covariance.of(mix.theoryInLab()));
        return new Prediction(spectrum, Lab.of(spectrum, viewing), sure);
    }

    /**
     * How sure a mix would be once a chip of known parts had been read by an instrument: nothing is learned, the
     * spread alone is foretold.
     *
     * @param mix  whose colour is asked for
     * @param chip the chip that might be made
     */
    public Covariance covarianceAfter(Parts mix, Parts chip, Viewing viewing, Geometry geometry) {
        Observation mixed = observation(mix, viewing, geometry);
        Observation made = observation(chip, viewing, geometry);
        double[][] ofMix = whitenedSlope(mixed);
        double[][] ofChip = whitenedSlope(made);
        double[][] read = products(ofChip, ofChip);
        double[][] theory = made.theoryInLab();
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                read[i][j] += theory[i][j];
            }
            read[i][i] += ColourReading.USUAL_NOISE * ColourReading.USUAL_NOISE;
        }
        Factor factor = Factor.of(read);
        double[][] shared = products(ofMix, ofChip);
        for (double[] row : shared) {
            factor.forward(row);
        }
        double[][] left = products(ofMix, ofMix);
        double[][] gained = products(shared, shared);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                left[i][j] -= gained[i][j];
            }
            left[i][i] = Math.max(0, left[i][i]);
        }
        return Covariance.of(left).plus(Covariance.of(mixed.theoryInLab()));
    }

    private Observation observation(Parts parts, Viewing viewing, Geometry geometry) {
        Map<Integer, Double> grams = new LinkedHashMap<>();
        spread(parts, 1, grams, unknowns);
        return new Observation(
                "", grams, new double[grams.size()], placeholder(viewing, geometry), unknowns, unknowns.theory() >= 0);
    }

    /** Slope of L*, a*, b* against all unknowns, over the factor of the curvature: its products are covariances. */
    private double[][] whitenedSlope(Observation mix) {
        double[][] slope = mix.labSlope(best, curves);
        double[][] whitened = new double[3][unknowns.count()];
        for (int axis = 0; axis < 3; axis++) {
            for (int c = 0; c < mix.columns().length; c++) {
                whitened[axis][mix.columns()[c]] = slope[axis][c];
            }
            whitened[axis] = learning.whitened(whitened[axis]);
        }
        return whitened;
    }

    private static double[][] products(double[][] left, double[][] right) {
        double[][] out = new double[left.length][right.length];
        for (int i = 0; i < left.length; i++) {
            for (int j = 0; j < right.length; j++) {
                for (int p = 0; p < left[i].length; p++) {
                    out[i][j] += left[i][p] * right[j][p];
                }
            }
        }
        return out;
    }

    /** @return the cured colour of a mix by the best estimate alone: {@link #predict} without how sure it is */
    public Lab colour(Parts parts, Viewing viewing, Geometry geometry) {
        double[] lab = new double[3];
        LabBatch.of(viewing, Grid.INSIDE).lab(film(parts, geometry), lab);
        return new Lab(lab[0], lab[1], lab[2], viewing);
    }

    /** @return the reflectance of a mix as an instrument would read it, by the best estimate */
    public Spectrum reflectance(Parts parts, Geometry geometry) {
        return Spectrum.of(Grid.INSIDE, film(parts, geometry));
    }

    private double[] film(Parts parts, Geometry geometry) {
        double[] shares = shares(parts);
        double[] sumK = new double[Unknowns.WAVELENGTHS];
        double[] sumS = new double[Unknowns.WAVELENGTHS];
        for (int part = 0; part < shares.length; part++) {
            for (int w = 0; w < sumK.length && shares[part] > 0; w++) {
                sumK[w] += shares[part] * curves.k()[part][w];
                sumS[w] += shares[part] * curves.s()[part][w];
            }
        }
        double[] shift = unknowns.theoryOfCup(best);
        double size = TheoryError.size(unknowns.tintShare(shares));
        for (int w = 0; w < sumK.length; w++) {
            double ratio = sumK[w] / sumS[w] * Math.exp(size * shift[w]);
            sumK[w] = Surface.RESIN.measured(KubelkaMunk.reflectance(ratio), geometry);
        }
        return sumK;
    }

    private static Reading placeholder(Viewing viewing, Geometry geometry) {
        return new ColourReading(
                new Lab(50, 0, 0, viewing), Covariance.same(1), geometry, FilmState.CURED, java.util.Optional.empty());
    }

    /** @return equally likely versions of the shelf, made when first asked for */
    public synchronized Ensemble ensemble() {
        if (ensemble == null) {
            double[][] all = drawn == null ? draws() : drawn;
            double[][][] k = new double[VERSIONS][][];
            double[][][] s = new double[VERSIONS][][];
            double[][] theory = new double[VERSIONS][];
            Random stray = new Random(SEED + 1);
            double[] own = new double[TheoryError.directions()[0].length];
            for (int version = 0; version < VERSIONS; version++) {
                double[] z = all[version];
                Unknowns.Curves curve = unknowns.curves(z);
                k[version] = curve.k();
                s[version] = curve.s();
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
            ensemble = new Ensemble(ids(), k, s, theory, unknowns.tints(), unknowns.photos(all));
        }
        return ensemble;
    }

    private double[][] draws() {
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

    /**
     * A tint of a family as it usually is, at the strength this shop's pastes have shown.
     *
     * @return K and S at 31 wavelengths
     */
    public double[][] usual(PigmentFamily family) {
        PartPrior prior = PartPrior.tint(family);
        double shared = Math.exp(PartPrior.SHARED_STRENGTH * best[unknowns.sharedStrength()]);
        double[][] out = new double[2][Unknowns.WAVELENGTHS];
        for (int w = 0; w < Unknowns.WAVELENGTHS; w++) {
            out[0][w] = shared * Math.exp(prior.absorption().middle(w));
            out[1][w] = shared * Math.exp(prior.scattering().middle(w));
        }
        return out;
    }

    /**
     * How well the strength of a base or tint is known.
     *
     * @return standard deviation in ln of its absorption, averaged where it absorbs: 0.05 is 5 per cent; about
     *         0.6 for a tint never seen
     */
    public double strengthDeviation(String id) {
        int part = unknowns.indexOf(id);
        PartPrior prior = unknowns.prior(part);
        double[] direction = new double[unknowns.count()];
        double total = java.util.Arrays.stream(curves.k()[part]).sum();
        for (int w = 0; w < Unknowns.WAVELENGTHS; w++) {
            double weight = curves.k()[part][w] / total;
            double[] basis = prior.absorption().basis(w);
            for (int i = 0; i < basis.length; i++) {
                direction[unknowns.start(part) + i] += weight * basis[i];
            }
        }
        direction[unknowns.sharedStrength()] = prior.paste() ? PartPrior.SHARED_STRENGTH : 0;
        double sum = 0;
        for (double d : learning.whitened(direction)) {
            sum += d * d;
        }
        return Math.sqrt(sum);
    }

    /** @return how many chips hold this part */
    public int chipsWith(String id) {
        return (int) shelf.chips().stream()
                .filter(chip -> chip.parts().grams(id) > 0)
                .count();
    }

    /** @return true when some mix was read both wet and cured, here or in the cup: a pair that teaches the shift */
    public boolean hasWetPair() {
        List<Chip> all = new ArrayList<>(shelf.chips());
        all.addAll(extra);
        return all.stream()
                .anyMatch(wet -> read(wet, FilmState.WET)
                        && all.stream()
                                .anyMatch(
                                        cured -> read(cured, FilmState.CURED) && sameMix(wet.parts(), cured.parts())));
    }

    private static boolean read(Chip chip, FilmState film) {
        return chip.readings().stream().anyMatch(reading -> reading.film() == film);
    }

    private static boolean sameMix(Parts one, Parts other) {
        return one.grams().keySet().equals(other.grams().keySet())
                && one.grams().keySet().stream().allMatch(id -> Math.abs(one.share(id) - other.share(id)) < SAME_SHARE);
    }

    /**
     * The shift from cured to wet, as far as pairs have taught it.
     *
     * @return three pairs for L*, a*, b*: how much a wet film reads above a cured one, and its standard deviation
     */
    public double[][] wetShift() {
        double[][] shift = new double[3][2];
        for (int axis = 0; axis < 3; axis++) {
            double scale = Unknowns.wetShiftDeviation(axis);
            double[] direction = new double[unknowns.count()];
            direction[unknowns.wetShift() + axis] = scale;
            double sum = 0;
            for (double d : learning.whitened(direction)) {
                sum += d * d;
            }
            shift[axis][0] = unknowns.wetShift(axis, best);
            shift[axis][1] = Math.sqrt(sum);
        }
        return shift;
    }

    /** @return chips that contradict the rest, the worst first; empty when all agree */
    public synchronized List<Doubt> doubts() {
        if (doubts == null) {
            Map<String, Double> suspects = new LinkedHashMap<>();
            for (int i = 0; i < observations.size(); i++) {
                if (learning.weight(i) < 0.5) {
                    suspects.merge(observations.get(i).chipId(), learning.weight(i), Math::min);
                }
            }
            doubts = new Doubts(this, extra)
                    .about(suspects.entrySet().stream()
                            .sorted(Map.Entry.comparingByValue())
                            .map(Map.Entry::getKey)
                            .toList());
        }
        return doubts;
    }
}
