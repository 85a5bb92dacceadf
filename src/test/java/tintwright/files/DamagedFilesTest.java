package tintwright.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tintwright.bench.job.BenchFile;
import tintwright.bench.job.FillDraft;
import tintwright.bench.job.Job;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.demo.MeteredShop;
import tintwright.disk.Damage;
import tintwright.files.instrument.ChipsFile;
import tintwright.files.instrument.InstrumentFile;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.CureTimer;
import tintwright.fill.catalyst.NotedTime;
import tintwright.reading.Conditions;
import tintwright.reading.FilmState;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.sheet.SheetContents;

/** Whatever happens to a file on its way: it is read, or refused in one sentence that begins with its name. */
class DamagedFilesTest {
    private static final Conditions SAID = new Conditions(
            Optional.of(Viewing.D65_10), Optional.of(Geometry.SPECULAR_INCLUDED), FilmState.CURED, 0.002, 0.3);

    private static final Instant NOON = Instant.parse("2026-05-31T12:00:00Z");

    private interface Reader {
        Object read(Path file) throws FileProblem;
    }

    /** A kind of file: a good one and who reads it. */
    private record Kind(String name, byte[] good, Reader reader) {
        @Override
        public String toString() {
            return name;
        }
    }

    @FunctionalInterface
    private interface Writer {
        void write(Path file) throws Exception;
    }

    private static Stream<Kind> kinds() throws Exception {
        Cup cup = Cup.empty("bow 1", MeteredShop.places().get(0), 100, 0.01, "plain-white")
                .add(NOON, new Deed.Weighed("plain-white", 60, 0.01))
                .add(NOON, new Deed.LetDown("soot-black", 20, 1.4, 0.01))
                .add(NOON, new Deed.Read(MeteredShop.places().get(0).readings().get(0), Optional.empty(), true))
                .undo(NOON);
        Job job = new Job(
                "Tarrowmere",
                MeteredShop.places(),
                0,
                MeteredShop.shelf(),
                150,
                0.01,
                Set.of("soot-black"),
                FillDraft.of(Demo.fillOrder().job(), OptionalDouble.of(0.4)),
                Optional.of(cup),
                List.of(new Deed.SetAside(12, "bow 1 rest")));
        List<ClocksFile.Catalysed> clocks = List.of(new ClocksFile.Catalysed(
                Optional.of("Tarrowmere, port bow"),
                1,
                "holes",
                NOON,
                List.of(new CureTimer("tape off", 12, 18, "tacky"))));
        Marks marks = new Marks(
                List.of(), List.of(), List.of(Spot.hull("bow", 1300, 420, 45), Spot.hull("keel", 900, 420, 45)), true);
        SheetContents sheet = new SheetContents(
                List.of(new SheetContents.Chip(1, "white", Map.of("plain-white", 20.0), FilmState.CURED)),
                10,
                Optional.empty());
        List<NotedTime> noted = List.of(
                new NotedTime(20, new CatalystShare(2, Basis.MASS), OptionalDouble.of(14), OptionalDouble.of(40)));
        return Stream.of(
                of("swatches/shelf.json", ShelfFile::read),
                of("swatches/tarrowmere/port-bow.json", TargetFile::read),
                of("swatches/tarrowmere/fill-job.json", FillJobFile::read),
                of("src/test/resources/tintwright/demo/contradictory-chip.json", file -> ChipsFile.read(file, SAID)),
                of("src/test/resources/tintwright/files/percent.csv", file -> InstrumentFile.read(file, SAID)),
                of("src/test/resources/tintwright/files/colours.csv", file -> InstrumentFile.read(file, SAID)),
                of("src/test/resources/tintwright/files/pairs.txt", file -> InstrumentFile.read(file, SAID)),
                of("src/test/resources/tintwright/files/lab.txt", file -> InstrumentFile.read(file, SAID)),
                of("src/test/resources/tintwright/files/exchange.cxf", file -> InstrumentFile.read(file, SAID)),
                of("swatches/cards/grey-six.json", CardFile::read),
                written("cup", file -> CupFile.at(file).create(cup), CupFile::read),
                written("bench", file -> BenchFile.keep(file, Optional.empty(), job), BenchFile::read),
                written("marks", file -> MarksFile.keep(file, Marks.NONE, marks), MarksFile::read),
                written("sheet", file -> TextFile.write(file, SheetFile.text(sheet)), SheetFile::read),
                written("noted-times", file -> NotedTimesFile.keep(file, List.of(), noted), NotedTimesFile::read),
                written("clocks", file -> ClocksFile.keep(file, List.of(), clocks), ClocksFile::read),
                written(
                        "boats",
                        file -> BoatsFile.at(file).create(List.of(new BoatsFile.Left("Tarrowmere", 3, "bow 1", 2))),
                        BoatsFile::read),
                written(
                        "settings",
                        file -> SettingsFile.keep(file, Map.of(), Map.of("own", "true", "width", "1280")),
                        SettingsFile::read));
    }

    private static Kind of(String name, Reader reader) throws Exception {
        return new Kind(name, Files.readAllBytes(Path.of(name)), reader);
    }

    private static Kind written(String name, Writer writer, Reader reader) throws Exception {
        Path folder = Files.createTempDirectory("kind");
        Path file = folder.resolve(name + ".json");
        writer.write(file);
        byte[] good = Files.readAllBytes(file);
        Files.delete(file);
        Files.delete(folder);
        return new Kind(name, good, reader);
    }

    /** Found by 5000 damages: one letter of "observer" became a backslash. */
    @Test
    void aLineBreakInANameOrAWordIsNotOneInTheSentence() {
        for (String film : List.of("\"fil\\rm\": \"cured\"", "\"film\": \"cu\\nred\"")) {
            String reading = "{\"lab\": [60, 0, 0], \"light\": \"D65\", \"observer\": 10, \"geometry\":"
                    + " \"specular-excluded\", " + film + "}";
            FileProblem told = assertThrows(FileProblem.class, () -> ReadingShape.from(JsonPlace.parse("x", reading)));
            assertEquals(1, told.getMessage().lines().count(), told.getMessage());
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void isReadOrRefusedInOneSentence(Kind kind, @TempDir Path folder) throws Exception {
        damage(kind, folder, kind.good().length > 20_000 ? 100 : 300);
    }

    /** {@code mvn test -Dwanted.groups=study -Dtest=DamagedFilesTest}. */
    @ParameterizedTest
    @MethodSource("kinds")
    @Tag("study")
    void isReadOrRefusedInOneSentence5000Times(Kind kind, @TempDir Path folder) throws Exception {
        damage(kind, folder, 5000);
    }

    private static void damage(Kind kind, Path folder, int tries) throws Exception {
        Random chance = new Random(kind.name().hashCode());
        Path file = folder.resolve("damaged");
        int refused = 0;
        for (int i = 0; i < tries; i++) {
            byte[] bad = Damage.to(kind.good(), chance);
            Files.write(file, bad);
            try {
                kind.reader().read(file);
            } catch (FileProblem e) {
                refused++;
                assertTrue(e.getMessage().startsWith(file.toString()), e.getMessage());
                assertEquals(1, e.getMessage().lines().count(), e.getMessage());
                assertTrue(e.isAboutInput(), e.getMessage());
            }
            assertArrayEquals(bad, Files.readAllBytes(file));
        }
        try (Stream<Path> all = Files.list(folder)) {
            assertEquals(1, all.count(), "nothing was written");
        }
        assertTrue(refused > tries / 20, "damage must be noticed at times: " + refused);
    }
}
