package tintwright.command.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tintwright.bench.log.MixAgain;
import tintwright.bench.log.ShopLog;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.command.pieces.Figures;
import tintwright.command.pieces.MatchWords;
import tintwright.files.Demo;
import tintwright.files.Fields;
import tintwright.files.FileProblem;
import tintwright.files.ShelfFile;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.logbook.disk.LogFailure;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;
import tintwright.units.Grams;

/** {@code again}: a recorded cup once more, with today's shelf. */
@CommandLine.Command(
        name = "again",
        sortOptions = false,
        description = {
            "Mixes a cup of the log again: the same parts while the shelf is the same, else matched anew to",
            "the recorded colour; or with --hull to the hull as it was last read."
        },
        footer = {
            "",
            "Examples:",
            "  tintwright again --demo --boat Tarrowmere --grams 60",
            "  tintwright again --demo --boat Tarrowmere --grams 60 --hull --scale 0.1"
        })
public final class AgainCommand extends Command {
    @Option(names = "--boat", paramLabel = "BOAT", required = true, description = "Whose cup.")
    private String boat;

    @Option(names = "--cup", paramLabel = "NAME", description = "Which cup; the last when not said.")
    private String cup;

    @Option(names = "--grams", paramLabel = "G", description = "How much; 100 when not said.")
    private double grams = 100;

    @Option(names = "--scale", paramLabel = "G", description = "Smallest step of the scale; 0.01 when not said.")
    private double scale = 0.01;

    @Option(names = "--shelf", paramLabel = "FILE", description = "Your shelf; the demo shelf when not said.")
    private Path shelf;

    @Option(names = "--hull", description = "Follow the hull as it was last read, not the cup.")
    private boolean hull;

    @Mixin
    private LogOptions options;

    @Override
    protected Answer answer() throws LogFailure, FileProblem {
        Shelf stands = shelf == null ? Demo.shelf() : ShelfFile.read(shelf);
        try (ShopLog log = options.open()) {
            Noted<Page.Cup> wanted = log.cup(log.boat(boat), LogOptions.text(cup));
            MixAgain again = new MixAgain(log, stands);
            MixAgain.Answer answer = hull ? again.hullToday(wanted, grams, scale) : again.cup(wanted, grams, scale);
            List<String> lines = new ArrayList<>();
            Fields fields = Fields.none();
            lines.add("The cup \"" + wanted.page().name() + "\" of "
                    + wanted.page().day() + ", " + Figures.fixed(grams, 0) + " g again.");
            lines.addAll(answer.remarks());
            answer.moved().ifPresent(moved -> lines.add("The hull: " + lower(LogWords.moved(moved))));
            lines.add("");
            fields.put("cup", wanted.page().name());
            fields.with("day", wanted.page().day());
            fields.put("remarks", answer.remarks());
            fields.orNull("moved", answer.moved().map(LogWords::fields));
            if (answer instanceof MixAgain.SameParts same) {
                weigh(same, lines);
                fields.put("sameParts", true);
                fields.put("parts", same.parts().grams());
            } else if (answer instanceof MixAgain.Matched matched) {
                Answer match = new MatchWords(matched.bench(), matched.aim(), matched.wish(), matched.match()).answer();
                lines.addAll(match.lines());
                fields.put("sameParts", false);
                fields.put("match", match.fields());
            }
            return LogOptions.answer(log, lines, fields);
        }
    }

    private void weigh(MixAgain.SameParts same, List<String> lines) {
        lines.add("Everything in it stands on the shelf under the same name. Weigh:");
        int decimals = Grams.decimals(scale);
        Parts parts = same.parts();
        int number = 1;
        for (Map.Entry<String, Double> part : parts.grams().entrySet()) {
            String mass = Figures.fixed(part.getValue(), decimals);
            lines.add("  " + number++ + ".  " + " ".repeat(Math.max(0, 9 - mass.length())) + mass + " g  "
                    + same.cup().page().nameOf(part.getKey()));
        }
        lines.add("Hold back a third of the base until a chip is read: what is in cannot be taken out again.");
    }

    private static String lower(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }
}
