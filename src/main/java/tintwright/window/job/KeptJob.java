package tintwright.window.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import tintwright.files.BenchFile;
import tintwright.files.BenchJob;
import tintwright.files.FileProblem;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairKind;
import tintwright.fill.repair.RepairLine;

/**
 * The job in hand on disk, so that nothing has to be saved by hand: {@link BenchFile} knows its shape and how it is
 * written, this class what of the window belongs into it.
 *
 * <p>Not for use by two threads at once.
 */
public final class KeptJob {
    private static final String FILE = "bench.json";
    /** Stands in a fill while its list is empty, so that what else was typed there has an order to stand in. */
    private static final RepairLine NO_REPAIR = new RepairLine(
            "none yet",
            RepairKind.HOLE.make(Map.of("hole", 5.0, "depth", 5.0), OptionalDouble.empty()),
            Lie.FACING_UP,
            1);

    private final Path folder;
    private final Path file;
    private Optional<BenchJob> written = Optional.empty();
    private boolean unread;

    /** @param folder need not exist */
    public KeptJob(Path folder) {
        this.folder = folder;
        this.file = folder.resolve(FILE);
    }

    /** @return true when a job was ever kept in that folder */
    public static boolean begun(Path folder) {
        return Files.exists(folder.resolve(FILE));
    }

    /** @throws FileProblem when it cannot be written, or another window changed the same; what was there is still there */
    public void keep(Job job) throws FileProblem {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw FileProblem.unusable(
                    "The folder " + folder + " cannot be made, so what you do here is not kept. "
                            + "Make room, or make it writable",
                    e);
        }
        if (unread) {
            moveAside();
            unread = false;
        }
        BenchJob now = kept(job);
        BenchFile.keep(file, written, now);
        written = Optional.of(now);
    }

    /** Keeps a job in a folder that nothing names any more: what an earlier one left there goes. */
    void keepAnew(Job job) throws FileProblem {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw FileProblem.unusable(
                    file + " is of no use any more and cannot be taken away, so " + job.boat()
                            + " is not kept: make its" + " folder writable",
                    e);
        }
        keep(job);
    }

    private static BenchJob kept(Job job) {
        Optional<BenchJob.Fill> fill = job.fill().equals(FillDraft.NONE)
                ? Optional.empty()
                : Optional.of(new BenchJob.Fill(
                        FillOrders.typed(
                                job.fill().lines().isEmpty()
                                        ? job.filling(job.fill().plus(NO_REPAIR))
                                        : job),
                        !job.fill().lines().isEmpty(),
                        job.fill().facts().baseHides()));
        return new BenchJob(
                job.boat(),
                job.places(),
                job.place(),
                job.shelf(),
                job.grams(),
                job.scaleStep(),
                job.off(),
                fill,
                job.cup(),
                job.ahead());
    }

    /** What could not be read is never written over: somebody may still mend it by hand. */
    private void moveAside() throws FileProblem {
        try {
            Path aside = Files.createTempDirectory(folder, "unread-");
            if (Files.exists(file)) {
                Files.move(file, aside.resolve(FILE));
            }
        } catch (IOException e) {
            throw FileProblem.unusable(
                    "What could not be read in " + folder + " cannot be moved aside, so what you "
                            + "do here is not kept",
                    e);
        }
    }

    /**
     * @return what was on the bench; empty when nothing was kept yet
     * @throws FileProblem when it cannot be read; it is left as it is
     */
    public Optional<Job> fetch() throws FileProblem {
        if (!begun(folder)) {
            return Optional.empty();
        }
        try {
            BenchJob job = BenchFile.read(file);
            written = Optional.of(job);
            return Optional.of(shown(job));
        } catch (FileProblem e) {
            unread = true;
            throw e;
        }
    }

    private static Job shown(BenchJob job) {
        Set<String> off = new HashSet<>(job.off());
        off.removeIf(id -> job.shelf().tint(id).isEmpty());
        FillDraft fill = job.fill()
                .map(kept -> FillDraft.of(kept.order().job(), kept.baseHides()))
                .orElse(FillDraft.NONE);
        boolean placeHeld = job.fill().filter(kept -> !kept.repairs()).isPresent();
        return new Job(
                job.boat(),
                job.places(),
                job.place(),
                job.shelf(),
                job.grams(),
                job.scaleStep(),
                off,
                placeHeld ? fill.without(0) : fill,
                job.cup(),
                job.cup().isPresent() ? job.ahead() : List.of());
    }
}
