package tintwright.logbook;

import java.util.List;
import java.util.Optional;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;

/**
 * One colour for several readings of one thing: their plain mean, for lists and for finding what is near. The
 * readings themselves stay what counts.
 *
 * @param lab  under daylight (D65, 10 degrees) where the readings allow it, else under the light of the first
 * @param film whether what was read was wet or cured
 */
public record MeanColour(Lab lab, FilmState film) {

    /** @return empty for no readings; cured readings win over wet ones, and lights are never mixed */
    public static Optional<MeanColour> of(List<Reading> readings) {
        boolean cured = readings.stream().anyMatch(reading -> reading.film() == FilmState.CURED);
        FilmState film = cured ? FilmState.CURED : FilmState.WET;
        List<Reading> same =
                readings.stream().filter(reading -> reading.film() == film).toList();
        Optional<MeanColour> day = mean(same, Viewing.D65_10, film);
        if (day.isPresent()) {
            return day;
        }
        return same.stream()
                .filter(ColourReading.class::isInstance)
                .map(ColourReading.class::cast)
                .findFirst()
                .flatMap(first -> mean(same, first.lab().viewing(), film));
    }

    private static Optional<MeanColour> mean(List<Reading> readings, Viewing viewing, FilmState film) {
        List<Lab> labs = readings.stream()
                .flatMap(reading -> reading.colour(viewing).stream())
                .toList();
        if (labs.isEmpty()) {
            return Optional.empty();
        }
        double lightness = labs.stream().mapToDouble(Lab::lightness).average().orElseThrow();
        double a = labs.stream().mapToDouble(Lab::a).average().orElseThrow();
        double b = labs.stream().mapToDouble(Lab::b).average().orElseThrow();
        return Optional.of(new MeanColour(new Lab(lightness, a, b, viewing), film));
    }
}
