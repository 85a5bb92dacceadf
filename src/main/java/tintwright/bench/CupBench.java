package tintwright.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import tintwright.colour.Lab;
import tintwright.cup.Contradiction;
import tintwright.cup.Cup;
import tintwright.cup.CupDeeds;
import tintwright.cup.CupEntry;
import tintwright.cup.CupSight;
import tintwright.cup.CupState;
import tintwright.cup.CupWords;
import tintwright.cup.Deed;
import tintwright.cup.Dose;
import tintwright.cup.DosePlanner;
import tintwright.cup.Eye;
import tintwright.cup.Outlook;
import tintwright.cup.Plan;
import tintwright.cup.ReadingCheck;
import tintwright.cup.UnknownCup;
import tintwright.cup.Way;
import tintwright.cup.WayWords;
import tintwright.cup.Ways;
import tintwright.match.Target;
import tintwright.reading.ColourReading;
import tintwright.reading.EyeVerdict;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;
import tintwright.shelf.knowledge.Knowledge;

/**
 * Working at a cup: start it, weigh in, read, take back, put right, ask what to do. Immutable: every step gives
 * the bench after it, so a face keeps the one it shows. The work is done when something is asked, and kept.
 */
public final class CupBench {
    /** The same dose again within this time is asked about. */
    public static final Duration AGAIN = Duration.ofSeconds(10);

    private final Knowledge shelf;
    private final Cup cup;
    private final BiFunction<Knowledge, Cup, CupSight> look;
    private CupSight sight;
    private Plan plan;
    private List<Way> ways;

    private CupBench(Knowledge shelf, Cup cup, BiFunction<Knowledge, Cup, CupSight> look) {
        this.shelf = shelf;
        this.cup = cup;
        this.look = look;
    }

    /**
     * A new, empty cup.
     *
     * @param name  what is written on it
     * @param hull  the place to match
     * @param grams how much is wanted, 1 to 100000 g
     * @param step  smallest step of the scale, 0.0001 to 10 g
     * @param base  id of the white; empty for the first on the shelf
     * @throws IllegalArgumentException when one of these cannot be
     */
    public static CupBench start(
            Knowledge shelf, String name, PlaceReadings hull, double grams, double step, Optional<String> base) {
        String white = base.orElse(shelf.shelf().bases().get(0).id());
        return open(shelf, Cup.empty(name, hull, grams, step, white));
    }

    /**
     * A cup that nobody wrote down, from its reading.
     *
     * @param likely what may be in it, the likeliest first
     * @param bench  the cup with the likeliest contents written in, and the reading
     */
    public record Unknown(List<UnknownCup.Contents> likely, CupBench bench) {}

    /**
     * Works out what is most likely in this cup, and writes it in.
     *
     * @param mass    how much is in the cup, grams
     * @param reading what was read from it
     * @throws IllegalArgumentException when something is written in the cup already
     */
    public Unknown unknown(Instant at, double mass, Reading reading) {
        if (!cup.standing().isEmpty()) {
            throw new IllegalArgumentException(
                    "something is written in this cup already: start another for contents" + " nobody wrote down");
        }
        List<UnknownCup.Contents> likely = UnknownCup.likely(shelf, reading, mass, cup.base());
        UnknownCup.Contents best = likely.get(0);
        Cup found = cup.add(at, new Deed.Found(best.parts(), best.off()))
                .add(at, new Deed.Read(reading, Optional.empty(), true));
        return new Unknown(likely, after(found));
    }

    /**
     * @return the bench after doing what the plan says, weighed exactly so; the same for a plan without doses
     * @throws IllegalArgumentException when a can holds less than is planned
     */
    public CupBench asPlanned(Instant at) {
        if (plan() instanceof Plan.Start start) {
            return also(at, new Deed.Weighed(cup.base(), start.white(), cup.scaleStep()))
                    .also(at, new Deed.Held(start.reserve()));
        }
        return plan() instanceof Plan.Doses doses ? all(doses.doses(), at) : this;
    }

    /**
     * @return the bench after doing this way in this cup; the same for one that leaves the cup as it is
     * @throws IllegalArgumentException when a can holds less than is planned
     */
    public CupBench follow(Way way, Instant at) {
        if (way instanceof Way.Climb climb) {
            return all(climb.doses(), at);
        } else if (way instanceof Way.Split split) {
            return also(at, new Deed.SetAside(split.setAside(), split.name())).all(split.doses(), at);
        }
        return this;
    }

    private CupBench all(List<Dose> doses, Instant at) {
        CupBench done = this;
        for (Dose dose : doses) {
            done = done.also(at, dose.deed());
        }
        return done;
    }

    /** @throws IllegalArgumentException when the cup holds something that is not on this shelf */
    public static CupBench open(Knowledge shelf, Cup cup) {
        return open(shelf, cup, CupSight::of);
    }

    static CupBench open(Knowledge shelf, Cup cup, BiFunction<Knowledge, Cup, CupSight> look) {
        CupSight.mustFit(shelf, cup);
        return new CupBench(shelf, cup, look);
    }

