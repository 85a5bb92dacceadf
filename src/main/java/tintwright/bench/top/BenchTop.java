package tintwright.bench.top;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import tintwright.bench.log.ShopLog;
import tintwright.colour.Lab;
import tintwright.cup.CupDeeds;
import tintwright.cup.WayWords;
import tintwright.fill.DayWords;
import tintwright.fill.FillPlan;
import tintwright.reading.EyeVerdict;
import tintwright.units.UnitSystem;

/**
 * The top of the bench, where everybody sees the same and one hand works at a time: whoever has the job in hand shows
 * what lies there, any face looks at it, waits for the next change, and does a deed. A deed that is pressed on two
 * phones, or sent twice by one, is done once. Safe for several threads.
 */
public final class BenchTop {
    /** Deeds remembered, so that one sent again gets the same answer: more than are done in a day. */
    private static final int REMEMBERED = 500;

    /** What a photo is wanted for at the moment. */
    public enum Wanted {
        /** The hull at the place in hand. */
        HULL,
        /** A chip of the cup in hand. */
        CHIP
    }

    /** What can be done at the bench from another face. */
    public sealed interface Act {
        /** A photo was taken. The file is the bench's own from now on. */
        record Photo(Path file) implements Act {}

        /** A cup is begun for the place in hand. */
        record Begin() implements Act {}

        /** What is to be weighed now is in; {@code typed} is what the scale showed. */
        record Weighed(String typed) implements Act {}

        /**
         * A dab was held against the hull and looked at.
         *
         * @param nearest of the row of trial dabs that is asked for, 1 for the first, 0 for the cup's own beside it; empty
         *     when only a dab of the cup was looked at
         */
        record Looked(EyeVerdict verdict, OptionalInt nearest) implements Act {}

        /** This one of the ways back is followed, from 0. */
        record Follow(int way) implements Act {}

        /** The catalyst of this batch is in just now. */
        record Catalysed(int batch) implements Act {}

        /** A step of the day is ticked off, or not any more. */
        record Ticked(String step, boolean done) implements Act {}

        /** What this batch was watched for is done. */
        record Seen(int batch, String cue) implements Act {}
    }

    /**
     * What came of a deed.
     *
     * @param done   false when nothing was changed
     * @param said   one sentence for the person
     * @param recipe a cup of the log whose recipe was asked for; mostly empty
     */
    public record Answer(boolean done, String said, Optional<UUID> recipe) {
        /** The bench has gone on since the page was made: nothing is done twice, and nothing that nobody saw. */
        public static final Answer GONE_ON =
                new Answer(false, "The bench has gone on meanwhile. This is what comes now.");

        public Answer(boolean done, String said) {
            this(done, said, Optional.empty());
        }

        /**
         * @param log what the log of the shop holds, where it is open
         * @return what comes of the label of a cup
         */
        public static Answer label(UUID cup, Optional<ShopLog> log) {
            return log.flatMap(open -> open.cup(cup)).isPresent()
                    ? new Answer(true, "", Optional.of(cup))
                    : new Answer(false, "That is the label of a cup, but this bench's log has no such cup.");
        }

        /** Nothing can be matched that nobody has read. */
        public static final Answer HULL_FIRST =
                new Answer(false, "No hull is read yet: take a photo of it first, or read it at the bench.");

        /** @return what is said when a look is written down */
        public static Answer seen(EyeVerdict verdict) {
            return new Answer(true, "Written down: " + verdict.words() + ".");
        }
    }

    /**
     * The cup in hand.
     *
     * @param key    what the next deed to it is called; another one after every deed
     * @param hull   what it is mixed for, to draw answers by
     * @param deeds  what is to be done and was done
     * @param ways   the ways back when it is too dark; else none
     * @param wrong  what went wrong at the cup last; mostly empty
     */
    public record CupNow(String key, Lab hull, CupDeeds deeds, List<WayWords.Said> ways, String wrong) {
        public CupNow {
            ways = List.copyOf(ways);
        }
    }

