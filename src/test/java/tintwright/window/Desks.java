package tintwright.window;

import java.time.Clock;
import tintwright.bench.ShopLog;

/** Desks for tests: everything happens at once, on the thread that asks. */
final class Desks {
    private Desks() {
    }

    /** @return a desk on the demo boat, shelf and log */
    static Desk demo(Clock clock) {
        return new Desk(Desk.demo(), Runnable::run, Runnable::run, clock, () -> ShopLog.demo(clock));
    }
}