    /** The bench after a change: looked at only when somebody asks. */
    private CupBench after(Cup changed) {
        return open(shelf, changed, look);
    }

    public Cup cup() {
        return cup;
    }

    /** @return what is in the cup, the reserve, the readings and what was set aside */
    public CupState state() {
        return cup.state();
    }

    public Shelf shelf() {
        return shelf.shelf();
    }

    private synchronized CupSight sight() {
        if (sight == null) {
            sight = look.apply(shelf, cup);
        }
        return sight;
    }

    /** What came of an entry. */
    public sealed interface Added {
        /** It is written. */
        record Done(CupBench bench) implements Added {}

        /**
         * The same dose was entered a moment ago: ask whether it really went in twice.
         *
         * @param question what to ask
         * @param ifMeant  the bench when it did
         */
        record SameAgain(String question, CupBench ifMeant) implements Added {}
    }

    /** What came of a reading. */
    public sealed interface Learned {
        CupBench bench();

        /** It is written and learned from. */
        record Done(CupBench bench) implements Learned {}

        /**
         * It cannot be this cup: it is written, but nothing is learned from it.
         *
         * @param why one sentence
         */
        record NotThisCup(CupBench bench, String why) implements Learned {}
    }

    /** @see #add */
    public Added weigh(Instant at, String part, double grams) {
        return add(at, new Deed.Weighed(part, grams, cup.scaleStep()));
    }

    /**
     * Writes what was done to the cup.
     *
     * @throws IllegalArgumentException for a part that is not on the shelf, more than its can holds, or more set
     *         aside than there is
     */
    public Added add(Instant at, Deed deed) {
        check().mustBe(deed);
        CupBench after = after(cup.add(at, deed));
        List<CupEntry> standing = cup.standing();
        if (!standing.isEmpty() && goesIn(deed)) {
            CupEntry last = standing.get(standing.size() - 1);
            if (last.deed().equals(deed)
                    && Duration.between(last.at(), at).abs().compareTo(AGAIN) <= 0) {
                return new Added.SameAgain(
                        CupDeeds.words(deed, shelf()) + " was written a moment ago already: did it go in twice?",
                        after);
            }
        }
        return new Added.Done(after);
    }

    /** @return the bench after a deed that goes with the one before it, such as white held back with white weighed in */
    public CupBench also(Instant at, Deed deed) {
        check().mustBe(deed);
        return after(cup.add(at, deed));
    }

    private DeedCheck check() {
        return new DeedCheck(shelf(), state());
    }

    private static boolean goesIn(Deed deed) {
        return deed instanceof Deed.Weighed || deed instanceof Deed.LetDown || deed instanceof Deed.Dropped;
    }

    /**
     * Writes what a chip from the cup read.
     *
     * @param hull the hull in the same photo, when it stands there
     */
    public Learned read(Instant at, Reading reading, Optional<ColourReading> hull) {
        Deed.Read counts = new Deed.Read(reading, hull, true);
        Optional<String> why = ReadingCheck.cannotBe(sight(), counts);
        if (why.isEmpty()) {
            return new Learned.Done(after(cup.add(at, counts)));
        }
        return new Learned.NotThisCup(after(cup.add(at, new Deed.Read(reading, hull, false))), why.get());
    }

    /**
     * Writes what a dab looked like beside the hull.
     *
     * @param nearest of the trial dabs that the plan asks for, made as it says: see {@link Plan.TryDabs#seen}; empty when
     *     only a dab of the cup was looked at
     * @throws IllegalArgumentException when nothing is in the cup, or the plan asks for no such trial dab
     */
    public CupBench seen(Instant at, EyeVerdict verdict, OptionalInt nearest) {
        if (state().mass() == 0) {
            throw new IllegalArgumentException("nothing is in the cup yet, so no dab of it can have been seen");
        }
        if (nearest.isEmpty()) {
            return after(cup.add(at, new Deed.Seen(verdict)));
        }
        if (!(plan() instanceof Plan.TryDabs row)) {
            throw new IllegalArgumentException(
                    "no trial dab is asked for now: say it of the cup's own dab, or look what is to be done next");
        }
        return after(cup.add(at, row.seen(verdict, nearest.getAsInt())));
    }

    /**
     * What still stands of steps that were chosen, now that something new was seen of the cup.
     *
     * @return nothing when a tint comes first: what goes in is planned anew with what was seen. White, or pouring off,
     *         that was chosen as a way back is gone on with
     */
    public List<Deed> still(List<Deed> ahead) {
        boolean white = ahead.isEmpty()
                || !goesIn(ahead.get(0))
                || ahead.get(0) instanceof Deed.Weighed weighed
                        && shelf().tint(weighed.part()).isEmpty();
        return white ? ahead : List.of();
    }

    /** Writes a reading that seemed impossible and learns from it all the same: the person is sure. */
    public CupBench readAnyway(Instant at, Reading reading, Optional<ColourReading> hull) {
        return after(cup.add(at, new Deed.Read(reading, hull, true)));
    }

    /** @return the bench after taking the last entry back; empty when there is none */
    public Optional<CupBench> undo(Instant at) {
        return cup.lastToUndo().map(last -> after(cup.undo(at)));
    }

