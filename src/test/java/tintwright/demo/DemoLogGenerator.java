package tintwright.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.function.DoubleUnaryOperator;
import tintwright.HandClock;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Spectrum;
import tintwright.logbook.LogBook;
import tintwright.logbook.Page;
import tintwright.logbook.disk.Saved;
import tintwright.logbook.disk.ThisBench;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;
import tintwright.shelf.Chip;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;

/**
 * Makes the log of the invented boat: three seasons of the Tarrowmere. The readings of this year are those of
 * {@code swatches/tarrowmere}; the earlier ones come from the same made-up pigments through {@link HiddenBench},
 * with more of the colour still in the hull. Everything is invented, the same each time.
 *
 * <p>Run it from the project's folder with
 * {@code mvn -q test-compile exec:java -Dexec.mainClass=tintwright.demo.DemoLogGenerator -Dexec.classpathScope=test}.
 */
public final class DemoLogGenerator {
    private static final String WHITE = "plain-white";
    private static final String BLACK = "soot-black";
    private static final String GREEN = "bottle-green";
    private static final String YELLOW = "straw-yellow";
    private static final Map<String, HiddenPigment> INSIDE = Map.of(
            WHITE,
            HiddenPigment.WHITE,
            BLACK,
            HiddenPigment.BLACK,
            GREEN,
            HiddenPigment.GREEN,
            YELLOW,
            HiddenPigment.YELLOW_OXIDE);

    private final HiddenBench bench = new HiddenBench(20240420);
    private final Shelf shelf = MeteredShop.shelf();
    private final LogBook book;
    private UUID boat;

    private DemoLogGenerator(LogBook book) {
        this.book = book;
    }

    /** Sets the clock to eight in the morning of the day that is told next. */
    private static LocalDate dawns(HandClock clock, int year, int month, int dayOfMonth) {
        LocalDate date = LocalDate.of(year, month, dayOfMonth);
        clock.set(date.atTime(LocalTime.of(8, 0)).toInstant(ZoneOffset.UTC));
        return date;
    }

    /** Writes the log into the project folder. */
    public static void main(String[] args) throws IOException {
        write(Path.of("swatches"));
    }

    /** Writes the folder {@code log} below a folder. */
    static void write(Path swatches) throws IOException {
        Path home = Files.createTempDirectory("demo-bench");
        Path log = swatches.resolve("log");
        Files.createDirectories(log);
        Files.deleteIfExists(log.resolve("demo-0001.jsonl"));
        HandClock clock = new HandClock("2024-04-20T08:00:00Z", Duration.ofMinutes(7));
        try (LogBook book = LogBook.open(log, new ThisBench("demo", home), clock, new SplittableRandom(1987))) {
            new DemoLogGenerator(book).tell(clock);
        }
    }

    private void tell(HandClock clock) {
        LocalDate first = dawns(clock, 2024, 4, 20);
        boat = book.begin(new Page.Boat(
                        "Tarrowmere",
                        "open boat, 7 m",
                        Optional.of(1987),
                        "invented; sea green with ivory quarters, second owner",
                        List.of()))
                .entry()
                .id();
        UUID bow = write(new Page.Place("port bow", "sunny side, faded towards grey", List.of()));
        UUID stern = write(new Page.Place("stern quarter", "ivory, yellowing under the rail", List.of()));
        write(new Page.Target(
                bow,
                first,
                three(hull(1.22, 1.16, 1.18)),
                "washed and wet-sanded in one corner; with a meter that was lent"));
        write(new Page.Target(stern, first, three(ivory()), "washed; with the same meter"));

        LocalDate mixed = dawns(clock, 2024, 4, 27);
        Parts one = parts(58.2, 0.71, 0.68, 0.52);
        UUID cup = write(new Page.Cup(
                "bow 1",
                mixed,
                Optional.of(bow),
                one,
                ingredients(one),
                List.of(
                        weigh(WHITE, 40, "a third held back"),
                        weigh(BLACK, 0.44, "value first"),
                        weigh(GREEN, 0.5, ""),
                        weigh(YELLOW, 0.52, ""),
                        weigh(BLACK, 0.27, "after the first chip"),
                        weigh(GREEN, 0.18, ""),
                        weigh(WHITE, 18.2, "the rest")),
                List.of(cured(one)),
                "drops of green counted, not weighed, at the end"));
        write(new Page.ChipMade(
                Optional.of(cup),
                new Chip("bow 1 chip", one, List.of(cured(one)), Optional.of(mixed), "on a black and white card"),
                "two days at 16 C, tacky on the first evening"));
        write(new Page.Filled(
                Optional.of(bow),
                Optional.of(cup),
                mixed,
                OptionalDouble.of(34),
                List.of(
                        "two gouges and a cleat hole",
                        "catalyst by the data sheet at 16 C",
                        "wax in the last coat",
                        "wet-sanded 320, 600, 1000, compound"),
                ""));
        dawns(clock, 2024, 4, 30);
        write(new Page.Verdict(
                cup,
                Page.Outcome.SEEN_FROM_A_METRE,
                LocalDate.of(2024, 4, 30),
                "a touch green at noon, gone in the evening"));

        LocalDate corrected = dawns(clock, 2024, 5, 4);
        Parts two = parts(60.0, 0.73, 0.69, 0.71);
        UUID second = write(new Page.Cup(
                "bow 2",
                corrected,
                Optional.of(bow),
                two,
                ingredients(two),
                List.of(
                        weigh(WHITE, 42, "a third held back"),
                        weigh(BLACK, 0.73, ""),
                        weigh(GREEN, 0.69, ""),
                        weigh(YELLOW, 0.6, ""),
                        weigh(YELLOW, 0.11, "after the chip"),
                        weigh(WHITE, 18, "the rest")),
                List.of(cured(two)),
                ""));
        write(new Page.Filled(
                Optional.of(bow),
                Optional.of(second),
                corrected,
                OptionalDouble.of(21),
                List.of("the same places once more", "catalyst by the data sheet at 18 C", "wax in the last coat"),
                ""));
        dawns(clock, 2024, 5, 11);
        write(new Page.Verdict(second, Page.Outcome.INVISIBLE, LocalDate.of(2024, 5, 11), "not even at noon"));

        dawns(clock, 2025, 10, 11);
        Leftover autumn = shelf.leftovers().get(0);
        write(new Page.LeftOver(Optional.empty(), autumn, ingredients(autumn.parts()), false));
        write(new Page.Remark(Optional.empty(), "Under cover from November; read her again before the season."));

        LocalDate now = dawns(clock, 2026, 3, 14);
        for (PlaceReadings place : MeteredShop.places()) {
            write(new Page.Target(place.place().equals("port bow") ? bow : stern, now, place.readings(), place.note()));
        }
    }

