package tintwright.window.job;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import tintwright.files.FileProblem;
import tintwright.files.TextFile;

/**
 * The boats last worked on, each as it was left, on disk: one folder for each like that of the job in hand, and a list
 * of them written last. Not for use by two threads at once.
 */
public final class RecentBoats {
    /** More than these are found by searching the log. */
    public static final int MOST = 6;

    private static final String LIST = "boats.properties";

    private final Path folder;

    /**
     * A boat that was left.
     *
     * @param boat   its name
     * @param places how many places it had
     * @param cup    name of the cup in hand; empty when there was none
     * @param slot   number of its folder
     */
    public record Left(String boat, int places, String cup, int slot) {}

    /** @param folder need not exist */
    public RecentBoats(Path folder) {
        this.folder = folder;
    }

    /**
     * @return last left first
     * @throws FileProblem when the list cannot be read; it is left as it is
     */
    public List<Left> list() throws FileProblem {
        Path file = folder.resolve(LIST);
        List<Left> boats = new ArrayList<>();
        if (!Files.exists(file)) {
            return boats;
        }
        try {
            Properties list = new Properties();
            list.load(new StringReader(TextFile.read(file)));
            int count = Integer.parseInt(list.getProperty("boats", "0"));
            for (int i = 0; i < count; i++) {
                boats.add(new Left(
                        list.getProperty(i + ".boat", ""),
                        Integer.parseInt(list.getProperty(i + ".places", "")),
                        list.getProperty(i + ".cup", ""),
                        Integer.parseInt(list.getProperty(i + ".slot", ""))));
            }
            return boats;
        } catch (IOException | IllegalArgumentException e) {
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
    public List<Left> leave(Job job) throws FileProblem {
        List<Left> boats = list();
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
                new Left(
                        job.boat(),
                        job.places().size(),
                        job.cup().map(cup -> cup.name()).orElse(""),
                        slot));
        write(boats);
        return boats;
    }

    private static boolean isTaken(List<Left> boats, int slot) {
        return boats.stream().anyMatch(left -> left.slot() == slot);
    }

    private Path slot(int number) {
        return folder.resolve("boat-" + number);
    }

    private void write(List<Left> boats) throws FileProblem {
        Properties list = new Properties();
        list.setProperty("boats", Integer.toString(boats.size()));
        for (int i = 0; i < boats.size(); i++) {
            list.setProperty(i + ".boat", boats.get(i).boat());
            list.setProperty(i + ".places", Integer.toString(boats.get(i).places()));
            list.setProperty(i + ".cup", boats.get(i).cup());
            list.setProperty(i + ".slot", Integer.toString(boats.get(i).slot()));
        }
        StringWriter text = new StringWriter();
        try {
            list.store(text, "boats worked on lately");
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory failed", e);
        }
        TextFile.write(folder.resolve(LIST), text.toString());
    }

    /**
     * @return the boat as it was left; empty when it is not among the last
     * @throws FileProblem when it cannot be read; it is left as it is
     */
    public Optional<Job> fetch(String boat) throws FileProblem {
        for (Left left : list()) {
            if (left.boat().equals(boat)) {
                return new KeptJob(slot(left.slot())).fetch();
            }
        }
        return Optional.empty();
    }
}
