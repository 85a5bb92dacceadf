package tintwright.command;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import tintwright.bench.Aim;
import tintwright.bench.MatchBench;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.files.Demo;
import tintwright.files.FileProblem;
import tintwright.files.ShelfFile;
import tintwright.match.Wish;
import tintwright.reading.ColourReading;
import tintwright.reading.Conditions;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.reading.SpectralReading;
import tintwright.shelf.Shelf;

/** What to weigh to hit a colour. */
@CommandLine.Command(name = "match", sortOptions = false,
        description = "Says what to weigh to hit a colour, how close it comes and how sure that is.",
        footer = {"", "Examples:",
            "  tintwright match --lab 62.1,-3.4,11.0 --light D65 --observer 10 --grams 150",
            "  tintwright match --target swatches/aldernese/port-bow.json --shelf swatches/shelf.json --scale 0.1"})
final class MatchCommand extends Command {
    @Option(names = "--lab", paramLabel = "L,A,B", description = "The target as L*, a*, b*; needs --light and"
            + " --observer.")
    private String lab;

    @Option(names = "--light", paramLabel = "NAME", description = "Light the target was read under: A, D50, D65,"
            + " FL2, FL11, FL12, LED-B1, LED-B3, LED-B5.")
    private String light;

    @Option(names = "--observer", paramLabel = "2|10", description = "Observer of the target, degrees.")
    private Integer observer;

    @Option(names = "--gloss", paramLabel = "in|out", description = "Whether the gloss is in the reading: in (di:8)"
            + " or out (de:8, 45:0, photos). For --lab: out when not said.")
    private String gloss;

    @Option(names = "--sigma", paramLabel = "S", description = "How far L*, a*, b* may each be off, one standard"
            + " deviation; 0.3 when not said.")
    private Double sigma;

    @Option(names = "--target", paramLabel = "FILE", description = "The target in a file: our own JSON, or CSV,"
            + " CGATS or CxF3 from an instrument.")
    private Path target;

    @Option(names = "--sample", paramLabel = "NAME", description = "Which sample of an instrument's file.")
    private String sample;

    @Option(names = "--place", paramLabel = "NAME", description = "A place on the demo boat: \"port bow\" or \"stern"
            + " quarter\".")
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
        Aim aim = aim();
        Set<String> left = new LinkedHashSet<>(without);
        Wish wish = new Wish(aim.target(), grams, scale, left, Optional.ofNullable(base),
                Optional.ofNullable(leftover));
        MatchBench bench = MatchBench.of(stands);
        return new MatchWords(bench, aim, wish, bench.match(wish)).answer();
    }

    private Aim aim() throws FileProblem {
        long ways = java.util.stream.Stream.of(lab, target, place).filter(java.util.Objects::nonNull).count();
        if (ways != 1) {
            throw new IllegalArgumentException(ways == 0
                    ? "say what to match: --lab L,A,B with --light and --observer, or --target FILE"
                    : "give only one of --lab, --target and --place");
        }
        if (place != null) {
            return demoPlace();
        }
        if (target != null) {
            Conditions unsaid = new Conditions(viewing(), geometry(), FilmState.CURED, SpectralReading.USUAL_NOISE,
                    sigma());
            return Aim.ofFile(target, unsaid, Optional.ofNullable(sample));
        }
        double[] numbers = numbers();
        Viewing viewing = viewing().orElseThrow(() -> new IllegalArgumentException(
                "say under which light and for which observer --lab was read, such as --light D65 --observer 10"));
        return Aim.of(new Lab(numbers[0], numbers[1], numbers[2], viewing), sigma(),
                geometry().orElse(Geometry.SPECULAR_EXCLUDED));
    }

    private Aim demoPlace() {
        for (PlaceReadings known : Demo.places()) {
            if (known.place().equalsIgnoreCase(place.strip())) {
                return Aim.of(known);
            }
        }
        throw new IllegalArgumentException("there is no place \"" + place + "\" on the demo boat; its places are "
                + String.join(", ", Demo.places().stream().map(PlaceReadings::place).toList()));
    }

    private double[] numbers() {
        String[] words = lab.split(",", -1);
        if (words.length != 3) {
            throw new IllegalArgumentException("--lab must be three numbers such as 62.1,-3.4,11.0, was \"" + lab
                    + "\"");
        }
        double[] numbers = new double[3];
        for (int i = 0; i < 3; i++) {
            try {
                numbers[i] = Figures.parse(words[i]);
            } catch (CommandLine.TypeConversionException e) {
                throw new IllegalArgumentException("--lab must be three numbers such as 62.1,-3.4,11.0, but "
                        + e.getMessage(), e);
            }
        }
        return numbers;
    }

    private Optional<Viewing> viewing() {
        if (light == null && observer == null) {
            return Optional.empty();
        }
        if (light == null || observer == null) {
            throw new IllegalArgumentException("--light and --observer belong together, such as --light D65"
                    + " --observer 10");
        }
        return Optional.of(Viewing.of(light, observer));
    }

    private Optional<Geometry> geometry() {
        if (gloss == null) {
            return Optional.empty();
        }
        return Optional.of(switch (gloss) {
            case "in" -> Geometry.SPECULAR_INCLUDED;
            case "out" -> Geometry.SPECULAR_EXCLUDED;
            default -> throw new IllegalArgumentException("--gloss must be in or out, was \"" + gloss + "\"");
        });
    }

    private double sigma() {
        double value = sigma == null ? ColourReading.USUAL_NOISE : sigma;
        if (!(value >= 0 && value <= 20)) {
            throw new IllegalArgumentException("--sigma must be 0 to 20, was " + value);
        }
        return value;
    }
}
