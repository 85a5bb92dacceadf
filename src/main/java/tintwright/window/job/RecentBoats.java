package tintwright.window.job;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.files.BoatsFile;
import tintwright.files.FileProblem;

/**
 * The boats last worked on, each as it was left, on disk: one folder for each like that of the job in hand, and a list
 * of them written last. Not for use by two threads at once.
 */
public final class RecentBoats {
    /** More than these are found by searching the log. */
    public static final int MOST = 6;

    private static final String LIST = "boats.json";

    private final Path folder;

    /** @param folder need not exist */
    public RecentBoats(Path folder) {
        this.folder = folder;
    }

    /**
     * @return last left first
     * @throws FileProblem when the list cannot be read; it is left as it is
     */
    public List<BoatsFile.Left> list() throws FileProblem {
        Path file = folder.resolve(LIST);
        List<BoatsFile.Left> boats = new ArrayList<>();
        if (!Files.exists(file)) {
            return boats;
        }
        try {
            boats.addAll(BoatsFile.read(file));
            return boats;
        } catch (FileProblem e) {
            throw FileProblem.unusable(
                    "The boats worked on lately cannot be read from " + file + "; move it away, "
                            + "and the list begins anew. The log has them all",
                    e);
        }
    }

    /**
     * Keeps a boat as it is left, in front of the others; the one left longest ago goes when there are too many.
     *
     * @return the list as it is now
     * @throws FileProblem when it cannot be written, or the list cannot be read
     */
    public List<BoatsFile.Left> leave(Job job) throws FileProblem {
        List<BoatsFile.Left> boats = list();
        boats.removeIf(left -> left.boat().equals(job.boat()));
        while (boats.size() >= MOST) {
            boats.remove(boats.size() - 1);
        }
        int slot = 1;
        while (isTaken(boats, slot)) {
            slot++;
        }
        new KeptJob(slot(slot)).keep(job);
        boats.add(
                0,
                new BoatsFile.Left(
                        job.boat(),
                        job.places().size(),
                        job.cup().map(cup -> cup.name()).orElse(""),
                        slot));
        BoatsFile.write(folder.resolve(LIST), boats);
        return boats;
    }

    private static boolean isTaken(List<BoatsFile.Left> boats, int slot) {
        return boats.stream().anyMatch(left -> left.slot() == slot);
    }

    private Path slot(int number) {
        return folder.resolve("boat-" + number);
    }

    /**
     * @return the boat as it was left; empty when it is not among the last
     * @throws FileProblem when it cannot be read; it is left as it is
     */
    public Optional<Job> fetch(String boat) throws FileProblem {
        for (BoatsFile.Left left : list()) {
            if (left.boat().equals(boat)) {
                return new KeptJob(slot(left.slot())).fetch();
            }
        }
        return Optional.empty();
    }
}
