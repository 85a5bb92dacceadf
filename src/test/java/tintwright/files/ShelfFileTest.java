package tintwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Period;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;
import tintwright.shelf.Base;
import tintwright.shelf.Chip;
import tintwright.shelf.ItemKind;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.Paste;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Stock;
import tintwright.shelf.Sundry;
import tintwright.shelf.Tint;

class ShelfFileTest {
    private static final String GOOD = """
            {
              "formatVersion": 1, "kind": "shelf", "name": "Test shelf",
              "bases": [{"id": "white", "name": "White"}],
              "tints": [
                {"id": "soot", "name": "Soot", "family": "carbon-black"},
                {"id": "moss", "name": "Moss"}
              ],
              "chips": [
                {"id": "chip 1", "parts": {"white": 50, "moss": 0.5}, "readings": [
                  {"lab": [70, -20, 5], "light": "D65", "observer": 10,
                   "geometry": "specular-excluded", "film": "cured"}
                ]}
              ]
            }
            """;

    private static Shelf everything() {
        double[] grey = new double[31];
        Arrays.fill(grey, 0.25);
        Reading spectral =
                new SpectralReading(Spectrum.of(Grid.INSIDE, grey), 0.003, Geometry.SPECULAR_INCLUDED, FilmState.WET);
        Reading photo = new ColourReading(
                new Lab(50.5, -1e-5, 3, Viewing.A_10),
                new Covariance(1, .1, .2, 1, .3, 1),
                Geometry.SPECULAR_EXCLUDED,
                FilmState.CURED,
                Optional.of(new ColourReading.PhotoBias("photo 7", Covariance.same(2))));
        Map<String, Double> grams = new LinkedHashMap<>();
        grams.put("white", 50.0);
        grams.put("soot", 0.15);
        Stock stock = new Stock(
                OptionalDouble.of(800),
                OptionalDouble.of(150),
                OptionalDouble.of(31.5),
                Optional.of(LocalDate.of(2025, 4, 3)),
                Optional.of(Period.ofMonths(6)));
        Stock brief = new Stock(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(LocalDate.of(2026, 4, 3)),
                Optional.of(Period.ofDays(90)));
        return new Shelf(
                "Alles für \"Größe\"",
                List.of(
                        new Base("white", "White", 1.31, true, stock),
                        new Tint("soot", "Soot black", PigmentFamily.CARBON_BLACK, 0.05, 1.15, 0.03, Stock.UNKNOWN),
                        new Paste("paste", "Paste", 0.9, stock),
                        new Leftover(
                                "old",
                                "Old cup",
                                Parts.of(grams),
                                List.of(photo),
                                Optional.of(LocalDate.of(2024, 2, 29))),
                        new Sundry("hardener", "Hardener", ItemKind.CATALYST, brief),
                        new Sundry("wax", "Wax in styrene", ItemKind.WAX, stock),
                        new Sundry("kit", "Chip kit", ItemKind.KIT, Stock.UNKNOWN)),
                List.of(new Chip(
                        "chip 1",
                        Parts.of(grams),
                        List.of(spectral, photo),
                        Optional.of(LocalDate.of(2026, 1, 2)),
                        "two coats")));
    }

    @Test
    void whatIsWrittenIsReadAgainWhole(@TempDir Path folder) throws FileProblem {
        Path file = folder.resolve("shelf.json");
        ShelfFile.at(file).create(everything());
        assertEquals(everything(), ShelfFile.read(file));
        String first = TextFile.read(file);
        TextFile.write(file, ShelfFile.text(ShelfFile.read(file)));
        assertEquals(first, TextFile.read(file));
        assertTrue(first.startsWith("{\n  \"formatVersion\": 2,"), first);
    }

    @Test
    void aTargetIsReadAgainWhole(@TempDir Path folder) throws FileProblem {
        PlaceReadings target =
                new PlaceReadings("Boat", "bow", everything().chips().get(0).readings(), "chalky");
        TargetFile.at(folder.resolve("t.json")).create(target);
        assertEquals(target, TargetFile.read(folder.resolve("t.json")));
    }

