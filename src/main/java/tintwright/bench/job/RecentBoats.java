package tintwright.bench.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.files.BoatsFile;
import tintwright.files.FileProblem;
import tintwright.files.SharedFile;

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
        try {
            return BoatsFile.read(folder.resolve(LIST));
        } catch (FileProblem e) {
            throw FileProblem.unusable(
                    "The boats worked on lately cannot be read from " + folder.resolve(LIST) + "; move it away, "
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
        return BoatsFile.at(folder.resolve(LIST)).change(List.of(), there -> {
            // No folder that the list still names is written before the list is: whoever reads it finds its boats.
            int slot = 1;
            while (isTaken(there, slot)) {
                slot++;
            }
            new KeptJob(slot(slot)).keepAnew(job);
            List<BoatsFile.Left> boats = new ArrayList<>();
            boats.add(new BoatsFile.Left(
                    job.boat(),
                    job.places().size(),
                    job.cup().map(cup -> cup.name()).orElse(""),
                    slot));
            there.stream()
                    .filter(left -> !left.boat().equals(job.boat()))
                    .limit(MOST - 1)
                    .forEach(boats::add);
            return new SharedFile.Changed<>(boats, boats);
        });
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
