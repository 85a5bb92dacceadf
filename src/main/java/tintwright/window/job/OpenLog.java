package tintwright.window.job;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import tintwright.bench.log.KeepBoat;
import tintwright.bench.log.ShopLog;
import tintwright.bench.log.WriteLog;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.logbook.disk.LogFailure;
import tintwright.logbook.disk.Saved;
import tintwright.reading.ColourReading;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.QueuedWork;
import tintwright.window.frame.ShellModel;

/**
 * The shop's log while the window is open: opened and written off the screen's thread, in order. Whoever shows
 * something of it looks again whenever it changes.
 */
public final class OpenLog {
    private final JobModel job;
    private final ShellModel shell;
    private final QueuedWork writing;
    private final ReadOnlyIntegerWrapper changes = new ReadOnlyIntegerWrapper(0);
    private volatile ShopLog log;

    /** Something done with the log, off the screen's thread. */
    @FunctionalInterface
    public interface Work<T> {
        T with(ShopLog log) throws Exception;
    }

    public OpenLog(JobModel job, ShellModel shell, QueuedWork writing) {
        this.job = job;
        this.shell = shell;
        this.writing = writing;
    }

    /**
     * @param opener opens it; called off the screen's thread
     * @param wrong  told why it could not be opened
     */
    public void open(Callable<ShopLog> opener, Consumer<String> wrong) {
        writing.run(
                opener,
                opened -> {
                    log = opened;
                    changed();
                },
                failure -> wrong.accept(FailureWords.of(failure)));
    }

    /** @return the log, from any thread; empty while it is not open */
    public Optional<ShopLog> now() {
        return Optional.ofNullable(log);
    }

    /** @return a number that is another whenever something was written */
    public ReadOnlyIntegerProperty changesProperty() {
        return changes.getReadOnlyProperty();
    }

    private void changed() {
        changes.set(changes.get() + 1);
    }

    /** Does something with it that changes nothing in it. */
    public <T> void run(Work<T> work, Consumer<T> done, Consumer<String> wrong) {
        writing.run(() -> work.with(opened()), done, failure -> wrong.accept(FailureWords.of(failure)));
    }

    /**
     * Writes into it.
     *
     * @param then  runs once it is written, before anybody looks again
     * @param wrong told why it was not, or that it waits; an empty sentence when all is well
     */
    public void write(Work<Saved> entry, Runnable then, Consumer<String> wrong) {
        run(
                entry,
                saved -> {
                    wrong.accept(saved instanceof Saved.Waiting waiting ? waiting.sentence() : "");
                    then.run();
                    changed();
                },
                wrong);
    }

    /** Writes down today's readings of the place in hand. */
    public void writeReadings(Consumer<String> wrong) {
        String boat = job.now().boat();
        job.place()
                .ifPresent(place -> write(
                        open -> {
                            KeepBoat keep = new KeepBoat(open);
                            Noted<Page.Boat> hers = keep.boat(boat);
                            return new WriteLog(open)
                                    .reading(hers, keep.place(hers, place.place()), standing(place), place.note());
                        },
                        () -> shell.say("The readings of " + place.place() + " are in the log."),
                        wrong));
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

    private ShopLog opened() {
        return now().orElseThrow(() -> new IllegalArgumentException("the log is not open, so nothing was written"));
    }

    /** Closes it; what waits is kept by it. */
    public void close(Consumer<String> wrong) {
        if (log != null) {
            try {
                log.close();
            } catch (LogFailure e) {
                wrong.accept(e.getMessage());
            }
        }
    }
}
