package tintwright.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import tintwright.fill.catalyst.CureTimer;
import tintwright.fill.catalyst.GelTimes;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.fill.repair.Finding;
import tintwright.fill.repair.Hole;
import tintwright.fill.repair.Triage;

/** Puts the steps of a job in order and says when each may begin. Minutes by hand: common practice, no source. */
final class DayPlanner {
    /** A slower hand takes so many times as long. */
    private static final double SLOWER_HAND = 1.5;
    /** Nobody sits through a wait of this length: what follows is timed anew. */
    private static final double SITTING_MINUTES = 6 * 60;
    /** A plug or putty sets in 20 to 60 minutes at 25 degrees; its data sheet decides. */
    private static final WorkingTime PUTTY_SETS = new WorkingTime(20, 60);
    /** A laminate is left over night at the least, whatever the weather; its data sheet decides. */
    private static final double LAMINATE_LEAST = 12 * 60;

    private static final double LAMINATE_MOST = 48 * 60;

    private final FillJob job;
    private final List<Triage> triage;
    private final List<Batch> batches;
    private final List<CureTimer> timers;
    private final List<Day.Step> steps = new ArrayList<>();
    private int sitting;
    private double earliest;
    private double latest;

    private DayPlanner(FillJob job, List<Triage> triage, List<Batch> batches, List<CureTimer> timers) {
        this.job = job;
        this.triage = triage;
        this.batches = batches;
        this.timers = timers;
    }

    static Day of(
            FillJob job,
            List<Triage> triage,
            List<Batch> batches,
            List<CureTimer> timers,
            List<FillPlan.Sanding> sandings) {
        DayPlanner day = new DayPlanner(job, triage, batches, timers);
        if (!triage.isEmpty()) {
            day.prepare();
            day.coats(false);
            day.coats(true);
            day.finish(sandings);
        }
        return new Day(day.steps);
    }

    private List<String> names(Predicate<Triage> which) {
        return triage.stream().filter(which).map(one -> one.line().name()).toList();
    }

    private int pieces(List<String> on) {
        return triage.stream()
                .filter(one -> on.contains(one.line().name()))
                .mapToInt(one -> one.line().count())
                .sum();
    }

    /** Adds a step where it is done to something, and lets the clock run on by the hands' time. */
    private void add(Deed deed, List<String> on, double fixed, double perPiece) {
        if (!on.isEmpty()) {
            step(deed, on, Optional.empty(), 0, 0);
            work(fixed + perPiece * pieces(on));
        }
    }

    private void step(Deed deed, List<String> on, Optional<Stage> stage, int batch, int grit) {
        steps.add(new Day.Step(deed, on, stage, batch, grit, sitting, earliest, latest));
    }

    private void work(double minutes) {
        earliest += minutes * job.tools().pace();
        latest += minutes * job.tools().pace() * SLOWER_HAND;
    }

    private void leave(double least, double most) {
        earliest += Math.max(0, least);
        latest += Math.max(0, most);
        if (most > SITTING_MINUTES) {
            sitting++;
            earliest = 0;
            latest = 0;
        }
    }

    private void prepare() {
        List<String> all = names(one -> true);
        List<String> fills = names(one -> !one.line().sprayed());
        add(Deed.STAIN_OUT, names(one -> one.line().found().contains(Finding.STAINED)), 30, 2);
        add(Deed.WASH, all, 5, 0.5);
        add(Deed.OPEN, fills, 0, 1);
        add(Deed.FLARE, fills, 0, 0.5);
        List<String> laminate = names(one -> one.trained() && !one.line().sprayed());
        add(Deed.LAMINATE, laminate, 30, 30);
        if (!laminate.isEmpty()) {
            leave(LAMINATE_LEAST, LAMINATE_MOST);
        }
        List<String> putty = names(one -> one.below() == Triage.Below.PUTTY && !one.trained()
                || one.line().repair() instanceof Hole hole && hole.thickestMm() > one.colourMm());
        add(Deed.PUTTY, putty, 3, 1);
        List<String> plug = names(one -> one.below() == Triage.Below.PLUG);
        add(Deed.PLUG, plug, 3, 0.5);
        if (!putty.isEmpty() || !plug.isEmpty()) {
            WorkingTime sets = GelTimes.moved(PUTTY_SETS, 25, job.conditions().hullCelsius());
            leave(sets.leastMinutes(), sets.mostMinutes());
        }
    }

