package tintwright.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.files.FileProblem;
import tintwright.files.InstrumentFile;
import tintwright.files.LabRange;
import tintwright.files.TargetFile;
import tintwright.files.TextFile;
import tintwright.match.Target;
import tintwright.reading.ColourReading;
import tintwright.reading.Conditions;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.NamedReading;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.reading.Repeats;

/**
 * What to hit, and what had to be said about the readings it came from.
 *
 * @param target  the colour and how sure it is
 * @param remarks sentences for the person, such as a reading that was left out; mostly none
 */
public record Aim(Target target, List<String> remarks) {
    public Aim {
        remarks = List.copyOf(remarks);
    }

    /**
     * The target of a place: its readings taken together.
     *
     * @throws IllegalArgumentException when they cannot be combined, or were read on a film that had not cured
     */
    public static Aim of(PlaceReadings place) {
        for (Reading reading : place.readings()) {
            if (reading.film() == FilmState.WET) {
                throw new IllegalArgumentException("a reading of \"" + place.place() + "\" is of a wet film, but a"
                        + " hull has cured; read it dry and say \"cured\"");
            }
        }
        Viewing viewing = place.readings().stream()
                .filter(ColourReading.class::isInstance)
                .map(reading -> ((ColourReading) reading).lab().viewing())
                .findFirst()
                .orElse(Viewing.D65_10);
        Repeats.Combined all = Repeats.combine(place.readings(), viewing);
        List<String> remarks = new ArrayList<>();
        for (int index : all.leftOut()) {
            remarks.add("Reading " + (index + 1) + " of " + place.readings().size()
                    + " lies far from the others and was left out; read that spot again.");
        }
        String name = place.boat().isBlank() ? place.place() : place.boat() + ", " + place.place();
        return new Aim(new Target(name, all.mean(), all.covariance(), all.geometry(), all.spectrum()), remarks);
    }

    /**
     * The target of a colour that was typed in.
     *
     * @param sigma standard deviation of each axis, 0 or more
     * @throws IllegalArgumentException for L* outside 0 to 110, or a* or b* outside -130 to 130
     */
    public static Aim of(Lab colour, double sigma, Geometry geometry) {
        LabRange.check(colour.lightness(), colour.a(), colour.b());
        return new Aim(
                new Target("the colour given", colour, Covariance.same(sigma), geometry, Optional.empty()), List.of());
    }

    /**
     * The target in a file: one of our own, or what an instrument wrote. Samples of one name are repeats of one
     * place.
     *
     * @param unsaid what an instrument's file does not say
     * @param sample name of the sample wanted; may be empty when all samples carry one name
     * @throws FileProblem when the file cannot be used, or holds several samples and none was named
     */
    public static Aim ofFile(Path file, Conditions unsaid, Optional<String> sample) throws FileProblem {
        if (TextFile.read(file).stripLeading().startsWith("{")) {
            return of(TargetFile.read(file));
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
        return of(new PlaceReadings("", wanted.isBlank() ? file.getFileName().toString() : wanted, readings, ""));
    }
}