    /**
     * The day at the holes.
     *
     * @param plan    the job worked out
     * @param units   how it is said
     * @param ticked  the steps that are done: {@link DayTicks#name}
     * @param running batches with catalyst in them and their clocks
     * @param hold    why no catalyst may go in now; empty when it may
     */
    public record DayNow(
            FillPlan plan, UnitSystem units, Set<String> ticked, SortedMap<Integer, CureClock> running, String hold) {
        public DayNow {
            ticked = Set.copyOf(ticked);
        }

        /** @return whether the day has a step of this name */
        public boolean has(String step) {
            return DayWords.of(plan, units).stream()
                    .anyMatch(line -> DayTicks.name(line).equals(step));
        }
    }

    /**
     * What lies on the bench at one moment.
     *
     * @param boat   name of the boat in hand; may be empty
     * @param job    whose job it is, such as "Tarrowmere, port bow"
     * @param wanted what a photo is taken for
     * @param cup    the cup in hand; empty before one is begun
     * @param day    the steps at the holes; empty while nothing is to be filled
     */
    public record Sight(String boat, String job, Wanted wanted, Optional<CupNow> cup, Optional<DayNow> day) {}

    /** Who has the job in hand. */
    public interface Hands {
        /**
         * Does a deed; called from any thread, answered from any thread.
         *
         * @param key what the deed was called when it was shown; the bench may have gone on since
         */
        CompletableFuture<Answer> act(String key, Act act);

        /** @return the log of the shop; empty while it is not open */
        default Optional<ShopLog> log() {
            return Optional.empty();
        }
    }

    private final Hands hands;
    private final Map<String, CompletableFuture<Answer>> done = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, CompletableFuture<Answer>> eldest) {
            return size() > REMEMBERED;
        }
    };
    private Sight sight;
    private long version;

    /**
     * @param first what lies there now
     * @param hands does what is asked
     */
    public BenchTop(Sight first, Hands hands) {
        this.sight = first;
        this.hands = hands;
    }

    /** Whoever has the job in hand shows what lies there now. */
    public synchronized void show(Sight now) {
        if (!now.equals(sight)) {
            sight = now;
            changed();
        }
    }

    private void changed() {
        version++;
        notifyAll();
    }

    /** Lets everybody who waits look anew, although nothing may have changed. */
    public synchronized void wake() {
        changed();
    }

    /** @return what lies there now */
    public synchronized Sight sight() {
        return sight;
    }

    /** @return the log of the shop; empty while it is not open */
    public Optional<ShopLog> log() {
        return hands.log();
    }

    /** @return a number that grows with every change */
    public synchronized long version() {
        return version;
    }

    /**
     * Waits until something has changed.
     *
     * @param seen   the version that is known already
     * @param millis how long to wait at most, above 0
     * @return the version now; {@code seen} when the time is over
     */
    public synchronized long after(long seen, long millis) throws InterruptedException {
        long until = System.nanoTime() + millis * 1_000_000;
        for (long left = millis; version == seen && left > 0; left = (until - System.nanoTime()) / 1_000_000) {
            wait(left);
        }
        return version;
    }

    /**
     * Does a deed once, however often and by whomever it is sent.
     *
     * @param key what tells this deed from every other; one that was refused may be sent again. Empty for a deed of which
     *            the hands can tell by what lies there that it is done already, such as a clock that runs
     */
    @SuppressWarnings("FutureReturnValueIgnored") // what goes wrong in there is told by the future that is returned
    public CompletableFuture<Answer> act(String key, Act act) {
        if (key.isEmpty()) {
            return hands.act(key, act);
        }
        CompletableFuture<Answer> mine;
        synchronized (this) {
            CompletableFuture<Answer> before = done.get(key);
            if (before != null) {
                return before;
            }
            mine = new CompletableFuture<>();
            done.put(key, mine);
        }
        // Outside the lock: the bench's own thread may be waiting to show something.
        hands.act(key, act).whenComplete((answer, failure) -> {
            if (failure != null || !answer.done()) {
                forget(key);
            }
            if (failure == null) {
                mine.complete(answer);
            } else {
                mine.completeExceptionally(failure);
            }
        });
        return mine;
    }

    private synchronized void forget(String key) {
        done.remove(key);
    }
}