    private void coats(boolean sprayed) {
        List<String> on = names(one -> one.line().sprayed() == sprayed);
        List<Batch> mine = batches.stream()
                .filter(batch -> batch.stage().kind() == Stage.Kind.SPRAY == sprayed)
                .toList();
        if (mine.isEmpty()) {
            return;
        }
        add(Deed.PRIME, on, 3, 1);
        add(Deed.TAPE, on, 0, 1.5);
        if (mine.stream().anyMatch(batch -> batch.pasteGrams() > 0)) {
            add(Deed.CHIP, on, 3, 0);
        }
        Stage before = null;
        boolean waxed = false;
        boolean taped = true;
        for (Batch batch : mine) {
            boolean nextCoat = before != null && !before.equals(batch.stage());
            if (nextCoat) {
                taped = between(on, waxed, sprayed);
            }
            before = batch.stage();
            waxed = batch.wax().isPresent() || job.materials().waxes(batch.mix());
            step(
                    waxed ? Deed.LAST_COAT : Deed.COAT,
                    batch.parts().stream().map(Batch.Part::line).toList(),
                    Optional.of(batch.stage()),
                    batch.number(),
                    0);
            leave(batch.minutes(), batch.minutes());
        }
        double lastTook = mine.get(mine.size() - 1).minutes();
        CureTimer tape = timer(CureTimer.TAPE_OFF);
        leave(tape.fromMinutes() - lastTook, tape.toMinutes() - lastTook);
        tapeOff(on, taped);
        List<String> pattern = names(
                one -> one.line().sprayed() == sprayed && one.line().found().contains(Finding.NON_SKID));
        add(Deed.PRESS_PATTERN, pattern, 0, 3);
        if (!waxed) {
            add(
                    Deed.FILM_OVER,
                    on.stream().filter(line -> !pattern.contains(line)).toList(),
                    1,
                    1);
        }
        CureTimer sand = timer(CureTimer.SAND);
        leave(sand.fromMinutes() - tape.fromMinutes(), sand.toMinutes() - tape.toMinutes());
        add(Deed.CURE, on, 0, 0);
    }

    /**
     * A tacky coat takes the next as it is; a waxed one is left to cure and sanded first. Between two passes of the gun
     * the tape stays.
     *
     * @return whether there is tape round the next coat
     */
    private boolean between(List<String> on, boolean waxed, boolean sprayed) {
        CureTimer tape = timer(CureTimer.TAPE_OFF);
        CureTimer next = timer(waxed ? CureTimer.SAND : CureTimer.SECOND_COAT);
        leave(tape.fromMinutes(), tape.toMinutes());
        if (!sprayed || waxed) {
            tapeOff(on, true);
        }
        leave(next.fromMinutes() - tape.fromMinutes(), next.toMinutes() - tape.toMinutes());
        if (waxed) {
            add(Deed.CURE, on, 0, 0);
            add(Deed.PRIME, on, 2, 0.5);
            add(Deed.TAPE, on, 0, 1.5);
        }
        return waxed || sprayed;
    }

    private void tapeOff(List<String> on, boolean taped) {
        if (taped) {
            add(Deed.TAPE_OFF, on, 0, 0.2);
        }
        add(Deed.WIPE_EDGE, on, 0, 0.2);
    }

    private CureTimer timer(String cue) {
        return timers.stream().filter(one -> one.cue().equals(cue)).findFirst().orElseThrow();
    }

    private void finish(List<FillPlan.Sanding> sandings) {
        Set<String> done = Set.copyOf(steps.stream()
                .filter(step -> step.deed() == Deed.CURE)
                .flatMap(step -> step.on().stream())
                .toList());
        for (FillPlan.Sanding sanding : sandings) {
            List<String> on = names(one -> one.line().sprayed() == sanding.sprayed()
                    && done.contains(one.line().name()));
            if (!on.isEmpty()) {
                step(Deed.SAND, on, Optional.empty(), 0, sanding.ladder().finest());
                work(5 + 4 * pieces(on));
                add(Deed.POLISH, on, 5, 2);
            }
        }
        step(Deed.CLEAR_UP, List.of(), Optional.empty(), 0, 0);
    }
}
