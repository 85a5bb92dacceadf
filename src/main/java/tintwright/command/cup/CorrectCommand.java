package tintwright.command.cup;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tintwright.bench.CupBench;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.cup.Way;
import tintwright.files.FileProblem;

/** The honest ways on from a cup that was read. */
@CommandLine.Command(
        name = "correct",
        sortOptions = false,
        description = "Shows the ways on from a cup that was read: only additions, each with what it takes.",
        footer = {
            "",
            "Examples:",
            "  tintwright correct --cup bow.json",
            "  tintwright correct --cup bow.json --follow 1"
        })
public final class CorrectCommand extends Command {
    @Mixin
    private CupOptions options;

    @Option(names = "--follow", paramLabel = "N", description = "Write this way into the cup as done.")
    private Integer follow;

    @Override
    protected Answer answer() throws FileProblem {
        return follow == null
                ? new CupAnswer(options.open()).state().ways().answer()
                : options.change(bench -> new CupAnswer(followed(bench)).state().contents());
    }

    private CupBench followed(CupBench bench) {
        List<Way> ways = bench.ways();
        if (follow < 1 || follow > ways.size()) {
            throw new IllegalArgumentException(
                    "there are " + ways.size() + " ways; --follow must be 1 to " + ways.size() + ", was " + follow);
        }
        Way way = ways.get(follow - 1);
        CupBench after = bench.follow(way, options.at());
        if (after == bench) {
            throw new IllegalArgumentException("way " + follow
                    + (way instanceof Way.StopHere
                            ? " leaves the cup as it is; nothing was written"
                            : " needs a clean cup: start another for it; nothing was written"));
        }
        return after;
    }
}
