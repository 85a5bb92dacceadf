package tintwright.window.holes;

import java.nio.file.Path;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import tintwright.bench.top.DayTicks;
import tintwright.files.FileProblem;
import tintwright.fill.DayWords;
import tintwright.window.frame.FailureWords;

/** The steps of the day that are done, of the boat and place in hand. */
public final class TickedSteps {
    private final DayTicks ticks = new DayTicks();
    private final ReadOnlyObjectWrapper<Set<String>> ticked = new ReadOnlyObjectWrapper<>(Set.of());
    private final Supplier<String> jobName;
    private final Consumer<String> warn;

    /**
     * @param jobName what the ticks belong to
     * @param warn    told what could not be kept
     */
    TickedSteps(Supplier<String> jobName, Consumer<String> warn) {
        this.jobName = jobName;
        this.warn = warn;
    }

    /** Takes up the steps that were ticked when the window was closed, and keeps them from now on. */
    public void keepIn(Path file) {
        ticks.keepIn(file);
        ticked.set(done());
    }

    /** @return whether this step of the day is done */
    boolean has(DayWords.Line step) {
        return done().contains(DayTicks.name(step));
    }

    /** @param step what it is called: {@link DayTicks#name} */
    public void tick(String step, boolean done) {
        if (done().contains(step) == done) {
            return;
        }
        try {
            ticks.tick(jobName.get(), step, done);
        } catch (FileProblem e) {
            warn.accept(FailureWords.of(e));
        }
        ticked.set(done());
    }

    /** @return the names of the steps that are done */
    public Set<String> done() {
        return ticks.of(jobName.get());
    }

    /** @return changes with every tick */
    public ReadOnlyObjectProperty<Set<String>> doneProperty() {
        return ticked.getReadOnlyProperty();
    }
}
