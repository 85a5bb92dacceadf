package tintwright.window.log;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.bench.job.FillOrders;
import tintwright.bench.job.Job;
import tintwright.bench.log.BoatLog;
import tintwright.bench.log.GiveOut;
import tintwright.bench.log.KeepBoat;
import tintwright.bench.log.MixAgain;
import tintwright.bench.log.ShopLog;
import tintwright.bench.log.WriteLog;
import tintwright.cup.Cup;
import tintwright.fill.FillPlan;
import tintwright.fill.FillPlanner;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.logbook.disk.Saved;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.LatestAnswer;
import tintwright.window.frame.ShellModel;
import tintwright.window.job.JobModel;
import tintwright.window.job.OpenLog;
import tintwright.window.picture.Shade;
import tintwright.window.pieces.Figures;

/** The log of the shop: boats, their places over the years, what was mixed, and how to make it again. */
public final class LogModel {
    private final JobModel job;
    private final ShellModel shell;
    private final OpenLog log;
    private final LatestAnswer asking;
    private final ReadOnlyObjectWrapper<Shown> shown = new ReadOnlyObjectWrapper<>(Shown.NONE);
    private final ReadOnlyObjectWrapper<Again> again = new ReadOnlyObjectWrapper<>(Again.NONE);
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

    /**
     * A place of the boat in hand.
     *
     * @param looks   its colour each time it was read, oldest first: how it has moved
     * @param read    how it looked when it was read last, in plain words
     * @param figures when that was, and the same in numbers; empty when it was not read
     * @param moved   how it has moved since it was read first; empty when it was read once
     */
    public record PlaceLine(String name, List<Look> looks, String read, String figures, String moved) {}

    /** A place as it was read on a day. */
    public record Look(String day, Shade shade) {}

    /**
     * Something mixed before that comes near the hull in hand.
     *
     * @param name    the cup, or what was left over
     * @param boat    the boat it was for; may be empty
     * @param apart   how far it is from the hull, and which way
     * @param verdict how it came out; may be empty
     * @param cup     the cup to make again; empty when there is none
     * @param grams   how much was in it
     */
    public record NearLine(String name, String boat, String apart, String verdict, Optional<UUID> cup, double grams) {}

    /** What to weigh to make a cup again: which, and line by line. */
    public record Again(String title, List<String> lines) {
        static final Again NONE = new Again("", List.of());
    }

    /** All of the log that is in sight. */
    public record Shown(
            String boat, List<PlaceLine> places, List<BoatLog.Line> entries, List<NearLine> near, String trouble) {
        static final Shown NONE = new Shown("", List.of(), List.of(), List.of(), "");
    }

    public LogModel(JobModel job, ShellModel shell, OpenLog log, LatestAnswer asking) {
        this.job = job;
        this.shell = shell;
        this.log = log;
        this.asking = asking;
        log.changesProperty().addListener((property, before, after) -> look());
        job.jobProperty().addListener((property, before, after) -> {
            boolean another = before.cup().isPresent()
                    && !after.cup().map(Cup::name).equals(before.cup().map(Cup::name));
            if (another && before.boat().equals(after.boat())) {
                wentOut(before);
            }
            if (after.cup().isPresent() && !after.cup().equals(before.cup())) {
                follow(after);
            }
            if (!before.boat().equals(after.boat())
                    || before.place() != after.place()
                    || !before.places().equals(after.places())) {
                look();
            }
        });
    }

    private void look() {
        Job now = job.now();
        log.now().ifPresent(from -> asking.ask(() -> LogSight.of(from, now), shown::set, this::failed));
    }

    private void failed(Exception failure) {
        problem.set(FailureWords.of(failure));
    }

    /** Writes down today's readings of the place in hand. */
    public void writeReadings() {
        log.writeReadings(problem::set);
    }

    /** The cup is in the log as it happens: one page, put right with every dose. */
    private void follow(Job now) {
        Cup cup = now.cup().orElseThrow();
        if (log.now().isEmpty() || now.boat().isBlank() || cup.state().mass() <= 0) {
            return;
        }
        write(open -> new WriteLog(open).inHand(now.boat(), cup, now.shelf()), () -> {});
    }

    /** @return the names of all cups and leftovers of the boat in hand; empty while the log is not open */
    public Optional<Set<String>> names() {
        return log.now().map(open -> open.cupNames(job.now().boat()));
    }

    /** The cup in hand is done: it is put away, and the log has all of it. Undo brings it back. */
    public void doneWithCup() {
        job.cupDone();
    }

