package tintwright.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tintwright.colour.Ciede2000;
import tintwright.colour.DifferenceWords;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.colour.SmoothReflectance;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.knowledge.Knowledge;

/**
 * Target to recipe: every useful set of up to four tints is fitted, the promising ones are played over all that is
 * not known, and a short list comes out in which each is better than those above it in something.
 */
public final class Matcher {
    /** A judgement of ours. */
    private static final int MOST_TINTS = 4;
    /** Sets that are played over the versions of the shelf; a bound on work, a judgement of ours. */
    private static final int SHORT_LIST = 32;
    /** What one more tint must gain in CIEDE2000 to be worth its trouble; common practice, no source. */
    private static final double PRICE_OF_A_TINT = 0.06;
    /** How much a family or leftover must shorten the distance to be worth naming; a judgement of ours. */
    private static final double WORTH_NAMING = 0.8;

    /** What a mix may be off by, Lab units, before its dose is looked at again: nobody sees it; a judgement of ours. */
    private static final double UNSEEN = 0.05;
    /** A bound on work, a judgement of ours. */
    private static final int MOST_ROUNDS = 3;

    private final Knowledge knowledge;
    private final double[][] k;
    private final double[][] s;

    public Matcher(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.k = knowledge.absorption();
        this.s = knowledge.scattering();
    }

    /** One fitted set of tints: which rows of the pool, and grams of each per gram of base. */
    private record Candidate(int[] chosen, double[] amounts, double distance) {}

    /** @throws IllegalArgumentException when the base, leftover or a left-out tint is not on the shelf */
    public MatchAnswer match(Wish wish) {
        String baseId = baseOf(wish);
        Pool pool = Pool.of(knowledge, wish, k, s, baseId);
        Search search = new Search(wish, pool);
        List<Candidate> candidates = search.candidates(MOST_TINTS);
        List<Recipe> recipes = search.recipes(candidates);
        Recipe best = recipes.get(0);
        if (best.deltaE() <= MatchAnswer.REACH) {
            return new MatchAnswer.Reached(recipes);
        }
        double exact = search.nearest(candidates);
        if (exact <= MatchAnswer.REACH) {
            return new MatchAnswer.TooCoarse(recipes, exact);
        }
        return outOfReach(wish, baseId, recipes);
    }

    private String baseOf(Wish wish) {
        String id = wish.base().orElse(knowledge.shelf().bases().get(0).id());
        if (knowledge.shelf().base(id).isEmpty()) {
            throw new IllegalArgumentException("there is no base \"" + id + "\" on the shelf");
        }
        for (String tint : wish.leaveOut()) {
            if (knowledge.shelf().tint(tint).isEmpty()) {
                throw new IllegalArgumentException("there is no tint \"" + tint + "\" on the shelf to leave out");
            }
        }
        return id;
    }

    private MatchAnswer outOfReach(Wish wish, String baseId, List<Recipe> recipes) {
        Recipe best = recipes.get(0);
        double nearest = best.deltaE();
        Optional<PigmentFamily> family = Optional.empty();
        double withFamily = nearest;
        for (PigmentFamily candidate : PigmentFamily.values()) {
            if (candidate == PigmentFamily.UNKNOWN) {
                continue;
            }
            Pool pool = Pool.of(knowledge, wish, k, s, baseId).withUsual(knowledge, candidate);
            double reached = new Search(wish, pool).nearestWith(pool.size() - 1);
            if (reached < withFamily - 0.01) {
                withFamily = reached;
                family = Optional.of(candidate);
            }
        }
        if (withFamily > nearest * WORTH_NAMING) {
            family = Optional.empty();
            withFamily = nearest;
        }
        Optional<String> leftover = Optional.empty();
        double withLeftover = nearest;
        if (wish.leftover().isEmpty()) {
            for (Leftover each : knowledge.shelf().leftovers()) {
                Wish from = new Wish(
                        wish.target(),
                        wish.grams(),
                        wish.scaleStep(),
                        wish.leaveOut(),
                        wish.base(),
                        Optional.of(each.id()));
                Pool pool = Pool.of(knowledge, from, k, s, baseId);
                double reached = new Search(from, pool).nearestWith(pool.size() - 1);
                if (reached < withLeftover * WORTH_NAMING) {
                    withLeftover = reached;
                    leftover = Optional.of(each.id());
                }
            }
        }
        return new MatchAnswer.OutOfReach(
                recipes,
                nearest,
                DifferenceWords.of(best.prediction().lab(), wish.target().colour()),
                family,
                withFamily,
                leftover,
                withLeftover);
    }

