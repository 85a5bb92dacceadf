package tintwright.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.colour.SmoothReflectance;
import tintwright.colour.Viewing;
import tintwright.shelf.Tint;
import tintwright.study.HiddenShop;

/** Whether a set of tints that is left out early would have been better: 24 tints of three hidden shops in one white. */
class PromisingStudy {
    /** What one more tint must gain, as in the match; and the least gain that counts as better. */
    private static final double PRICE = 0.06;

    private static final double SEEN = 0.01;

    @Test
    @Tag("study")
    void noBetterSetOfFiveHundredShopsIsLost() {
        play(Integer.getInteger("shops", 500));
    }

    static void play(int shops) {
        int lost = 0;
        double worst = 0;
        for (int shop = 0; shop < shops; shop++) {
            MixFit fit = fit(3L * shop + 11);
            boolean[] all = new boolean[24];
            Arrays.fill(all, true);
            boolean[] kept = Promising.of(fit, 24);
            int many = 0;
            for (boolean one : kept) {
                many += one ? 1 : 0;
            }
            assertEquals(Promising.KEPT, many);
            double before = best(fit, all, new int[4], 0, 0);
            double after = best(fit, kept, new int[4], 0, 0);
            assertTrue(after >= before);
            lost += after > before + SEEN ? 1 : 0;
            worst = Math.max(worst, after - before);
        }
        System.out.printf(
                "of %d shops a better set was lost in %d; the most it would have gained: %.4f%n", shops, lost, worst);
        assertEquals(0, lost, "better sets lost");
    }

    private static double best(MixFit fit, boolean[] of, int[] chosen, int count, int from) {
        double[] x = new double[SmallQuadratic.MOST];
        double least = Math.sqrt(fit.fit(chosen, count, x)) + PRICE * count;
        for (int i = from; count < chosen.length && i < of.length; i++) {
            if (of[i]) {
                chosen[count] = i;
                least = Math.min(least, best(fit, of, chosen, count + 1, i + 1));
            }
        }
        return least;
    }

    private static MixFit fit(long seed) {
        List<double[]> k = new ArrayList<>();
        List<double[]> s = new ArrayList<>();
        HiddenShop first = new HiddenShop(seed);
        for (int i = 0; i < 3; i++) {
            HiddenShop shop = i == 0 ? first : new HiddenShop(seed + i);
            for (Tint tint : shop.tints()) {
                k.add(shop.k(tint.id()));
                s.add(shop.s(tint.id()));
            }
        }
        Lab hull = first.hull();
        return new MixFit(
                new MixFit.Additions(
                        k.toArray(double[][]::new),
                        s.toArray(double[][]::new),
                        first.k("white"),
                        first.s("white"),
                        Loading.NONE),
                new double[] {hull.lightness(), hull.a(), hull.b()},
                Metric.around(hull),
                SmoothReflectance.of(hull).resampled(Grid.INSIDE).toArray(),
                LabBatch.of(Viewing.D65_10, Grid.INSIDE),
                Geometry.SPECULAR_INCLUDED);
    }
}
