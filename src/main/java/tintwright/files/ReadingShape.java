package tintwright.files;

import java.util.ArrayList;
import java.util.List;
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

    /** @return the reading as fields for {@link JsonText} */
    public static Fields toTree(Reading reading) {
        Fields tree = Fields.none();
        if (reading instanceof SpectralReading spectral) {
            tree.with("spectrum", toTree(spectral.reflectance())).with("noise", spectral.noise());
        } else if (reading instanceof ColourReading colour) {
            tree.colour(colour.lab())
                    .with("covariance", sixOf(colour.covariance()))
                    .with("photo", colour.photo().map(ReadingShape::toTree));
        }
        return tree.with("geometry", reading.geometry()).with("film", reading.film());
    }

    private static Fields toTree(ColourReading.PhotoBias photo) {
        Fields shared = Fields.of("name", photo.photo());
        return photo.directions().isEmpty()
                ? shared.with("covariance", sixOf(photo.covariance()))
                : shared.each(
                        "directions", photo.directions(), one -> new double[] {one.lightness(), one.a(), one.b()});
    }

    static Fields toTree(Spectrum spectrum) {
        return Fields.of("firstNm", spectrum.grid().firstNm())
                .with("stepNm", spectrum.grid().stepNm())
                .with("values", spectrum.toArray());
    }

    /** @throws FileProblem for a reading without its light, observer, geometry or film, or with values no reading has */
    public static Reading from(JsonPlace place) throws FileProblem {
        if (place.has("spectrum") == place.has("lab")) {
            throw place.problem("a reading has either a \"spectrum\" or a \"lab\"; give one of them");
        }
        return place.has("spectrum") ? spectral(place) : colour(place);
    }

    private static Reading spectral(JsonPlace place) throws FileProblem {
        place.only("spectrum", "noise", "geometry", "film");
        return place.make(() -> LabRange.checked(new SpectralReading(
                spectrum(place.at("spectrum")),
                place.number("noise", SpectralReading.USUAL_NOISE),
                choice(place.at("geometry"), Geometry.values()),
                choice(place.at("film"), FilmState.values()))));
    }

    static Spectrum spectrum(JsonPlace place) throws FileProblem {
        place.only("firstNm", "stepNm", "values");
        double[] values = place.at("values").numbers();
        return place.make(() -> Spectrum.of(
                new Grid(place.at("firstNm").whole(), place.at("stepNm").whole(), values.length), values));
    }

    private static Reading colour(JsonPlace place) throws FileProblem {
        place.only("lab", "light", "observer", "sigma", "covariance", "photo", "geometry", "film");
        Lab lab = lab(place);
        Covariance covariance = covariance(place);
        Optional<ColourReading.PhotoBias> photo = place.optional("photo", shared -> {
            shared.only("name", "sigma", "covariance", "directions");
            String name = shared.at("name").text();
            return shared.has("directions")
                    ? ColourReading.PhotoBias.along(name, directions(shared.at("directions")))
                    : new ColourReading.PhotoBias(name, covariance(shared));
        });
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
        return lab(place.at("lab"), viewing(place));
    }

    static Viewing viewing(JsonPlace place) throws FileProblem {
        return place.make(
                () -> Viewing.of(place.at("light").text(), place.at("observer").whole()));
    }

    static Lab lab(JsonPlace axes, Viewing viewing) throws FileProblem {
        double[] lab = axes.numbers(3, "three numbers [L*, a*, b*]");
        axes.make(() -> LabRange.check(lab[0], lab[1], lab[2]));
        return new Lab(lab[0], lab[1], lab[2], viewing);
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
        double[] c = at.numbers(6, "six numbers [LL, La, Lb, aa, ab, bb]");
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
            if (Fields.code(one).equals(text)) {
                return one;
            }
            codes.add("\"" + Fields.code(one) + "\"");
        }
        throw place.problem("must be " + String.join(" or ", codes) + ", was \"" + text + "\"");
    }
}
