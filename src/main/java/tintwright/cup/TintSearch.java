package tintwright.cup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.colour.SmoothReflectance;
import tintwright.match.Loading;
import tintwright.match.Metric;
import tintwright.match.MixFit;
import tintwright.match.Promising;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Tint;

/**
 * Which tints, and how much of each, bring a cup with so much white added nearest to the hull.
 */
final class TintSearch {
    private static final int N = Grid.INSIDE.count();
    /** Three tints reach every colour that more would, but for the bounds; a judgement of ours. */
    private static final int MOST_TINTS = 3;
    /** What the recipe chose goes in whole, with what is in already; a judgement of ours. */
    private static final int MOST_OF_A_RECIPE = 6;
    /** What a tint that is not in the cup yet must gain in CIEDE2000; common practice, no source. */
    private static final double PRICE_OF_A_NEW_TINT = 0.12;

    /** A judgement of ours. */
    private static final double PRICE_OF_A_TINT = 0.02;

    /** Farther than this from the hull, in L*, it is better to go part of the way than to aim beside it; a judgement of ours. */
    private static final double MOST_LIFT = 1.0;

    private final CupSight sight;
    private final boolean chosenBefore;
    /** Of every part in the cup as it is; zeros of an empty one. */
    private final double[] shares;

    private final double[][] k;
    private final double[][] s;
    private final List<Tint> tints = new ArrayList<>();
    private final double[] aim;
    private final double[][] metric;
    private final double[] reflectance;
    private final LabBatch projection;

    /** @param only the tints that the recipe chose; none means that all of the shelf may go in */
    TintSearch(CupSight sight, List<String> only) {
        this.sight = sight;
        this.chosenBefore = !only.isEmpty();
        this.shares = sight.state()
                .parts()
                .map(sight.knowledge()::shares)
                .orElseGet(() -> new double[sight.knowledge().ids().size()]);
        this.k = sight.knowledge().absorption(shares);
        this.s = sight.knowledge().scattering(shares);
        for (Tint tint : sight.knowledge().shelf().tints()) {
            if (!tint.stock().usedUp() && (only.isEmpty() || only.contains(tint.id()))) {
                tints.add(tint);
            }
        }
        Lab c = sight.target().colour();
        this.aim = sight.versions().meanHull();
        this.metric = Metric.around(c);
        this.reflectance = sight.target()
                .reflectance()
                .orElseGet(() -> SmoothReflectance.of(c).resampled(Grid.INSIDE))
                .toArray();
        this.projection = LabBatch.of(c.viewing(), Grid.INSIDE);
    }

    /**
     * An answer.
     *
     * @param white    grams of white added
     * @param tints    grams by tint, those that darken most first
     * @param distance CIEDE2000 to the hull left by the best estimate, about
     * @param safely   the same to the colour that is aimed at: the hull, or a little lighter for what is not known
     */
    record Found(double white, Map<String, Double> tints, double distance, double safely) {
        Map<String, Double> all(String base, double fraction) {
            Map<String, Double> added = new LinkedHashMap<>();
            if (white > 0) {
                added.put(base, white);
            }
            tints.forEach((id, grams) -> added.put(id, grams * fraction));
            return added;
        }
    }

    /** The best tints for the cup and this much more white; aims so that the mean of all versions hits safely. */
    Found best(double white) {
        double[] stockK = new double[N];
        double[] stockS = new double[N];
        int base = sight.knowledge().ids().indexOf(sight.cup().base());
        double mass = sight.state().mass();
        double[] loaded = new double[k.length];
        for (int part = 0; part < k.length; part++) {
            double grams = shares[part] * mass + (part == base ? white : 0);
            loaded[part] = grams;
            for (int w = 0; w < N; w++) {
                stockK[w] += grams * k[part][w];
                stockS[w] += grams * s[part][w];
            }
        }
        MixFit fit = fit(stockK, stockS, mass + white, loaded);
        int[] chosen = new int[chosenBefore ? Math.min(tints.size(), MOST_OF_A_RECIPE) : MOST_TINTS];
        Best best = new Best();
        boolean[] kept = Promising.of(fit, tints.size());
        grow(fit, best, kept, chosen, 0, 0);
        return aimAtTheMean(fit, best, white);
    }

    /** @return true when all of this may go in without making the cup too dark */
    boolean isSafe(Found found) {
        sight.versions().play(found.all(sight.cup().base(), 1), 1);
        // Rounding of a lift that just reaches its goal must not count against it.
        return sight.versions().chanceDarker() <= SafeShare.TOO_DARK * 1.1;
    }

