package tintwright.logbook.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import tintwright.files.FileProblem;
import tintwright.files.JsonPlace;
import tintwright.files.JsonText;

/**
 * How many lines each file of a log had when this bench last looked. A file that vanishes, or is put back to an
 * earlier copy of itself, looks sound by itself; only who saw it before can tell. This memory is a help, not part
 * of the log: lost or harmed, it starts again from what is there.
 */
final class SeenBefore implements Pen.Memory {
    private final Path file;
    private final Map<String, Integer> most = new TreeMap<>();

    SeenBefore(Path file) {
        this.file = file;
        most.putAll(written());
    }

    private Map<String, Integer> written() {
        try {
            Map<String, Integer> lines = new TreeMap<>();
            for (Map.Entry<String, JsonPlace> one :
                    JsonPlace.read(file).fields().entrySet()) {
                lines.put(one.getKey(), one.getValue().whole());
            }
            return lines;
        } catch (FileProblem noMemory) {
            return Map.of();
        }
    }

    /**
     * @param arriving whether a file of this name may be on its way just now
     * @return a trouble for each file that has fewer lines than it had
     */
    List<Trouble> missing(Map<String, Integer> linesNow, Predicate<String> arriving) {
        List<Trouble> missing = new ArrayList<>();
        most.forEach((name, before) -> {
            Integer now = linesNow.get(name);
            if (now != null && now >= before) {
                return;
            }
            int line = now == null ? 0 : now;
            if (arriving.test(name)) {
                missing.add(LogFolder.arriving(name, line));
            } else {
                String what = now == null
                        ? "the file was there when this bench last looked (" + before
                                + " lines) and is gone. Put it back" + " from a copy"
                        : "the file ends here and had " + before
                                + " lines when this bench last looked. Put it back from" + " a newer copy";
                missing.add(new Trouble(name, line, Trouble.Kind.MISSING, what));
            }
        });
        return missing;
    }

    /** @return whether there were files in the folder and not one of them is there now */
    boolean isAllGone(Path folder) {
        return !most.isEmpty() && most.keySet().stream().noneMatch(name -> Files.exists(folder.resolve(name)));
    }

    @Override
    public boolean knows(String name) {
        return most.containsKey(name);
    }

    @Override
    public boolean wasLonger(String name, int lines) {
        return most.getOrDefault(name, 0) > lines;
    }

    /** Remembers what is there, but no less than was there before: a loss stays a loss until it is accepted. */
    void remember(Map<String, Integer> linesNow) {
        Map<String, Integer> before = Map.copyOf(most);
        linesNow.forEach((name, lines) -> most.merge(name, lines, Math::max));
        if (!most.equals(before)) {
            // Another window of this bench may have seen more meanwhile.
            written().forEach((name, lines) -> most.merge(name, lines, Math::max));
            save();
        }
    }

    /** From now on what is there is all there ever was. */
    void accept(Map<String, Integer> linesNow) {
        most.clear();
        most.putAll(linesNow);
        save();
    }

    private void save() {
        try {
            Files.createDirectories(file.getParent());
            Disk.REAL.place(file, JsonText.of(most).getBytes(StandardCharsets.UTF_8));
        } catch (IOException onlyAHelp) {
            // The log itself is on another disk and was forced there: without this memory nothing is lost.
            return;
        }
    }
}
