package tintwright.match;

import java.util.ArrayList;
import java.util.List;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.reading.Repeats;
import tintwright.shelf.knowledge.Knowledge;

/**
 * The one road from what was read at a place to what is to be hit: match, cup and both faces go it, so that they can
 * never aim at two colours.
 *
 * @param place    what was read
 * @param readings the same taken together, and which of them do not belong
 * @param target   the colour and how sure it is
 */
public record Aim(PlaceReadings place, Repeats.Combined readings, Target target) {
    /**
     * The target of a place: its readings taken together, judged under {@link #judgedUnder}.
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
        Repeats.Combined all = Repeats.combine(place.readings(), judgedUnder(place));
        String name = place.boat().isBlank() ? place.place() : place.boat() + ", " + place.place();
        return new Aim(place, all, new Target(name, all.mean(), all.covariance(), all.geometry(), all.spectrum()));
    }

    /**
     * The same target as a shelf sees it: where chips of the shelf stood in the hull's photo, what they taught of the
     * camera is taken out of the reading. A place keeps its readings as they came.
     */
    public Aim through(Knowledge knowledge) {
        List<Reading> seen = new ArrayList<>();
        for (Reading reading : place.readings()) {
            seen.add(reading instanceof ColourReading colour ? knowledge.throughChips(colour) : reading);
        }
        if (seen.equals(place.readings())) {
            return this;
        }
        Aim corrected = of(new PlaceReadings(place.boat(), place.place(), seen, place.note()));
        if (seen.size() > 1) {
            return new Aim(place, corrected.readings(), corrected.target());
        }
        ColourReading raw = (ColourReading) place.readings().get(0);
        Target target = corrected.target();
        return new Aim(
                place,
                corrected.readings(),
                new Target(
                        target.name(),
                        target.colour(),
                        target.covariance(),
                        target.geometry(),
                        target.reflectance(),
                        raw.photo().map(bias -> new Target.InPhoto(bias, raw.covariance()))));
    }

    /**
     * @return light and observer a place is judged under: those of its first reading that is a colour only, for a
     *     spectrum can be seen under any; of spectra alone daylight and 10 degrees
     */
    public static Viewing judgedUnder(PlaceReadings place) {
        return place.readings().stream()
                .filter(ColourReading.class::isInstance)
                .findFirst()
                .orElse(place.readings().get(0))
                .judgedUnder();
    }

    /** @return sentences for the person, such as a reading that was left out; mostly none */
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        for (int index : readings.leftOut()) {
            remarks.add("Reading " + (index + 1) + " of " + place.readings().size()
                    + " lies far from the others and was left out; read that spot again.");
        }
        return remarks;
    }
}