    private MixFit fit(double[] stockK, double[] stockS, double mass, double[] loaded) {
        double[][] rowsK = new double[tints.size()][];
        double[][] rowsS = new double[tints.size()][];
        double[] most = new double[tints.size()];
        double[] inStock = new double[tints.size()];
        for (int i = 0; i < rowsK.length; i++) {
            int part = sight.knowledge().ids().indexOf(tints.get(i).id());
            rowsK[i] = k[part];
            rowsS[i] = s[part];
            most[i] = tints.get(i).loadingLimit();
            inStock[i] = loaded[part];
        }
        return new MixFit(
                new MixFit.Additions(rowsK, rowsS, stockK, stockS, Loading.ofParts(mass, most, inStock)),
                aim,
                metric,
                reflectance,
                projection,
                sight.target().geometry());
    }

    private static final class Best {
        private int[] chosen = {};
        private double[] grams = {};
        private double cost = Double.POSITIVE_INFINITY;
        private double distance = Double.POSITIVE_INFINITY;
    }

    private void grow(MixFit fit, Best best, boolean[] kept, int[] chosen, int count, int from) {
        double[] x = new double[6];
        double distance = Math.sqrt(fit.fit(chosen, count, x));
        double cost = distance;
        boolean promising = true;
        for (int i = 0; i < count; i++) {
            promising &= kept[chosen[i]];
            boolean inCup =
                    sight.state().grams().containsKey(tints.get(chosen[i]).id());
            cost += inCup || chosenBefore ? PRICE_OF_A_TINT : PRICE_OF_A_NEW_TINT;
        }
        if (cost < best.cost) {
            best.cost = cost;
            best.distance = distance;
            best.chosen = java.util.Arrays.copyOf(chosen, count);
            best.grams = java.util.Arrays.copyOf(x, count);
        }
        for (int i = from; count < chosen.length && (count < 2 || promising) && i < tints.size(); i++) {
            if (count < 2 || kept[i]) {
                chosen[count] = i;
                grow(fit, best, kept, chosen, count + 1, i + 1);
            }
        }
    }

    /**
     * What is not known bends the mean colour away from the best estimate's, and may make the mix too dark: aims
     * so that the mean hits, and so much lighter that too dark is unlikely.
     */
    private Found aimAtTheMean(MixFit fit, Best best, double white) {
        double[] x = java.util.Arrays.copyOf(best.grams, 6);
        fit.fitFrom(best.chosen, best.chosen.length, x);
        double[] now = fit.lab();
        sight.versions().play(found(best, best.grams, white, 0).all(sight.cup().base(), 1), 1);
        double[] miss = sight.versions().meanMiss();
        double lift = SafeShare.SURE_BY * sight.versions().spreadOfLightness() - CupVersions.TOO_DARK;
        double[] moved = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            moved[axis] = aim[axis] - (miss[axis] - (now[axis] - aim[axis]));
        }
        moved[0] += Math.max(0, Math.min(MOST_LIFT, lift));
        fit.aim(moved);
        double safely = Math.sqrt(fit.fitFrom(best.chosen, best.chosen.length, x));
        fit.aim(aim);
        return found(best, x, white, safely);
    }

    /** Value first: black, else the tint that darkens most for what is to be added of it; then the next. */
    private Found found(Best best, double[] grams, double white, double safely) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < best.chosen.length; i++) {
            if (grams[i] > 0) {
                order.add(i);
            }
        }
        order.sort(Comparator.comparingInt((Integer i) -> isBlack(best.chosen[i]) ? 0 : 1)
                .thenComparingDouble(i -> -depth(best.chosen[i]) * grams[i]));
        Map<String, Double> added = new LinkedHashMap<>();
        order.forEach(i -> added.put(tints.get(best.chosen[i]).id(), grams[i]));
        return new Found(white, added, best.distance, safely);
    }

    private boolean isBlack(int tint) {
        return tints.get(tint).family() == PigmentFamily.CARBON_BLACK;
    }

    /** How much one gram takes from the lightness: its absorption in the middle of the spectrum. */
    private double depth(int tint) {
        double[] row = k[sight.knowledge().ids().indexOf(tints.get(tint).id())];
        double sum = 0;
        for (int w = 12; w <= 20; w++) {
            sum += row[w];
        }
        return sum;
    }
}
