package tintwright.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.reading.FilmState;

class EyeJudgeTest {
    private static final Lab GREY = new Lab(70, 0, 0, Viewing.D65_10);
    private static final Lab CREAM = new Lab(80, 3, 30, Viewing.D65_10);
    private static final EyeJudge USUAL = EyeJudge.of(new double[EyeJudge.TRAITS]);

    private static List<EyeVerdict> all() {
        List<EyeVerdict> all = new ArrayList<>();
        for (Depth depth : Depth.values()) {
            for (Hue hue : Hue.values()) {
                for (Amount amount :
                        hue == Hue.NONE ? new Amount[] {Amount.NOT_SAID} : new Amount[] {Amount.LITTLE, Amount.MUCH}) {
                    all.add(new EyeVerdict(Optional.of(depth), Optional.of(hue), amount, FilmState.CURED));
                }
            }
        }
        return all;
    }

    @Test
    void theChancesOfAllAnswersAreOneTogether() {
        double[][] differences = {{0, 0, 0}, {1, -2, 0.5}, {-6, 4, 7}, {12, -9, 3}, {0.3, 0, -1.2}, {-2, 15, 15}};
        EyeJudge poor = EyeJudge.of(new double[] {1.5, -1, 1, 2});
        for (double[] d : differences) {
            for (EyeJudge judge : new EyeJudge[] {USUAL, poor}) {
                double sum = 0;
                for (EyeVerdict said : all()) {
                    sum += judge.chance(said, d, EyeJudge.Weights.beside(CREAM));
                }
                assertEquals(1, sum, 0.02, java.util.Arrays.toString(d));
            }
        }
    }

    private static EyeVerdict depth(Depth depth) {
        return new EyeVerdict(Optional.of(depth), Optional.empty(), Amount.NOT_SAID, FilmState.CURED);
    }

    /** "The same" is within 1.2, a look strays by 0.8: 1.5 standard deviations, and the table of the normal law. */
    @Test
    void howDeepADabLooksFollowsTheNormalLaw() {
        EyeJudge.Weights weights = EyeJudge.Weights.beside(GREY);
        assertEquals(2 * 0.9331928 - 1, USUAL.chance(depth(Depth.SAME), new double[3], weights), 1e-6);
        for (double l = -12; l <= 12; l += 0.7) {
            double sum = 0;
            for (Depth depth : Depth.values()) {
                double chance = USUAL.chance(depth(depth), new double[] {l, 0, 0}, weights);
                Depth mirrored = Depth.values()[Depth.values().length - 1 - depth.ordinal()];
                assertEquals(chance, USUAL.chance(depth(mirrored), new double[] {-l, 0, 0}, weights), 1e-6);
                sum += chance;
            }
            assertEquals(1, sum, 1e-6);
        }
    }

    /** Two axes that stray alike, from the hull itself: the distance follows the law of Rayleigh. */
    @Test
    void thatADabHasNoOtherHueFollowsTheLawOfRayleigh() {
        EyeVerdict none = new EyeVerdict(Optional.empty(), Optional.of(Hue.NONE), Amount.NOT_SAID, FilmState.CURED);
        assertEquals(
                1 - Math.exp(-1.5 * 1.5 / 2), USUAL.chance(none, new double[3], EyeJudge.Weights.beside(GREY)), 1e-6);
    }

    /** S_C and S_H of ISO/CIE 11664-6: what is outward counts by 1 / (1 + 0.045 C), what is round by 1 / (1 + 0.015 C). */
    @Test
    void onlyChromaAndTheWayItPointsWeighWhateverTheHue() {
        EyeVerdict none = new EyeVerdict(Optional.empty(), Optional.of(Hue.NONE), Amount.NOT_SAID, FilmState.CURED);
        for (double degrees = 0; degrees < 360; degrees += 25) {
            double a = Math.cos(Math.toRadians(degrees));
            double b = Math.sin(Math.toRadians(degrees));
            EyeJudge.Weights weights = EyeJudge.Weights.beside(new Lab(60, 40 * a, 40 * b, Viewing.D65_10));
            assertEquals(1 / 2.8, weights.aa() * a * a + 2 * weights.ab() * a * b + weights.bb() * b * b, 1e-12);
            assertEquals(1 / 1.6, weights.aa() * b * b - 2 * weights.ab() * a * b + weights.bb() * a * a, 1e-12);
            double grey = USUAL.chance(none, new double[] {0, 1.5, 0}, EyeJudge.Weights.beside(GREY));
            // 1.5 to the eye, outward and round.
            assertEquals(grey, USUAL.chance(none, new double[] {0, 4.2 * a, 4.2 * b}, weights), 1e-5);
            assertEquals(grey, USUAL.chance(none, new double[] {0, -2.4 * b, 2.4 * a}, weights), 1e-5);
        }
    }

