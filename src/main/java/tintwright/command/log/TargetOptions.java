package tintwright.command.log;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import tintwright.bench.ChooseTarget;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.command.pieces.Figures;
import tintwright.files.FileProblem;
import tintwright.files.LabRange;
import tintwright.reading.Conditions;
import tintwright.reading.FilmState;
import tintwright.reading.SpectralReading;

/** A colour as it is handed to the log: typed in, or in a file. */
public final class TargetOptions {
    @Option(
            names = "--lab",
            paramLabel = "L,A,B",
            description = "The colour as L*, a*, b*; needs --light and" + " --observer.")
    private String lab;

    @Option(names = "--light", paramLabel = "NAME", description = "Light it was read under, such as D65.")
    private String light;

    @Option(names = "--observer", paramLabel = "2|10", description = "Observer, degrees.")
    private Integer observer;

    @Option(
            names = "--target",
            paramLabel = "FILE",
            description = "The colour in a file: our own JSON, or from an" + " instrument.")
    private Path target;

    /** @return the colour, under daylight where the readings allow it */
    Lab colour() throws FileProblem {
        if ((lab == null) == (target == null)) {
            throw new IllegalArgumentException(
                    "say which colour: --lab L,A,B with --light and --observer, or" + " --target FILE");
        }
        if (target != null) {
            Conditions unsaid = new Conditions(
                    Optional.empty(), Optional.empty(), FilmState.CURED, SpectralReading.USUAL_NOISE, 0.3);
            return ChooseTarget.inFile(target, unsaid, Optional.empty())
                    .target()
                    .colour();
        }
        if (light == null || observer == null) {
            throw new IllegalArgumentException("say under which light and for which observer --lab was read, such as"
                    + " --light D65 --observer 10");
        }
        double[] axes = Figures.lab("--lab", lab);
        LabRange.check(axes[0], axes[1], axes[2]);
        return new Lab(axes[0], axes[1], axes[2], Viewing.of(light, observer));
    }
}
