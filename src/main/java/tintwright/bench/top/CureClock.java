package tintwright.bench.top;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import tintwright.fill.catalyst.CureTimer;

/**
 * The times of a fill running since "catalysed now". It holds no clock: whoever shows it asks again with the present
 * moment.
 *
 * @param catalysed the moment the catalyst went in
 * @param timers    what runs from it
 */
public record CureClock(Instant catalysed, List<CureTimer> timers) {
    /** Where a timer stands. */
    public enum Phase {
        /** Not yet. */
        WAIT,
        /** It may be time: look. */
        LOOK,
        /** It should have come by now. */
        OVERDUE
    }

    /**
     * One timer at one moment.
     *
     * @param timer the timer
     * @param phase where it stands
     * @param left  until the phase ends; since the expected end when it is overdue
     */
    public record Standing(CureTimer timer, Phase phase, Duration left) {
        /** @return "tape off: in 7 min", "tape off: look now - a jelly ..." */
        public String words() {
            String left = duration(this.left);
            return timer.cue() + ": "
                    + switch (phase) {
                        case WAIT -> "in " + left;
                        case LOOK -> "look now - " + timer.test() + "; expected within " + left;
                        case OVERDUE -> "expected " + left + " ago - " + timer.test();
                    };
        }

        private static String duration(Duration time) {
            long minutes = Math.max(0, (time.toSeconds() + 59) / 60);
            return minutes < 120 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
        }
    }

    public CureClock {
        timers = List.copyOf(timers);
    }

    /** @return where every timer stands at this moment, in their order */
    public List<Standing> at(Instant now) {
        return timers.stream()
                .map(timer -> {
                    Instant from = opens(timer);
                    Instant to = closes(timer);
                    if (now.isBefore(from)) {
                        return new Standing(timer, Phase.WAIT, Duration.between(now, from));
                    }
                    return now.isAfter(to)
                            ? new Standing(timer, Phase.OVERDUE, Duration.between(to, now))
                            : new Standing(timer, Phase.LOOK, Duration.between(now, to));
                })
                .toList();
    }

    /** @return the moment before which the timer is not due */
    public Instant opens(CureTimer timer) {
        return after(timer.fromMinutes());
    }

    /** @return the moment by which the timer is expected to be due */
    public Instant closes(CureTimer timer) {
        return after(timer.toMinutes());
    }

    private Instant after(double minutes) {
        return catalysed.plusMillis(Math.round(minutes * 60_000));
    }
}
