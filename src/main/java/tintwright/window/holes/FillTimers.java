package tintwright.window.holes;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import tintwright.bench.top.CureClock;
import tintwright.bench.top.CureClock.Phase;
import tintwright.fill.catalyst.CureTimer;
import tintwright.window.frame.ShellModel;

/** What runs from "catalysed now": one clock for each cup, whichever station is in sight. */
public final class FillTimers {
    /** Nearer than this, a time has to be in sight at every station. */
    private static final Duration SOON = Duration.ofMinutes(5);
    /** Longer due than this, it stands in the notice and at the fill only: sanding may wait for a day. */
    private static final Duration FRESH = Duration.ofMinutes(30);

    private final ShellModel shell;
    private final Clock clock;
    private final List<Started> started = new ArrayList<>();
    private final Map<String, Phase> phases = new HashMap<>();
    private final ReadOnlyObjectWrapper<List<Running>> running = new ReadOnlyObjectWrapper<>(List.of());
    private final Supplier<String> jobName;
    private Consumer<List<Started>> keep = list -> {};

    /**
     * Which cup: batches are numbered anew at each place.
     *
     * @param job   boat and place that it is for
     * @param batch its number in their plan
     */
    public record Cup(String job, int batch) {}

    /**
     * A cup with catalyst in it.
     *
     * @param words what the batch is for
     * @param clock when it began and what still runs from it
     */
    record Started(Cup cup, String words, CureClock clock) {}

    /**
     * A cup as it stands now.
     *
     * @param name  such as "Batch 1", with boat and place when it is for others than those in hand
     * @param words what it is for, and when the catalyst went in
     * @param cues  what it will be time for, in order
     */
    public record Running(Cup cup, String name, String words, List<Cue> cues) {}

    /**
     * One thing it will be time for.
     *
     * @param cue    what
     * @param figure "12 min 43 s left" until then, "now", or "3 min 5 s late" since it should have come: never to be
     *               taken for a time of day
     * @param until  the time of day it may be due, such as "12:43"
     * @param words  what to look for
     * @param phase  where it stands
     * @param left   until the figure changes its kind
     * @param urgent true when it comes within minutes, or has come a short while ago
     */
    public record Cue(
            String cue, String figure, String until, String words, Phase phase, Duration left, boolean urgent) {
        /** @return in the few letters of a station's key: "12 min left" */
        String inShort() {
            return switch (phase) {
                case WAIT ->
                    (left.toMinutes() >= 120
                                    ? left.toHours() + " h"
                                    : left.toMinutes() >= 1 ? left.toMinutes() + " min" : left.toSeconds() + " s")
                            + " left";
                case LOOK -> "look now";
                case OVERDUE -> "late";
            };
        }

        /** @return in a sentence without its end: "stop spreading: 12 min 43 s left, until 12:43" */
        String inOneLine() {
            return cue
                    + switch (phase) {
                        case WAIT -> ": " + figure + ", until " + until;
                        case LOOK -> ": look now, since " + until;
                        case OVERDUE -> ": " + figure;
                    };
        }
    }

    /** @param jobName boat and place in hand */
    FillTimers(ShellModel shell, Clock clock, Supplier<String> jobName) {
        this.shell = shell;
        this.clock = clock;
        this.jobName = jobName;
    }

    /** @return the cup of so many a batch at the place in hand */
    public Cup inHand(int batch) {
        return new Cup(jobName.get(), batch);
    }

    private String name(Cup cup) {
        return "Batch " + cup.batch() + (cup.job().equals(jobName.get()) ? "" : " of " + cup.job());
    }

    /** Takes up what ran when the window was closed, and hands every change on to be kept. */
    void resume(List<Started> kept, Consumer<List<Started>> keeper) {
        started.clear();
        started.addAll(kept);
        keep = keeper;
        tick();
    }

    /** The catalyst of a batch goes in just now; a clock that ran for it begins anew. */
    void start(Cup cup, String words, List<CureTimer> timers) {
        started.removeIf(one -> one.cup().equals(cup));
        started.add(new Started(cup, words, new CureClock(clock.instant(), timers)));
        changed();
    }

    /** Stops the clock of a batch. */
    void stop(Cup cup) {
        started.removeIf(one -> one.cup().equals(cup));
        changed();
    }

    /** @return how long ago the catalyst of a batch went in; empty when it does not run */
    Optional<Duration> since(Cup cup) {
        return started.stream()
                .filter(one -> one.cup().equals(cup))
                .findFirst()
                .map(one -> Duration.between(one.clock().catalysed(), clock.instant()));
    }