    @Test
    void aShelfByHandNeedsOnlyWhatNobodyCanGuess() throws FileProblem {
        Shelf shelf = ShelfFile.from(JsonPlace.parse("shelf.json", GOOD));
        assertEquals(PigmentFamily.UNKNOWN, shelf.tint("moss").orElseThrow().family());
        assertEquals(Tint.USUAL_LOADING_LIMIT, shelf.tint("soot").orElseThrow().loadingLimit());
    }

    /** Each line: what stands in the good file, what a slip makes of it, and what is said. */
    @ParameterizedTest(name = "{2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`\"kind\": \"shelf\"` | `\"kind\": \"cup\"`"
                        + " | shelf.json, kind: a shelf file was wanted, this is a cup file; name another",
                "`\"formatVersion\": 1` | `\"formatVersion\": 3` | shelf.json, formatVersion: the file is of format 3 and this"
                        + " program reads up to 2; open it with a newer Tintwright (the file was left as it was)",
                "`\"formatVersion\": 1,` | `` | shelf.json: the field \"formatVersion\" is missing; add it",
                "`\"formatVersion\": 1` | `\"formatVersion\": 0.5`"
                        + " | shelf.json, formatVersion: must be a whole number from 1 to 2, was 0.5",
                "`[{\"id\": \"white\", \"name\": \"White\"}]` | `[]`"
                        + " | shelf.json: the shelf has no base: add the white gel coat that tints go into",
                "`\"bases\": [` | `\"bases\": [3,` | shelf.json, bases[0]: must be an object in braces { }, was 3",
                "`\"family\"` | `\"famly\"` | shelf.json, tints[0].famly: no such field is known here; correct its name to one"
                        + " of density, dropGrams, family, gramsLeft, id, loadingLimit, lowAtGrams, name, openedOn,"
                        + " pricePerKg, shelfLifeDays, shelfLifeMonths, or take it out",
                "`, \"family\": \"carbon-black\"` | `` | shelf.json, tints[0]: the tint \"Soot\" has neither a family nor a"
                        + " chip, so nothing is known of it; give it a \"family\" (\"unknown\" is allowed) or a chip",
                "`carbon-black` | `soot` | shelf.json, tints[0].family: pigment family must be one of carbon-black,"
                        + " red-iron-oxide, brown-oxide, yellow-iron-oxide, organic-yellow, organic-red, phthalo-blue,"
                        + " phthalo-green, ultramarine, orange, violet, unknown, was \"soot\"; correct it there",
                "`\"carbon-black\"` | `\"carbon-black\", \"density\": -1`"
                        + " | shelf.json, tints[0]: density of tint Soot must be 0.5 to 8 g/ml, was -1.0; correct it there",
                "`\"carbon-black\"` | `\"carbon-black\", \"openedOn\": \"May\"`"
                        + " | shelf.json, tints[0].openedOn: must be a date such as 2026-05-31, was \"May\"",
                "`0.5}` | `-0.5}` | shelf.json, chips[0].parts.moss: a mass must be 0 g or more, was -0.5 g; correct it there",
                "`0.5}` | `\"much\"}` | shelf.json, chips[0].parts.moss: must be a number such as 1.25, was \"much\"",
                "`0.5}` | `0.5, \"teal\": 1}` | shelf.json: chip \"chip 1\" holds \"teal\", which is not on the shelf: add it"
                        + " as a base or tint, or correct the name",
                "`[70, -20, 5]` | `[70, -20]` | shelf.json, chips[0].readings[0].lab: must be three numbers [L*, a*,"
                        + " b*], were 2",
                "`[70, -20, 5]` | `[70, \"x\", 5]`"
                        + " | shelf.json, chips[0].readings[0].lab[1]: must be a number such as 1.25, was \"x\"",
                "`[70, -20, 5]` | `[270, -20, 5]`"
                        + " | shelf.json, chips[0].readings[0].lab: L* must be 0 to 100.5, was 270.0; correct it there",
                "`\"light\": \"D65\", ` | `` | shelf.json, chips[0].readings[0]: the field \"light\" is missing; add it",
                "`\"D65\"` | `\"D66\"` | shelf.json, chips[0].readings[0]: illuminant must be one of A, D50, D65, D75, FL2, FL11,"
                        + " FL12, LED-B1, LED-B3, LED-B5 or a daylight such as D5500K, was \"D66\"; correct it there",
                "`\"observer\": 10` | `\"observer\": 5`"
                        + " | shelf.json, chips[0].readings[0]: observer must be 2 or 10 degrees, was 5; correct it there",
                "`\"film\": \"cured\"` | `\"film\": \"dry\"`"
                        + " | shelf.json, chips[0].readings[0].film: must be \"wet\" or \"cured\", was \"dry\"",
                "`\"id\": \"soot\"` | `\"id\": \"moss\"` | shelf.json: two things on the shelf are called \"moss\" (a tint and"
                        + " a tint): give one of them another id",
            })
    void namesFilePlaceAndRemedy(String good, String slip, String said) {
        String text = GOOD.replace(good.strip(), slip == null ? "" : slip.strip());
        assertFalse(text.equals(GOOD), "the slip must change the file");
        FileProblem problem =
                assertThrows(FileProblem.class, () -> ShelfFile.from(JsonPlace.parse("shelf.json", text)));
        assertEquals(said, problem.getMessage());
        assertTrue(problem.isAboutInput());
    }

    @Test
    void namesTheLineOfWhatIsNotJson() {
        String broken = GOOD.replace("\"Soot\",", "\"Soot\"");
        String said = assertThrows(FileProblem.class, () -> JsonPlace.parse("shelf.json", broken))
                .getMessage();
        assertTrue(said.startsWith("shelf.json, line 5, column "), said);
        for (String text : List.of("", "   ", "{", "[1, 2] 3", "{\"a\": 1, \"a\": 2}", "[".repeat(5000), "1e999")) {
            FileProblem problem =
                    assertThrows(FileProblem.class, () -> ShelfFile.from(JsonPlace.parse("shelf.json", text)), text);
            assertTrue(problem.getMessage().startsWith("shelf.json"), problem.getMessage());
            assertEquals(1, problem.getMessage().lines().count(), problem.getMessage());
        }
    }

    @Test
    void namesFilesThatAreNotThereOrNotText(@TempDir Path folder) throws IOException {
        Path missing = folder.resolve("none.json");
        assertEquals(
                missing + " is not there; check the name and the folder",
                assertThrows(FileProblem.class, () -> ShelfFile.read(missing)).getMessage());
        assertEquals(
                folder + " is a folder; name a file in it",
                assertThrows(FileProblem.class, () -> ShelfFile.read(folder)).getMessage());
        Path bytes = Files.write(folder.resolve("bytes.json"), new byte[] {(byte) 0xC3, 0x28});
        assertEquals(
                bytes + " is not UTF-8 text; save it as UTF-8 or name another",
                assertThrows(FileProblem.class, () -> ShelfFile.read(bytes)).getMessage());
    }

    @Test
    void writesNothingWhereItCannotAndLeavesNoDraft(@TempDir Path folder) throws Exception {
        Path nowhere = folder.resolve("no").resolve("shelf.json");
        assertThrows(FileProblem.class, () -> ShelfFile.at(nowhere).create(everything()));
        assertThrows(FileProblem.class, () -> ShelfFile.at(folder).create(everything()));
        Path file = folder.resolve("shelf.json");
        ShelfFile.at(file).create(everything());
        try (var files = Files.list(folder)) {
            assertEquals(List.of(file), files.toList());
        }
    }

    @Test
    void moreThanCanBeWorkedWithIsToldInOneSentence(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("shelf.json");
        StringBuilder tints = new StringBuilder();
        for (int i = 0; i < 300; i++) {
            tints.append(i == 0 ? "" : ",").append("{\"id\": \"t").append(i).append("\", \"family\": \"violet\"}");
        }
        String head = "{\"formatVersion\": 1, \"kind\": \"shelf\", \"bases\": [{\"id\": \"white\"}], ";
        Files.writeString(file, head + "\"tints\": [" + tints + "]}");
        FileProblem many = assertThrows(FileProblem.class, () -> ShelfFile.read(file));
        assertTrue(many.getMessage().contains("300 tints, at most 60"), many.getMessage());

        Files.writeString(file, head + "\"chips\": [" + "{},".repeat(99_999) + "{}]}");
        FileProblem chips = assertThrows(FileProblem.class, () -> ShelfFile.read(file));
        assertTrue(chips.getMessage().contains("100000 chips, at most 10000"), chips.getMessage());
    }
}
