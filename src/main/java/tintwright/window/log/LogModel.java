package tintwright.window.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.bench.BoatLog;
import tintwright.bench.BoatStory;
import tintwright.bench.GiveOut;
import tintwright.bench.KeepBoat;
import tintwright.bench.MixAgain;
import tintwright.bench.ShopLog;
import tintwright.bench.WriteLog;
import tintwright.cup.Cup;
import tintwright.fill.FillPlan;
import tintwright.fill.FillPlanner;
import tintwright.logbook.LogFailure;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.logbook.Saved;
import tintwright.reading.ColourReading;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.shelf.Knowledge;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.LatestAnswer;
import tintwright.window.frame.QueuedWork;
import tintwright.window.frame.ShellModel;
import tintwright.window.job.FillOrders;
import tintwright.window.job.Job;
import tintwright.window.job.JobModel;
import tintwright.window.picture.Shade;
import tintwright.window.pieces.Figures;

/** The log of the shop: boats, their places over the years, what was mixed, and how to make it again. */
public final class LogModel {
    private final JobModel job;
    private final ShellModel shell;
    private final LatestAnswer asking;
    private final QueuedWork writing;
    private final ReadOnlyObjectWrapper<Shown> shown = new ReadOnlyObjectWrapper<>(Shown.NONE);
    private final ReadOnlyObjectWrapper<Again> again = new ReadOnlyObjectWrapper<>(Again.NONE);
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper boatProblem = new ReadOnlyStringWrapper("");
    private volatile ShopLog log;
    private String searched = "";

    /** A boat in the list. */
    public record BoatLine(UUID id, String name, String words, boolean inHand) {}

