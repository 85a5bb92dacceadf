package tintwright.cup;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import tintwright.colour.Ciede2000;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.match.Loading;
import tintwright.match.Metric;
import tintwright.match.MixFit;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.knowledge.Ensemble;

/**
 * Equally likely versions of a cup and its hull: what a dose does in all of them is how safe it is. Draws are
 * fixed, so that the same cup always gets the same advice.
 */
final class CupVersions {
    /** A mix darker than the hull by more than this in L* is too dark; a judgement of ours. */
    static final double TOO_DARK = 0.5;

    /** By how much of their spread versions are blurred when they are counted: less than a normal would need of so few. */
    private static final double BLUR = 0.15;

    private static final int N = Grid.INSIDE.count();
    /** A seed, any would do. */
    private static final long SEED = 4711L;

    private final CupSight sight;
    private final Ensemble ensemble;
    private final LabBatch projection;
    /** Grams of each part that is in the cup, leftovers taken apart, in each version. */
    private final Map<Integer, double[]> stock = new LinkedHashMap<>();

    private final double[][] hull;
    private final double[][] metric;
    private final double tintInCup;
    private final double[][] lab;
    private final double[] mean = new double[3];
    private final double[] meanHull = new double[3];

    CupVersions(CupSight sight) {
        this.sight = sight;
        this.ensemble = sight.knowledge().ensemble();
        Lab aim = sight.target().colour();
        this.projection = LabBatch.of(aim.viewing(), Grid.INSIDE);
        this.metric = Metric.around(aim);
        int n = ensemble.size();
        this.lab = new double[n][3];
        this.hull = new double[n][];
        double[][] bias = ensemble.bias(sight.aim().bias());
        for (int v = 0; v < n; v++) {
            hull[v] = new double[] {aim.lightness() - bias[v][0], aim.a() - bias[v][1], aim.b() - bias[v][2]};
            for (int axis = 0; axis < 3; axis++) {
                meanHull[axis] += hull[v][axis] / n;
            }
        }
        this.tintInCup = tintInCup();
        fillStock();
    }

    private CupState state() {
        return sight.state();
    }

    /** Grams of all tints in the cup, those of leftovers counted. */
    private double tintInCup() {
        if (state().mass() == 0) {
            return 0;
        }
        double[] shares = sight.knowledge().shares(state().parts().orElseThrow());
        double sum = 0;
        for (int part = 0; part < shares.length; part++) {
            boolean tint =
                    sight.knowledge().shelf().tint(ensemble.ids().get(part)).isPresent();
            sum += tint ? shares[part] * state().mass() : 0;
        }
        return sum;
    }

    /** The cup in every version, with weighing errors that no reading has judged yet. */
    private void fillStock() {
        Random random = new Random(SEED);
        CupState state = sight.state();
        state.grams().forEach((id, mass) -> {
            double off = state.unread().getOrDefault(id, 0.0);
            for (int v = 0; v < lab.length; v++) {
                put(v, id, Math.max(0, mass + off * random.nextGaussian()));
            }
        });
    }

    private void put(int version, String id, double grams) {
        int part = ensemble.ids().indexOf(id);
        if (part >= 0) {
            stock.computeIfAbsent(part, any -> new double[lab.length])[version] += grams;
            return;
        }
        Parts inside =
                sight.knowledge().shelf().leftover(id).map(Leftover::parts).orElseThrow();
        inside.grams().forEach((inner, mass) -> put(version, inner, grams * mass / inside.total()));
    }

    /** Plays the cup after keeping this share of it and adding these grams; the answers below are about that. */
    void play(Map<String, Double> added, double kept) {
        List<String> ids = ensemble.ids();
        Map<Integer, Double> more = new LinkedHashMap<>();
        stock.keySet().forEach(part -> more.put(part, 0.0));
        added.forEach((id, grams) -> more.put(ids.indexOf(id), grams));
        double tints = kept * tintInCup;
        double whole = kept * state().mass();
        for (Map.Entry<String, Double> part : added.entrySet()) {
            tints += part.getKey().equals(sight.cup().base()) ? 0 : part.getValue();
            whole += part.getValue();
        }
        int[] parts = more.keySet().stream().mapToInt(Integer::intValue).toArray();
        double[][] shares = new double[parts.length][lab.length];
        for (int i = 0; i < parts.length; i++) {
            double grams = more.get(parts[i]);
            for (int v = 0; v < lab.length; v++) {
                shares[i][v] = (grams + kept * inStock(v, parts[i])) / whole;
            }
        }
        double[] tinted = new double[lab.length];
        Arrays.fill(tinted, tints / whole);
        ensemble.colours(parts, shares, tinted, projection, sight.target().geometry(), lab);
        Arrays.fill(mean, 0);
        for (int v = 0; v < lab.length; v++) {
            for (int axis = 0; axis < 3; axis++) {
                mean[axis] += (lab[v][axis] - hull[v][axis]) / lab.length;
            }
        }
    }

    private double inStock(int version, int part) {
        double[] grams = stock.get(part);
        return grams == null ? 0 : grams[version];
    }

    /** @return the hull by the best estimate: L*, a*, b*, a copy */
    double[] meanHull() {
        return meanHull.clone();
    }

    /** @return mean of mix minus hull in L*, a*, b*, a copy */
    double[] meanMiss() {
        return mean.clone();
    }

