package tintwright.command.cup;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.command.pieces.Figures;
import tintwright.command.pieces.SaidBeside;
import tintwright.files.FileProblem;
import tintwright.files.JsonPlace;
import tintwright.files.LabRange;
import tintwright.files.ReadingShape;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;

/** A reading of a chip as it is handed to a command: typed in, or in a file of its own. */
public final class TypedReading {
    /** What all of a photo with a card may be off by on each axis; common practice, no source. */
    private static final double USUAL_PHOTO_BIAS = 1.5;

    @Option(
            names = "--lab",
            paramLabel = "L,A,B",
            description = "The chip as L*, a*, b*; needs --light and"
                    + " --observer; the gloss counts as the hull's when --gloss is not said.")
    private String lab;

    @CommandLine.Mixin
    private SaidBeside said;

    @Option(names = "--reading", paramLabel = "FILE", description = "The chip in a file: one reading as JSON.")
    private Path file;

    @Option(names = "--wet", description = "The chip had not cured.")
    private boolean wet;

    @Option(names = "--photo", paramLabel = "NAME", description = "The photo that --lab was read from.")
    private String photo;

    @Option(
            names = "--hull",
            paramLabel = "L,A,B",
            description = "The hull as it stands in the same photo; without --photo, the hull as the same meter read it"
                    + " once more.")
    private String hull;

    boolean isGiven() {
        return lab != null || file != null;
    }

    Reading reading(Geometry usual) throws FileProblem {
        if ((lab == null) == (file == null)) {
            throw new IllegalArgumentException(
                    "say what was read: --lab L,A,B with --light and --observer, or" + " --reading FILE");
        }
        return file != null
                ? ReadingShape.from(JsonPlace.read(file))
                : colour("--lab", lab, usual, wet ? FilmState.WET : FilmState.CURED);
    }

    Optional<ColourReading> hull(Geometry usual) {
        if (hull == null) {
            return Optional.empty();
        }
        return Optional.of(colour("--hull", hull, usual, FilmState.CURED));
    }

    private ColourReading colour(String option, String typed, Geometry usual, FilmState film) {
        Viewing viewing = said.viewing()
                .orElseThrow(() -> new IllegalArgumentException("say under which light and for which observer " + option
                        + " was read, such as --light D65 --observer 10"));
        double[] axes = Figures.lab(option, typed);
        LabRange.check(axes[0], axes[1], axes[2]);
        Optional<ColourReading.PhotoBias> shared = photo == null
                ? Optional.empty()
                : Optional.of(new ColourReading.PhotoBias(photo, Covariance.same(USUAL_PHOTO_BIAS)));
        return new ColourReading(
                new Lab(axes[0], axes[1], axes[2], viewing),
                Covariance.same(said.sigma()),
                said.geometry().orElse(usual),
                film,
                shared);
    }
}