    @Test
    void oneOfTwoDabsLooksNearerAndASlipMayBeAnyAnswer() {
        double[] near = {1, 0, 0};
        double[] far = {-3, 2, 4};
        EyeJudge.Weights weights = EyeJudge.Weights.beside(CREAM);
        double there = USUAL.nearer(near, far, weights);
        assertTrue(there > 0.8, "chance " + there);
        assertEquals(1, there + USUAL.nearer(far, near, weights), 1e-6);
        assertEquals(0.5, USUAL.nearer(far, far, weights), 1e-6);
        assertEquals(0.98, USUAL.nearer(new double[3], new double[] {90, 0, 0}, weights), 1e-3);
        assertTrue(EyeJudge.of(new double[] {2, 0, 0, 0}).nearer(near, far, weights) < there - 0.05);
        double sum = 0;
        for (EyeVerdict said : all()) {
            sum += EyeJudge.withSlips(USUAL.chance(said, near, weights));
        }
        assertEquals(1, sum, 0.02);
        assertEquals(EyeJudge.ofSlip(), EyeJudge.withSlips(0), 0);
    }

    @Test
    void aPersonsBordersAreTheirOwn() {
        EyeJudge.Weights weights = EyeJudge.Weights.beside(GREY);
        double[] little = {1.5, 0, 0};
        assertTrue(EyeJudge.of(new double[] {0, 1, 0, 0}).chance(depth(Depth.SAME), little, weights)
                > USUAL.chance(depth(Depth.SAME), little, weights));
        double[] much = {4.5, 0, 0};
        assertEquals(0.5, USUAL.chance(depth(Depth.MUCH_TOO_LIGHT), much, weights), 1e-6);
        assertTrue(EyeJudge.of(new double[] {0, 0, 1, 0}).chance(depth(Depth.MUCH_TOO_LIGHT), much, weights) < 0.3);
        // One who turns all hues by 36 degrees calls red what others call by the border of yellow.
        EyeVerdict yellow =
                new EyeVerdict(Optional.empty(), Optional.of(Hue.TOO_YELLOW), Amount.NOT_SAID, FilmState.CURED);
        double[] reddish = {0, 6 * Math.cos(Math.toRadians(40)), 6 * Math.sin(Math.toRadians(40))};
        assertTrue(EyeJudge.of(new double[] {0, 0, 0, 3}).chance(yellow, reddish, weights)
                > 0.4 + USUAL.chance(yellow, reddish, weights));
    }

    @Test
    void aPoorEyeIsLessSureOfWhatIsPlain() {
        EyeVerdict plain =
                new EyeVerdict(Optional.of(Depth.SAME), Optional.of(Hue.TOO_RED), Amount.NOT_SAID, FilmState.CURED);
        EyeJudge.Weights weights = EyeJudge.Weights.beside(GREY);
        double usual = USUAL.chance(plain, new double[] {0, 4, 1.4}, weights);
        double poor = EyeJudge.of(new double[] {2, 0, 0, 0}).chance(plain, new double[] {0, 4, 1.4}, weights);
        assertTrue(usual > 0.6 && poor < usual - 0.1, usual + " " + poor);
    }

    /** The published formula itself, for two greys of one lightness a step apart in chroma. */
    @Test
    void chromaCountsLessBesideAColourfulHullAsInCiede2000() {
        EyeJudge.Weights weights = EyeJudge.Weights.beside(CREAM);
        double length = Math.hypot(3, 30);
        double a = 3 / length;
        double b = 30 / length;
        double seen = Math.hypot(weights.aa() * a + weights.ab() * b, weights.ab() * a + weights.bb() * b);
        Lab more = new Lab(CREAM.lightness(), CREAM.a() + 0.2 * a, CREAM.b() + 0.2 * b, CREAM.viewing());
        assertEquals(Ciede2000.between(CREAM, more) / 0.2, seen, 0.02);
    }
}
