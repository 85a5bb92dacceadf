package tintwright.command.pieces;

import java.util.ArrayList;
import java.util.Optional;
import picocli.CommandLine.Option;
import tintwright.colour.Geometry;
import tintwright.colour.Illuminant;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.Conditions;
import tintwright.reading.FilmState;
import tintwright.reading.SpectralReading;

/** What a person says about readings when the file does not: options of several commands. */
public final class SaidBeside {
    @Option(
            names = "--light",
            paramLabel = "NAME",
            completionCandidates = Lights.class,
            description = "Light the colour was read under: ${COMPLETION-CANDIDATES} or a daylight such as D5500K.")
    private String light;

    /** The names a light may have, for the help. */
    static final class Lights extends ArrayList<String> {
        Lights() {
            super(Illuminant.names());
        }
    }

    @Option(names = "--observer", paramLabel = "2|10", description = "Observer of the colour, degrees.")
    private Integer observer;

    @Option(
            names = "--gloss",
            paramLabel = "in|out",
            description = "Whether the gloss is in the reading: in (di:8)" + " or out (de:8, 45:0, photos).")
    private String gloss;

    @Option(
            names = "--sigma",
            paramLabel = "S",
            description = "How far L*, a*, b* may each be off, one standard" + " deviation; 0.3 when not said.")
    private Double sigma;

    /** @return light and observer; empty when neither was said */
    public Optional<Viewing> viewing() {
        if (light == null && observer == null) {
            return Optional.empty();
        }
        if (light == null || observer == null) {
            throw new IllegalArgumentException(
                    "--light and --observer belong together, such as --light D65" + " --observer 10");
        }
        return Optional.of(Viewing.of(light, observer));
    }

    /** @return empty when it was not said */
    public Optional<Geometry> geometry() {
        if (gloss == null) {
            return Optional.empty();
        }
        return Optional.of(
                switch (gloss) {
                    case "in" -> Geometry.SPECULAR_INCLUDED;
                    case "out" -> Geometry.SPECULAR_EXCLUDED;
                    default -> throw new IllegalArgumentException("--gloss must be in or out, was \"" + gloss + "\"");
                });
    }

    public double sigma() {
        double value = sigma == null ? ColourReading.USUAL_NOISE : sigma;
        if (!(value >= 0 && value <= 20)) {
            throw new IllegalArgumentException("--sigma must be 0 to 20, was " + value);
        }
        return value;
    }

    public Conditions conditions() {
        return new Conditions(viewing(), geometry(), FilmState.CURED, SpectralReading.USUAL_NOISE, sigma());
    }
}