    /** @return CIEDE2000 to be expected */
    double expected() {
        double sum = 0;
        for (int v = 0; v < lab.length; v++) {
            sum += distance(v);
        }
        return sum / lab.length;
    }

    double chanceWithin(double limit) {
        int hits = 0;
        for (int v = 0; v < lab.length; v++) {
            hits += distance(v) <= limit ? 1 : 0;
        }
        return hits / (double) lab.length;
    }

    /** @return CIEDE2000 that this share of all versions stays within */
    double within(double share) {
        double[] all = new double[lab.length];
        for (int v = 0; v < all.length; v++) {
            all[v] = distance(v);
        }
        Arrays.sort(all);
        return all[(int) Math.min(all.length - 1, Math.ceil(share * all.length) - 1)];
    }

    private double distance(int v) {
        return Ciede2000.between(hull[v][0], hull[v][1], hull[v][2], lab[v][0], lab[v][1], lab[v][2]);
    }

    /** @return probability that the mix is darker than the hull by more than {@value #TOO_DARK} L* */
    double chanceDarker() {
        double spread = spreadOfLightness();
        if (sight.eye().answers() == 0) {
            // Counting versions would move in steps of one; their spread in L* is close to normal and does not.
            return Normal.below((-TOO_DARK - mean[0]) / spread);
        }
        // What an eye said has a sharp end on one side and a long one on the other.
        double sum = 0;
        for (int v = 0; v < lab.length; v++) {
            sum += Normal.below((-TOO_DARK - lab[v][0] + hull[v][0]) / (BLUR * spread));
        }
        return sum / lab.length;
    }

    /** @return by how much the mix is too dark on average, L*: nothing where it is not, and blurred as the chance is */
    double overshoot() {
        double blur = BLUR * spreadOfLightness();
        double sum = 0;
        for (int v = 0; v < lab.length; v++) {
            double u = (-TOO_DARK - lab[v][0] + hull[v][0]) / blur;
            // Of max(0, x) over a normal with mean u and deviation 1, in closed form.
            sum += blur * (Math.exp(-u * u / 2) / Math.sqrt(2 * Math.PI) + u * Normal.below(u));
        }
        return sum / lab.length;
    }

    /** @return standard deviation of L* of mix minus hull */
    double spreadOfLightness() {
        double variance = 1e-9;
        for (int v = 0; v < lab.length; v++) {
            double d = lab[v][0] - hull[v][0] - mean[0];
            variance += d * d / (lab.length - 1);
        }
        return Math.sqrt(variance);
    }

    /** @return how far mix minus hull strays from its mean, root mean square in CIEDE2000 */
    double spread() {
        double sum = 0;
        for (int v = 0; v < lab.length; v++) {
            double size = length(new double[] {
                lab[v][0] - hull[v][0] - mean[0], lab[v][1] - hull[v][1] - mean[1], lab[v][2] - hull[v][2] - mean[2]
            });
            sum += size * size / (lab.length - 1);
        }
        return Math.sqrt(sum);
    }

    /** @return about the CIEDE2000 of a small step in L*, a*, b* at the hull's colour */
    double length(double[] step) {
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double row = 0;
            for (int j = i; j < 3; j++) {
                row += metric[i][j] * step[j];
            }
            sum += row * row;
        }
        return Math.sqrt(sum);
    }

    /**
     * One fit for each version: some tints into this cup with so much white, aimed at that version's hull.
     *
     * @param grams about how much of each tint will go in, for strength goes with the dose
     */
    MixFit[] fits(int[] tints, double[] grams, double white, double kept, double[] reflectance) {
        int base = ensemble.ids().indexOf(sight.cup().base());
        double whole = Math.max(1e-9, kept * state().mass() + white);
        MixFit[] fits = new MixFit[lab.length];
        for (int v = 0; v < fits.length; v++) {
            double[][] k = new double[tints.length][N];
            double[][] s = new double[tints.length][N];
            for (int i = 0; i < tints.length; i++) {
                double share = (kept * inStock(v, tints[i]) + grams[i]) / whole;
                ensemble.add(v, tints[i], 1, share, k[i], s[i]);
            }
            double[] baseK = new double[N];
            double[] baseS = new double[N];
            ensemble.add(v, base, white, 1, baseK, baseS);
            for (int part : stock.keySet()) {
                double in = kept * inStock(v, part);
                double more = 0;
                for (int i = 0; i < tints.length; i++) {
                    more += tints[i] == part ? grams[i] : 0;
                }
                ensemble.add(v, part, in, (in + more) / whole, baseK, baseS);
            }
            double[] stray = ensemble.stray(v, kept * tintInCup / whole);
            for (int w = 0; w < N; w++) {
                baseK[w] *= stray[w];
                for (double[] row : k) {
                    row[w] *= stray[w];
                }
            }
            fits[v] = new MixFit(
                    new MixFit.Additions(k, s, baseK, baseS, Loading.NONE),
                    hull[v],
                    metric,
                    reflectance,
                    projection,
                    sight.target().geometry());
        }
        return fits;
    }

    /** @return L* of the hull minus L* of the mix in the version that only this share of all exceeds */
    double darkness(double share) {
        double[] deep = new double[lab.length];
        for (int v = 0; v < deep.length; v++) {
            deep[v] = hull[v][0] - lab[v][0];
        }
        Arrays.sort(deep);
        return deep[(int) Math.min(deep.length - 1, Math.ceil((1 - share) * deep.length) - 1)];
    }
}
