package tintwright.command.cup;

import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.files.FileProblem;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeWords;
import tintwright.reading.FilmState;

/** {@code cup eye}: a dab was held against the hull and looked at. */
@CommandLine.Command(
        name = "eye",
        sortOptions = false,
        description = "Writes down what a dab of the cup looks like beside the hull, in daylight without direct sun,"
                + " and learns from it.",
        footer = {
            "",
            "Examples:",
            "  tintwright cup eye --cup bow.json --depth \"a little light\" --hue \"much red\"",
            "  tintwright cup eye --cup bow.json --depth same --hue none",
            "  tintwright cup eye --cup bow.json --trial --depth \"a little dark\" --hue \"little blue\"",
            "  tintwright cup eye --cup bow.json --cannot-tell"
        })
public final class CupEye extends Command {
    @Mixin
    private CupOptions options;

    @Option(
            names = "--depth",
            paramLabel = "WORDS",
            description = "The dab beside the hull: much or a little too dark, the same, a little or much too light.")
    private String depth;

    @Option(
            names = "--hue",
            paramLabel = "WORDS",
            description = "What hue it has that the hull has not: too red, yellow, green or blue, a little or much of"
                    + " it; or none.")
    private String hue;

    @Option(names = "--cannot-tell", description = "It could not be told.")
    private boolean cannotTell;

    @Option(
            names = "--trial",
            arity = "0..1",
            paramLabel = "NUMBER",
            fallbackValue = "-1",
            description = "It was a trial dab that the plan asked for, made as it says; of several in a row, the NUMBER"
                    + " of the one that came nearest, 1 for the first, 0 for the cup's own dab beside them, and no"
                    + " number when only the first was made. Without this it was a dab of the cup alone.")
    private Integer trial;

    @Option(names = "--wet", description = "The dab had not cured.")
    private boolean wet;

    @Override
    protected Answer answer() throws FileProblem {
        EyeVerdict verdict = verdict();
        return options.change(bench -> new CupAnswer(bench.seen(options.at(), verdict, nearest()))
                .say("Written: " + verdict.words() + ".")
                .state()
                .eye()
                .plan());
    }

    private OptionalInt nearest() {
        return trial == null ? OptionalInt.empty() : OptionalInt.of(trial);
    }

    private EyeVerdict verdict() {
        FilmState film = wet ? FilmState.WET : FilmState.CURED;
        if (cannotTell == (depth != null || hue != null)) {
            throw new IllegalArgumentException(
                    "say what the dab looks like beside the hull: --depth, --hue or both;" + " or --cannot-tell alone");
        }
        Optional<EyeWords.SaidHue> said = Optional.ofNullable(hue).map(EyeWords::hue);
        return new EyeVerdict(
                Optional.ofNullable(depth).map(EyeWords::depth),
                said.map(EyeWords.SaidHue::hue),
                said.map(EyeWords.SaidHue::amount).orElse(Amount.NOT_SAID),
                film);
    }
}
