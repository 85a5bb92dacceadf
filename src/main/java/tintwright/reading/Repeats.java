package tintwright.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;

/**
 * Several readings of one place taken together: their mean, how sure it is, and which of them do not belong.
 *
 * <p>The scatter that was seen and the noise each reading states for itself are weighed together, the statement
 * counting as much as {@value #STATED_COUNTS_AS} repeats; so two readings that happen to agree are not taken for
 * perfect. A reading is left out when it lies more than {@value #OUTLIER} standard deviations (root of the sum of
 * squares over L*, a*, b*) from the median, in units of the larger of stated noise and median scatter; for honest
 * normal noise that is one in a thousand. What a photo's readings share does not shrink by repeating.
 *
 * <p>Each reading weighs as the inverse of the variance it states, its photo's share included: of all weights those of
 * least variance for independent readings (Gauss-Markov theorem). Beside an instrument a doubtful photo hardly counts.
 */
public final class Repeats {
    /** How many seen deviations the stated noise is worth; a judgement of ours. */
    private static final double STATED_COUNTS_AS = 4;
    /** Three axes: chi-square with 3 degrees of freedom passes 4 squared once in 1,100. */
    private static final double OUTLIER = 4;
    /** Makes the median deviation of a normal scatter its standard deviation. */
    private static final double MEDIAN_TO_SIGMA = 1.4826;

    /** A reading that states no noise at all is still not perfect. */
    private static final double LEAST_VARIANCE = 1e-6;

    private Repeats() {}

    /**
     * What the repeats say together.
     *
     * @param mean       the colour
     * @param covariance how sure the mean is
     * @param spectrum   the mean reflectance, 400 to 700 nm every 10 nm; empty when any kept reading had none
     * @param noise      standard deviation of one value of {@code spectrum}; 0 without one
     * @param kept       places in the list of what was used, from 0
     * @param leftOut    places in the list of what does not belong, from 0; never more than were kept
     * @param torn       true when two readings lie further apart than they state they can, so that nobody knows which
     *                   one is wrong
     */
    public record Combined(
            Lab mean,
            Covariance covariance,
            Optional<Spectrum> spectrum,
            double noise,
            List<Integer> kept,
            List<Integer> leftOut,
            boolean torn,
            Geometry geometry,
            FilmState film) {}

    /**
     * @param readings at least one, all wet or all cured, all with or all without gloss
     * @param viewing  light and observer of the mean; a colour-only reading must have been made under it
     * @throws IllegalArgumentException when they cannot be combined; the message says which one and why
     */
    public static Combined combine(List<Reading> readings, Viewing viewing) {
        List<Lab> colours = colours(readings, viewing);
        List<Integer> kept = new ArrayList<>();
        List<Integer> leftOut = new ArrayList<>();
        judge(readings, colours, kept, leftOut);
        boolean torn = readings.size() == 2 && torn(readings, colours);
        double[] weights = weights(readings, colours, kept);
        double[] mean = new double[3];
        for (int k = 0; k < weights.length; k++) {
            double[] lab = colours.get(kept.get(k)).axes();
            for (int axis = 0; axis < 3; axis++) {
                mean[axis] += weights[k] * lab[axis];
            }
        }
        Reading first = readings.get(kept.get(0));
        Lab middle = new Lab(mean[0], mean[1], mean[2], viewing);
        Covariance sure = covariance(readings, colours, kept, weights, mean);
        boolean spectral = kept.stream().allMatch(i -> readings.get(i) instanceof SpectralReading);
        if (!spectral) {
            return new Combined(middle, sure, Optional.empty(), 0, kept, leftOut, torn, first.geometry(), first.film());
        }
        double[][] spectra = new double[kept.size()][];
        double stated = 0;
        for (int i = 0; i < spectra.length; i++) {
            SpectralReading reading = (SpectralReading) readings.get(kept.get(i));
            spectra[i] = reading.reflectance().resampled(Grid.INSIDE).toArray();
            stated += reading.noise() * reading.noise() / spectra.length;
        }
        double[] reflectance = new double[Grid.INSIDE.count()];
        double noise = average(spectra, stated, reflectance);
        Spectrum together = Spectrum.of(Grid.INSIDE, reflectance);
        return new Combined(
                Lab.of(together, viewing),
                sure,
                Optional.of(together),
                noise,
                kept,
                leftOut,
                torn,
                first.geometry(),
                first.film());
    }

