package tintwright.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;

/** A reading in JSON: an object with {@code spectrum} or with {@code lab}. */
public final class ReadingShape {
    private ReadingShape() {}

    /** @return the reading as maps, lists and numbers for {@link JsonText} */
    public static Map<String, Object> toTree(Reading reading) {
        Map<String, Object> tree = new LinkedHashMap<>();
        if (reading instanceof SpectralReading spectral) {
            Map<String, Object> spectrum = new LinkedHashMap<>();
            Grid grid = spectral.reflectance().grid();
            spectrum.put("firstNm", grid.firstNm());
            spectrum.put("stepNm", grid.stepNm());
            spectrum.put("values", spectral.reflectance().toArray());
            tree.put("spectrum", spectrum);
            tree.put("noise", spectral.noise());
        } else if (reading instanceof ColourReading colour) {
            tree.put("lab", new double[] {
                colour.lab().lightness(), colour.lab().a(), colour.lab().b()
            });
            tree.put("light", colour.lab().viewing().light().name());
            tree.put("observer", colour.lab().viewing().observer().degrees());
            tree.put("covariance", sixOf(colour.covariance()));
            colour.photo().ifPresent(photo -> {
                Map<String, Object> shared = new LinkedHashMap<>();
                shared.put("name", photo.photo());
                if (photo.directions().isEmpty()) {
                    shared.put("covariance", sixOf(photo.covariance()));
                } else {
                    shared.put(
                            "directions",
                            photo.directions().stream()
                                    .map(one -> new double[] {one.lightness(), one.a(), one.b()})
                                    .toList());
                }
                tree.put("photo", shared);
            });
        }
        tree.put("geometry", code(reading.geometry()));
        tree.put("film", code(reading.film()));
        return tree;
    }

    static List<Object> toTree(List<Reading> readings) {
        List<Object> tree = new ArrayList<>();
        readings.forEach(reading -> tree.add(toTree(reading)));
        return tree;
    }

    /** @throws FileProblem for a reading without its light, observer, geometry or film, or with values no reading has */
    public static Reading from(JsonPlace place) throws FileProblem {
        if (place.has("spectrum") == place.has("lab")) {
            throw place.problem("a reading has either a \"spectrum\" or a \"lab\"; give one of them");
        }
        return place.has("spectrum") ? spectral(place) : colour(place);
    }

    static List<Reading> from(List<JsonPlace> places) throws FileProblem {
        List<Reading> readings = new ArrayList<>();
        for (JsonPlace place : places) {
            readings.add(from(place));
        }
        return readings;
    }

    private static Reading spectral(JsonPlace place) throws FileProblem {
        place.only("spectrum", "noise", "geometry", "film");
        JsonPlace spectrum = place.at("spectrum");
        spectrum.only("firstNm", "stepNm", "values");
        int first = spectrum.at("firstNm").whole();
        int step = spectrum.at("stepNm").whole();
        double[] values = spectrum.at("values").numbers();
        double noise = place.number("noise", SpectralReading.USUAL_NOISE);
        Geometry geometry = choice(place.at("geometry"), Geometry.values());
        FilmState film = choice(place.at("film"), FilmState.values());
        Spectrum reflectance = spectrum.make(() -> Spectrum.of(new Grid(first, step, values.length), values));
        return place.make(() -> LabRange.checked(new SpectralReading(reflectance, noise, geometry, film)));
    }

    private static Reading colour(JsonPlace place) throws FileProblem {
        place.only("lab", "light", "observer", "sigma", "covariance", "photo", "geometry", "film");
        Lab lab = lab(place);
        Covariance covariance = covariance(place);
        Optional<ColourReading.PhotoBias> photo = Optional.empty();
        if (place.has("photo")) {
            JsonPlace shared = place.at("photo");
            shared.only("name", "sigma", "covariance", "directions");
            String name = shared.at("name").text();
            photo = Optional.of(
                    shared.has("directions")
                            ? ColourReading.PhotoBias.along(name, directions(shared.at("directions")))
                            : new ColourReading.PhotoBias(name, covariance(shared)));
        }
        return new ColourReading(
                lab,
                covariance,
                choice(place.at("geometry"), Geometry.values()),
                choice(place.at("film"), FilmState.values()),
                photo);
    }

    private static List<ColourReading.Direction> directions(JsonPlace list) throws FileProblem {
        List<ColourReading.Direction> out = new ArrayList<>();
        for (JsonPlace one : list.list()) {
            double[] axes = one.numbers();
            if (axes.length != 3) {
                throw one.problem("must be three numbers: the change of L*, a* and b*");
            }
            out.add(new ColourReading.Direction(axes[0], axes[1], axes[2]));
        }
        if (out.isEmpty()) {
            throw list.problem("needs at least one direction; leave it out when the photo shares no error");
        }
        return out;
    }

    private static Lab lab(JsonPlace place) throws FileProblem {
        double[] lab = place.at("lab").numbers();
        if (lab.length != 3) {
            throw place.at("lab").problem("must be three numbers [L*, a*, b*], were " + lab.length);
        }
        place.at("lab").make(() -> LabRange.check(lab[0], lab[1], lab[2]));
        String light = place.at("light").text();
        int observer = place.at("observer").whole();
        return place.make(() -> new Lab(lab[0], lab[1], lab[2], Viewing.of(light, observer)));
    }

    private static Covariance covariance(JsonPlace place) throws FileProblem {
        if (place.has("sigma") && place.has("covariance")) {
            throw place.problem("give either \"sigma\" or \"covariance\", not both");
        }
        if (!place.has("covariance")) {
            double sigma = place.number("sigma", ColourReading.USUAL_NOISE);
            return place.make(() -> Covariance.same(sigma));
        }
        JsonPlace at = place.at("covariance");
        double[] c = at.numbers();
        if (c.length != 6) {
            throw at.problem("must be six numbers [LL, La, Lb, aa, ab, bb], were " + c.length);
        }
        if (c[1] * c[1] > c[0] * c[3] * 1.000001
                || c[2] * c[2] > c[0] * c[5] * 1.000001
                || c[4] * c[4] > c[3] * c[5] * 1.000001) {
            throw at.problem("no errors go together more than fully: a covariance is larger than its two variances"
                    + " allow; correct it there");
        }
        return at.make(() -> new Covariance(c[0], c[1], c[2], c[3], c[4], c[5]));
    }

    private static double[] sixOf(Covariance c) {
        return new double[] {c.ll(), c.la(), c.lb(), c.aa(), c.ab(), c.bb()};
    }

    static <E extends Enum<E>> E choice(JsonPlace place, E[] choices) throws FileProblem {
        String text = place.text();
        List<String> codes = new ArrayList<>();
        for (E one : choices) {
            if (code(one).equals(text)) {
                return one;
            }
            codes.add("\"" + code(one) + "\"");
        }
        throw place.problem("must be " + String.join(" or ", codes) + ", was \"" + text + "\"");
    }

    static String code(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
