package tintwright.command.cup;

import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import picocli.CommandLine.Option;
import tintwright.bench.CupBench;
import tintwright.command.pieces.Answer;
import tintwright.files.CupFile;
import tintwright.files.Demo;
import tintwright.files.FileProblem;
import tintwright.files.SharedFile;
import tintwright.files.ShelfFile;
import tintwright.shelf.knowledge.Knowledge;

/** Which cup, mixed from which shelf, and when. */
public final class CupOptions {
    @Option(names = "--cup", paramLabel = "FILE", required = true, description = "The cup.")
    private Path file;

    @Option(names = "--shelf", paramLabel = "FILE", description = "Your shelf; the demo shelf when not said.")
    private Path shelf;

    @Option(
            names = "--at",
            paramLabel = "MOMENT",
            description = "When it was done, such as 2026-05-31T09:12:00Z; now" + " when not said.")
    private String at;

    Path file() {
        return file;
    }

    Knowledge knowledge() throws FileProblem {
        return Knowledge.of(shelf == null ? Demo.shelf() : ShelfFile.read(shelf));
    }

    CupBench open() throws FileProblem {
        return CupBench.open(knowledge(), CupFile.read(file));
    }

    /** One deed at the cup. */
    @FunctionalInterface
    interface Step {
        /** @return what is said of the cup that is to be written */
        CupAnswer at(CupBench bench) throws FileProblem;
    }

    /** Does it to the cup as it is now. What is answered was worked out before the file is touched. */
    Answer change(Step step) throws FileProblem {
        Knowledge known = knowledge();
        return CupFile.at(file).change(cup -> {
            CupAnswer said = step.at(CupBench.open(known, cup));
            return new SharedFile.Changed<>(said.cup(), said.answer());
        });
    }

    /** Begins the file of a new cup. */
    Answer begin(CupAnswer said) throws FileProblem {
        Answer answer = said.answer();
        CupFile.at(file).create(said.cup());
        return answer;
    }

    Instant at() {
        if (at == null) {
            return Instant.now().truncatedTo(ChronoUnit.SECONDS);
        }
        try {
            return Instant.parse(at);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    "--at must be a moment such as 2026-05-31T09:12:00Z, was \"" + at + "\"", e);
        }
    }
}
