package tintwright.window.holes;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.bench.CupStanding;
import tintwright.bench.Cups;
import tintwright.bench.PlanFill;
import tintwright.bench.job.FillOrders;
import tintwright.bench.job.Job;
import tintwright.bench.top.CureClock.Phase;
import tintwright.colour.DifferenceWords;
import tintwright.cup.Cup;
import tintwright.files.FileProblem;
import tintwright.fill.Batch;
import tintwright.fill.catalyst.NotedTime;
import tintwright.fill.repair.Finding;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.Repair;
import tintwright.fill.repair.RepairKind;
import tintwright.fill.repair.RepairLine;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.units.UnitSystem;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.LatestAnswer;
import tintwright.window.frame.QueuedWork;
import tintwright.window.frame.ShellModel;
import tintwright.window.frame.Step;
import tintwright.window.job.JobModel;

/** The list of repairs and what follows from it: batches, catalyst, times, grits. */
public final class FillModel {
    /** What a scale for colour shows at the finest, g; common practice, no source. */
    static final double STEP = 0.01;

    private final JobModel job;
    private final Cups cups;
    private final ShellModel shell;
    private final LatestAnswer asking;
    private final QueuedWork writing;
    private final FillTimers timers;
    private final Clock clock;
    private final CatalystModel catalyst;
    private final AtTheHullModel hull;
    private final ReadOnlyObjectWrapper<Optional<PlanFill>> plan = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper refused = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Next> next = new ReadOnlyObjectWrapper<>(Next.LIST);
    private final Set<FillTimers.Cup> begun = new HashSet<>();
    private final TickedSteps ticks;
    private final ReadOnlyBooleanWrapper accepted = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyObjectWrapper<Optional<Measuring>> measuring = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<Cup> allTheSame = Optional.empty();
    private Optional<ShopTimes> shop = Optional.empty();
    private Runnable doNext = () -> {};

    /**
     * The next thing to do at the fill.
     *
     * @param sentence the whole of it
     * @param button   what the button says; empty when there is nothing to press
     * @param running  true when a cup with catalyst in it is waiting
     * @param urgent   true when that must be in sight wherever one is
     */
    public record Next(String sentence, String button, boolean running, boolean urgent) {
        static final Next LIST = new Next("Put on the list what is to be filled.", "", false, false);
    }

    public FillModel(JobModel job, ShellModel shell, Cups cups, LatestAnswer asking, QueuedWork writing, Clock clock) {
        this.job = job;
        this.shell = shell;
        this.cups = cups;
        this.asking = asking;
        this.writing = writing;
        this.clock = clock;
        timers = new FillTimers(shell, clock, this::jobName);
        ticks = new TickedSteps(this::jobName, shell::warn);
        catalyst = new CatalystModel(job);
        hull = new AtTheHullModel(job);
        job.jobProperty().addListener((property, before, after) -> {
            if (!before.fill().equals(after.fill())
                    || before.grams() != after.grams()
                    || !before.cup().equals(after.cup())
                    || !before.shelf().equals(after.shelf())
                    || before.place() != after.place()) {
                work();
            }
        });
        job.knowledgeProperty().addListener((property, before, after) -> work());
        timers.runningProperty().addListener((property, before, after) -> point());
        shell.unitsProperty().addListener((property, before, after) -> point());
        work();
    }

    private void work() {
        // What cures for another place is called by it.
        timers.tick();
        Job now = job.now();
        if (now.fill().lines().isEmpty()) {
            asking.cancel();
            answer(Optional.empty(), "");
            return;
        }
        Optional<Knowledge> known = known(now);
        List<NotedTime> noted = shop.map(ShopTimes::noted).orElse(List.of());
        asking.ask(
                () -> PlanFill.of(
                        (known.isPresent() ? FillOrders.of(now, known.get()) : FillOrders.typed(now)).with(noted),
                        known.flatMap(all ->
                                now.cup().flatMap(cup -> cups.at(all, cup).standing())),
                        LocalDate.now(clock)),
                made -> answer(Optional.of(made), ""),
                failure -> answer(Optional.empty(), FailureWords.of(failure)));
    }

    private Optional<Knowledge> known(Job now) {
        return Optional.ofNullable(job.knowledgeProperty().get())
                .filter(all -> all.shelf().equals(now.shelf()));
    }

    private void answer(Optional<PlanFill> made, String why) {
        boolean sameCups = made.map(fill -> fill.plan().batches())
                .equals(plan.get().map(fill -> fill.plan().batches()));
        if (!sameCups) {
            begun.removeIf(batch -> !timers.isRunning(batch));
        }
        refused.set(why);
        accepted.set(job.now().cup().isPresent() && job.now().cup().equals(allTheSame));
        plan.set(made);
        point();
    }

    /** @return how the cup stands to the hull while it is plainly another colour and nobody has said to fill all the same */
    Optional<CupStanding> notTheColour() {
        return plan.get()
                .flatMap(PlanFill::standing)
                .filter(CupStanding::another)
                .filter(seen -> !accepted.get());
    }

