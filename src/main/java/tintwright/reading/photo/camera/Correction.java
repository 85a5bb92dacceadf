package tintwright.reading.photo.camera;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import tintwright.colour.Lab;
import tintwright.colour.Matrix3;
import tintwright.colour.Viewing;
import tintwright.reading.Covariance;
import tintwright.reading.photo.card.Sample;
import tintwright.reading.photo.file.Rgb;

/**
 * From a camera's record to colours, learned from the references of one photo.
 *
 * <p>Every {@link Flexibility} is fitted; each predicts every reference from the others; the ones that do this
 * best near the wanted colours are listened to, nearly equal ones together. A reference that the others contradict is
 * set aside and named. How sure the answer is comes from the freest fit, widened where the references turn out to
 * scatter more than they say.
 */
public final class Correction {
    /** A fit whose error with left-out references is larger by this share counts a third as much; a judgement of ours. */
    private static final double WORTH_IT = 0.12;

    /** CIEDE2000 below which errors are alike: a single reference leaves none at all; a judgement of ours. */
    private static final double LEAST_ERROR = 1e-6;

    /** A judgement of ours. */
    private static final double LEAST_SHARE = 0.01;
    /** A reference counts in the choice with this weight however far its colour is from the wanted ones; a judgement of ours. */
    private static final double FAR_WEIGHT = 0.25;

    /** A judgement of ours. */
    private static final double NEAR = 35;
    /** Left out, a reference off by more than this many times its stated spread is set aside; a judgement of ours. */
    private static final double OUTLIER = 3.6;
    /** Exposure and white balance of a phone without any reference, in log light: a third of a stop, and a tenth; a judgement of ours. */
    private static final double[] UNKNOWN_GAIN = {0.25, 0.10};
    /** With references they may be anything; a judgement of ours. */
    private static final double[] LEARNED_GAIN = {1.0, 0.5};
    /** Below this many references the choice would rest on chance: the priors alone then say how freely to bend; a judgement of ours. */
    private static final int ENOUGH_TO_CHOOSE = 8;
    /** References with this weight stand for the stated spread being right; a judgement of ours. */
    private static final double TRUST = 4;

    /**
     * How much farther real cameras are off at a colour that is not on the chart than the chart's own scatter says;
     * chosen by RealPhotoStudy on all its cameras, where without it 76 % of stated ranges held.
     */
    private static final double BEYOND_THE_CHART = 1.4;

    private final Viewing viewing;
    /** The fit that predicts best; its covariance counts. */
    private final CorrectionFit fit;

    private final Flexibility flexibility;
    /** All fits and how much each counts in the answer. */
    private final List<Voice> voices;

    private final double widened;
    private final double leaveOneOut;
    private final List<String> setAside;
    private final double[] gainWidth;

    /** A fit and its share in the answer. */
    private record Voice(CorrectionFit fit, Flexibility flexibility, double error, double share) {}

    private Correction(
            Viewing viewing,
            List<Voice> voices,
            double widened,
            double leaveOneOut,
            List<String> setAside,
            double[] gainWidth) {
        this.viewing = viewing;
        this.voices = voices;
        this.fit = voices.get(0).fit();
        this.flexibility = voices.get(0).flexibility();
        this.widened = widened;
        this.leaveOneOut = leaveOneOut;
        this.setAside = setAside;
        this.gainWidth = gainWidth;
    }

