package tintwright.match;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tintwright.colour.Grid;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Knowledge;

/**
 * What a recipe may draw on: one gram of base, and the tints (and one leftover) that can be added to it.
 */
final class Pool {
    private static final int N = Grid.INSIDE.count();
    /** 550 nm, where the eye judges lightness; a judgement of ours. */
    private static final int GREEN_LIGHT = 15;
    /** A recipe holds some base, however much of a leftover there is; a judgement of ours. */
    private static final double MOST_LEFTOVER = 0.999;

    private final String baseId;
    private final double[] baseK;
    private final double[] baseS;
    private final List<String> ids = new ArrayList<>();
    private final List<double[]> k = new ArrayList<>();
    private final List<double[]> s = new ArrayList<>();
    /** Limit of each part that has one, by its id: tints, and the leftover as far as it goes. */
    private final Map<String, Double> most = new LinkedHashMap<>();
    /** What is in one gram of the leftover, by id of a tint. */
    private final Map<String, Double> inLeftover = new LinkedHashMap<>();

    private final Set<String> blacks = new HashSet<>();
    private int leftoverRow = -1;

    private Pool(String baseId, double[] baseK, double[] baseS) {
        this.baseId = baseId;
        this.baseK = baseK;
        this.baseS = baseS;
    }

    static Pool of(Knowledge knowledge, Wish wish, double[][] k, double[][] s, String baseId) {
        List<String> places = knowledge.ids();
        int base = places.indexOf(baseId);
        Pool pool = new Pool(baseId, k[base], s[base]);
        for (Tint tint : knowledge.shelf().tints()) {
            if (!wish.leaveOut().contains(tint.id()) && !tint.stock().usedUp()) {
                int place = places.indexOf(tint.id());
                if (tint.family() == PigmentFamily.CARBON_BLACK) {
                    pool.blacks.add(tint.id());
                }
                pool.add(tint.id(), k[place], s[place], tint.loadingLimit());
            }
        }
        if (wish.leftover().isPresent()) {
            String id = wish.leftover().get();
            Leftover leftover = knowledge
                    .shelf()
                    .leftover(id)
                    .orElseThrow(
                            () -> new IllegalArgumentException("there is no leftover \"" + id + "\" on the shelf"));
            pool.addLeftover(knowledge, leftover, k, s, wish.grams());
        }
        return pool;
    }

    private void add(String id, double[] absorb, double[] scatter, double limit) {
        ids.add(id);
        k.add(absorb);
        s.add(scatter);
        most.put(id, limit);
    }

    private void addLeftover(Knowledge knowledge, Leftover leftover, double[][] rowsK, double[][] rowsS, double grams) {
        double[] shares = knowledge.shares(leftover.parts());
        double[] absorb = new double[N];
        double[] scatter = new double[N];
        for (int part = 0; part < shares.length; part++) {
            String id = knowledge.ids().get(part);
            Optional<Tint> tint = knowledge.shelf().tint(id);
            if (tint.isPresent() && shares[part] > 0) {
                // A tint that is left out of the recipe still has its limit when the leftover brings it.
                most.putIfAbsent(id, tint.get().loadingLimit());
                inLeftover.put(id, shares[part]);
            }
            for (int w = 0; w < N; w++) {
                absorb[w] += shares[part] * rowsK[part][w];
                scatter[w] += shares[part] * rowsS[part][w];
            }
        }
        leftoverRow = ids.size();
        add(
                leftover.id(),
                absorb,
                scatter,
                Math.min(MOST_LEFTOVER, leftover.parts().total() / grams));
    }

    /** @return this pool and a tint as its family usually is, in the last row */
    Pool withUsual(Knowledge knowledge, PigmentFamily family) {
        double[][] usual = knowledge.usual(family);
        add("a tint of " + family.words(), usual[0], usual[1], Tint.USUAL_LOADING_LIMIT);
        return this;
    }

    int size() {
        return ids.size();
    }

    /** @return the row of the leftover to start from; -1 for none */
    int leftoverRow() {
        return leftoverRow;
    }

    MixFit.Additions additions() {
        return new MixFit.Additions(k.toArray(double[][]::new), s.toArray(double[][]::new), baseK, baseS, loading());
    }

    /** To one gram of base. */
    private Loading loading() {
        List<Loading.Limit> limits = new ArrayList<>();
        most.forEach((part, share) -> {
            double[] content = new double[ids.size()];
            for (int row = 0; row < content.length; row++) {
                content[row] =
                        ids.get(row).equals(part) ? 1 : row == leftoverRow ? inLeftover.getOrDefault(part, 0.0) : 0;
            }
            limits.add(new Loading.Limit(share, content, 0));
        });
        return new Loading(1, limits);
    }

    /** @return true when this mix keeps to every limit, each as printed; the leftover to what there is of it */
    boolean keeps(Parts parts) {
        double total = parts.total();
        return most.entrySet().stream().allMatch(limit -> {
            double inside = leftoverRow < 0
                    ? 0
                    : inLeftover.getOrDefault(limit.getKey(), 0.0) * parts.grams(ids.get(leftoverRow));
            return parts.grams(limit.getKey()) + inside <= limit.getValue() * total * (1 + 1e-9);
        });
    }

    /** Amounts per gram of base, made into a batch: base first, then black or the strongest darkener. */
    Parts parts(int[] chosen, double[] amounts, double grams) {
        double total = 1;
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < chosen.length; i++) {
            total += amounts[i];
            order.add(i);
        }
        order.sort(Comparator.comparing((Integer i) -> !blacks.contains(ids.get(chosen[i])))
                .thenComparingDouble(i -> -amounts[i] * k.get(chosen[i])[GREEN_LIGHT]));
        Map<String, Double> parts = new LinkedHashMap<>();
        parts.put(baseId, grams / total);
        for (int i : order) {
            parts.put(ids.get(chosen[i]), amounts[i] / total * grams);
        }
        return Parts.of(parts);
    }
}
