package tintwright.command.hull;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import tintwright.bench.PlanFill;
import tintwright.bench.SheetBench;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.files.Demo;
import tintwright.files.Fields;
import tintwright.files.FileProblem;
import tintwright.files.ShelfFile;
import tintwright.shelf.Shelf;

/** The sheet that lies on the hull while the photo is taken. */
@CommandLine.Command(
        name = "sheet",
        sortOptions = false,
        description = {
            "Writes the sheet that lies on the hull while the photo is taken, as PDF to print at full size.",
            "A photo with it in the picture needs no marks: read finds it by its corner codes."
        },
        footer = {"", "Example:", "  tintwright sheet --out sheet.pdf --paper a4"})
public final class SheetCommand extends Command {
    @Option(names = "--out", paramLabel = "FILE", required = true, description = "Write the PDF there.")
    private Path out;

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            defaultValue = "a4",
            description = "a4 or letter; a4 when not said.")
    private String paper;

    @Option(
            names = "--shelf",
            paramLabel = "FILE",
            description = "Your shelf, whose sign the sheet carries; the demo shelf when not said.")
    private Path shelfFile;

    @Override
    protected Answer answer() throws FileProblem {
        PlanFill.PaperSize size = PlanFill.PaperSize.named(paper);
        Shelf shelf = shelfFile == null ? Demo.shelf() : ShelfFile.read(shelfFile);
        SheetBench.writePdf(out, size, shelf);
        String sign = SheetBench.signOf(shelf);
        return new Answer(
                List.of(
                        "Written: " + out,
                        "Print it at full size (100 %, not \"fit to page\") on plain white paper and cut the window out.",
                        "Its sign is " + sign + ", the same on every sheet of " + shelf.name() + "."),
                Fields.of("written", out).with("paper", size).with("sign", sign));
    }
}