    /**
     * Learns the correction of one photo.
     *
     * @param known   the references; none means plain sRGB with its true width
     * @param wanted  what will be read, so that references of like colour count more in the choice
     * @param viewing light and observer of the answers; the references must be stated for it
     */
    public static Correction learn(List<KnownSample> known, List<Sample> wanted, Viewing viewing) {
        CameraModel model = new CameraModel(viewing);
        for (KnownSample one : known) {
            one.colour().viewing().mustEqual(viewing);
        }
        if (known.isEmpty()) {
            double[] plain = new double[CameraModel.UNKNOWNS];
            CorrectionFit fit =
                    new CorrectionFit(model, known, Flexibility.PHONE, UNKNOWN_GAIN[0], UNKNOWN_GAIN[1], plain, plain);
            return new Correction(
                    viewing, List.of(new Voice(fit, Flexibility.PHONE, 0, 1)), 1, Double.NaN, List.of(), UNKNOWN_GAIN);
        }
        List<KnownSample> kept = new ArrayList<>(known);
        List<String> aside = new ArrayList<>();
        Flexibility chosen = known.size() >= ENOUGH_TO_CHOOSE ? Flexibility.ROOT_POLYNOMIAL : Flexibility.PHONE;
        CorrectionFit freest = fit(model, kept, chosen, firstGains(model, kept));
        while (aside.size() < known.size() / 6) {
            CorrectionFit.LeftOut[] left = freest.leaveOneOut();
            int worst = worst(left);
            double usual = Math.max(1, median(left));
            if (left[worst].chance() < OUTLIER * usual) {
                break;
            }
            aside.add(kept.remove(worst).name());
            freest = fit(model, kept, chosen, freest.unknowns);
        }
        double[] weights = weights(freest, wanted);
        List<Voice> voices = new ArrayList<>();
        voices.add(new Voice(freest, chosen, error(freest, weights), 0));
        if (kept.size() >= ENOUGH_TO_CHOOSE) {
            double[] plain = firstGains(model, kept);
            Scatter aboutPlain = new Scatter(model, kept, plain);
            for (Flexibility stiffer : Flexibility.values()) {
                if (stiffer != chosen && stiffer != Flexibility.PAPER) {
                    CorrectionFit fit = stiffer == Flexibility.CURVES_AND_MIX
                            ? fit(model, kept, stiffer, freest.unknowns)
                            : new CorrectionFit(aboutPlain, stiffer, LEARNED_GAIN[0], LEARNED_GAIN[1], plain, plain);
                    voices.add(new Voice(fit, stiffer, error(fit, weights), 0));
                }
            }
        }
        List<Voice> shared = shared(voices);
        Voice best = shared.get(0);
        return new Correction(
                viewing, shared, widening(voices, weights), best.error(), List.copyOf(aside), LEARNED_GAIN);
    }

    /** The best first; the share falls off with the error, so that no hair's breadth decides. */
    private static List<Voice> shared(List<Voice> voices) {
        double least = voices.stream().mapToDouble(Voice::error).min().orElseThrow();
        double total = 0;
        for (Voice one : voices) {
            total += share(one, least);
        }
        List<Voice> out = new ArrayList<>();
        for (Voice one : voices) {
            out.add(new Voice(one.fit(), one.flexibility(), one.error(), share(one, least) / total));
        }
        out.sort(Comparator.comparingDouble(Voice::error));
        return List.copyOf(out);
    }

    private static double share(Voice one, double least) {
        return Math.exp(-(one.error() - least) / (WORTH_IT * Math.max(least, LEAST_ERROR)));
    }

    private static CorrectionFit fit(
            CameraModel model, List<KnownSample> known, Flexibility flexibility, double[] start) {
        return new CorrectionFit(
                model, known, flexibility, LEARNED_GAIN[0], LEARNED_GAIN[1], firstGains(model, known), start);
    }

