package tintwright.command.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tintwright.bench.log.GiveOut;
import tintwright.bench.log.ShopLog;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.files.Fields;
import tintwright.files.FileProblem;
import tintwright.logbook.disk.LogFailure;

/** {@code export}: a label, a recipe card, everything as a table, or one boat to give away. */
@CommandLine.Command(
        name = "export",
        sortOptions = false,
        description = {
            "Hands out of the log: everything as a table, one boat as a zip for another shop, a label or a",
            "recipe card of a cup to print."
        },
        footer = {
            "",
            "Examples:",
            "  tintwright export --demo --csv log.csv",
            "  tintwright export --demo --boat Tarrowmere --zip tarrowmere.zip",
            "  tintwright export --demo --boat Tarrowmere --label label.pdf --card card.pdf"
        })
public final class ExportCommand extends Command {
    @Option(names = "--csv", paramLabel = "FILE", description = "Everything as a table for a spreadsheet.")
    private Path csv;

    @Option(names = "--boat", paramLabel = "BOAT", description = "Which boat.")
    private String boat;

    @Option(
            names = "--zip",
            paramLabel = "FILE",
            description = "With --boat: the boat, every word of it and its" + " photos.")
    private Path zip;

    @Option(
            names = "--keep-photo-data",
            description = "With --zip: photos keep where, by whom and with which camera they were taken.")
    private boolean keepPhotoData;

    @Option(names = "--cup", paramLabel = "NAME", description = "Which cup of the boat; the last when not said.")
    private String cup;

    @Option(
            names = "--label",
            paramLabel = "FILE",
            description = "With --boat: the label of the cup as PDF, 90 by 55" + " mm.")
    private Path label;

    @Option(names = "--card", paramLabel = "FILE", description = "With --boat: its recipe card as PDF, A6.")
    private Path card;

    @Option(names = "--html", paramLabel = "FILE", description = "With --boat: its recipe card as a page for a phone.")
    private Path html;

    @Mixin
    private LogOptions options;

    @Override
    protected Answer answer() throws LogFailure, FileProblem {
        boolean ofABoat = zip != null || label != null || card != null || html != null;
        if (csv == null && !ofABoat) {
            throw new IllegalArgumentException("say what to hand out: --csv FILE, or with --boat NAME one of --zip,"
                    + " --label, --card and --html");
        }
        if (ofABoat && boat == null) {
            throw new IllegalArgumentException("say which boat with --boat NAME");
        }
        try (ShopLog log = options.open()) {
            GiveOut out = new GiveOut(log);
            List<Path> written = new ArrayList<>();
            List<String> said = new ArrayList<>();
            if (csv != null) {
                out.csv(csv);
                written.add(csv);
            }
            if (zip != null) {
                said.addAll(out.zip(log.boat(boat), zip, keepPhotoData));
                said.add(
                        keepPhotoData
                                ? "Its photos tell where, by whom and with which camera they were taken, if they ever"
                                        + " did."
                                : "Its photos do not tell where, by whom and with which camera they were taken"
                                        + " (--keep-photo-data would).");
                written.add(zip);
            }
            if (label != null) {
                out.label(log.cup(log.boat(boat), LogOptions.text(cup)), label);
                written.add(label);
            }
            if (card != null) {
                out.card(log.cup(log.boat(boat), LogOptions.text(cup)), card);
                written.add(card);
            }
            if (html != null) {
                out.cardHtml(log.cup(log.boat(boat), LogOptions.text(cup)), html);
                written.add(html);
            }
            List<String> lines = new ArrayList<>(
                    written.stream().map(file -> "Wrote " + file + ".").toList());
            lines.addAll(said);
            return LogOptions.answer(log, lines, Fields.none().each("written", written, Path::toString));
        }
    }
}