    /** @return why no catalyst may go in now; empty when it may */
    public String hold() {
        return plan.get()
                .filter(made -> made.plan().forbidden())
                .map(made -> made.plan().before(shell.unitsProperty().get()).get(0))
                .or(() -> notTheColour().map(seen -> seen.sentence() + " " + seen.first()))
                .orElse("");
    }

    /** The person fills from this cup although it is another colour; a change of the cup asks again. */
    public void fillAllTheSame() {
        allTheSame = job.now().cup();
        accepted.set(true);
        point();
    }

    boolean forbidden() {
        return plan.get().filter(made -> made.plan().forbidden()).isPresent();
    }

    /** @return whether there is no cup yet, so that the holes say how much to mix */
    public boolean colourToMake() {
        return job.now().cup().isEmpty()
                && plan.get().filter(made -> made.gramsForTheCup() > 0).isPresent();
    }

    /**
     * @param weighable grams of the mix from which on its tints can be weighed
     * @return how much to make and why, in one sentence; only while there is colour to make
     */
    public String toMake(double weighable) {
        UnitSystem units = shell.unitsProperty().get();
        double wanted = plan.get().orElseThrow().gramsForTheCup();
        return "The holes take " + units.weighed(wanted, STEP) + " of colour: make "
                + (wanted < weighable
                        ? units.weighed(weighable, STEP) + ", for in less the tints can hardly be weighed."
                        : "that much.");
    }

    /** The cup is asked for what the holes want, and for more only where that cannot be weighed. */
    public void makeTheColour(double weighable) {
        double grams = Math.max(weighable, plan.get().orElseThrow().gramsForTheCup());
        job.change(before -> before.of(grams));
        toTheCup();
    }

    /** @return the steps of the day that are ticked off */
    public TickedSteps ticks() {
        return ticks;
    }

    private String jobName() {
        return job.now().boat() + ", " + placeName();
    }

    private String placeName() {
        return job.place().map(PlaceReadings::place).orElse("");
    }

    /** Goes where the colour is seen to. */
    public void toTheCup() {
        shell.stepProperty().set(Step.CUP);
    }

    /** Says what to do next here. */
    private void point() {
        Optional<FillTimers.Next> waiting = timers.next();
        Optional<Batch> cup = plan.get()
                .flatMap(made -> made.plan().batches().stream()
                        .filter(batch -> !begun.contains(timers.inHand(batch.number())))
                        .findFirst());
        int repairs = job.now().fill().lines().size();
        shell.captionProperty(Step.FILL)
                .set(
                        waiting.isPresent()
                                ? waiting.get().cue().inShort()
                                : repairs == 0
                                        ? Step.FILL.meaning()
                                        : repairs == 1 ? "1 repair" : repairs + " repairs");
        if (waiting.isPresent()) {
            FillTimers.Running of = waiting.get().of();
            FillTimers.Cue cue = waiting.get().cue();
            boolean due = cue.phase() != Phase.WAIT;
            doNext = due ? () -> done(of.cup(), cue.cue()) : () -> {};
            next.set(new Next(
                    of.name() + ", " + cue.inOneLine() + ".", due ? "Done: " + cue.cue() : "", true, cue.urgent()));
        } else if (measuring()) {
            Measuring hole = measuring.get().orElseThrow();
            say(hole.sentence(), "Put it on the list", hole.put());
        } else if (forbidden()) {
            say(plan.get().get().plan().before(shell.unitsProperty().get()).get(0), "", () -> {});
        } else if (notTheColour().isPresent()) {
            CupStanding seen = notTheColour().get();
            say(
                    "The cup is off the hull by " + DifferenceWords.size(seen.deltaE()) + ". " + seen.first(),
                    "To the cup",
                    this::toTheCup);
        } else if (cup.isPresent()) {
            UnitSystem units = shell.unitsProperty().get();
            say(
                    "Batch " + cup.get().number() + ": weigh and stir "
                            + units.weighed(cup.get().gelCoatGrams(), STEP)
                            + " of colour"
                            + (cup.get().pasteGrams() > 0
                                    ? " and " + units.weighed(cup.get().pasteGrams(), STEP) + " of gel paste"
                                    : "")
                            + "; then, last of all, catalyst: "
                            + cup.get().catalyst().words(units) + ".",
                    "Catalyst is in, batch " + cup.get().number(),
                    () -> catalysed(cup.get().number()));
        } else if (plan.get().isPresent()) {
            say(
                    "Every cup is used up: sand, polish, and write it down.",
                    "On to the log",
                    () -> shell.stepProperty().set(Step.LOG));
        } else if (!refused.get().isEmpty()) {
            say(refused.get(), "", () -> {});
        } else {
            say(Next.LIST.sentence(), "", () -> {});
        }
    }

    private void say(String sentence, String button, Runnable action) {
        doNext = action;
        next.set(new Next(sentence, button, false, false));
    }

    /** @param hole the one that is being measured just now; empty when none is */
    void measure(Optional<Measuring> hole) {
        measuring.set(hole);
        point();
    }

    /** @return true while a hole is being measured: then that is what comes next here */
    public boolean measuring() {
        return measuring.get().isPresent();
    }