    /** Plain sRGB but for the gains, which follow from the middle one of the references. */
    static double[] firstGains(CameraModel model, List<KnownSample> known) {
        double[][] toLight = Matrix3.inverse(model.matrixToXyz());
        double[] start = new double[CameraModel.UNKNOWNS];
        Flexibility.expectColourful(start);
        List<double[]> ratios = new ArrayList<>();
        List<double[]> rough = new ArrayList<>();
        for (KnownSample one : known) {
            double[] light = Matrix3.times(toLight, shareOfWhite(one.colour()));
            double[] ratio = new double[3];
            boolean bright = true;
            for (int k = 0; k < 3; k++) {
                ratio[k] = Math.log(
                        Math.max(light[k], 1e-3) / Math.max(one.sample().light().at(k), 1e-4));
                bright &= light[k] > 0.02;
            }
            (bright ? ratios : rough).add(ratio);
        }
        List<double[]> use = ratios.isEmpty() ? rough : ratios;
        for (int k = 0; k < 3; k++) {
            double[] sorted = new double[use.size()];
            for (int i = 0; i < sorted.length; i++) {
                sorted[i] = use.get(i)[k];
            }
            Arrays.sort(sorted);
            int n = sorted.length;
            start[CameraModel.GAIN + k] = (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
        }
        return start;
    }

    private static double[] shareOfWhite(Lab colour) {
        var xyz = colour.toXyz();
        var white = colour.viewing().white();
        return new double[] {xyz.x() / white.x(), xyz.y() / white.y(), xyz.z() / white.z()};
    }

    private static double[] weights(CorrectionFit fit, List<Sample> wanted) {
        double[] weights = new double[fit.known.size()];
        double[] lab = new double[3];
        Arrays.fill(weights, FAR_WEIGHT);
        for (Sample sample : wanted) {
            fit.model.colour(fit.unknowns, sample, lab, null, null);
            for (int i = 0; i < weights.length; i++) {
                Lab c = fit.known.get(i).colour();
                double apart = Math.hypot(Math.hypot(c.lightness() - lab[0], c.a() - lab[1]), c.b() - lab[2]) / NEAR;
                weights[i] += Math.exp(-apart * apart / 2) / wanted.size();
            }
        }
        return weights;
    }

    private static double error(CorrectionFit fit, double[] weights) {
        double sum = 0;
        double total = 0;
        CorrectionFit.LeftOut[] left = fit.leaveOneOut();
        for (int i = 0; i < left.length; i++) {
            sum += weights[i] * left[i].error();
            total += weights[i];
        }
        return sum / total;
    }

    private static int worst(CorrectionFit.LeftOut[] left) {
        int worst = 0;
        for (int i = 1; i < left.length; i++) {
            worst = left[i].chance() > left[worst].chance() ? i : worst;
        }
        return worst;
    }

    private static double median(CorrectionFit.LeftOut[] left) {
        double[] sorted = Arrays.stream(left)
                .mapToDouble(CorrectionFit.LeftOut::chance)
                .sorted()
                .toArray();
        return sorted[sorted.length / 2];
    }

    /**
     * How much wider than stated the references scatter (Birge's ratio, held back by trust in the stated). Which fit
     * speaks for a reference is chosen without it: the one that is best with it in hand is so by chance, too.
     */
    private static double widening(List<Voice> voices, double[] weights) {
        double sum = TRUST;
        for (int i = 0; i < weights.length; i++) {
            double[] others = weights.clone();
            others[i] = 0;
            List<Voice> without = new ArrayList<>();
            for (Voice one : voices) {
                double error = weights.length == 1 ? one.error() : error(one.fit(), others);
                without.add(new Voice(one.fit(), one.flexibility(), error, 0));
            }
            for (Voice one : shared(without)) {
                double chance = one.fit().leaveOneOut()[i].chance();
                sum += one.share() * chance * chance;
            }
        }
        double scatter = Math.sqrt(sum / (TRUST + weights.length));
        return voices.size() > 1 ? BEYOND_THE_CHART * scatter : scatter;
    }

    /**
     * One colour.
     *
     * @param colour the colour
     * @param shared how wide the error is that all answers of this correction share
     * @param own    how wide the error is beyond the shared one
     */
    public record Answer(Lab colour, Covariance shared, Covariance own) {}

    public List<Answer> apply(List<Sample> samples) {
        if (samples.isEmpty()) {
            return List.of();
        }
        DMatrixRMaj wide = Flexibility.PHONE.prior(gainWidth[0], gainWidth[1]);
        CorrectionFit.Predicted predicted = fit.predict(samples, wide);
        double scale = widened * widened;
        double[][] shared = SharedError.of(predicted.covariance(), scale);
        double[][] answers = new double[samples.size()][3];
        double[][][] apart = new double[samples.size()][3][3];
        listen(samples, predicted, answers, apart);
        List<Answer> out = new ArrayList<>();
        for (int i = 0; i < samples.size(); i++) {
            double[][] own = new double[3][3];
            for (int r = 0; r < 3; r++) {
                for (int c = 0; c < 3; c++) {
                    own[r][c] =
                            scale * predicted.covariance().get(3 * i + r, 3 * i + c) - shared[r][c] + apart[i][r][c];
                }
            }
            double[][] positive = SharedError.positive(own);
            for (int r = 0; r < 3; r++) {
                for (int c = 0; c < 3; c++) {
                    positive[r][c] += predicted.own()[i][r][c];
                }
            }
            double[] lab = answers[i];
            out.add(new Answer(
                    new Lab(lab[0], lab[1], lab[2], viewing), Covariance.of(shared), Covariance.of(positive)));
        }
        return out;
    }

    /** The shares' mean answer for each sample, and how far the fits are apart about it. */
    private void listen(List<Sample> samples, CorrectionFit.Predicted first, double[][] answers, double[][][] apart) {
        List<double[][]> labs = new ArrayList<>();
        for (Voice one : voices) {
            double[][] lab = one == voices.get(0)
                    ? first.lab()
                    : one.share() < LEAST_SHARE ? first.lab() : one.fit().colours(samples);
            labs.add(lab);
            for (int i = 0; i < answers.length; i++) {
                for (int axis = 0; axis < 3; axis++) {
                    answers[i][axis] += one.share() * lab[i][axis];
                }
            }
        }
        for (int v = 0; v < labs.size(); v++) {
            for (int i = 0; i < answers.length; i++) {
                double[] off = new double[3];
                for (int axis = 0; axis < 3; axis++) {
                    off[axis] = labs.get(v)[i][axis] - answers[i][axis];
                }
                for (int r = 0; r < 3; r++) {
                    for (int c = 0; c < 3; c++) {
                        apart[i][r][c] += voices.get(v).share() * off[r] * off[c];
                    }
                }
            }
        }
    }

    public Flexibility flexibility() {
        return flexibility;
    }

    /** @return mean error of left-out references near the wanted colours, in CIEDE2000; NaN without references */
    public double leaveOneOut() {
        return leaveOneOut;
    }

    /** @return the references that the others contradict */
    public List<String> setAside() {
        return setAside;
    }

    /** @return log of what makes up for the light at a place of the frame, against its middle: below 0 where it is brighter */
    public double lightAt(double x, double y) {
        double[] t = fit.unknowns;
        return t[CameraModel.LIGHT] * x + t[CameraModel.LIGHT + 1] * y + t[CameraModel.LIGHT + 2] * (x * x + y * y);
    }

    /** @return how many references are in use */
    public int references() {
        return fit.known.size();
    }

    /** @return the power that carries the light of the photo, as it was decoded, to the references' known light */
    public static double steepness(List<KnownSample> known) {
        double[] x = new double[known.size()];
        double[] y = new double[known.size()];
        double meanX = 0;
        double meanY = 0;
        for (int i = 0; i < x.length; i++) {
            Rgb light = known.get(i).sample().light();
            // All three channels, as in Y: green alone says little about the brightness of a red.
            double bright = 0.2126 * light.red() + 0.7152 * light.green() + 0.0722 * light.blue();
            x[i] = Math.log(Math.max(bright, 1e-4));
            y[i] = Math.log(Math.max(known.get(i).colour().toXyz().y() / 100, 1e-4));
            meanX += x[i] / x.length;
            meanY += y[i] / x.length;
        }
        double xy = 0;
        double xx = 1e-9;
        for (int i = 0; i < x.length; i++) {
            xy += (x[i] - meanX) * (y[i] - meanY);
            xx += (x[i] - meanX) * (x[i] - meanX);
        }
        return xy / xx;
    }

    /** @return the references on one side of the card that a reflection lies on; mostly none */
    public static List<KnownSample> underReflection(List<KnownSample> known) {
        return ShadowEdge.underReflection(known);
    }

    /** @return the share of light that a part of the references lacks, when they fall into two lots */
    public Optional<Double> shadowEdge() {
        return ShadowEdge.find(fit.known);
    }
}
