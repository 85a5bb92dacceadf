package tintwright.logbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.UUID;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.logbook.disk.Entry;
import tintwright.logbook.disk.EntryIds;
import tintwright.logbook.disk.Header;
import tintwright.logbook.disk.Pen;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;

/**
 * Makes a large log of invented boats: for each boat the boat itself and nine entries as a repair leaves them
 * (two places, two targets, two cups with their weighings, a fill, a verdict, a leftover). Every fourth reading is
 * a spectrum of 31 values. The same seed makes the same log.
 */
final class BigLog {
    static final int ENTRIES_A_BOAT = 10;
    private static final int BENCHES = 3;
    private static final int LINES_A_FILE = 2500;
    private static final String[] SYLLABLES = {
        "al", "ber", "cor", "dun", "el", "fen", "gar", "hol", "is", "jor", "kel", "lun", "mar", "nor", "os", "pel",
        "rin", "sol", "tam", "ul", "ver", "wen", "yar", "zel"
    };
    private static final String[] PLACES = {
        "port bow", "stern quarter", "starboard side", "transom", "deck edge", "coaming", "keel line", "port quarter"
    };
    private static final String[] AGED = {
        "sunny side, chalky", "yellowed under the rail", "hardly faded", "faded and scratched", "polished thin"
    };
    private static final List<Page.Ingredient> SHELF = List.of(
            new Page.Ingredient("plain-white", "plain white", "base", ""),
            new Page.Ingredient("soot-black", "soot black", "tint", "carbon-black"),
            new Page.Ingredient("straw-yellow", "straw yellow", "tint", "yellow-iron-oxide"),
            new Page.Ingredient("ink-blue", "ink blue", "tint", "phthalo-blue"));

    private final SplittableRandom random = new SplittableRandom(20260503);
    private final Path folder;
    private Instant now = Instant.parse("2006-03-01T08:00:00Z");
    private final EntryIds ids = new EntryIds(
            new Clock() {
                @Override
                public java.time.ZoneId getZone() {
                    return ZoneOffset.UTC;
                }

                @Override
                public Clock withZone(java.time.ZoneId zone) {
                    return this;
                }

                @Override
                public Instant instant() {
                    return now;
                }
            },
            random);
    private final int[] numbers = new int[BENCHES];
    private final int[] lines = new int[BENCHES];
    private final OutputStream[] files = new OutputStream[BENCHES];

    private BigLog(Path folder) {
        this.folder = folder;
    }

    /** Writes the log of so many boats into an empty folder. */
    static void write(Path folder, int boats) throws IOException {
        Files.createDirectories(folder);
        BigLog log = new BigLog(folder);
        for (int i = 0; i < boats; i++) {
            log.boat();
        }
        for (OutputStream file : log.files) {
            if (file != null) {
                file.close();
            }
        }
    }

    private void boat() throws IOException {
        UUID boat = ids.next();
        int bench = random.nextInt(BENCHES);
        put(
                bench,
                boat,
                boat,
                new Page.Boat(
                        word() + word(),
                        "open boat, " + random.nextInt(4, 12) + " m",
                        Optional.of(random.nextInt(1968, 2016)),
                        "belongs to " + word() + " " + word(),
                        List.of()));
        for (int side = 0; side < 2; side++) {
            UUID place = ids.next();
            put(bench, place, boat, new Page.Place(one(PLACES), one(AGED), List.of()));
            LocalDate day = LocalDate.ofInstant(now, ZoneOffset.UTC);
            put(bench, ids.next(), boat, new Page.Target(place, day, List.of(reading()), "washed, wet-sanded"));
            UUID cup = ids.next();
            put(bench, cup, boat, cup("cup " + day, day, place));
            if (side == 0) {
                put(
                        bench,
                        ids.next(),
                        boat,
                        new Page.Filled(
                                Optional.of(place),
                                Optional.of(cup),
                                day,
                                OptionalDouble.of(random.nextInt(20, 90)),
                                List.of(
                                        "catalyst by the data sheet",
                                        "wax in the last coat",
                                        "grits 320, 600, 1000, compound"),
                                ""));
                put(
                        bench,
                        ids.next(),
                        boat,
                        new Page.Verdict(cup, Page.Outcome.values()[random.nextInt(3)], day, one(AGED)));
            } else {
                put(
                        bench,
                        ids.next(),
                        boat,
                        new Page.LeftOver(
                                Optional.of(cup),
                                new Leftover(
                                        "left " + day, "left of " + day, parts(), List.of(reading()), Optional.of(day)),
                                SHELF,
                                false));
            }
        }
    }

    private Page cup(String name, LocalDate day, UUID place) {
        Parts parts = parts();
        List<Page.Weighing> weighings = parts.grams().entrySet().stream()
                .map(part -> new Page.Weighing(part.getKey(), part.getValue(), ""))
                .toList();
        return new Page.Cup(
                name, day, Optional.of(place), parts, SHELF, weighings, List.of(reading()), "value first, then hue");
    }

    private Parts parts() {
        Map<String, Double> grams = new LinkedHashMap<>();
        grams.put("plain-white", random.nextInt(200, 900) / 10.0);
        grams.put("soot-black", random.nextInt(1, 120) / 100.0);
        grams.put(random.nextBoolean() ? "straw-yellow" : "ink-blue", random.nextInt(1, 90) / 100.0);
        return Parts.of(grams);
    }

    private Reading reading() {
        if (random.nextInt(4) == 0) {
            double[] values = new double[31];
            double at = 0.3 + 0.4 * random.nextDouble();
            for (int i = 0; i < values.length; i++) {
                at = Math.min(0.95, Math.max(0.03, at + 0.02 * (random.nextDouble() - 0.5)));
                values[i] = Math.rint(at * 1e4) / 1e4;
            }
            return new SpectralReading(
                    Spectrum.of(new Grid(400, 10, 31), values), 0.002, Geometry.SPECULAR_INCLUDED, FilmState.CURED);
        }
        Lab lab = new Lab(
                Math.rint(random.nextDouble(30, 95) * 10) / 10,
                Math.rint(random.nextDouble(-15, 15) * 10) / 10,
                Math.rint(random.nextDouble(-15, 25) * 10) / 10,
                Viewing.D65_10);
        return new ColourReading(
                lab, Covariance.same(0.3), Geometry.SPECULAR_EXCLUDED, FilmState.CURED, Optional.empty());
    }

    private void put(int bench, UUID id, UUID boat, Page page) throws IOException {
        now = now.plus(Duration.ofMinutes(random.nextInt(5, 400)));
        if (files[bench] == null || lines[bench] == LINES_A_FILE) {
            if (files[bench] != null) {
                files[bench].close();
            }
            numbers[bench]++;
            lines[bench] = 0;
            String name = "bench-" + "abc".charAt(bench);
            String digits = Integer.toString(10_000 + numbers[bench]).substring(1);
            files[bench] = Files.newOutputStream(folder.resolve(name + "-" + digits + Pen.ENDING));
            files[bench].write(new Header(Header.VERSION, name, now).line());
        }
        lines[bench]++;
        Entry entry = Entry.of(id, now, PageShape.kind(page), boat, null, PageShape.body(page));
        files[bench].write(entry.line(lines[bench]));
    }

    private String word() {
        String word = one(SYLLABLES) + one(SYLLABLES) + (random.nextBoolean() ? one(SYLLABLES) : "");
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private String one(String[] words) {
        return words[random.nextInt(words.length)];
    }
}
