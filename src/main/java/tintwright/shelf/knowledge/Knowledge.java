package tintwright.shelf.knowledge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;

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

    /** How many shelves are remembered, some megabytes each: now, before, and what it is held
     * against; a judgement of ours. */
    private static final int REMEMBERED = 3;
    /** What was learned lately; the last asked about is the last to go. */
    private static final Map<Shelf, Knowledge> LATELY = new LinkedHashMap<>(REMEMBERED, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Shelf, Knowledge> eldest) {
            return size() > REMEMBERED;
        }
    };

    private final Shelf shelf;
    private final Evidence evidence;
    private final Evidence.Fit fit;
    private final Unknowns unknowns;
    private final Learning learning;
    /** The best estimate of the unknowns: where the learning ended, or the mean of what comparing left. */
    private final double[] best;
    /** Equally likely values of the unknowns; null where the curvature of the learning says them. */
    private final double[][] drawn;

    private final Unknowns.Curves curves;
    private final Sureness sureness;
    private Ensemble ensemble;
    private List<Doubt> doubts;
    private Knowledge ofCup;
    private SharedError ofCupBeside;
    private Comparison lastCompared;

    private Knowledge(Evidence evidence, Evidence.Fit fit, double[] best, double[][] drawn) {
        this.evidence = evidence;
        this.shelf = evidence.shelf();
        this.fit = fit;
        this.unknowns = fit.unknowns();
        this.learning = fit.learning();
        this.best = best;
        this.drawn = drawn;
        this.curves = unknowns.curves(best);
        this.sureness = new Sureness(unknowns, learning, best, curves);
    }

    private static Knowledge learned(Evidence evidence, Evidence.Fit fit) {
        return new Knowledge(evidence, fit, fit.learning().best(), null);
    }

    private Knowledge ofCup(SharedError beside) {
        if (ofCup == null || !ofCupBeside.name().equals(beside.name())) {
            // Dabs of one cup held beside one thing both have errors that they share.
            ofCup = learned(evidence, evidence.beside(beside, fit, best));
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
            Map<Integer, Double> grams = evidence.grams(mix.parts(), of.unknowns);
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
        Compared.Seen answer =
                new Compared.Seen(new Knowledge(of.evidence, of.fit, seen.mean(), seen.rows()), seen.versions());
        lastCompared = new Comparison(List.copyOf(mixes), error, likelihood, answer);
        return answer;
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

    /**
     * @return what the chips on this shelf teach; at once when it was among the last few that were asked about, for a
     *         deed that is taken back, or another boat and back, comes to a shelf that was learned from before
     */
    public static Knowledge of(Shelf shelf) {
        synchronized (LATELY) {
            Knowledge known = LATELY.get(shelf);
            if (known != null) {
                return known;
            }
        }
        Knowledge learned = learn(shelf);
        synchronized (LATELY) {
            LATELY.put(shelf, learned);
        }
        return learned;
    }

    /** @return what the chips on this shelf teach, learned from nothing */
    public static Knowledge learn(Shelf shelf) {
        Evidence evidence = new Evidence(shelf, List.of(), Map.of(), Set.of());
        return learned(evidence, evidence.best());
    }

    /** @return what a shelf that differs by a chip teaches: learned from where this one stands, a few steps away */
    Knowledge near(Shelf other) {
        Evidence others = new Evidence(other, List.of(), evidence.weighedWithin(), evidence.sure());
        return learned(others, others.from(fit));
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
        Evidence all = evidence.with(more, within, taken);
        return learned(all, all.from(fit));
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
                        reading.photo().orElseThrow().photo(), Covariance.of(Sureness.products(left, left)))));
    }

    public Shelf shelf() {
        return shelf;
    }

    /** @return ids of the bases, then of the tints: the places of the rows of {@link #absorption()} */
    public List<String> ids() {
        return List.copyOf(unknowns.ids());
    }

    /** @return K of every part as {@link #absorption(double[])}, in mixes as they usually are */
    public double[][] absorption() {
        return absorption(new double[curves.k().length]);
    }

    /** @return S of every part as {@link #scattering(double[])}, in mixes as they usually are */
    public double[][] scattering() {
        return scattering(new double[curves.k().length]);
    }

    /**
     * @param shares by mass of every part in the mix that is asked about, for strength goes with the dose; 0 for the
     *               usual
     * @return K of every part at 31 wavelengths, a copy; the first base's scattering is about 1; what a cup that was
     *     read has shown of it is in it
     */
    public double[][] absorption(double[] shares) {
        double[][] k = atDose(curves.k(), shares);
        double[] shift = unknowns.theoryOfCup(best);
        for (double[] row : k) {
            for (int w = 0; w < row.length; w++) {
                row[w] *= Math.exp(TheoryError.size(0) * shift[w]);
            }
        }
        return k;
    }

    /**
     * @param shares as for {@link #absorption(double[])}
     * @return S of every part at 31 wavelengths, a copy
     */
    public double[][] scattering(double[] shares) {
        return atDose(curves.s(), shares);
    }

    private double[][] atDose(double[][] rows, double[] shares) {
        double[][] out = new double[rows.length][];
        for (int part = 0; part < rows.length; part++) {
            double share = shares[part] > 0 ? shares[part] : DosePower.USUAL_SHARE;
            double times = DosePower.times(curves.power()[part], share);
            out[part] = Arrays.stream(rows[part]).map(value -> times * value).toArray();
        }
        return out;
    }

    /**
     * Shares by mass of every base and tint, leftovers taken apart.
     *
     * @return one share for each of {@link #ids()}, together 1
     */
    public double[] shares(Parts parts) {
        Map<Integer, Double> grams = evidence.grams(parts, unknowns);
        double[] shares = new double[unknowns.ids().size()];
        double total = grams.values().stream().mapToDouble(Double::doubleValue).sum();
        grams.forEach((part, mass) -> shares[part] = mass / total);
        return shares;
    }

    /** @return the cured colour of a mix, and how sure that is */
    public Prediction predict(Parts parts, Viewing viewing, Geometry geometry) {
        return sureness.predict(observation(parts, viewing, geometry), viewing);
    }

    /**
     * How sure a mix would be once a chip of known parts had been read by an instrument: nothing is learned, the
     * spread alone is foretold.
     *
     * @param mix  whose colour is asked for
     * @param chip the chip that might be made
     */
    public Covariance covarianceAfter(Parts mix, Parts chip, Viewing viewing, Geometry geometry) {
        return sureness.after(observation(mix, viewing, geometry), observation(chip, viewing, geometry));
    }

    private Observation observation(Parts parts, Viewing viewing, Geometry geometry) {
        Map<Integer, Double> grams = evidence.grams(parts, unknowns);
        return new Observation(
                "", grams, new double[grams.size()], placeholder(viewing, geometry), unknowns, unknowns.theory() >= 0);
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
            double counts = curves.counts(part, shares[part]);
            for (int w = 0; w < sumK.length && counts > 0; w++) {
                sumK[w] += counts * curves.k()[part][w];
                sumS[w] += counts * curves.s()[part][w];
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
            ensemble = Ensemble.of(unknowns, drawn == null ? Ensemble.draws(unknowns, learning, best) : drawn);
        }
        return ensemble;
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
        return sureness.deviation(direction);
    }

    /** @return how many chips hold this part */
    public int chipsWith(String id) {
        return (int) shelf.chips().stream()
                .filter(chip -> chip.parts().grams(id) > 0)
                .count();
    }

    /** @return true when some mix was read both wet and cured, here or in the cup: a pair that teaches the shift */
    public boolean hasWetPair() {
        return evidence.hasWetPair();
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
            shift[axis][0] = unknowns.wetShift(axis, best);
            shift[axis][1] = sureness.deviation(direction);
        }
        return shift;
    }

    /** @return chips that contradict the rest, the worst first; empty when all agree */
    public synchronized List<Doubt> doubts() {
        if (doubts == null) {
            Map<String, Double> suspects = new LinkedHashMap<>();
            for (int i = 0; i < fit.observations().size(); i++) {
                if (learning.weight(i) < 0.5) {
                    suspects.merge(fit.observations().get(i).chipId(), learning.weight(i), Math::min);
                }
            }
            doubts = new Doubts(this, evidence.extra())
                    .about(suspects.entrySet().stream()
                            .sorted(Map.Entry.comparingByValue())
                            .map(Map.Entry::getKey)
                            .toList());
        }
        return doubts;
    }
}