    /** This has been done, of a batch at the place in hand, and need not be watched for any more. */
    public void done(int batch, String cue) {
        done(inHand(batch), cue);
    }

    void done(Cup cup, String cue) {
        started.replaceAll(one -> !one.cup().equals(cup)
                ? one
                : new Started(
                        cup,
                        one.words(),
                        new CureClock(
                                one.clock().catalysed(),
                                one.clock().timers().stream()
                                        .filter(timer -> !timer.cue().equals(cue))
                                        .toList())));
        started.removeIf(one -> one.clock().timers().isEmpty());
        changed();
    }

    /** @return the clocks that run for the place in hand, by batch */
    public SortedMap<Integer, CureClock> clocks() {
        SortedMap<Integer, CureClock> clocks = new TreeMap<>();
        started.stream()
                .filter(one -> one.cup().job().equals(jobName.get()))
                .forEach(one -> clocks.put(one.cup().batch(), one.clock()));
        return clocks;
    }

    private void changed() {
        keep.accept(List.copyOf(started));
        tick();
    }

    /** Brings every clock up to now; what has just become due is said at whichever station is in sight. */
    public void tick() {
        if (started.isEmpty() && running.get().isEmpty()) {
            return;
        }
        Instant now = clock.instant();
        Map<String, Phase> before = new HashMap<>(phases);
        phases.clear();
        List<Running> list = new ArrayList<>();
        for (Started one : started) {
            List<Cue> cues = new ArrayList<>();
            for (CureClock.Standing standing : one.clock().at(now)) {
                Cue cue = cue(standing, one.clock(), now);
                cues.add(cue);
                String key = one.cup() + " " + standing.timer().cue();
                phases.put(key, standing.phase());
                if (before.containsKey(key) && before.get(key) != standing.phase()) {
                    shell.warn(key, name(one.cup()) + ", " + cue.inOneLine() + ".");
                }
            }
            list.add(new Running(
                    one.cup(),
                    name(one.cup()),
                    one.words() + ", catalysed at " + timeOfDay(one.clock().catalysed()),
                    cues));
        }
        running.set(List.copyOf(list));
        before.keySet().stream().filter(key -> !phases.containsKey(key)).forEach(shell::settled);
    }

    private String timeOfDay(Instant moment) {
        ZonedDateTime then = moment.atZone(clock.getZone());
        LocalTime time = then.toLocalTime();
        String hour = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT).format(time);
        return then.toLocalDate().equals(clock.instant().atZone(clock.getZone()).toLocalDate())
                ? hour
                : then.toLocalDate() + " " + hour;
    }

    private Cue cue(CureClock.Standing standing, CureClock running, Instant now) {
        String figure = switch (standing.phase()) {
            case WAIT -> figure(standing.left()) + " left";
            case LOOK -> "now";
            case OVERDUE -> figure(standing.left()) + " late";
        };
        Instant opens = running.opens(standing.timer());
        boolean urgent = standing.phase() == Phase.WAIT
                ? standing.left().compareTo(SOON) <= 0
                : Duration.between(opens, now).compareTo(FRESH) <= 0;
        return new Cue(
                standing.timer().cue(),
                figure,
                timeOfDay(opens),
                standing.phase() == Phase.WAIT
                        ? standing.timer().cue() + ": " + standing.timer().test()
                        : standing.words(),
                standing.phase(),
                standing.left(),
                urgent);
    }

    /** Minutes and seconds by name: "12:43" alone reads as a time of day. */
    private static String figure(Duration left) {
        long seconds = left.toSeconds();
        return seconds >= 3600
                ? String.format(Locale.ROOT, "%d h %02d min", seconds / 3600, seconds % 3600 / 60)
                : seconds >= 60
                        ? String.format(Locale.ROOT, "%d min %d s", seconds / 60, seconds % 60)
                        : seconds + " s";
    }

    /** @return what wants attention first: what is due longest, else what comes next */
    Optional<Next> next() {
        return running.get().stream()
                .flatMap(one -> one.cues().stream().map(cue -> new Next(one, cue)))
                .min(Comparator.comparing((Next next) -> next.cue().phase() == Phase.WAIT ? 1 : 0)
                        .thenComparing(next ->
                                next.cue().phase() == Phase.WAIT ? next.cue().left() : Duration.ZERO));
    }

    /** One cue and the batch it belongs to. */
    record Next(Running of, Cue cue) {}

    boolean isRunning(Cup cup) {
        return started.stream().anyMatch(one -> one.cup().equals(cup));
    }

    public ReadOnlyObjectProperty<List<Running>> runningProperty() {
        return running.getReadOnlyProperty();
    }
}
