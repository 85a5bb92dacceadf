package tintwright.cup;

/**
 * How much white a cup needs to come back in range.
 */
final class Climb {
    /** A climb that comes this near, CIEDE2000, or within this of the nearest possible, takes no more white; a judgement of ours. */
    private static final double NEAR = 0.3;

    /** A judgement of ours. */
    private static final double AS_GOOD = 0.15;
    /** Most white that is looked at, in masses of the cup; a judgement of ours. */
    private static final double MOST = 30;

    private Climb() {}

    /**
     * The least white with which tints come about as near as with any amount, and all of them may safely go in.
     *
     * @param without the answer without white; given back when no amount does it
     * @param tell    what the readings can tell, CIEDE2000: what they cannot is not worth white
     */
    static TintSearch.Found least(TintSearch search, double mass, TintSearch.Found without, double tell) {
        return least(search, mass, without, tell, true);
    }

    /** The same for a hull nearly as light as the white, where not even the white alone is surely light enough. */
    static TintSearch.Found leastOnTheWhole(TintSearch search, double mass, TintSearch.Found without, double tell) {
        return least(search, mass, without, tell, false);
    }

    private static TintSearch.Found least(
            TintSearch search, double mass, TintSearch.Found without, double tell, boolean safe) {
        if (good(search, without, NEAR, safe)) {
            return without;
        }
        double nearest = without.safely();
        for (double times = 0.25; times <= MOST; times *= 2) {
            nearest = Math.min(nearest, search.best(times * mass).safely());
        }
        double goal = Math.max(NEAR, nearest + Math.max(AS_GOOD, tell / 4));
        if (good(search, without, goal, safe)) {
            return without;
        }
        double low = 0;
        double high = 0.02 * mass;
        TintSearch.Found found = search.best(high);
        while (!good(search, found, goal, safe)) {
            if (high > MOST * mass) {
                return without;
            }
            low = high;
            high *= 1.6;
            found = search.best(high);
        }
        for (int i = 0; i < 9; i++) {
            double middle = (low + high) / 2;
            TintSearch.Found trial = search.best(middle);
            if (good(search, trial, goal, safe)) {
                high = middle;
                found = trial;
            } else {
                low = middle;
            }
        }
        return found;
    }

    private static boolean good(TintSearch search, TintSearch.Found found, double goal, boolean safe) {
        return found.safely() <= goal && (!safe || search.isSafe(found));
    }
}
