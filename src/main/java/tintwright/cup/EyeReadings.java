package tintwright.cup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.colour.Grid;
import tintwright.colour.LabBatch;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.shelf.Chip;
import tintwright.shelf.Ensemble;
import tintwright.shelf.Knowledge;

/**
 * Turns what the eye said of a cup's dabs, one dab after the other, into readings of the difference between dab and
 * hull, which the learning takes like any other. An answer is an interval: how far it reaches is worked out against
 * what was thought of the difference before, so that "much too light" of a white dab says little and of a dab near
 * the hull says much. Figures here that name no source are judgements of ours.
 */
final class EyeReadings {
    /** How many times more a person's looks may stray than usual, and how likely each is; common practice, no source. */
    private static final double[] POORNESS = {1, 2, 3};

    private static final double[] USUAL = {0.6, 0.3, 0.1};
    /** So likely to stray twice as much as usual, or more, is poor. */
    private static final double POOR = 0.8;
    /** A slip that is likelier than this is asked about. */
    private static final double DOUBTED = 0.5;

    private final CupState state;
    private final HullBias aim;
    private final Knowledge read;
    private final List<Chip> chips = new ArrayList<>();
    private final Map<String, Map<String, Double>> within = new HashMap<>();
    private final double[] judge = USUAL.clone();
    private Knowledge known;
    private Optional<String> doubted = Optional.empty();

    private EyeReadings(Knowledge read, CupState state, HullBias aim) {
        this.read = read;
        this.known = read;
        this.state = state;
        this.aim = aim;
    }

    /**
     * @param knowledge what shelf, chips and eye teach together
     * @param eye       what is thought of the eye
     */
    record Learned(Knowledge knowledge, Eye eye) {}

    /** @param read what shelf and chips teach */
    static Learned of(Knowledge read, CupState state, HullBias aim) {
        return new EyeReadings(read, state, aim).learned();
    }

    private Learned learned() {
        List<CupState.Look> looks =
                state.looks().stream().filter(look -> look.verdict().tells()).toList();
        if (looks.isEmpty()) {
            return new Learned(read, Eye.CLOSED);
        }
        List<CupState.Look> dab = new ArrayList<>();
        for (CupState.Look look : looks) {
            if (!dab.isEmpty() && !sameDab(dab.get(0), look)) {
                take(dab);
                dab.clear();
            }
            dab.add(look);
        }
        take(dab);
        double poorness = 0;
        for (int i = 0; i < judge.length; i++) {
            poorness += judge[i] * POORNESS[i];
        }
        return new Learned(known, new Eye(looks.size(), poorness, 1 - judge[0] > POOR, doubted));
    }

    private static boolean sameDab(CupState.Look one, CupState.Look other) {
        return one.parts().equals(other.parts())
                && one.verdict().film() == other.verdict().film();
    }

    /** Looks at one dab count together: two that agree are no slip. */
    private void take(List<CupState.Look> looks) {
        CupState.Look first = looks.get(0);
        FilmState film = first.verdict().film();
        EyeSites sites = new EyeSites(differences(first));
        double[][] drawn = sites.drawn();
        double[][][] answer = new double[looks.size()][drawn.length][POORNESS.length];
        double[] evidence = new double[POORNESS.length];
        double[] slipped = new double[looks.size()];
        double total = 0;
        for (int i = 0; i < drawn.length; i++) {
            for (int j = 0; j < POORNESS.length; j++) {
                double all = judge[j] * sites.weight(i);
                for (int k = 0; k < answer.length; k++) {
                    answer[k][i][j] = EyeJudge.chance(looks.get(k).verdict(), drawn[i], POORNESS[j]);
                    all *= EyeJudge.withSlips(answer[k][i][j]);
                }
                for (int k = 0; k < answer.length; k++) {
                    slipped[k] += all * EyeJudge.ofSlip() / EyeJudge.withSlips(answer[k][i][j]);
                }
                evidence[j] += all;
                total += all;
            }
        }
        double[] believed = new double[drawn.length];
        for (int i = 0; i < drawn.length; i++) {
            for (int j = 0; j < POORNESS.length; j++) {
                double all = evidence[j] / total;
                for (int k = 0; k < answer.length; k++) {
                    all *= slipped[k] > DOUBTED * total ? 1 : answer[k][i][j];
                }
                believed[i] += all;
            }
        }
        for (int j = 0; j < judge.length; j++) {
            judge[j] = evidence[j] / total;
        }
        int last = looks.size() - 1;
        doubted = slipped[last] > DOUBTED * total ? Optional.of(looks.get(last).entry()) : Optional.empty();
        EyeSites.Site site = sites.site(believed);
        // The mark keeps these apart from any chip of the shelf.
        String id = "\u0001eye " + first.entry();
        chips.add(new Chip(
                id,
                first.parts(),
                List.of(aim.beside(
                        site.mean(),
                        Covariance.of(site.covariance()),
                        aim.target().geometry(),
                        film)),
                Optional.empty(),
                ""));
        within.put(id, first.off());
        known = read.with(chips, within, within.keySet());
    }

    /** Dab minus hull in equally likely versions of all that is known, a wet dab as it looks wet. */
    private double[][] differences(CupState.Look look) {
        Ensemble ensemble = known.ensemble();
        double[] shares = known.shares(look.parts());
        int[] places = java.util.stream.IntStream.range(0, shares.length)
                .filter(i -> shares[i] > 0)
                .toArray();
        double[] present =
                java.util.Arrays.stream(places).mapToDouble(i -> shares[i]).toArray();
        LabBatch projection = LabBatch.of(aim.target().colour().viewing(), Grid.INSIDE);
        double[] work = new double[Grid.INSIDE.count()];
        double[][] bias = ensemble.bias(aim.bias());
        double[] hull = {
            aim.target().colour().lightness(),
            aim.target().colour().a(),
            aim.target().colour().b()
        };
        double[][] wet = known.wetShift();
        boolean isWet = look.verdict().film() == FilmState.WET;
        double[][] out = new double[ensemble.size()][3];
        for (int v = 0; v < out.length; v++) {
            ensemble.colour(v, places, present, projection, aim.target().geometry(), out[v], work);
            for (int axis = 0; axis < 3; axis++) {
                // Every other version lies on the other side: the spread of the shift without draws of its own.
                double shift = isWet ? wet[axis][0] + ((v >> axis) % 2 == 0 ? 1 : -1) * wet[axis][1] : 0;
                out[v][axis] += shift - (hull[axis] - bias[v][axis]);
            }
        }
        return out;
    }
}