    /** @return the bench after taking one entry back, however old */
    public CupBench undo(String entry, Instant at) {
        return after(cup.undo(entry, at));
    }

    /** @return the bench after undoing the last undoing; empty when something was done since */
    public Optional<CupBench> redo(Instant at) {
        return cup.lastToRedo().map(last -> after(cup.redo(at)));
    }

    /** Puts an entry right, however old: "that was 0.31, not 0.13"; everything after it follows. */
    public CupBench correct(String entry, Deed really, Instant at) {
        check().mustBe(really);
        return after(cup.correct(entry, really, at));
    }

    /** @return the bench after putting only the grams of an entry right */
    public CupBench correct(String entry, double grams, Instant at) {
        Deed old = cup.standing().stream()
                .filter(e -> e.id().equals(entry))
                .map(CupEntry::deed)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "there is no entry \"" + entry + "\" in the cup that could be corrected"));
        if (old instanceof Deed.Weighed w) {
            return correct(entry, new Deed.Weighed(w.part(), grams, w.step()), at);
        } else if (old instanceof Deed.LetDown l) {
            return correct(entry, new Deed.LetDown(l.part(), l.oneIn(), grams, l.step()), at);
        } else if (old instanceof Deed.Held) {
            return correct(entry, new Deed.Held(grams), at);
        } else if (old instanceof Deed.SetAside s) {
            return correct(entry, new Deed.SetAside(grams, s.name()), at);
        }
        throw new IllegalArgumentException("entry \"" + entry + "\" (" + CupDeeds.words(old, shelf())
                + ") has no grams to correct: undo it and write it anew");
    }

    /** @return what to do next */
    public synchronized Plan plan() {
        if (plan == null) {
            plan = DosePlanner.plan(sight());
        }
        return plan;
    }

    /** @return the ways on from here, the one that asks least first */
    public synchronized List<Way> ways() {
        if (ways == null) {
            ways = Ways.of(sight());
        }
        return ways;
    }

    /** @return the cup beside the hull in words, such as "Too dark and a touch red." */
    public String verdict() {
        return new CupWords(sight()).verdict();
    }

    /** @return all that is to be done to the cup and was done, as every face says it */
    public CupDeeds deeds() {
        return deeds(List.of(), contradiction().isPresent());
    }

    /**
     * @param ahead     steps of a way that was chosen, or of a plan that was begun: they come first
     * @param unsettled false when the person goes on although chip and weights disagree
     */
    public CupDeeds deeds(List<Deed> ahead, boolean unsettled) {
        return sight().deeds(plan(), ahead, unsettled && contradiction().isPresent());
    }

    /** @return {@link #ways()} in words, in the same order */
    public List<WayWords.Said> waysSaid() {
        return new WayWords(sight()).all(ways());
    }

    /** @return one of {@link #ways()} in words */
    public List<String> wayWords(Way way) {
        return waysSaid().get(ways().indexOf(way)).lines();
    }

    /** @return why one of {@link #ways()} is recommended; empty for the others */
    public Optional<String> whyWay(Way way) {
        return waysSaid().get(ways().indexOf(way)).why();
    }

    /**
     * The cup on the depth gauge.
     *
     * @param white L* of the white alone: the surface
     * @param hull  L* of the hull: the mark
     * @param cup   L* of the cup: the float; empty for an empty cup
     */
    public record Depth(double white, double hull, OptionalDouble cup) {}

    /** @return where surface, mark and float stand */
    public Depth depth() {
        Lab hull = sight().hull();
        Lab white = sight().knowledge()
                .colour(
                        Parts.of(java.util.Map.of(cup.base(), 1.0)),
                        hull.viewing(),
                        sight().target().geometry());
        OptionalDouble now =
                sight().colour().map(lab -> OptionalDouble.of(lab.lightness())).orElse(OptionalDouble.empty());
        return new Depth(white.lightness(), hull.lightness(), now);
    }

    /** @return the hull by the best estimate */
    public Lab hull() {
        return sight().hull();
    }

    /** @return the cured colour of the cup by the best estimate; empty for an empty cup */
    public Optional<Lab> colour() {
        return sight().colour();
    }

    /** @return the last chip against the weights, when the two cannot both be right */
    public Optional<Contradiction> contradiction() {
        return sight().contradiction();
    }

    /** @return what is thought of the eye that looked at its dabs: whether to ask again, or for a photo */
    public Eye eye() {
        return sight().eye();
    }

    /** @return how near the cup is and how sure; empty for an empty cup */
    public Optional<Outlook> outlook() {
        return sight().outlook();
    }

    /** @return what the shelf alone teaches, as the bench was opened with it */
    Knowledge knows() {
        return shelf;
    }

    /** @return what shelf and cup teach together */
    public Knowledge knowledge() {
        return sight().knowledge();
    }

    /** @return what is aimed at, as it was read */
    public Target target() {
        return sight().target();
    }

    /** @return how this cup stands to its hull when somebody is about to fill from it; empty for an empty cup */
    public Optional<CupStanding> standing() {
        return outlook().map(seen -> CupStanding.of(this, seen));
    }
}
