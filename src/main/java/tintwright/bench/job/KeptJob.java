package tintwright.bench.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import tintwright.files.FileProblem;

/**
 * The job in hand on disk, so that nothing has to be saved by hand. What cannot be read is never written over.
 *
 * <p>Not for use by two threads at once.
 */
public final class KeptJob {
    private static final String FILE = "bench.json";
    private final Path folder;
    private final Path file;
    private Optional<Job> written = Optional.empty();
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
        BenchFile.keep(file, written, job);
        written = Optional.of(job);
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
            written = Optional.of(BenchFile.read(file));
            return written;
        } catch (FileProblem e) {
            unread = true;
            throw e;
        }
    }
}