    ReadOnlyObjectProperty<Optional<Measuring>> measuringProperty() {
        return measuring.getReadOnlyProperty();
    }

    /** Does what {@link #nextProperty()} says. */
    public void doNext() {
        doNext.run();
    }

    /**
     * Adds a line as typed.
     *
     * @param sizes the size fields by name as typed; a blank one is left out
     * @return false when something typed cannot be; {@link #problemProperty()} says what
     */
    public boolean add(
            String name, RepairKind kind, Map<String, String> sizes, Lie lie, String count, UnitSystem units) {
        return add(name, kind, sizes, lie, count, Set.of(), units);
    }

    /** The same with what was found there beside its size. */
    boolean add(
            String name,
            RepairKind kind,
            Map<String, String> sizes,
            Lie lie,
            String count,
            Set<Finding> found,
            UnitSystem units) {
        return FailureWords.tried(problem::set, () -> {
            Job now = job.now();
            RepairLine line = FillTyped.line(
                    name,
                    kind,
                    sizes,
                    lie,
                    count,
                    units,
                    now.fill().lines(),
                    () -> known(now).map(all -> FillOrders.hides(now, all)).orElse(OptionalDouble.empty()));
            RepairLine whole = new RepairLine(line.name(), line.repair(), line.lie(), line.count(), found);
            job.change(before -> before.filling(before.fill().plus(whole)));
        });
    }

    /** @return a repair as far as it is measured; empty while its sizes are not whole yet */
    Optional<Repair> look(RepairKind kind, Map<String, String> sizes, UnitSystem units) {
        try {
            return Optional.of(FillTyped.repair(kind, sizes, units, OptionalDouble::empty));
        } catch (IllegalArgumentException notYet) {
            return Optional.empty();
        }
    }

    public void remove(int index) {
        job.change(before -> before.filling(before.fill().without(index)));
    }

    /** @return what is typed of the weather and the tools */
    public AtTheHullModel hull() {
        return hull;
    }

    /** The catalyst of a batch goes in just now: its times begin to run. */
    public void catalysed(int batch) {
        plan.get()
                .ifPresent(made -> made.plan().batches().stream()
                        .filter(cup -> cup.number() == batch)
                        .findFirst()
                        .ifPresent(cup -> {
                            begun.add(timers.inHand(batch));
                            timers.start(
                                    timers.inHand(batch),
                                    cup.stage().words(),
                                    made.plan().timers());
                        }));
    }

    /** This has been seen to; when it was gel or tape-off it teaches the next plan. */
    void done(FillTimers.Cup cup, String cue) {
        boolean taught = shop.isPresent()
                && cup.equals(timers.inHand(cup.batch()))
                && plan.get().isPresent()
                && timers.since(cup)
                        .filter(since -> shop.get()
                                .note(cup.batch(), cue, since, plan.get().get().plan()))
                        .isPresent();
        timers.done(cup, cue);
        if (taught) {
            ShopTimes times = shop.get();
            writing.run(
                    () -> {
                        times.keep();
                        return times;
                    },
                    kept -> {},
                    failure -> shell.warn(FailureWords.of(failure)));
        }
    }

    /** Takes up what this shop noted of earlier cups, and keeps what it notes from now on. */
    public void learnFrom(Path file) {
        try {
            shop = Optional.of(new ShopTimes(file));
            work();
        } catch (FileProblem e) {
            shell.warn(FailureWords.of(e));
        }
    }

    /** The clock was started by mistake: the batch stands as not begun. */
    public void stopTimers(FillTimers.Cup cup) {
        begun.remove(cup);
        timers.stop(cup);
        point();
    }

    /** Takes up the times that ran when the window was closed, and keeps them from now on. */
    public void keepTimers(KeptTimers kept) {
        try {
            var before = kept.fetch(jobName());
            before.forEach(one -> begun.add(one.cup()));
            timers.resume(
                    before,
                    list -> writing.run(
                            () -> {
                                kept.keep(list);
                                return list;
                            },
                            done -> {},
                            failure -> shell.warn(FailureWords.of(failure))));
        } catch (FileProblem e) {
            shell.warn(FailureWords.of(e));
        }
    }

    /** @return the job sheet, to be handed on */
    JobSheet sheet() {
        return new JobSheet(plan.get().orElseThrow(), job.now().boat() + " " + placeName(), shell, writing);
    }

    public FillTimers timers() {
        return timers;
    }

    public CatalystModel catalyst() {
        return catalyst;
    }

    JobModel job() {
        return job;
    }

    public ReadOnlyObjectProperty<Optional<PlanFill>> planProperty() {
        return plan.getReadOnlyProperty();
    }

    /** @return whether a colour that is plainly another is to be filled with all the same */
    ReadOnlyBooleanProperty acceptedProperty() {
        return accepted.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Next> nextProperty() {
        return next.getReadOnlyProperty();
    }

    /** @return what could not be put on the list, and why */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** @return why there is no plan although there is a list; empty when there is one */
    ReadOnlyStringProperty refusedProperty() {
        return refused.getReadOnlyProperty();
    }
}
