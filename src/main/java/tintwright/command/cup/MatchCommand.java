package tintwright.command.cup;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import tintwright.bench.ChooseTarget;
import tintwright.bench.MatchBench;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.command.pieces.Figures;
import tintwright.command.pieces.MatchWords;
import tintwright.command.pieces.SaidBeside;
import tintwright.files.Demo;
import tintwright.files.FileProblem;
import tintwright.files.ShelfFile;
import tintwright.match.Aim;
import tintwright.match.Wish;
import tintwright.shelf.Shelf;

/** What to weigh to hit a colour. */
@CommandLine.Command(
        name = "match",
        sortOptions = false,
        description = "Says what to weigh to hit a colour, how close it comes and how sure that is.",
        footer = {
            "",
            "Examples:",
            "  tintwright match --lab 62.1,-3.4,11.0 --light D65 --observer 10 --grams 150",
            "  tintwright match --target swatches/tarrowmere/port-bow.json --shelf swatches/shelf.json --scale 0.1"
        })
public final class MatchCommand extends Command {
    @Option(
            names = "--lab",
            paramLabel = "L,A,B",
            description = "The target as L*, a*, b*; needs --light and"
                    + " --observer; the gloss counts as out when --gloss is not said.")
    private String lab;

    @CommandLine.Mixin
    private SaidBeside said;

    @Option(
            names = "--target",
            paramLabel = "FILE",
            description = "The target in a file: our own JSON, or CSV," + " CGATS or CxF3 from an instrument.")
    private Path target;

    @Option(names = "--sample", paramLabel = "NAME", description = "Which sample of an instrument's file.")
    private String sample;

    @Option(
            names = "--place",
            paramLabel = "NAME",
            description = "A place on the demo boat: \"port bow\" or \"stern" + " quarter\".")
    private String place;

    @Option(names = "--shelf", paramLabel = "FILE", description = "Your shelf; the demo shelf when not said.")
    private Path shelf;

    @Option(names = "--grams", paramLabel = "G", description = "How much of the mix is wanted; 100 when not said.")
    private double grams = 100;

    @Option(names = "--scale", paramLabel = "G", description = "Smallest step of the scale; 0.01 when not said.")
    private double scale = 0.01;

    @Option(names = "--without", paramLabel = "TINT", description = "Id of a tint not to use; may be given again.")
    private List<String> without = List.of();

    @Option(names = "--base", paramLabel = "ID", description = "Which base; the first on the shelf when not said.")
    private String base;

    @Option(names = "--leftover", paramLabel = "ID", description = "Start from this leftover.")
    private String leftover;

    @Override
    protected Answer answer() throws FileProblem {
        Shelf stands = shelf == null ? Demo.shelf() : ShelfFile.read(shelf);
        MatchBench bench = MatchBench.of(stands);
        Aim aim = aim().through(bench.knowledge());
        Set<String> left = new LinkedHashSet<>(without);
        Wish wish =
                new Wish(aim.target(), grams, scale, left, Optional.ofNullable(base), Optional.ofNullable(leftover));
        return new MatchWords(bench, aim, wish, bench.match(wish)).answer();
    }

    private Aim aim() throws FileProblem {
        long ways = java.util.stream.Stream.of(lab, target, place)
                .filter(java.util.Objects::nonNull)
                .count();
        if (ways != 1) {
            throw new IllegalArgumentException(
                    ways == 0
                            ? "say what to match: --lab L,A,B with --light and --observer, or --target FILE"
                            : "give only one of --lab, --target and --place");
        }
        if (place != null) {
            return Aim.of(ChooseTarget.onDemoBoat(place));
        }
        if (target != null) {
            return ChooseTarget.inFile(target, said.conditions(), Optional.ofNullable(sample));
        }
        double[] numbers = Figures.lab("--lab", lab);
        Viewing viewing = said.viewing()
                .orElseThrow(
                        () -> new IllegalArgumentException(
                                "say under which light and for which observer --lab was read, such as --light D65 --observer 10"));
        return ChooseTarget.typed(
                new Lab(numbers[0], numbers[1], numbers[2], viewing),
                said.sigma(),
                said.geometry().orElse(Geometry.SPECULAR_EXCLUDED));
    }
}
