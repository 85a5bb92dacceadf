package tintwright.window.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tintwright.colour.Ciede2000;
import tintwright.colour.DifferenceWords;
import tintwright.colour.Lab;
import tintwright.colour.Looks;
import tintwright.colour.Viewing;
import tintwright.match.Aim;
import tintwright.reading.ColourReading;
import tintwright.reading.HullFamily;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.reading.Repeats;
import tintwright.reading.SpectralReading;
import tintwright.reading.photo.SpotReading;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.window.frame.FailureWords;
import tintwright.window.pieces.Figures;

/** From the readings of a place to what the hull's station shows of it. */
final class HullSight {
    /** A hull known no better than this, CIEDE2000, is said to be a beginning; a judgement of ours. */
    private static final double ROUGH = 3;

    private HullSight() {}

    /** @param knowledge what the shelf's chips taught, for photos they stood in; null while that is not known */
    static HullModel.Hull of(PlaceReadings place, Knowledge knowledge) {
        try {
            Aim aim = Aim.of(place);
            Repeats.Combined all = (knowledge == null ? aim : aim.through(knowledge)).readings();
            Viewing viewing = all.mean().viewing();
            List<HullModel.Line> lines = new ArrayList<>();
            for (int i = 0; i < place.readings().size(); i++) {
                Reading each = seen(place.readings().get(i), knowledge);
                Lab lab = each.colour(viewing).orElseThrow();
                lines.add(new HullModel.Line(
                        lab,
                        Figures.lab(lab),
                        from(place.readings().get(i), each),
                        !all.leftOut().contains(i)));
            }
            double goodTo = SpotReading.goodTo(all.mean(), all.covariance());
            String sure = say(
                    "From %d %s, %s.%s",
                    all.kept().size(),
                    all.kept().size() == 1 ? "reading" : "readings",
                    DifferenceWords.likely(goodTo),
                    goodTo < ROUGH ? "" : " Enough to begin with: dabs held beside the hull do the rest.");
            return new HullModel.Hull(
                    place.place(),
                    lines,
                    Optional.of(all.mean()),
                    Looks.of(all.mean()),
                    HullPlaces.onlyPicked(place)
                            ? "Picked by eye, so only where to begin: dabs held beside the hull do the rest."
                            : sure,
                    doubt(all, lines),
                    photos(place));
        } catch (IllegalArgumentException e) {
            return new HullModel.Hull(
                    place.place(), List.of(), Optional.empty(), "", "", FailureWords.of(e), photos(place));
        }
    }

    private static String doubt(Repeats.Combined all, List<HullModel.Line> lines) {
        if (all.torn()) {
            return say(
                    "The two readings are %s, further than they can be of one colour. Read the spot a third time to "
                            + "know which one is wrong.",
                    DifferenceWords.off(Ciede2000.between(
                            lines.get(0).colour(), lines.get(1).colour())));
        }
        if (all.leftOut().isEmpty()) {
            return "";
        }
        List<String> said = new ArrayList<>();
        for (int i : all.leftOut()) {
            String how = DifferenceWords.of(lines.get(i).colour(), all.mean()).phrase();
            said.add("Reading " + (i + 1) + " is " + how + " than the others and does not count.");
        }
        return String.join(" ", said) + " Read that spot again: clean, dry, flat.";
    }

    private static Set<String> photos(PlaceReadings place) {
        return place.readings().stream()
                .flatMap(each -> each.photo().stream())
                .map(ColourReading.PhotoBias::photo)
                .collect(Collectors.toSet());
    }

    private static Reading seen(Reading each, Knowledge knowledge) {
        return knowledge != null && each instanceof ColourReading colour ? knowledge.throughChips(colour) : each;
    }

    private static String from(Reading each, Reading seen) {
        if (each instanceof SpectralReading) {
            return "a meter's whole curve";
        }
        if (HullFamily.of(each).isPresent()) {
            return "picked by eye";
        }
        String photo = seen.equals(each) ? "from a photo" : "from your own chips in the photo";
        return ((ColourReading) each).photo().map(bias -> photo).orElse("three numbers");
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