    /** One match being worked on: the fit, the odds and the judge share one target. */
    private final class Search {
        private final Wish wish;
        private final Pool pool;
        private final MixFit fit;
        private final double[] aim;
        private final Spectrum spectrum;
        private boolean thorough;

        Search(Wish wish, Pool pool) {
            this.wish = wish;
            this.pool = pool;
            Target target = wish.target();
            Lab c = target.colour();
            this.aim = c.axes();
            this.spectrum =
                    target.reflectance().orElseGet(() -> SmoothReflectance.of(c).resampled(Grid.INSIDE));
            this.fit = new MixFit(
                    pool.additions(),
                    aim,
                    Metric.around(c),
                    spectrum.toArray(),
                    LabBatch.of(c.viewing(), Grid.INSIDE),
                    target.geometry());
        }

        List<Candidate> candidates(int most) {
            List<Candidate> found = new ArrayList<>();
            int always = pool.leftoverRow();
            int[] chosen = new int[most + 1];
            int start = 0;
            if (always >= 0) {
                chosen[start++] = always;
            }
            boolean[] kept = Promising.of(fit, pool.size(), Arrays.copyOf(chosen, start));
            grow(found, kept, chosen, start, 0, most + start);
            // Only a colour that nothing reaches has several nearest mixes: then it pays to look from more sides.
            if (found.stream().allMatch(c -> c.distance() > MixFit.FAR)) {
                found.clear();
                thorough = true;
                grow(found, kept, chosen, start, 0, most + start);
            }
            if (always >= 0 && found.stream().anyMatch(this::startsFromTheLeftover)) {
                found.removeIf(c -> !startsFromTheLeftover(c));
            }
            found.sort(Comparator.comparingDouble(c -> Math.sqrt(c.distance()) + PRICE_OF_A_TINT * c.chosen().length));
            return found;
        }

        /** Whether at least one step of the scale of the leftover, its first choice, is in it. */
        private boolean startsFromTheLeftover(Candidate candidate) {
            Parts parts = pool.parts(candidate.chosen(), candidate.amounts(), wish.grams());
            return parts.grams(wish.leftover().orElseThrow()) >= wish.scaleStep();
        }

        private void grow(List<Candidate> found, boolean[] kept, int[] chosen, int count, int from, int most) {
            double[] x = new double[SmallQuadratic.MOST];
            double distance = thorough ? fit.fitThoroughly(chosen, count, x) : fit.fit(chosen, count, x);
            boolean useful = true;
            boolean promising = true;
            for (int i = 0; i < count; i++) {
                boolean leftover = chosen[i] == pool.leftoverRow();
                useful &= x[i] > 0 || leftover;
                promising &= kept[chosen[i]] || leftover;
            }
            if (useful) {
                found.add(new Candidate(Arrays.copyOf(chosen, count), x, distance));
            }
            boolean pair = count - (most - MOST_TINTS) < 2;
            for (int i = from; count < most && (pair || promising) && i < pool.size(); i++) {
                if (i != pool.leftoverRow() && (pair || kept[i])) {
                    chosen[count] = i;
                    grow(found, kept, chosen, count + 1, i + 1, most);
                }
            }
        }