    private static List<Lab> colours(List<Reading> readings, Viewing viewing) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("there is no reading to combine; take at least one");
        }
        Reading first = readings.get(0);
        List<Lab> colours = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = readings.get(i);
            if (reading.film() != first.film() || reading.geometry() != first.geometry()) {
                throw new IllegalArgumentException("reading " + (i + 1) + " cannot be combined with the first: both"
                        + " must be wet or both cured, both with or both without gloss");
            }
            int number = i + 1;
            colours.add(reading.colour(viewing)
                    .orElseThrow(() ->
                            new IllegalArgumentException("reading " + number + " was made under another light than "
                                    + viewing + " and has no spectrum; read it again")));
        }
        return colours;
    }

    /** @return for each kept reading its share of the mean, 1 together */
    private static double[] weights(List<Reading> readings, List<Lab> colours, List<Integer> kept) {
        Map<String, Integer> ofPhoto = new HashMap<>();
        kept.forEach(i -> readings.get(i).photo().ifPresent(bias -> ofPhoto.merge(bias.photo(), 1, Integer::sum)));
        double[] weights = new double[kept.size()];
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            Reading reading = readings.get(kept.get(k));
            double variance =
                    trace(reading.scatter(colours.get(kept.get(k)).viewing()).toArray());
            // What a photo's readings share weighs on each of them as often as there are of them.
            variance += reading.photo()
                    .map(bias ->
                            ofPhoto.get(bias.photo()) * trace(bias.covariance().toArray()))
                    .orElse(0.0);
            weights[k] = 1 / Math.max(variance, LEAST_VARIANCE);
            sum += weights[k];
        }
        for (int k = 0; k < weights.length; k++) {
            weights[k] /= sum;
        }
        return weights;
    }

    private static double trace(double[][] m) {
        return m[0][0] + m[1][1] + m[2][2];
    }

    private static void judge(List<Reading> readings, List<Lab> colours, List<Integer> kept, List<Integer> leftOut) {
        int n = colours.size();
        double[] middle = new double[3];
        double[] scale = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            double[] values = new double[n];
            double stated = 0;
            for (int i = 0; i < n; i++) {
                values[i] = colours.get(i).axes()[axis];
                stated += Math.sqrt(readings.get(i)
                                .scatter(colours.get(i).viewing())
                                .toArray()[axis][axis])
                        / n;
            }
            middle[axis] = median(values.clone());
            for (int i = 0; i < n; i++) {
                values[i] = Math.abs(values[i] - middle[axis]);
            }
            scale[axis] = Math.max(Math.max(stated, MEDIAN_TO_SIGMA * median(values)), 1e-6);
        }
        for (int i = 0; i < n; i++) {
            double far = 0;
            for (int axis = 0; axis < 3; axis++) {
                double off = (colours.get(i).axes()[axis] - middle[axis]) / scale[axis];
                far += off * off;
            }
            // Of two that differ nobody knows which one is wrong.
            (n >= 3 && Math.sqrt(far) > OUTLIER ? leftOut : kept).add(i);
        }
        if (leftOut.size() >= kept.size()) {
            kept.addAll(leftOut);
            kept.sort(null);
            leftOut.clear();
        }
    }

    /** Two that cannot both be right: further apart than they and their photos state, on the same measure. */
    private static boolean torn(List<Reading> readings, List<Lab> colours) {
        double far = 0;
        for (int axis = 0; axis < 3; axis++) {
            double variance = 1e-12;
            for (int i = 0; i < 2; i++) {
                variance += readings.get(i).scatter(colours.get(i).viewing()).toArray()[axis][axis];
                int at = axis;
                variance += readings.get(i)
                        .photo()
                        .map(bias -> bias.covariance().toArray()[at][at])
                        .orElse(0.0);
            }
            double off = colours.get(0).axes()[axis] - colours.get(1).axes()[axis];
            far += off * off / variance;
        }
        return Math.sqrt(far) > OUTLIER;
    }

    private static Covariance covariance(
            List<Reading> readings, List<Lab> colours, List<Integer> kept, double[] weights, double[] mean) {
        int n = kept.size();
        double[][] sum = new double[3][3];
        Map<String, Double> ofPhoto = new HashMap<>();
        Map<String, Covariance> shared = new HashMap<>();
        for (int k = 0; k < n; k++) {
            int i = kept.get(k);
            double[] lab = colours.get(i).axes();
            double[][] stated =
                    readings.get(i).scatter(colours.get(i).viewing()).toArray();
            for (int r = 0; r < 3; r++) {
                for (int c = 0; c < 3; c++) {
                    sum[r][c] += weights[k]
                            * weights[k]
                            * (STATED_COUNTS_AS * stated[r][c] + n * (lab[r] - mean[r]) * (lab[c] - mean[c]));
                }
            }
            double weight = weights[k];
            readings.get(i).photo().ifPresent(bias -> {
                ofPhoto.merge(bias.photo(), weight, Double::sum);
                shared.put(bias.photo(), bias.covariance());
            });
        }
        double[][] sure = new double[3][3];
        for (int r = 0; r < 3; r++) {
            for (int c = 0; c < 3; c++) {
                sure[r][c] = sum[r][c] / (STATED_COUNTS_AS + n - 1);
                for (Map.Entry<String, Double> photo : ofPhoto.entrySet()) {
                    double share = photo.getValue();
                    sure[r][c] += share * share * shared.get(photo.getKey()).toArray()[r][c];
                }
            }
        }
        return Covariance.of(sure);
    }

    /** Fills in the mean and returns how sure each of its values is. */
    private static double average(double[][] spectra, double statedVariance, double[] mean) {
        int n = spectra.length;
        for (double[] spectrum : spectra) {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += spectrum[i] / n;
            }
        }
        double seen = 0;
        for (double[] spectrum : spectra) {
            for (int i = 0; i < mean.length; i++) {
                seen += (spectrum[i] - mean[i]) * (spectrum[i] - mean[i]) / mean.length;
            }
        }
        return Math.sqrt((STATED_COUNTS_AS * statedVariance + seen) / (STATED_COUNTS_AS + n - 1) / n);
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        int half = values.length / 2;
        return values.length % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
    }
}
