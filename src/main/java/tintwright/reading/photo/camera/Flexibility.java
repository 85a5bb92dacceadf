package tintwright.reading.photo.camera;

import static tintwright.reading.photo.camera.CameraModel.BEND;
import static tintwright.reading.photo.camera.CameraModel.CHANNEL_POWER;
import static tintwright.reading.photo.camera.CameraModel.FIRST_MIX;
import static tintwright.reading.photo.camera.CameraModel.KNOTS;
import static tintwright.reading.photo.camera.CameraModel.LIGHT;
import static tintwright.reading.photo.camera.CameraModel.MIX;
import static tintwright.reading.photo.camera.CameraModel.OFFSET;
import static tintwright.reading.photo.camera.CameraModel.POWER;
import static tintwright.reading.photo.camera.CameraModel.ROOTS;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;

/**
 * How freely a correction may bend: which unknowns of the {@link CameraModel} have room, from the stiffest to the
 * freest. A reference must pay for each step away from plain sRGB, so a freer one than the references carry stays
 * near the stiffer one by itself.
 *
 * <p>The widths are ours: settled on the real photos and the simulated phones of docs/accuracy.md.
 */
public enum Flexibility {
    /** What phones usually do: all of it, but little of it. */
    PHONE("gains, tone curves and little else", 0.34, 0.007, 0.004, 0.033, 0.07, 0.04, 0.45),
    /**
     * What is left of a phone's ways once paper in the same photo has set its gains; settled on simulated phones of other
     * seeds than those of the study {@code SheetReadingStudy} and on the two processed photos of
     * {@code PaperOnRealPhotosStudy}, so that about nine in ten stay inside what is stated.
     */
    PAPER("gains by the paper, the phone's usual curves and mix", 0.12, 0.007, 0.004, 0.02, 0.08, 0.03, 0.25),
    /** A gain on each channel. */
    GAIN("gain on each channel", 0.02, 0.005, 0.001, 0.01, 0.03, 0.01, 0.02),
    /** Gains and tone curves, from the greys. */
    CURVES("tone curves from the greys", 0.25, 0.007, 0.004, 0.01, 0.03, 0.01, 0.45),
    /** Gains and a 3 by 3 mix: a camera that did not bend the light. */
    MIX_ONLY("3 by 3 mix", 0.02, 0.005, 0.008, 0.002, 0.40, 0.01, 0.02),
    /** Curves and the mixes before and after them. */
    CURVES_AND_MIX("tone curves and 3 by 3 mix", 0.25, 0.007, 0.004, 0.15, 0.30, 0.02, 0.67),
    /** All of it, with the square-root products. */
    ROOT_POLYNOMIAL("tone curves and root-polynomial", 0.40, 0.007, 0.006, 0.15, 0.20, 0.15, 0.67);

    /** How far apart on the coded scale two places of the tone curve still bend together; a judgement of ours. */
    private static final double BEND_LENGTH = 0.3;
    /** Change of log light from the middle of the frame to its corner, along one direction; a judgement of ours. */
    private static final double LIGHT_SLOPE = 0.12;
    /** Change of log light from the middle of the frame to its corner, all round; a judgement of ours. */
    private static final double LIGHT_BOWL = 0.10;

    /** How much more colour phones give than they see, on average: the mix expected before any reference; a judgement of ours. */
    private static final double TOO_COLOURFUL = 0.10;
    /** Share of each channel in the brightness of a grey; IEC 61966-2-1. */
    private static final double[] BRIGHTNESS = {0.2126, 0.7152, 0.0722};

    private final String words;
    private final double power;
    private final double channelPower;
    private final double offset;
    private final double firstMix;
    private final double mix;
    private final double roots;
    private final double bend;

    Flexibility(
            String words,
            double power,
            double channelPower,
            double offset,
            double firstMix,
            double mix,
            double roots,
            double bend) {
        this.words = words;
        this.power = power;
        this.channelPower = channelPower;
        this.offset = offset;
        this.firstMix = firstMix;
        this.mix = mix;
        this.roots = roots;
        this.bend = bend;
    }

    /** @return the name for people */
    public String words() {
        return words;
    }

    /**
     * What undoes the usual brightening of middle tones against white, in log light at the knots of the tone curve: half
     * of what the two processed cameras of {@code PaperOnRealPhotosStudy} did.
     */
    private static final double[] BRIGHTENED = {0, -0.05, -0.12, -0.22, -0.20, -0.10, 0};

    /** Puts the tone curve that undoes the usual brightening of middle tones into the unknowns. */
    static void expectBrightened(double[] unknowns) {
        System.arraycopy(BRIGHTENED, 0, unknowns, BEND, BRIGHTENED.length);
    }

    /** Puts the mix that undoes the usual excess of colour into the unknowns. */
    static void expectColourful(double[] unknowns) {
        int at = MIX;
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                if (row != column) {
                    unknowns[at++] = TOO_COLOURFUL * BRIGHTNESS[column];
                }
            }
        }
    }

    /**
     * The covariance of the unknowns before any reference was seen.
     *
     * @param exposure standard deviation of the log gain that all channels share
     * @param balance  standard deviation of each channel's log gain about that
     */
    DMatrixRMaj prior(double exposure, double balance) {
        double[] sigma = new double[CameraModel.UNKNOWNS];
        Arrays.fill(sigma, LIGHT, LIGHT + 2, LIGHT_SLOPE);
        sigma[LIGHT + 2] = LIGHT_BOWL;
        sigma[POWER] = power;
        Arrays.fill(sigma, CHANNEL_POWER, CHANNEL_POWER + 2, channelPower);
        Arrays.fill(sigma, OFFSET, OFFSET + 3, offset);
        Arrays.fill(sigma, FIRST_MIX, FIRST_MIX + 6, firstMix);
        Arrays.fill(sigma, MIX, MIX + 6, mix);
        Arrays.fill(sigma, ROOTS, ROOTS + 9, roots);
        DMatrixRMaj prior = new DMatrixRMaj(CameraModel.UNKNOWNS, CameraModel.UNKNOWNS);
        for (int i = 0; i < sigma.length; i++) {
            prior.set(i, i, sigma[i] * sigma[i]);
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                prior.set(
                        CameraModel.GAIN + i,
                        CameraModel.GAIN + j,
                        exposure * exposure + (i == j ? balance * balance : 0));
            }
        }
        for (int i = 0; i < KNOTS.length; i++) {
            for (int j = 0; j < KNOTS.length; j++) {
                double apart = (KNOTS[i] - KNOTS[j]) / BEND_LENGTH;
                prior.set(BEND + i, BEND + j, bend * bend * (Math.exp(-apart * apart / 2) + (i == j ? 1e-4 : 0)));
            }
        }
        return prior;
    }
}
