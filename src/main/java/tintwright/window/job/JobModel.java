package tintwright.window.job;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import tintwright.bench.job.Job;
import tintwright.cup.Cup;
import tintwright.cup.CupEntry;
import tintwright.cup.Deed;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Shelf;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.LatestAnswer;
import tintwright.window.frame.ShellModel;

/** The job in hand and what its chips have taught; every change can be undone and is handed on to be kept. */
public final class JobModel {
    private static final int MOST_ENTRIES_OF_A_PRESS = 3;

    private final ReadOnlyObjectWrapper<Job> job = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Knowledge> knowledge = new ReadOnlyObjectWrapper<>();
    private final History<Job> history = new History<>();
    private final Function<Shelf, Knowledge> teacher;
    private final LatestAnswer learning;
    private final ShellModel shell;
    private final Clock clock;
    private String lastChange = "";
    private Consumer<Job> keep = changed -> {};

    public JobModel(
            Job first, Function<Shelf, Knowledge> teacher, LatestAnswer learning, ShellModel shell, Clock clock) {
        this.teacher = teacher;
        this.clock = clock;
        this.learning = learning;
        this.shell = shell;
        job.set(first);
        publish(null);
    }

    /** @param keeper told every new state, to write it down */
    public void keepWith(Consumer<Job> keeper) {
        keep = keeper;
    }

    /** Changes the job; nothing happens when the change changes nothing. */
    public void change(UnaryOperator<Job> edit) {
        change("", edit);
    }

    /** @param what changes of one name that follow each other, such as typed figures, are undone as one */
    public void change(String what, UnaryOperator<Job> edit) {
        Job before = job.get();
        Job after = edit.apply(before);
        if (!after.equals(before)) {
            if (what.isEmpty() || !what.equals(lastChange)) {
                history.leave(before);
            }
            lastChange = what;
            job.set(after);
            publish(before);
        }
    }

    /** The cup in hand is done; undo brings it back, and the shelf as it was before it taught it. */
    public void cupDone() {
        change(before -> before.cupDone(LocalDate.now(clock)));
    }

    private void travel(UnaryOperator<Job> step, BiFunction<Cup, Instant, Cup> cupStep) {
        lastChange = "";
        Job before = job.get();
        Job after = step.apply(before);
        // Nothing written about a cup is ever taken out: going back is one more entry about the last.
        if (before.boat().equals(after.boat())
                && before.cup().isPresent()
                && after.cup().isPresent()
                && !before.cup().equals(after.cup())
                && before.cup().get().name().equals(after.cup().get().name())) {
            after = after.after(stepped(before.cup().get(), after.cup().get(), cupStep), after.ahead());
        }
        job.set(after);
        publish(before);
    }

    private void undo() {
        Job before = job.get();
        travel(history::undo, Cup::undo);
        shell.say("Undone: " + Changed.words(job.get(), before) + ".");
    }

    private void redo() {
        Job before = job.get();
        travel(history::redo, Cup::redo);
        shell.say("Done again: " + Changed.words(before, job.get()) + ".");
    }

    /** One press may have written two entries, such as white put in and white held back. */
    private Cup stepped(Cup from, Cup toward, BiFunction<Cup, Instant, Cup> cupStep) {
        Cup cup = from;
        for (int i = 0; i < MOST_ENTRIES_OF_A_PRESS; i++) {
            cup = cupStep.apply(cup, clock.instant());
            if (deeds(cup).equals(deeds(toward))) {
                return cup;
            }
        }
        return cupStep.apply(from, clock.instant());
    }

    private static List<Deed> deeds(Cup cup) {
        return cup.standing().stream().map(CupEntry::deed).toList();
    }

    private void publish(Job before) {
        Job now = job.get();
        shell.history(history.canUndo(), this::undo, history.canRedo(), this::redo);
        shell.jobProperty().set(title(now));
        if (before == null || !Objects.equals(before.shelf(), now.shelf())) {
            learn(now.shelf());
        }
        if (before != null) {
            keep.accept(now);
        }
    }

    /** While there is a cup it is what everything is about, and it has its own place, whichever is looked at. */
    private static String title(Job now) {
        if (now.cup().isPresent()) {
            String name = now.cup().get().name();
            String place = now.cup().get().hull().place();
            return now.boat() + ", cup " + name + (name.startsWith(place) ? "" : " for " + place);
        }
        return now.place() < 0
                ? now.boat()
                : now.boat() + ", " + now.places().get(now.place()).place();
    }

    private void learn(Shelf shelf) {
        learning.ask(() -> teacher.apply(shelf), knowledge::set, failure -> shell.warn(FailureWords.of(failure)));
    }

    public Job now() {
        return job.get();
    }

    /** @return the place in hand; empty when the boat has none yet */
    public Optional<PlaceReadings> place() {
        Job now = job.get();
        return now.place() < 0 ? Optional.empty() : Optional.of(now.places().get(now.place()));
    }

    public ReadOnlyObjectProperty<Job> jobProperty() {
        return job.getReadOnlyProperty();
    }

    /** @return what the chips have taught; null until it has been learned */
    public ReadOnlyObjectProperty<Knowledge> knowledgeProperty() {
        return knowledge.getReadOnlyProperty();
    }
}
