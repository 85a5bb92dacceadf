package tintwright.command.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import tintwright.bench.log.GiveOut;
import tintwright.bench.log.ShopLog;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.files.Fields;
import tintwright.logbook.BoatZip;
import tintwright.logbook.disk.LogFailure;

/** {@code import}: takes a boat from another shop into the log. */
@CommandLine.Command(
        name = "import",
        sortOptions = false,
        description = "Takes a boat that another shop has exported into the log; what is known already stays as it is.",
        footer = {"", "Example:", "  tintwright import tarrowmere.zip"})
public final class ImportCommand extends Command {
    @Parameters(paramLabel = "ZIP", description = "The zip with the boat.")
    private Path zip;

    @Mixin
    private LogOptions options;

    @Override
    protected Answer answer() throws LogFailure, IOException {
        byte[] bytes = read();
        try (ShopLog log = options.open()) {
            BoatZip.Imported imported = new GiveOut(log).takeIn(bytes);
            List<String> lines = new ArrayList<>();
            lines.add("Taken in: " + String.join(", ", imported.boats()) + ", " + imported.added() + " new entries, "
                    + imported.known() + " known already.");
            imported.waiting()
                    .ifPresent(why -> lines.add(why + " What was taken in is kept on this machine and goes"
                            + " into the log as soon as it can."));
            lines.addAll(imported.left());
            return LogOptions.answer(
                    log,
                    lines,
                    Fields.of("boats", imported.boats())
                            .with("added", imported.added())
                            .with("known", imported.known())
                            .with("left", imported.left()));
        }
    }

    private byte[] read() throws IOException {
        try {
            if (Files.size(zip) > BoatZip.LARGEST_ZIP) {
                throw new IllegalArgumentException(zip + " is larger than any boat (" + BoatZip.LARGEST_ZIP / (1 << 20)
                        + " MiB); nothing was taken from it");
            }
            return Files.readAllBytes(zip);
        } catch (NoSuchFileException e) {
            throw new IllegalArgumentException(zip + " is not there; check the name and the folder", e);
        }
    }
}
