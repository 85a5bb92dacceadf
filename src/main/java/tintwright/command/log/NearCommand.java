package tintwright.command.log;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tintwright.bench.log.NearIt;
import tintwright.bench.log.ShopLog;
import tintwright.colour.Lab;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.command.pieces.Figures;
import tintwright.files.Fields;
import tintwright.files.FileProblem;
import tintwright.logbook.Page;
import tintwright.logbook.disk.LogFailure;

/** {@code near}: what was mixed before that comes nearest to a colour. */
@CommandLine.Command(
        name = "near",
        sortOptions = false,
        description = "Finds the cups, chips and leftovers of the whole log nearest to a colour: a place to start.",
        footer = {
            "",
            "Examples:",
            "  tintwright near --demo --lab 62.1,-3.4,11.0 --light D65 --observer 10",
            "  tintwright near --target swatches/tarrowmere/port-bow.json --count 5"
        })
public final class NearCommand extends Command {
    @Mixin
    private TargetOptions target;

    @Option(names = "--count", paramLabel = "N", description = "How many to show; 10 when not said.")
    private int count = 10;

    @Mixin
    private LogOptions options;

    @Override
    protected Answer answer() throws LogFailure, FileProblem {
        if (count < 1 || count > 1000) {
            throw new IllegalArgumentException("--count must be 1 to 1000, was " + count);
        }
        Lab wanted = target.colour();
        try (ShopLog log = options.open()) {
            NearIt near = NearIt.of(log, wanted, count);
            List<String> lines = new ArrayList<>();
            List<Object> found = new ArrayList<>();
            lines.add("Nearest to " + LogWords.show(wanted) + ":");
            for (NearIt.Start start : near.starts()) {
                String what = start.page().page() instanceof Page.LeftOver
                        ? "leftover "
                        : start.page().page() instanceof Page.ChipMade ? "chip " : "cup ";
                lines.add("  " + pad(Figures.fixed(start.deltaE(), 1)) + "  " + what + "\"" + start.name() + "\""
                        + start.boat().map(boat -> " of the " + boat).orElse("")
                        + (start.words().isEmpty() ? "" : ", " + start.words())
                        + start.verdict()
                                .map(verdict -> ", came out: " + verdict.words())
                                .orElse(""));
                lines.add("        "
                        + start.parts().entrySet().stream()
                                .map(part -> Figures.fixed(part.getValue(), 2) + " g " + part.getKey())
                                .collect(Collectors.joining(", ")));
                found.add(fields(start, what.strip()));
            }
            if (near.starts().isEmpty()) {
                lines.add("  The log holds no cup, chip or leftover read under this light.");
            }
            if (near.notComparable() > 0) {
                lines.add("Left out: " + near.notComparable() + " read under another light or observer, which cannot"
                        + " be compared.");
            }
            return LogOptions.answer(
                    log,
                    lines,
                    Fields.of("target", Fields.none().colour(wanted))
                            .with("found", found)
                            .with("notComparable", near.notComparable()));
        }
    }

    private static String pad(String text) {
        return " ".repeat(Math.max(0, 4 - text.length())) + text;
    }

    private static Fields fields(NearIt.Start start, String what) {
        return Fields.of("id", start.page().id())
                .with("what", what)
                .with("name", start.name())
                .orNull("boat", start.boat())
                .with("deltaE", start.deltaE())
                .with("words", start.words())
                .orNull("verdict", start.verdict().map(Page.Outcome::words))
                .with("parts", start.parts());
    }
}
