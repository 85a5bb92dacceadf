package tintwright.window.holes;

import java.nio.file.Path;
import java.util.Locale;
import tintwright.bench.PlanFill;
import tintwright.units.UnitSystem;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.QueuedWork;
import tintwright.window.frame.ShellModel;
import tintwright.window.pieces.FileNames;

/** The job sheet of a plan, handed on: to the clipboard, to print, to a phone. */
record JobSheet(PlanFill made, String job, ShellModel shell, QueuedWork writing) {
    /** @return a name for its file: boat, place and day */
    String name() {
        return FileNames.safe(job + " " + made.day() + " fill");
    }

    /** Puts it on the clipboard as plain lines. */
    void copy(UnitSystem units) {
        shell.copy(String.join(System.lineSeparator(), made.lines(units)));
    }

    /** Writes it: PDF when the name ends so, else one HTML page. */
    void write(Path file, UnitSystem units) {
        writing.run(
                () -> {
                    if (file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
                        made.writePdf(
                                file,
                                units == UnitSystem.US ? PlanFill.PaperSize.LETTER : PlanFill.PaperSize.A4,
                                units);
                    } else {
                        made.writeHtml(file, units);
                    }
                    return file;
                },
                written -> shell.say("The job sheet is in " + written + "."),
                failure -> shell.warn(FailureWords.of(failure)));
    }
}
