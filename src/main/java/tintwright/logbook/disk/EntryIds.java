package tintwright.logbook.disk;

import java.time.Clock;
import java.util.Comparator;
import java.util.UUID;
import java.util.random.RandomGenerator;

/**
 * New names for entries: unique without asking anybody, and sorted by the time they were given.
 *
 * <p>Source: RFC 9562, 5.7 (UUID version 7) and 6.2, method 2 (monotonic random). Within one process the names
 * only grow, also when the clock is set back.
 */
public final class EntryIds {
    /** The last millisecond that 48 bits can tell. */
    private static final UUID LAST_OF_ALL = new UUID(0xffffffffffffL << 16, 0);

    private final Clock clock;
    private final RandomGenerator random;
    private UUID last = new UUID(0, 0);

    public EntryIds(Clock clock, RandomGenerator random) {
        this.clock = clock;
        this.random = random;
    }

    /** @return a name later than every name given before */
    public synchronized UUID next() {
        last = fresh(last);
        return last;
    }

    /**
     * @param earlier a name that the new one must follow, so that a correction counts also when the clock of the
     *                bench that wrote the first word was ahead; it does not push the names of other entries ahead
     * @throws IllegalArgumentException when no name can follow it
     */
    synchronized UUID nextAfter(UUID earlier) {
        if (ORDER.compare(earlier, LAST_OF_ALL) >= 0) {
            throw new IllegalArgumentException("the entry " + earlier + " carries a name later than any that can be"
                    + " given, so nothing can take its place; write a new one instead");
        }
        return ORDER.compare(earlier, last) > 0 ? fresh(earlier) : next();
    }

    private UUID fresh(UUID floor) {
        UUID fresh = name(clock.millis(), random.nextInt(1 << 12), random.nextLong());
        return ORDER.compare(fresh, floor) > 0 ? fresh : justAfter(floor);
    }

    private UUID justAfter(UUID floor) {
        long millis = millis(floor);
        // Twelve bits count the names of one millisecond, and a name of other making may hold a higher version than
        // seven; past both the name borrows from the next millisecond.
        int counter = (int) (floor.getMostSignificantBits() + 1) & 0xfff;
        UUID after = name(millis, counter, random.nextLong());
        return ORDER.compare(after, floor) > 0 ? after : name(millis + 1, 0, random.nextLong());
    }

    /** @return when a name was given, milliseconds since 1970 */
    public static long millis(UUID id) {
        return id.getMostSignificantBits() >>> 16;
    }

    private static UUID name(long millis, int counter, long noise) {
        return new UUID(millis << 16 | 0x7000 | counter, noise & 0x3fffffffffffffffL | 0x8000000000000000L);
    }

    /** As the text of the names sorts: {@link UUID#compareTo} takes the halves as signed numbers. */
    public static final Comparator<UUID> ORDER = (a, b) -> {
        int first = Long.compareUnsigned(a.getMostSignificantBits(), b.getMostSignificantBits());
        return first != 0 ? first : Long.compareUnsigned(a.getLeastSignificantBits(), b.getLeastSignificantBits());
    };
}
