package tintwright.window.holes;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import tintwright.bench.CureClock;
import tintwright.files.FileProblem;
import tintwright.files.TextFile;
import tintwright.fill.CureTimer;

/** Running clocks on disk, so that a cup goes on curing while the window is closed. */
public final class KeptTimers {
    private final Path file;

    /** @param file need not exist */
    public KeptTimers(Path file) {
        this.file = file;
    }

    /** @throws FileProblem when it cannot be written; what stood there still stands */
    void keep(List<FillTimers.Started> started) throws FileProblem {
        Properties list = new Properties();
        list.setProperty("clocks", Integer.toString(started.size()));
        for (int i = 0; i < started.size(); i++) {
            FillTimers.Started one = started.get(i);
            list.setProperty(i + ".batch", Integer.toString(one.batch()));
            list.setProperty(i + ".words", one.words());
            list.setProperty(i + ".at", one.clock().catalysed().toString());
            list.setProperty(
                    i + ".timers", Integer.toString(one.clock().timers().size()));
            for (int j = 0; j < one.clock().timers().size(); j++) {
                CureTimer timer = one.clock().timers().get(j);
                String name = i + "." + j + ".";
                list.setProperty(name + "cue", timer.cue());
                list.setProperty(name + "from", Double.toString(timer.fromMinutes()));
                list.setProperty(name + "to", Double.toString(timer.toMinutes()));
                list.setProperty(name + "test", timer.test());
            }
        }
        StringWriter text = new StringWriter();
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            list.store(text, "cups with catalyst in them");
        } catch (IOException e) {
            throw FileProblem.unusable(
                    "The running times cannot be kept in " + file + "; they run on while the " + "window is open", e);
        }
        TextFile.write(file, text.toString());
    }

    /**
     * @return what ran when the window was closed; empty when nothing did
     * @throws FileProblem when it cannot be read; it is left as it is
     */
    List<FillTimers.Started> fetch() throws FileProblem {
        if (!Files.exists(file)) {
            return List.of();
        }
        Properties list = new Properties();
        try {
            list.load(new StringReader(TextFile.read(file)));
            List<FillTimers.Started> started = new ArrayList<>();
            for (int i = 0; i < whole(list, "clocks"); i++) {
                List<CureTimer> timers = new ArrayList<>();
                for (int j = 0; j < whole(list, i + ".timers"); j++) {
                    String name = i + "." + j + ".";
                    timers.add(new CureTimer(
                            words(list, name + "cue"),
                            Double.parseDouble(words(list, name + "from")),
                            Double.parseDouble(words(list, name + "to")),
                            words(list, name + "test")));
                }
                started.add(new FillTimers.Started(
                        whole(list, i + ".batch"),
                        words(list, i + ".words"),
                        new CureClock(Instant.parse(words(list, i + ".at")), timers)));
            }
            return started;
        } catch (IOException | IllegalArgumentException | DateTimeException e) {
            throw FileProblem.unusable(
                    "The times of the cups that were catalysed cannot be read from " + file
                            + "; it was left as it is: go by the feel of the cup",
                    e);
        }
    }

    private static int whole(Properties list, String name) {
        return Integer.parseInt(words(list, name));
    }

    private static String words(Properties list, String name) {
        String words = list.getProperty(name);
        if (words == null) {
            throw new IllegalArgumentException(name + " is missing");
        }
        return words;
    }
}
