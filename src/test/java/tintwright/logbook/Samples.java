package tintwright.logbook;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
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
import tintwright.shelf.Chip;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;

/** One page of every sort, invented. */
public final class Samples {
    static final LocalDate DAY = LocalDate.of(2026, 5, 3);
    static final UUID PLACE = UUID.fromString("019de000-0000-7000-8000-000000000001");
    static final UUID CUP = UUID.fromString("019de000-0000-7000-8000-000000000002");

    private Samples() {}

    public static Page.Boat boat() {
        return new Page.Boat(
                "Tarrowmere",
                "open boat, 7 m",
                Optional.of(1987),
                "r\u00f8d bundmaling\nsecond owner",
                List.of("tarrowmere-bow.jpg"));
    }

    static Page.Place place() {
        return new Page.Place("port bow", "sunny side, chalky", List.of());
    }

    static Page.Target target() {
        return new Page.Target(PLACE, DAY, List.of(spectral(), seen(62.1, -3.4, 11)), "washed");
    }

    static Page.Cup cup(double lightness) {
        return new Page.Cup(
                "cup 1",
                DAY,
                Optional.of(PLACE),
                parts(),
                shelf(),
                List.of(
                        new Page.Weighing("white", 40, ""),
                        new Page.Weighing("soot", 0.31, "as 1:10 letdown"),
                        new Page.Weighing("soot", -0.1, "")),
                List.of(seen(lightness, -3, 10)),
                "a touch warm");
    }

    static Page.ChipMade chip() {
        return new Page.ChipMade(
                Optional.of(CUP),
                new Chip("soot 1 %", parts(), List.of(seen(60, -3, 9)), Optional.of(DAY), "hides"),
                "two days at 18 C, tacky at first");
    }

    static Page.Filled fill() {
        return new Page.Filled(
                Optional.of(PLACE),
                Optional.of(CUP),
                DAY,
                OptionalDouble.of(32.5),
                List.of("catalyst by the data sheet", "320, 600, 1000, compound"),
                "");
    }

    static Page.LeftOver leftOver() {
        return new Page.LeftOver(
                Optional.of(CUP),
                new Leftover("left-1", "sea grey", parts(), List.of(seen(61, -2, 9)), Optional.of(DAY)),
                shelf(),
                false);
    }

    static Page.Verdict verdict() {
        return new Page.Verdict(CUP, Page.Outcome.SEEN_FROM_A_METRE, DAY, "at noon");
    }

    public static Page.Remark remark() {
        return new Page.Remark(Optional.of(CUP), "=1+1 \"quoted\" \u6d77");
    }

    public static List<Page> every() {
        return List.of(boat(), place(), target(), cup(60), chip(), fill(), leftOver(), verdict(), remark());
    }

    static Parts parts() {
        Map<String, Double> grams = new LinkedHashMap<>();
        grams.put("white", 40.0);
        grams.put("soot", 0.21);
        return Parts.of(grams);
    }

    static List<Page.Ingredient> shelf() {
        return List.of(
                new Page.Ingredient("white", "plain white", "base", ""),
                new Page.Ingredient("soot", "soot black", "tint", "carbon-black"));
    }

    static Reading seen(double lightness, double a, double b) {
        return new ColourReading(
                new Lab(lightness, a, b, Viewing.D65_10),
                Covariance.same(0.3),
                Geometry.SPECULAR_EXCLUDED,
                FilmState.CURED,
                Optional.empty());
    }

    static Reading spectral() {
        return new SpectralReading(
                Spectrum.of(
                        new Grid(400, 20, 16),
                        0.31,
                        0.33,
                        0.35,
                        0.36,
                        0.38,
                        0.4,
                        0.4,
                        0.39,
                        0.37,
                        0.35,
                        0.34,
                        0.33,
                        0.33,
                        0.32,
                        0.32,
                        0.33),
                0.002,
                Geometry.SPECULAR_INCLUDED,
                FilmState.CURED);
    }
}
