package tintwright.cup;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.match.Aim;
import tintwright.match.Target;
import tintwright.reading.FilmState;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;
import tintwright.shelf.knowledge.Knowledge;

/**
 * A cup seen with all that is known: the shelf's chips, the chips read from the cup itself, and the hull. Plans,
 * ways back and words are made from it. Not for use by two threads at once.
 */
public final class CupSight {
    /** A hull that may be off by more than this on each axis, root mean square, was hardly read; a judgement of ours. */
    private static final double HARDLY_READ = 3.5;

    /**
     * A hull that may be off by more than this on each axis is to stand in one photo with the first chip: its error is
     * then near the 1 that is seen edge to edge; a judgement of ours.
     */
    private static final double DOUBTFUL_HULL = 0.9;

    private final Knowledge shelf;
    private final Cup cup;
    private final CupState state;
    private final HullBias aim;
    private final Knowledge knowledge;
    private final Eye eye;
    private final Optional<Contradiction> contradiction;
    private CupVersions versions;

    private CupSight(Knowledge shelf, Cup cup) {
        this.shelf = shelf;
        this.cup = cup;
        this.state = cup.state();
        this.aim = HullBias.of(cup.hullAsRead());
        EyeReadings.Learned learned =
                EyeReadings.of(learn(shelf, state, aim), state, aim, state.mass() > 0 && hullHardlyRead());
        this.knowledge = learned.knowledge();
        this.eye = learned.eye();
        this.contradiction = Contradiction.of(this);
    }

    /** The same knowledge beside a cup in which more was weighed: nothing was learned from that. */
    private CupSight(CupSight before, Cup dosed) {
        this.shelf = before.shelf;
        this.cup = dosed;
        this.state = dosed.state();
        this.aim = before.aim;
        this.knowledge = before.knowledge;
        this.eye = before.eye;
        this.contradiction = before.contradiction;
    }

    /** @return this cup once the doses are in: what they do is foretold, and nothing is learned anew */
    CupSight dosed(List<Dose> doses) {
        Cup dosed = cup;
        for (Dose dose : doses) {
            dosed = dosed.add(Instant.EPOCH, dose.deed());
        }
        return new CupSight(this, dosed);
    }

    /**
     * @param shelf what the shelf's own chips teach
     * @throws IllegalArgumentException when the cup holds something that is not on the shelf
     */
    public static CupSight of(Knowledge shelf, Cup cup) {
        mustFit(shelf, cup);
        return new CupSight(shelf, cup);
    }

    /** @throws IllegalArgumentException for a cup that cannot be looked at: quickly said, before that is done */
    public static void mustFit(Knowledge shelf, Cup cup) {
        Aim.of(cup.hullAsRead());
        if (shelf.shelf().base(cup.base()).isEmpty()) {
            throw new IllegalArgumentException("the cup \"" + cup.name() + "\" is mixed in \"" + cup.base()
                    + "\", which is no base of this shelf: add it, or name the right shelf");
        }
        for (String id : cup.state().grams().keySet()) {
            mustStand(shelf, cup, id);
        }
    }

    private static void mustStand(Knowledge shelf, Cup cup, String id) {
        boolean stands = shelf.shelf().base(id).isPresent()
                || shelf.shelf().tint(id).isPresent()
                || shelf.shelf().leftover(id).isPresent();
        if (!stands) {
            throw new IllegalArgumentException("the cup \"" + cup.name() + "\" holds \"" + id
                    + "\", which is not on this shelf: add it as a base or tint, or name the right shelf");
        }
    }

    private static Knowledge learn(Knowledge shelf, CupState state, HullBias aim) {
        List<Chip> chips = new ArrayList<>();
        Map<String, Map<String, Double>> within = new HashMap<>();
        for (CupState.Sample sample : state.samples()) {
            if (sample.read().counts() && sample.parts().isPresent()) {
                // The mark keeps these apart from any chip of the shelf.
                String id = "\u0001cup " + sample.entry();
                chips.add(new Chip(id, sample.parts().get(), List.of(aim.seen(sample.read())), Optional.empty(), ""));
                within.put(id, sample.off());
            }
        }
        return chips.isEmpty() ? shelf : shelf.with(chips, within);
    }

    public Cup cup() {
        return cup;
    }

    public CupState state() {
        return state;
    }

    public Target target() {
        return aim.target();
    }

    HullBias aim() {
        return aim;
    }

