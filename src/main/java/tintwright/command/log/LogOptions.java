package tintwright.command.log;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import tintwright.bench.log.GiveOut;
import tintwright.bench.log.ShopLog;
import tintwright.command.pieces.Answer;
import tintwright.files.Fields;
import tintwright.logbook.disk.LogFailure;
import tintwright.logbook.disk.Saved;
import tintwright.logbook.disk.Trouble;

/** Which log a command works on, and what must always be said about it. */
public final class LogOptions {
    @Option(
            names = "--log",
            paramLabel = "FOLDER",
            description = "Folder of the log; when not said, what the variable"
                    + " TINTWRIGHT_LOG names, or Tintwright/log in your home folder.")
    private Path folder;

    @Option(names = "--demo", description = "The invented boat's log instead: a copy, gone afterwards.")
    private boolean demo;

    @Option(
            names = "--home",
            paramLabel = "FOLDER",
            description = "Where this machine keeps its own small files; when"
                    + " not said, what TINTWRIGHT_HOME names, or .tintwright in your home folder.")
    private Path home;

    ShopLog open() throws LogFailure {
        if (demo && folder != null) {
            throw new IllegalArgumentException("give only one of --log and --demo");
        }
        return demo
                ? ShopLog.demo(Clock.systemUTC())
                : ShopLog.open(
                        folder == null ? ShopLog.usualFolder() : folder,
                        home == null ? ShopLog.usualHome() : home,
                        Clock.systemUTC());
    }

    /** @return what is wrong with the log, for the end of every answer; empty when all is well */
    static List<String> troubles(ShopLog log) {
        List<String> lines = new ArrayList<>();
        List<Trouble> troubles = log.book().troubles();
        if (!troubles.isEmpty()) {
            lines.add("");
            lines.add("The log needs a look:");
            troubles.forEach(trouble -> lines.add("  " + trouble.sentence() + "."));
            if (troubles.stream().anyMatch(trouble -> trouble.kind() == Trouble.Kind.MISSING)) {
                lines.add("  What is gone for good is named no more after \"tintwright log --accept-losses\".");
            }
        }
        if (log.book().waiting() > 0) {
            lines.add("");
            lines.add(log.book().waiting() + (log.book().waiting() == 1 ? " entry waits" : " entries wait")
                    + " on this machine until the log can be written.");
        }
        return lines;
    }

    /** @return the answer, and behind it what is wrong with the log */
    static Answer answer(ShopLog log, List<String> lines, Fields fields) {
        lines.addAll(troubles(log));
        return new Answer(lines, fields.each("troubles", log.book().troubles(), Trouble::sentence));
    }

    /** @return the answer to something that was written */
    static Answer done(ShopLog log, String sentence) {
        return answer(
                log,
                new ArrayList<>(List.of(sentence)),
                Fields.of("done", sentence).with("waiting", log.book().waiting()));
    }

    /** @return what to say about an entry that was handed over to be written */
    static String sentence(Saved saved, String what) {
        return saved instanceof Saved.Waiting waiting
                ? waiting.sentence()
                : what + " (" + GiveOut.shortName(saved.entry().id()) + ").";
    }

    static Optional<String> text(String option) {
        return Optional.ofNullable(option).filter(text -> !text.isBlank());
    }
}
