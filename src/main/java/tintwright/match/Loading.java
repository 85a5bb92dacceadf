package tintwright.match;

import java.util.ArrayList;
import java.util.List;

/**
 * The most of each part that may be in the whole, as printed on its tub, and of a leftover as much as there is of it.
 * Each part has its own limit, whatever else is in the mix; what a leftover brings along counts.
 */
public final class Loading {
    /** For a search that knows no limit. */
    public static final Loading NONE = new Loading(1, List.of());

    /** A bound on work, a judgement of ours. */
    private static final int PASSES = 60;

    private final double stockGrams;
    private final Limit[] limits;
    /** For each addition the limits that more of it comes nearer to. */
    private final int[][] near;

    /**
     * One part's limit.
     *
     * @param most    share of the whole by mass, above 0, below 1
     * @param content grams of the part in one gram of each addition
     * @param inStock grams of it that are in the stock
     */
    public record Limit(double most, double[] content, double inStock) {}

    /**
     * @param stockGrams grams of the stock that is added to
     * @param limits     one for each part that has a limit, each with a content for every addition
     */
    public Loading(double stockGrams, List<Limit> limits) {
        this.stockGrams = stockGrams;
        this.limits = limits.toArray(Limit[]::new);
        this.near = new int[limits.isEmpty() ? 0 : this.limits[0].content.length][];
        for (int addition = 0; addition < near.length; addition++) {
            List<Integer> found = new ArrayList<>();
            for (int l = 0; l < this.limits.length; l++) {
                if (this.limits[l].content[addition] > this.limits[l].most) {
                    found.add(l);
                }
            }
            near[addition] = found.stream().mapToInt(Integer::intValue).toArray();
        }
    }

    /** @return limits for additions that are single parts: the most of each, with so many grams of it in the stock */
    public static Loading ofParts(double stockGrams, double[] most, double[] inStock) {
        List<Limit> limits = new ArrayList<>();
        for (int i = 0; i < most.length; i++) {
            double[] content = new double[most.length];
            content[i] = 1;
            limits.add(new Limit(most[i], content, inStock[i]));
        }
        return new Loading(stockGrams, limits);
    }

    /** @return the most grams of the i-th chosen addition beside the others as they stand in x; may be below 0 */
    double ceiling(int[] chosen, int count, double[] x, int i) {
        double least = Double.POSITIVE_INFINITY;
        if (limits.length == 0) {
            return least;
        }
        for (int l : near[chosen[i]]) {
            Limit limit = limits[l];
            double room = limit.most * stockGrams - limit.inStock;
            for (int j = 0; j < count; j++) {
                room -= j == i ? 0 : x[j] * (limit.content[chosen[j]] - limit.most);
            }
            least = Math.min(least, room / (limit.content[chosen[i]] - limit.most));
        }
        return least;
    }

    /** Takes from amounts over a limit what is too much, never below the floors. */
    void keep(int[] chosen, int count, double[] x, double[] floor) {
        boolean moved = limits.length > 0;
        for (int pass = 0; pass < PASSES && moved; pass++) {
            moved = false;
            for (int i = 0; i < count; i++) {
                double most = Math.max(floor[i], ceiling(chosen, count, x, i));
                if (x[i] > most * (1 + 1e-12)) {
                    x[i] = most;
                    moved = true;
                }
            }
        }
    }
}
