package tintwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tintwright.demo.MeteredShop;
import tintwright.files.ShelfFile;
import tintwright.shelf.Shelf;

class LearnCommandTest {
    private static final Path CONTRADICTORY = Path.of("src/test/resources/tintwright/demo/contradictory-chip.json");

    private static CommandLineTest.Ran run(String... args) {
        return CommandLineTest.run(Commands.all(), args);
    }

    private static JsonNode json(String... args) throws Exception {
        CommandLineTest.Ran ran = run(args);
        assertEquals(0, ran.code(), ran.err());
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    void namesTheChipThatContradictsTheOthers() throws Exception {
        JsonNode json = json(
                "learn", "--shelf", MeteredShop.SHELF_FILE, "--chips", CONTRADICTORY.toString(), "--look", "--json");
        assertEquals(1, json.get("doubts").size());
        JsonNode doubt = json.get("doubts").get(0);
        assertEquals("ink-blue again", doubt.get("chip").textValue());
        assertEquals("ink-blue", doubt.get("part").textValue());
        assertEquals(1.0 / 3, doubt.get("factor").doubleValue(), 0.06);
        assertEquals(1, json.get("changes").get(0).get("strengthFactor").doubleValue(), 0.12, "it counts little");
    }

    /** Four chips in a spreadsheet, one of them read twice, on a shelf that knows the tints by family only. */
    @Test
    void learnsFromASpreadsheetAndWritesTheShelf(@TempDir Path folder) throws Exception {
        Shelf demo = ShelfFile.read(Path.of(MeteredShop.SHELF_FILE));
        Path shelf = folder.resolve("shelf.json");
        ShelfFile.at(shelf).create(demo.withChips(java.util.List.of()));
        Path chips = Files.writeString(folder.resolve("chips.csv"), """
                # invented
                chip;made on;g plain-white;g soot-black;g brick-red;L;a;b
                white;2026-03-14;50;;;94,9;-1,3;2,7
                soot 0.3 %;2026-03-14;49,85;0,15;;77,2;-0,8;-0,3
                soot 0.3 %;2026-03-14;49,85;0,15;;77,0;-0,7;-0,2
                brick;2026-03-14;49;;1;69,7;19,2;6,1
                """);
        JsonNode before = json("shelf", "--shelf", shelf.toString(), "--json");
        JsonNode learned = json(
                "learn",
                "--shelf",
                shelf.toString(),
                "--chips",
                chips.toString(),
                "--light",
                "D65",
                "--observer",
                "10",
                "--gloss",
                "in",
                "--json");
        assertEquals(3, learned.get("chips").intValue());
        assertEquals(shelf.toString(), learned.get("written").textValue());
        Shelf after = ShelfFile.read(shelf);
        assertEquals(2, after.chips().get(1).readings().size());
        JsonNode now = json("shelf", "--shelf", shelf.toString(), "--json");
        double soot = deviation(now, "soot-black");
        assertTrue(soot < 0.25 * deviation(before, "soot-black"), "the chip says how strong the black is: " + soot);
        assertTrue(deviation(now, "ink-blue") > 0.3, "nobody read a blue chip");
        JsonNode next = json(
                        "match",
                        "--lab",
                        "70,-8,-20",
                        "--light",
                        "D65",
                        "--observer",
                        "10",
                        "--shelf",
                        shelf.toString(),
                        "--json")
                .get("nextChip");
        assertEquals("ink-blue", next.get("tint").textValue(), "the blue is what the recipe hangs on");
        assertTrue(
                next.get("spreadAfter").doubleValue() < next.get("spreadBefore").doubleValue());
    }

    private static double deviation(JsonNode shelf, String id) {
        for (JsonNode item : shelf.get("items")) {
            if (item.get("id").textValue().equals(id)) {
                return item.get("strengthDeviation").doubleValue();
            }
        }
        throw new AssertionError(id + " is not listed");
    }

    @Test
    void saysWhatHasGrownOldAndWhatRunsLow() {
        String old = run("shelf", "--shelf", MeteredShop.SHELF_FILE, "--today", "2026-09-01")
                .out();
        assertTrue(old.contains("past its shelf life since 2026-08-02"), old);
        assertTrue(old.contains("berry red") && old.contains("running low"), old);
        assertTrue(run("shelf", "--shelf", MeteredShop.SHELF_FILE, "--today", "2026-07-20")
                .out()
                .contains("shelf life ends on 2026-08-02"));
        List<String> toBuy = run("shelf", "--shelf", MeteredShop.SHELF_FILE, "--today", "2026-09-01", "--to-buy")
                .out()
                .lines()
                .toList();
        assertTrue(toBuy.get(0).startsWith("To buy for ") && toBuy.get(0).endsWith(", 2026-09-01"), toBuy.toString());
        assertTrue(toBuy.stream().anyMatch(line -> line.startsWith("berry red: running low, ")), toBuy.toString());
        assertTrue(toBuy.stream().noneMatch(line -> line.contains("sea grey")), "a leftover is not bought: " + toBuy);
        List<String> spring = run("shelf", "--shelf", MeteredShop.SHELF_FILE, "--today", "2026-05-01")
                .out()
                .lines()
                .filter(line -> line.contains("shelf life"))
                .toList();
        assertEquals(1, spring.size(), "only the mixed cup, which keeps for a season: " + spring);
        assertTrue(spring.get(0).contains("sea grey, last autumn"), spring.get(0));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`chip,g plain-white,g gold,L,a,b\nk,50,1,60,0,0`"
                        + " | chip \"k\" holds \"gold\", which is not on the shelf",
                "`chip,g plain-white,L,a,b\nink-blue 2 %,50,60,0,0`"
                        + " | two things on the shelf are called \"ink-blue 2 %\"",
                "`chip,g plain-white,L,a,b\nk,-50,60,0,0` | column \"g plain-white\": a mass must be 0 g or more",
                "`chip,g plain-white,L,a,b\nk,0,60,0,0` | line 2: the parts hold nothing",
                "`chip,g plain-white,L,a,b\nk,50,60,0,0\nk,51,60,0,0` | line 3: the chip \"k\" stands above with other parts",
                "`chip,g plain-white,made on,L,a,b\nk,50,May,60,0,0` | must be a date such as 2026-05-31, was \"May\"",
                "`g plain-white,L,a,b\n50,60,0,0` | a column \"chip\" is missing",
                "`chip,L,a,b\nk,60,0,0` | no column says what is in the chips",
                "`chip,g plain-white,L,a,b\n` | there is no chip to learn from",
            })
    void leavesTheShelfAsItWasWhenAChipCannotBe(String csv, String said, @TempDir Path folder) throws Exception {
        Path shelf = Files.copy(Path.of(MeteredShop.SHELF_FILE), folder.resolve("shelf.json"));
        Path chips = Files.writeString(folder.resolve("chips.csv"), csv);
        CommandLineTest.Ran ran = run(
                "learn",
                "--shelf",
                shelf.toString(),
                "--chips",
                chips.toString(),
                "--light",
                "D65",
                "--observer",
                "10",
                "--gloss",
                "in");
        assertEquals(2, ran.code());
        assertEquals(1, ran.err().lines().count());
        assertTrue(
                ran.err().toLowerCase(java.util.Locale.ROOT).contains(said.toLowerCase(java.util.Locale.ROOT)),
                ran.err());
        assertEquals(-1, Files.mismatch(shelf, Path.of(MeteredShop.SHELF_FILE)));
    }

    @Test
    void theShelfOfSomebodyElseIsNotWrittenOver(@TempDir Path folder) throws Exception {
        Path theirs = Files.copy(Path.of("swatches/shelf.json"), folder.resolve("theirs.json"));
        CommandLineTest.Ran ran = run(
                "learn",
                "--shelf",
                MeteredShop.SHELF_FILE,
                "--chips",
                CONTRADICTORY.toString(),
                "--out",
                theirs.toString());
        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("is there already and was left as it was: name another file"), ran.err());
        assertEquals("", ran.out());
        assertEquals(-1, Files.mismatch(theirs, Path.of("swatches/shelf.json")));
    }

    @Test
    void doesNotWriteOverTheDemo() {
        assertEquals(
                new CommandLineTest.Ran(
                        2,
                        "",
                        "The demo shelf cannot be written: name yours with --shelf,"
                                + " another with --out, or use --look.\n"),
                run("learn", "--chips", CONTRADICTORY.toString()));
    }
}
