package tintwright.window.holes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tintwright.bench.top.CureClock;
import tintwright.files.ClocksFile;
import tintwright.files.FileProblem;

/** Running clocks on disk, so that a cup goes on curing while the window is closed. */
public final class KeptTimers {
    private final Path file;
    private List<ClocksFile.Catalysed> before = List.of();

    /** @param file need not exist */
    public KeptTimers(Path file) {
        this.file = file;
    }

    /** @throws FileProblem when it cannot be written; what stood there still stands */
    void keep(List<FillTimers.Started> started) throws FileProblem {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
        } catch (IOException e) {
            throw FileProblem.unusable(
                    "The running times cannot be kept in " + file + "; they run on while the " + "window is open", e);
        }
        List<ClocksFile.Catalysed> now = started.stream()
                .map(one -> new ClocksFile.Catalysed(
                        Optional.of(one.cup().job()),
                        one.cup().batch(),
                        one.words(),
                        one.clock().catalysed(),
                        one.clock().timers()))
                .toList();
        ClocksFile.keep(file, before, now);
        before = now;
    }

    /**
     * @param inHand boat and place of cups that were kept before places were told apart
     * @return what ran when the window was closed; empty when nothing did
     * @throws FileProblem when it cannot be read; it is left as it is
     */
    List<FillTimers.Started> fetch(String inHand) throws FileProblem {
        if (!Files.exists(file)) {
            return List.of();
        }
        try {
            before = ClocksFile.read(file);
            return before.stream()
                    .map(cup -> new FillTimers.Started(
                            new FillTimers.Cup(cup.job().orElse(inHand), cup.batch()),
                            cup.words(),
                            new CureClock(cup.catalysed(), cup.timers())))
                    .toList();
        } catch (FileProblem e) {
            throw FileProblem.unusable(
                    "The times of the cups that were catalysed cannot be read from " + file
                            + "; it was left as it is: go by the feel of the cup",
                    e);
        }
    }
}