    private UUID write(Page page) {
        Saved saved = book.write(Optional.of(boat), page);
        if (saved instanceof Saved.Waiting waiting) {
            throw new IllegalStateException(waiting.sentence());
        }
        return saved.entry().id();
    }

    private static Page.Weighing weigh(String part, double grams, String note) {
        return new Page.Weighing(part, grams, note);
    }

    private static Parts parts(double white, double black, double green, double yellow) {
        Map<String, Double> grams = new LinkedHashMap<>();
        grams.put(WHITE, white);
        grams.put(BLACK, black);
        grams.put(GREEN, green);
        grams.put(YELLOW, yellow);
        return Parts.of(grams);
    }

    private List<Page.Ingredient> ingredients(Parts parts) {
        return parts.grams().keySet().stream()
                .map(id -> shelf.tint(id)
                        .map(tint -> new Page.Ingredient(
                                id, tint.name(), "tint", tint.family().code()))
                        .orElseGet(() -> new Page.Ingredient(id, shelf.nameOf(id), "base", "")))
                .toList();
    }

    private static Map<HiddenPigment, Double> hull(double black, double green, double yellow) {
        return Map.of(
                HiddenPigment.WHITE,
                100.0,
                HiddenPigment.BLACK,
                black,
                HiddenPigment.GREEN,
                green,
                HiddenPigment.YELLOW_OXIDE,
                yellow);
    }

    private static Map<HiddenPigment, Double> ivory() {
        return Map.of(
                HiddenPigment.WHITE,
                100.0,
                HiddenPigment.YELLOW_OXIDE,
                0.82,
                HiddenPigment.UMBER,
                0.5,
                HiddenPigment.RED_OXIDE,
                0.04);
    }

    private List<Reading> three(Map<HiddenPigment, Double> mix) {
        DoubleUnaryOperator weathered = nm -> 1 + 0.003 * StrictMath.cos(2 * StrictMath.PI * (nm - 400) / 300);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            readings.add(reading(mix, weathered));
        }
        return readings;
    }

    private Reading cured(Parts parts) {
        Map<HiddenPigment, Double> mix = new EnumMap<>(HiddenPigment.class);
        parts.grams().forEach((id, grams) -> mix.put(INSIDE.get(id), grams));
        return reading(bench.weighed(mix), nm -> 1);
    }

    private Reading reading(Map<HiddenPigment, Double> mix, DoubleUnaryOperator weathered) {
        double[] values = bench.read(HiddenBench.reflectance(new EnumMap<>(mix)), weathered);
        return new SpectralReading(
                Spectrum.of(new Grid(HiddenBench.FIRST_NM, HiddenBench.STEP_NM, HiddenBench.COUNT), values),
                HiddenBench.NOISE,
                Geometry.SPECULAR_INCLUDED,
                FilmState.CURED);
    }
}