        /** How near the best candidates come before they are rounded to the scale, CIEDE2000. */
        double nearest(List<Candidate> candidates) {
            Target target = wish.target();
            return candidates.stream()
                    .limit(SHORT_LIST)
                    .map(each -> pool.parts(each.chosen(), each.amounts(), wish.grams()))
                    .map(mix -> knowledge.colour(mix, target.colour().viewing(), target.geometry()))
                    .mapToDouble(mix -> Ciede2000.between(mix, target.colour()))
                    .min()
                    .orElseThrow();
        }

        /** How near any set of three comes that holds this row, CIEDE2000. */
        double nearestWith(int row) {
            double least = Double.POSITIVE_INFINITY;
            double[] x = new double[SmallQuadratic.MOST];
            double[] lab = null;
            boolean[] kept = Promising.of(fit, pool.size(), row);
            for (int i = -1; i < pool.size(); i++) {
                for (int j = -1; j < i; j++) {
                    if (i >= 0 && !kept[i] || j >= 0 && !kept[j] || i == row || j == row) {
                        continue;
                    }
                    int[] chosen = {row, i, j};
                    double distance = fit.fit(chosen, 1 + (i >= 0 ? 1 : 0) + (j >= 0 ? 1 : 0), x);
                    if (distance < least) {
                        least = distance;
                        lab = fit.lab();
                    }
                }
            }
            return lab == null
                    ? Double.POSITIVE_INFINITY
                    : tintwright.colour.Ciede2000.between(lab[0], lab[1], lab[2], aim[0], aim[1], aim[2]);
        }

        /** @return the short list, ranked */
        List<Recipe> recipes(List<Candidate> candidates) {
            Odds odds = new Odds(knowledge.ensemble(), wish.target(), wish.grams(), wish.scaleStep());
            Judge judge = new Judge(knowledge, wish, odds, spectrum, pool);
            List<Recipe> recipes = new ArrayList<>();
            for (Candidate candidate : candidates.subList(0, Math.min(SHORT_LIST, candidates.size()))) {
                double[] x = candidate.amounts().clone();
                aimAtTheMean(odds, candidate.chosen(), x);
                recipes.add(judge.judge(pool.parts(candidate.chosen(), x, wish.grams())));
            }
            return Ranking.rank(recipes).stream().map(judge::complete).toList();
        }

        /** The fit takes tints to be as strong as at a usual dose; aims so that they are at their own. */
        private void atItsDose(int[] chosen, double[] x) {
            fit.fitFrom(chosen, chosen.length, x);
            Viewing viewing = wish.target().colour().viewing();
            for (int round = 0; round < MOST_ROUNDS; round++) {
                double[] now = fit.lab();
                Lab mix = knowledge.colour(
                        pool.parts(chosen, x, 1), viewing, wish.target().geometry());
                double[] off = {mix.lightness() - now[0], mix.a() - now[1], mix.b() - now[2]};
                if (Math.hypot(off[0], Math.hypot(off[1], off[2])) < UNSEEN) {
                    return;
                }
                fit.aim(new double[] {aim[0] - off[0], aim[1] - off[1], aim[2] - off[2]});
                fit.fitFrom(chosen, chosen.length, x);
            }
        }

        /**
         * What is not known bends the mean colour away from the best estimate's; aims so that the mean hits.
         */
        private void aimAtTheMean(Odds odds, int[] chosen, double[] x) {
            atItsDose(chosen, x);
            double[] shares = knowledge.shares(pool.parts(chosen, x, 1));
            odds.play(Judge.present(shares), Judge.nonZero(shares));
            double[] now = fit.lab();
            double[] moved = new double[3];
            for (int axis = 0; axis < 3; axis++) {
                moved[axis] = aim[axis] - (odds.meanColour()[axis] - now[axis]);
            }
            fit.aim(moved);
            fit.fitFrom(chosen, chosen.length, x);
            fit.aim(aim);
        }
    }
}
