package tintwright.bench;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;

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
    }

    /**
     * What came of a deed.
     *
     * @param done false when nothing was changed
     * @param said one sentence for the person
     */
    public record Answer(boolean done, String said) {}

    /**
     * What lies on the bench at one moment.
     *
     * @param job    whose job it is, such as "Tarrowmere, port bow"
     * @param wanted what a photo is taken for
     */
    public record Sight(String job, Wanted wanted) {}

    /** Who has the job in hand. */
    public interface Hands {
        /**
         * Does a deed; called from any thread, answered from any thread.
         *
         * @param key what the deed was called when it was shown; the bench may have gone on since
         */
        CompletableFuture<Answer> act(String key, Act act);
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
     * @param key what tells this deed from every other; one that was refused may be sent again
     */
    @SuppressWarnings("FutureReturnValueIgnored") // what goes wrong in there is told by the future that is returned
    public CompletableFuture<Answer> act(String key, Act act) {
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