    /**
     * A place of the boat in hand.
     *
     * @param looks its colour each time it was read, oldest first: how it has moved
     * @param read  what was read last, and when
     * @param moved how it has moved since it was read first; empty when it was read once
     */
    public record PlaceLine(String name, List<Look> looks, String read, String moved) {}

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
            List<BoatLine> boats,
            String boat,
            List<PlaceLine> places,
            List<BoatLog.Line> entries,
            List<NearLine> near,
            String trouble) {
        static final Shown NONE = new Shown(List.of(), "", List.of(), List.of(), List.of(), "");
    }

    /** @param open opens the log; called off the screen's thread */
    public LogModel(JobModel job, ShellModel shell, LatestAnswer asking, QueuedWork writing, Callable<ShopLog> open) {
        this.job = job;
        this.shell = shell;
        this.asking = asking;
        this.writing = writing;
        writing.run(
                open,
                opened -> {
                    log = opened;
                    look();
                },
                failure -> problem.set(FailureWords.of(failure)));
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

    /** Shows the boats whose name, places or notes hold these words; all of them for none. */
    public void search(String words) {
        searched = words;
        look();
    }

    private void look() {
        if (log == null) {
            return;
        }
        ShopLog from = log;
        String words = searched;
        Job now = job.now();
        asking.ask(() -> LogSight.of(from, words, now), shown::set, failure -> problem.set(FailureWords.of(failure)));
    }

    /** Takes a boat from the log onto the bench, its places as last read. */
    public void take(UUID id) {
        ShopLog from = log;
        asking.ask(
                () -> {
                    Noted<Page.Boat> boat = from.book().boats().stream()
                            .filter(each -> each.id().equals(id))
                            .findFirst()
                            .orElseThrow();
                    List<PlaceReadings> places = new ArrayList<>();
                    for (BoatStory.PlaceStory place : BoatStory.of(from, boat).places()) {
                        place.latest()
                                .flatMap(seen -> from.book().find(seen.id()))
                                .filter(noted -> noted.page() instanceof Page.Target)
                                .map(noted -> (Page.Target) noted.page())
                                .ifPresent(target -> places.add(new PlaceReadings(
                                        boat.page().name(),
                                        place.place().page().name(),
                                        target.readings(),
                                        target.note())));
                    }
                    return new Taken(boat.page().name(), places);
                },
                taken -> {
                    job.change(before -> before.withPlaces(
                                    taken.boat(), taken.places(), taken.places().isEmpty() ? -1 : 0)
                            .mixing(Optional.empty()));
                    look();
                },
                failure -> problem.set(FailureWords.of(failure)));
    }

    /** What goes into the log stands by itself: without the chips that now correct a photo of theirs. */
    private List<Reading> standing(PlaceReadings place) {
        Knowledge knowledge = job.knowledgeProperty().get();
        return place.readings().stream()
                .map(each -> knowledge != null && each instanceof ColourReading colour
                        ? knowledge.throughChips(colour)
                        : each)
                .toList();
    }

    private record Taken(String boat, List<PlaceReadings> places) {}

    /**
     * Writes a new boat and takes it onto the bench.
     *
     * @param taken runs once she is written down; until then, or when she cannot be, what was typed is still needed
     */
    public void newBoat(String name, String type, String year, Runnable taken) {
        boatProblem.set("");
        try {
            Optional<Integer> built = year.isBlank() ? Optional.empty() : Optional.of(Integer.parseInt(year.trim()));
            Page.Boat boat = new Page.Boat(name.trim(), type.trim(), built, "", List.of());
            write(
                    () -> new KeepBoat(log).add(boat),
                    () -> {
                        job.change(before ->
                                before.withPlaces(boat.name(), List.of(), -1).mixing(Optional.empty()));
                        taken.run();
                    },
                    boatProblem);
        } catch (NumberFormatException e) {
            boatProblem.set("The year must be a whole number such as 1987, was \"" + year.trim() + "\".");
        } catch (IllegalArgumentException e) {
            boatProblem.set(FailureWords.of(e));
        }
    }

    /** What was wrong with the new boat is being mended. */
    public void boatMended() {
        boatProblem.set("");
    }

    /** Writes down today's readings of the place in hand. */
    public void writeReadings() {
        Job now = job.now();
        job.place()
                .ifPresent(place -> write(
                        () -> {
                            Noted<Page.Boat> boat = boat(now);
                            return new WriteLog(log)
                                    .reading(
                                            boat,
                                            new KeepBoat(log).place(boat, place.place()),
                                            standing(place),
                                            place.note());
                        },
                        () -> shell.say("The readings of " + place.place() + " are in the log.")));
    }

    /** The cup is in the log as it happens: one page, put right with every dose. */
    private void follow(Job now) {
        Cup cup = now.cup().orElseThrow();
        if (log == null || now.boat().isBlank() || cup.state().mass() <= 0) {
            return;
        }
        writing.run(
                () -> new WriteLog(log).inHand(now.boat(), cup, now.shelf()),
                saved -> {
                    problem.set(saved instanceof Saved.Waiting waiting ? waiting.sentence() : "");
                    look();
                },
                failure -> problem.set(FailureWords.of(failure)));
    }

    /** @return the names of all cups and leftovers of the boat in hand; empty while the log is not open */
    public Optional<Set<String>> names() {
        return open().map(open -> open.cupNames(job.now().boat()));
    }

    /** The cup in hand is done: it is put away, and the log has all of it. Undo brings it back. */
    public void doneWithCup() {
        job.cupDone();
    }

    /** A cup that leaves the bench: what came of it besides itself, its chips and what was set aside, goes into the log. */
    private void wentOut(Job with) {
        Cup cup = with.cup().orElseThrow();
        if (log == null || with.boat().isBlank() || cup.state().mass() <= 0) {
            return;
        }
        writing.run(
                () -> {
                    Noted<Page.Boat> boat = boat(with);
                    WriteLog pen = new WriteLog(log);
                    pen.inHand(with.boat(), cup, with.shelf());
                    return pen.doneWith(boat, pen.pageOf(boat, cup).orElseThrow(), cup, with.shelf());
                },
                saved -> {
                    shell.say("The cup " + cup.name()
                            + ", its chips and what was set aside are in the log. Undo brings it back.");
                    look();
                },
                failure -> problem.set(FailureWords.of(failure)));
    }

    /** Writes down that the holes on the list were filled, and from what. */
    public void filled() {
        Job now = job.now();
        if (now.fill().lines().isEmpty() || now.place() < 0) {
            problem.set("There is nothing on the list at Fill yet.");
            return;
        }
        write(
                () -> {
                    FillPlan plan = FillPlanner.plan(FillOrders.typed(now).job());
                    Noted<Page.Boat> boat = boat(now);
                    List<String> steps = now.fill().lines().stream()
                            .map(line -> line.count() + " x " + line.name())
                            .toList();
                    return new WriteLog(log)
                            .fill(
                                    boat,
                                    Optional.of(new KeepBoat(log)
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

    private Noted<Page.Boat> boat(Job now) {
        return new KeepBoat(log).boat(now.boat());
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
                () -> new WriteLog(log).verdict(boat(now), cup, outcome, note),
                () -> shell.say("Written down: it came out " + outcome.words() + "."));
    }

    /** Says what to weigh for so much of a recorded cup, from what stands on the shelf today. */
    public void again(UUID cup, String typedGrams) {
        try {
            double grams = Figures.number("grams", typedGrams.replace("g", ""));
            Job now = job.now();
            ShopLog from = log;
            asking.ask(
                    () -> {
                        Noted<Page.Cup> page = cup(from, cup);
                        return new Again(
                                String.format(
                                        Locale.ROOT,
                                        "Make %s again, %.0f g",
                                        BoatLog.named(page.page().name()),
                                        grams),
                                LogSight.lines(new MixAgain(from, now.shelf()).cup(page, grams, now.scaleStep()), now));
                    },
                    made -> {
                        problem.set("");
                        again.set(made);
                    },
                    failure -> problem.set(FailureWords.of(failure)));
        } catch (IllegalArgumentException e) {
            problem.set(FailureWords.of(e));
        }
    }

    private static Noted<Page.Cup> cup(ShopLog log, UUID id) {
        return log.cup(id).orElseThrow(() -> new IllegalArgumentException("that cup is no longer in the log"));
    }

    /** @return the log, from any thread; empty while it is not open */
    public Optional<ShopLog> open() {
        return Optional.ofNullable(log);
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
        give(() -> {
            new GiveOut(log).label(cup(log, cup), file);
            return file;
        });
    }

    /** Writes the recipe card of a cup: PDF, or one page for the phone when the name ends in html. */
    public void card(UUID cup, Path file) {
        give(() -> {
            if (file.toString().toLowerCase(Locale.ROOT).endsWith(".html")) {
                new GiveOut(log).cardHtml(cup(log, cup), file);
            } else {
                new GiveOut(log).card(cup(log, cup), file);
            }
            return file;
        });
    }

    private void give(Callable<Path> work) {
        writing.run(
                work,
                written -> shell.say("Written to " + written + "."),
                failure -> problem.set(FailureWords.of(failure)));
    }

    private void write(Callable<Saved> entry, Runnable then) {
        write(entry, then, problem);
    }

    private void write(Callable<Saved> entry, Runnable then, ReadOnlyStringWrapper wrong) {
        writing.run(
                entry,
                saved -> {
                    wrong.set(saved instanceof Saved.Waiting waiting ? waiting.sentence() : "");
                    then.run();
                    look();
                },
                failure -> wrong.set(FailureWords.of(failure)));
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

    /** @return what was wrong with the new boat; empty when nothing was */
    public ReadOnlyStringProperty boatProblemProperty() {
        return boatProblem.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** Closes the log; what waits is kept by it. */
    public void close() {
        if (log != null) {
            try {
                log.close();
            } catch (LogFailure e) {
                problem.set(e.getMessage());
            }
        }
    }
}
