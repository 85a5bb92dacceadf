package tintwright.command.shelf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import tintwright.bench.LearnBench;
import tintwright.bench.ShelfBench;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.command.pieces.Doubts;
import tintwright.command.pieces.Figures;
import tintwright.command.pieces.SaidBeside;
import tintwright.files.Demo;
import tintwright.files.Fields;
import tintwright.files.FileProblem;
import tintwright.files.SharedFile;
import tintwright.files.ShelfFile;
import tintwright.files.instrument.ChipsFile;
import tintwright.shelf.Chip;
import tintwright.shelf.knowledge.Doubt;

/** New chips onto the shelf. */
@CommandLine.Command(
        name = "learn",
        sortOptions = false,
        description = "Puts chips on the shelf and shows what they changed.",
        footer = {
            "",
            "Examples:",
            "  tintwright learn --shelf shelf.json --chips new-chips.csv --light D65 --observer 10 --gloss out",
            "  tintwright learn --chips new-chips.json --look"
        })
public final class LearnCommand extends Command {
    @Option(names = "--shelf", paramLabel = "FILE", description = "Your shelf; the demo shelf when not said.")
    private Path file;

    @Option(names = "--chips", paramLabel = "FILE", required = true, description = "The chips, JSON or CSV.")
    private Path chips;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write the shelf here, into a new file, instead of over --shelf.")
    private Path out;

    @Option(names = "--look", description = "Only show what would change; write nothing.")
    private boolean look;

    @CommandLine.Mixin
    private SaidBeside said;

    @Override
    protected Answer answer() throws FileProblem {
        if (file == null && out == null && !look) {
            throw new IllegalArgumentException("the demo shelf cannot be written: name yours with --shelf, another"
                    + " with --out, or use --look");
        }
        List<Chip> added = ChipsFile.read(chips, said.conditions());
        if (!look && out == null) {
            return ShelfFile.at(file).change(shelf -> {
                LearnBench.Learned learned = LearnBench.learn(shelf, added);
                return new SharedFile.Changed<>(learned.after().shelf(), answer(learned, file));
            });
        }
        LearnBench.Learned learned = LearnBench.learn(file == null ? Demo.shelf() : ShelfFile.read(file), added);
        Answer answer = answer(learned, out);
        if (!look) {
            ShelfFile.at(out).create(learned.after().shelf());
        }
        return answer;
    }

    private Answer answer(LearnBench.Learned learned, Path written) {
        return new Answer(lines(learned, written), fields(learned, written));
    }

    private List<String> lines(LearnBench.Learned learned, Path written) {
        List<String> lines = new ArrayList<>();
        int count = learned.added().size();
        lines.add(count
                + (count == 1 ? " chip" : " chips")
                + (look
                        ? " looked at; nothing was written."
                        : " learned; " + written + " now holds "
                                + learned.after().shelf().chips().size() + "."));
        for (LearnBench.Change change : learned.changes()) {
            lines.add("  " + change.name() + ": " + Figures.fixed(change.strength(), 2)
                    + " times as strong as thought; " + ShelfBench.wordsFor(change.after()) + " now (within "
                    + percent(change.after()) + ", before " + percent(change.before()) + ")");
        }
        for (Doubt doubt : learned.doubts()) {
            lines.add("Look again: " + doubt.words());
        }
        return lines;
    }

    private static String percent(double deviation) {
        return Figures.fixed(100 * Math.expm1(deviation), 0) + " %";
    }

    private Fields fields(LearnBench.Learned learned, Path written) {
        return Fields.none()
                .each("added", learned.added(), Chip::id)
                .with("written", look ? null : written)
                .with("chips", learned.after().shelf().chips().size())
                .each(
                        "changes",
                        learned.changes(),
                        change -> Fields.of("id", change.id())
                                .with("name", change.name())
                                .with("strengthFactor", change.strength())
                                .with("deviationBefore", change.before())
                                .with("deviationAfter", change.after()))
                .each("doubts", learned.doubts(), Doubts::fields);
    }
}
