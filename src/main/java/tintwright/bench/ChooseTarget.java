package tintwright.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.files.Demo;
import tintwright.files.FileProblem;
import tintwright.files.LabRange;
import tintwright.files.TargetFile;
import tintwright.files.TextFile;
import tintwright.files.instrument.InstrumentFile;
import tintwright.match.Aim;
import tintwright.reading.ColourReading;
import tintwright.reading.Conditions;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.NamedReading;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;

/** What a person points at as the target when no place is in hand: a colour typed in, or a file. */
public final class ChooseTarget {
    private ChooseTarget() {}

    /**
     * The target of a colour that was typed in.
     *
     * @param sigma standard deviation of each axis, 0 or more
     * @throws IllegalArgumentException for L* outside 0 to 110, or a* or b* outside -130 to 130
     */
    public static Aim typed(Lab colour, double sigma, Geometry geometry) {
        LabRange.check(colour.lightness(), colour.a(), colour.b());
        Reading typed = new ColourReading(colour, Covariance.same(sigma), geometry, FilmState.CURED, Optional.empty());
        return Aim.of(new PlaceReadings("", "the colour given", List.of(typed), ""));
    }

    /**
     * A place of the demo boat, by its name or a part of it that only one place has.
     *
     * @throws IllegalArgumentException when there is no such place
     */
    public static PlaceReadings onDemoBoat(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        List<PlaceReadings> places = Demo.places();
        List<PlaceReadings> fit = places.stream()
                .filter(place -> !wanted.isEmpty() && place.place().contains(wanted))
                .toList();
        if (fit.size() != 1) {
            throw new IllegalArgumentException("there is no place \"" + name + "\" on the demo boat; its places are "
                    + String.join(
                            ", ", places.stream().map(PlaceReadings::place).toList()));
        }
        return fit.get(0);
    }

    /**
     * The target in a file: one of our own, or what an instrument wrote. Samples of one name are repeats of one
     * place.
     *
     * @param unsaid what an instrument's file does not say
     * @param sample name of the sample wanted; may be empty when all samples carry one name
     * @throws FileProblem when the file cannot be used, or holds several samples and none was named
     */
    public static Aim inFile(Path file, Conditions unsaid, Optional<String> sample) throws FileProblem {
        if (TextFile.read(file).stripLeading().startsWith("{")) {
            return Aim.of(TargetFile.read(file));
        }
        List<NamedReading> all = InstrumentFile.read(file, unsaid);
        List<String> names = all.stream().map(NamedReading::name).distinct().toList();
        if (sample.isEmpty() && names.size() > 1) {
            throw FileProblem.unusable(
                    file + " holds the samples " + String.join(", ", names) + "; say which one is the target");
        }
        String wanted = sample.orElse(names.get(0));
        List<Reading> readings = all.stream()
                .filter(reading -> reading.name().equals(wanted))
                .map(NamedReading::reading)
                .toList();
        if (readings.isEmpty()) {
            throw FileProblem.unusable(
                    file + " holds no sample \"" + wanted + "\"; its samples are " + String.join(", ", names));
        }
        return Aim.of(
                new PlaceReadings("", wanted.isBlank() ? file.getFileName().toString() : wanted, readings, ""));
    }
}
