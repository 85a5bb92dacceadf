package tintwright.match;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Which tints are worth trying in threes and fours, of a shelf that holds many: those that come nearest alone or two
 * at a time. Without it the work grows with the fourth power of the shelf.
 */
public final class Promising {
    /** How many are kept; chosen by the study PromisingStudy, for no set of 500 shops to be lost. */
    static final int KEPT = 14;

    private Promising() {}

    /**
     * @param additions how many the fit knows
     * @param always    what is in every set, such as a leftover
     * @return for each addition whether it is to be tried with two others or more; all of them where there are few
     */
    public static boolean[] of(MixFit fit, int additions, int... always) {
        boolean[] kept = new boolean[additions];
        if (additions - always.length <= KEPT) {
            Arrays.fill(kept, true);
            return kept;
        }
        double[] nearest = new double[additions];
        Arrays.fill(nearest, Double.POSITIVE_INFINITY);
        int[] chosen = Arrays.copyOf(always, always.length + 2);
        double[] x = new double[SmallQuadratic.MOST];
        for (int i = 0; i < additions; i++) {
            for (int j = 0; j <= i; j++) {
                // A tint with itself is the tint alone.
                int count = always.length + (j < i ? 2 : 1);
                chosen[always.length] = i;
                chosen[always.length + 1] = j;
                double distance = fit.fit(chosen, count, x);
                for (int place = always.length; place < count; place++) {
                    if (x[place] > 0) {
                        nearest[chosen[place]] = Math.min(nearest[chosen[place]], distance);
                    }
                }
            }
        }
        IntStream.range(0, additions)
                .boxed()
                .filter(i -> Arrays.stream(always).noneMatch(a -> a == i))
                .sorted(Comparator.comparingDouble(i -> nearest[i]))
                .limit(KEPT)
                .forEach(i -> kept[i] = true);
        return kept;
    }
}
