package tintwright.cup;

import java.util.List;
import tintwright.colour.Grid;
import tintwright.colour.SmoothReflectance;
import tintwright.match.MixFit;

/**
 * How much of the way is safe: what goes in cannot be taken out, neither its depth nor its hue.
 */
final class SafeShare {
    /**
     * Allowed chance of a dose that ends too dark: half of the 5 per cent that a whole job is allowed, a judgement of
     * ours, because a job takes several; docs/accuracy.md counts the jobs that did.
     */
    static final double TOO_DARK = 0.025;
    /** The same by eye, where {@link #OVERSHOOT} bounds it too; chosen by the study EyeStudy on its choosing half. */
    private static final double BY_EYE_TOO_DARK = 0.03;
    /**
     * By eye, how far too dark a dose may end, L* on average over all that may be: so the chance that is allowed is
     * small where much is unknown and a miss would be large; chosen by the study EyeStudy on its choosing half.
     */
    private static final double OVERSHOOT = 0.01;
    /**
     * The same before anything was seen beside a hull whose own reading is in doubt: the paint may break the theory,
     * and nothing has shown it yet; a judgement of ours, made after a first look at what EyeStudy reports.
     */
    private static final double FIRST_TOO_DARK = 0.005;
    /** Chance that a dose may add where the cup may be too dark as it is; a judgement of ours. */
    private static final double A_LITTLE_MORE = 0.01;
    /** So many standard deviations keep a normal chance at {@link #TOO_DARK}: derived, the normal quantile of 0.975. */
    static final double SURE_BY = 1.96;
    /** Allowed chance of a dose after which white is needed to come near: one in twenty, a judgement of ours. */
    static final double TOO_FAR = 0.05;
    /**
     * From this loss on, CIEDE2000 that tints cannot win back, a dose went too far: just under the 1 that is seen edge
     * to edge; a judgement of ours.
     */
    private static final double LOST = 0.8;

    /**
     * But by eye, where much is unknown, a loss of this share of what is unknown is no reason to wait:
     * a judgement of ours.
     */
    private static final double OF_THE_UNKNOWN = 0.25;

    /** Derived: so many halvings find a share to one part in 512. */
    private static final int HALVINGS = 9;

    private final CupSight sight;
    private final TintSearch.Found way;
    private final double kept;
    private final double[] amounts;
    private final MixFit[] fits;
    private final int[] all;
    private final double[] before;
    private final double lost;
    private final double dark;
    private final double most;

    private SafeShare(CupSight sight, TintSearch.Found way, double kept) {
        this.sight = sight;
        this.way = way;
        this.kept = kept;
        List<String> ids = sight.knowledge().ids();
        int[] tints = way.tints().keySet().stream().mapToInt(ids::indexOf).toArray();
        this.amounts =
                way.tints().values().stream().mapToDouble(Double::doubleValue).toArray();
        this.all = new int[tints.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = i;
        }
        double[] reflectance = sight.target()
                .reflectance()
                .orElseGet(() -> SmoothReflectance.of(sight.hull()).resampled(Grid.INSIDE))
                .toArray();
        this.fits = sight.versions().fits(tints, amounts, way.white(), kept, reflectance);
        this.before = distances(0);
        sight.versions().play(way.all(sight.cup().base(), 0), kept);
        double usual = sight.byEye()
                ? BY_EYE_TOO_DARK
                : !sight.state().judged() && sight.hullIsDoubtful() ? FIRST_TOO_DARK : TOO_DARK * 1.1;
        // Where even nothing may be too dark, a little more after each look; not with every dose between two.
        this.dark = sight.byEye() && !sight.state().unjudged()
                ? Math.max(usual, sight.versions().chanceDarker() + A_LITTLE_MORE)
                : usual;
        this.most = !sight.byEye()
                ? Double.POSITIVE_INFINITY
                : OVERSHOOT + (sight.state().unjudged() ? 0 : sight.versions().overshoot());
        sight.versions().play(java.util.Map.of(), kept);
        this.lost =
                sight.byEye() ? Math.max(LOST, OF_THE_UNKNOWN * sight.versions().spread()) : LOST;
    }

    /** @return the largest safe share of the tints of this way, after its white, 0 to 1 */
    static double of(CupSight sight, TintSearch.Found way, double kept) {
        if (way.tints().isEmpty()) {
            return 1;
        }
        SafeShare safe = new SafeShare(sight, way, kept);
        if (safe.allows(1)) {
            return 1;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (safe.allows(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private boolean allows(double share) {
        sight.versions().play(way.all(sight.cup().base(), share), kept);
        return sight.versions().chanceDarker() <= dark
                && sight.versions().overshoot() <= most
                && chanceTooFar(share) <= TOO_FAR;
    }

    private double chanceTooFar(double share) {
        double[] after = distances(share);
        int gone = 0;
        for (int v = 0; v < after.length; v++) {
            gone += after[v] > before[v] + lost ? 1 : 0;
        }
        return gone / (double) after.length;
    }

    /** How near each version comes with more of the same tints once this share is in. */
    private double[] distances(double share) {
        double[] least = new double[amounts.length];
        for (int i = 0; i < least.length; i++) {
            least[i] = share * amounts[i];
        }
        double[] out = new double[fits.length];
        for (int v = 0; v < out.length; v++) {
            fits[v].atLeast(least);
            out[v] = Math.sqrt(fits[v].fit(all, all.length, new double[6]));
        }
        return out;
    }
}