    /** A cup that leaves the bench: what came of it besides itself, its chips and what was set aside, goes into the log. */
    private void wentOut(Job with) {
        Cup cup = with.cup().orElseThrow();
        if (log.now().isEmpty() || with.boat().isBlank() || cup.state().mass() <= 0) {
            return;
        }
        write(
                open -> {
                    Noted<Page.Boat> boat = boat(open, with);
                    WriteLog pen = new WriteLog(open);
                    Saved cupSaved = pen.inHand(with.boat(), cup, with.shelf());
                    List<Saved> all = pen.doneWith(boat, pen.pageOf(boat, cup).orElseThrow(), cup, with.shelf());
                    return all.stream()
                            .filter(Saved.Waiting.class::isInstance)
                            .findFirst()
                            .orElse(cupSaved);
                },
                () -> shell.say("The cup " + cup.name()
                        + ", its chips and what was set aside are in the log. Undo brings it back."));
    }

    /** Writes down that the holes on the list were filled, and from what. */
    public void filled() {
        Job now = job.now();
        if (now.fill().lines().isEmpty() || now.place() < 0) {
            problem.set("There is nothing on the list at Fill yet.");
            return;
        }
        write(
                open -> {
                    FillPlan plan = FillPlanner.plan(FillOrders.typed(now).job());
                    Noted<Page.Boat> boat = boat(open, now);
                    List<String> steps = now.fill().lines().stream()
                            .map(line -> line.count() + " x " + line.name())
                            .toList();
                    return new WriteLog(open)
                            .fill(
                                    boat,
                                    Optional.of(new KeepBoat(open)
                                            .place(
                                                    boat,
                                                    now.places()
                                                            .get(now.place())
                                                            .place())),
                                    OptionalDouble.of(plan.gelCoatGrams()),
                                    steps,
                                    "");
                },
                () -> shell.say("The fill is in the log."));
    }

    private static Noted<Page.Boat> boat(ShopLog open, Job now) {
        return new KeepBoat(open).boat(now.boat());
    }

    /** How a cup came out. */
    public void judge(UUID cup, Page.Outcome outcome, String note) {
        Job now = job.now();
        boolean so = shown.get().entries().stream()
                .anyMatch(line -> line.id().equals(cup)
                        && line.verdict().filter(outcome::equals).isPresent());
        if (so && note.isBlank()) {
            return;
        }
        write(
                open -> new WriteLog(open).verdict(boat(open, now), cup, outcome, note),
                () -> shell.say("Written down: it came out " + outcome.words() + "."));
    }

    /** Says what to weigh for so much of a recorded cup, from what stands on the shelf today. */
    public void again(UUID cup, String typedGrams) {
        try {
            double grams = Figures.number("grams", typedGrams.replace("g", ""));
            Job now = job.now();
            log.now()
                    .ifPresent(from -> asking.ask(
                            () -> {
                                Noted<Page.Cup> page = cup(from, cup);
                                return new Again(
                                        String.format(
                                                Locale.ROOT,
                                                "Make %s again, %.0f g",
                                                BoatLog.named(page.page().name()),
                                                grams),
                                        LogSight.lines(
                                                new MixAgain(from, now.shelf()).cup(page, grams, now.scaleStep()),
                                                now));
                            },
                            made -> {
                                problem.set("");
                                again.set(made);
                            },
                            this::failed));
        } catch (IllegalArgumentException e) {
            problem.set(FailureWords.of(e));
        }
    }

    private static Noted<Page.Cup> cup(ShopLog log, UUID id) {
        return log.cup(id).orElseThrow(() -> new IllegalArgumentException("that cup is no longer in the log"));
    }

    /** @return the log, from any thread; empty while it is not open */
    public Optional<ShopLog> open() {
        return log.now();
    }

    /** Says what to weigh for as much of a recorded cup as there was. */
    public void recipe(UUID cup) {
        open().flatMap(open -> open.cup(cup))
                .ifPresent(noted -> again(
                        cup,
                        String.format(Locale.ROOT, "%.2f", noted.page().parts().total())));
    }

    /** Writes the label of a cup as PDF. */
    public void label(UUID cup, Path file) {
        give(open -> {
            new GiveOut(open).label(cup(open, cup), file);
            return file;
        });
    }

    /** Writes the recipe card of a cup: PDF, or one page for the phone when the name ends in html. */
    public void card(UUID cup, Path file) {
        give(open -> {
            if (file.toString().toLowerCase(Locale.ROOT).endsWith(".html")) {
                new GiveOut(open).cardHtml(cup(open, cup), file);
            } else {
                new GiveOut(open).card(cup(open, cup), file);
            }
            return file;
        });
    }

    private void give(OpenLog.Work<Path> work) {
        log.run(work, written -> shell.say("Written to " + written + "."), problem::set);
    }

    private void write(OpenLog.Work<Saved> entry, Runnable then) {
        log.write(entry, then, problem::set);
    }

    /** Says what is wrong with the log. */
    public void problem(String sentence) {
        problem.set(sentence);
    }

    JobModel job() {
        return job;
    }

    public ReadOnlyObjectProperty<Shown> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Again> againProperty() {
        return again.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** Closes the log; what waits is kept by it. */
    public void close() {
        log.close(problem::set);
    }
}
