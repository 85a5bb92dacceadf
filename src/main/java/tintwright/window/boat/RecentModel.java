package tintwright.window.boat;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import tintwright.bench.job.Job;
import tintwright.bench.job.RecentBoats;
import tintwright.files.BoatsFile;
import tintwright.files.FileProblem;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.QueuedWork;
import tintwright.window.frame.ShellModel;
import tintwright.window.job.JobModel;

/** The boats last worked on: whichever boat leaves the bench is kept as it is left, and comes back with one press. */
public final class RecentModel {
    private final JobModel job;
    private final ShellModel shell;
    private final QueuedWork writing;
    private final ReadOnlyObjectWrapper<List<Line>> shown = new ReadOnlyObjectWrapper<>(List.of());
    private Optional<RecentBoats> kept = Optional.empty();
    private List<BoatsFile.Left> boats = List.of();

    /** A boat, and what waits there. */
    public record Line(String boat, String words) {}

    public RecentModel(JobModel job, ShellModel shell, QueuedWork writing) {
        this.job = job;
        this.shell = shell;
        this.writing = writing;
        job.jobProperty().addListener((property, before, after) -> {
            if (!before.boat().equals(after.boat())) {
                show(boats);
                leave(before);
            }
        });
        shell.lastBoat(() -> shown.get().stream().findFirst().ifPresent(line -> open(line.boat())));
    }

    /** Shows what is kept there, and keeps there from now on; without it no boat is remembered. */
    public void keepIn(RecentBoats folder) {
        kept = Optional.of(folder);
        try {
            show(folder.list());
        } catch (FileProblem e) {
            shell.warn(FailureWords.of(e));
        }
    }

    private void leave(Job left) {
        if (kept.isPresent() && !left.boat().isBlank()) {
            RecentBoats folder = kept.get();
            writing.run(() -> folder.leave(left), this::show, failure -> shell.warn(FailureWords.of(failure)));
        }
    }

    private void show(List<BoatsFile.Left> now) {
        boats = List.copyOf(now);
        shown.set(boats.stream()
                .filter(left -> !left.boat().equals(job.now().boat()))
                .map(left -> new Line(left.boat(), words(left)))
                .toList());
    }

    private static String words(BoatsFile.Left left) {
        String places =
                left.places() == 0 ? "nothing read yet" : left.places() == 1 ? "1 place" : left.places() + " places";
        return left.cup().isEmpty() ? places : places + ", cup " + left.cup() + " in hand";
    }

    /**
     * Brings a boat back as it was left, with its readings, its repairs and its cup; shelf and scale stay as they are.
     *
     * @return false when it is not among the boats last worked on
     */
    public boolean open(String boat) {
        if (boats.stream().noneMatch(left -> left.boat().equals(boat))
                || boat.equals(job.now().boat())) {
            return false;
        }
        RecentBoats folder = kept.orElseThrow();
        writing.run(
                () -> folder.fetch(boat),
                found -> found.ifPresent(this::bring),
                failure -> shell.warn(FailureWords.of(failure)));
        return true;
    }

    private void bring(Job left) {
        job.change(now -> new Job(
                        left.boat(),
                        left.places(),
                        left.place(),
                        left.shelf(),
                        left.grams(),
                        now.scaleStep(),
                        left.off(),
                        left.fill(),
                        left.cup(),
                        left.ahead())
                .with(now.shelf()));
        if (left.cup().isPresent() && job.now().cup().isEmpty()) {
            shell.warn("The cup " + left.cup().get().name() + " holds what is no longer on the shelf; its page in the "
                    + "log still says what is in it.");
        }
    }

    ReadOnlyObjectProperty<List<Line>> shownProperty() {
        return shown.getReadOnlyProperty();
    }
}