    /** @return how far the hull's reading may be off, root mean square of the three axes, Lab units */
    double hullDoubt() {
        var c = aim.bias().covariance();
        return Math.sqrt((c.ll() + c.aa() + c.bb()) / 3);
    }

    /** @return true for a hull that was picked by eye or comes from a plain photo */
    boolean hullHardlyRead() {
        return hullDoubt() > HARDLY_READ;
    }

    /**
     * Whether to see the hull once more beside the first chip. A hull that was hardly read is doubtful too, but whoever
     * has no photo of it is not asked for one.
     */
    boolean hullIsDoubtful() {
        return hullDoubt() > DOUBTFUL_HULL && !hullHardlyRead();
    }

    /** @return true for a cup that is brought on by the eye: no chip of it was read */
    boolean byEye() {
        return state.lastSample().isEmpty() && (eye.answers() > 0 || hullHardlyRead());
    }

    /** @return what the shelf and this cup teach together */
    public Knowledge knowledge() {
        return knowledge;
    }

    /** @return what is thought of the eye that looked at the cup's dabs */
    public Eye eye() {
        return eye;
    }

    /** @return the last chip against the weights, when the two cannot both be right */
    public Optional<Contradiction> contradiction() {
        return contradiction;
    }

    /** @return what the shelf alone teaches */
    Knowledge shelfAlone() {
        return shelf;
    }

    CupVersions versions() {
        if (versions == null) {
            versions = new CupVersions(this);
        }
        return versions;
    }

    /** @return the hull by the best estimate: as read, without what readings beside it have shown to be the photo's */
    public Lab hull() {
        double[] mean = versions().meanHull();
        return new Lab(mean[0], mean[1], mean[2], aim.target().colour().viewing());
    }

    /** @return the cured colour of the cup as it is by the best estimate; empty for an empty cup */
    public Optional<Lab> colour() {
        return state.parts().map(parts -> {
            versions().play(Map.of(), 1);
            return colourAsPlayed(parts);
        });
    }

    /** Once an eye has spoken the versions are no normal distribution any more: their mean is what was seen. */
    private Lab colourAsPlayed(Parts parts) {
        if (eye.answers() == 0) {
            return colourOf(parts);
        }
        double[] miss = versions().meanMiss();
        double[] hull = versions().meanHull();
        return new Lab(
                Math.max(0, Math.min(100, hull[0] + miss[0])),
                hull[1] + miss[1],
                hull[2] + miss[2],
                aim.target().colour().viewing());
    }

    Lab colourOf(Parts parts) {
        return knowledge.colour(
                parts, aim.target().colour().viewing(), aim.target().geometry());
    }

    /** @return all that is to be done and was done; see {@link CupDeeds} */
    public CupDeeds deeds(Plan plan, List<Deed> ahead, boolean unsettled) {
        return CupDeeds.of(this, plan, ahead, unsettled);
    }

    /**
     * How near the cup is by all that is known.
     *
     * @return empty for an empty cup
     */
    public Optional<Outlook> outlook() {
        if (state.mass() == 0) {
            return Optional.empty();
        }
        return Optional.of(outlook(Map.of(), 1));
    }

    /** What the cup becomes when so much of it is kept and this is added. */
    Outlook outlook(Map<String, Double> added, double kept) {
        versions().play(added, kept);
        Map<String, Double> grams = new java.util.LinkedHashMap<>();
        state.grams().forEach((id, mass) -> grams.put(id, mass * kept));
        added.forEach((id, mass) -> grams.merge(id, mass, Double::sum));
        Lab lab = colourAsPlayed(Parts.of(grams));
        return new Outlook(
                lab,
                Ciede2000.between(lab, hull()),
                versions().expected(),
                versions().chanceWithin(1),
                versions().chanceWithin(2),
                versions().within(0.9),
                versions().chanceDarker());
    }

    /**
     * Whether the shift from wet to cured is known well enough to fill by.
     *
     * @return true when no reading of the cup is wet, or pairs have taught the shift
     */
    public boolean wetShiftKnown() {
        boolean wet = state.lastSample()
                .map(s -> s.read().reading().film() == FilmState.WET)
                .orElse(false);
        return !wet || knowledge.hasWetPair() && knowledge.wetShift()[0][1] < WET_KNOWN;
    }

    /** Uncertainty of the wet shift in L* below which it counts as known; common practice, no source. */
    private static final double WET_KNOWN = 0.8;
}
