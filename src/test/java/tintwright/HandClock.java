package tintwright;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock in UTC that a test sets by hand, and that may move on whenever it is asked, as a person at a bench does. */
public final class HandClock extends Clock {
    private final Duration step;
    private Instant now;

    /** @param step how far it moves on each time it is asked, before it answers */
    public HandClock(String start, Duration step) {
        now = Instant.parse(start);
        this.step = step;
    }

    /** A clock that stands until it is moved. */
    public static HandClock standing(String start) {
        return new HandClock(start, Duration.ZERO);
    }

    public void move(Duration by) {
        now = now.plus(by);
    }

    public void set(Instant to) {
        now = to;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }

    @Override
    public Instant instant() {
        now = now.plus(step);
        return now;
    }
}
