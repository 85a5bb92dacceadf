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
