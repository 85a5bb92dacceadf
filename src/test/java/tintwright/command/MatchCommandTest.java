package tintwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tintwright.demo.MeteredShop;

class MatchCommandTest {
    private static CommandLineTest.Ran match(String... args) {
        String[] all = new String[args.length + 1];
        all[0] = "match";
        System.arraycopy(args, 0, all, 1, args.length);
        return CommandLineTest.run(Commands.all(), all);
    }

    private static JsonNode json(String... args) throws IOException {
        CommandLineTest.Ran ran = match(args);
        assertEquals(0, ran.code(), ran.err());
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    void tellsWhatToWeighFirst() {
        CommandLineTest.Ran ran = match(
                "--target",
                MeteredShop.BOW_FILE,
                "--shelf",
                MeteredShop.SHELF_FILE,
                "--grams",
                "150",
                "--scale",
                "0.1");
        assertEquals(0, ran.code(), ran.err());
        List<String> lines = ran.out().lines().toList();
        int weigh = lines.indexOf("Weigh in this order, for 150.0 g:");
        assertTrue(weigh > 0, ran.out());
        assertTrue(lines.get(weigh + 1).contains("plain white"), ran.out());
    }

    @Test
    void theRecipeAddsUpAndTheDemoIsReached() throws IOException {
        JsonNode json = json("--place", "port bow", "--json", "--grams", "80");
        JsonNode best = json.get("recipes").get(0);
        assertTrue(json.get("reached").booleanValue());
        assertTrue(best.get("deltaE").doubleValue() < 0.3, best.get("deltaE").toString());
        double grams = 0;
        double shares = 0;
        for (JsonNode part : best.get("parts")) {
            grams += part.get("grams").doubleValue();
            shares += part.get("share").doubleValue();
            assertEquals(0, Math.IEEEremainder(part.get("grams").doubleValue(), 0.01), 1e-9);
        }
        assertEquals(80, grams, 0.05);
        assertEquals(1, shares, 1e-5);
        assertEquals(List.of("D65", "A", "LED-B3", "FL11"), best.get("lights").findValuesAsText("light"));
    }

    @Test
    void aColourThatWasTypedInIsMatchedUnderItsOwnLight() throws IOException {
        JsonNode json = json("--lab", "62.1,-3.4,11.0", "--light", "a", "--observer", "2", "--json");
        assertEquals(
                "A", json.get("recipes").get(0).get("predicted").get("light").textValue());
        assertTrue(json.get("recipes").get(0).get("lightsEstimated").booleanValue());
    }

    @Test
    void saysWhatTheShelfHasTooLittleOf() {
        String out = match("--place", "port bow", "--grams", "5000").out();
        assertTrue(out.contains("Only 2400.0 g of plain white are left on the shelf."), out);
        assertFalse(match("--place", "port bow", "--grams", "500").out().contains("are left on the shelf"));
    }

    @Test
    void doesNotBlameTheTintsForACoarseScale() {
        String out = match("--place", "stern quarter", "--grams", "100", "--scale", "1")
                .out();
        assertTrue(out.contains("the scale is too coarse for this batch"), out);
        assertFalse(out.contains("do not reach"), out);
    }

    @Test
    void aColourNoTintReachesIsAnAnswerToo() throws IOException {
        JsonNode json = json("--lab", "50,70,40", "--light", "D65", "--observer", "10", "--json");
        assertFalse(json.get("reached").booleanValue());
        assertTrue(json.get("outOfReach").get("deltaE").doubleValue() > 1);
    }

    @Test
    void saysTheSameInEveryCountry() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.ROOT);
            String plain = match("--place", "stern quarter").out();
            Locale.setDefault(Locale.forLanguageTag("tr-TR-u-nu-arab"));
            assertEquals(plain, match("--place", "Stern Quarter").out());
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest(name = "match {0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`` | Say what to match: --lab L,A,B with --light and --observer, or --target FILE.",
                "--lab 62,-3 | --lab must be three numbers such as 62.1,-3.4,11.0, was \"62,-3\".",
                "--lab 62,x,1 --light D65 --observer 10"
                        + " | --lab must be three numbers such as 62.1,-3.4,11.0, but \"x\" is not a number such as 12.5.",
                "--lab 62,NaN,1 --light D65 --observer 10"
                        + " | --lab must be three numbers such as 62.1,-3.4,11.0, but \"NaN\" is not a number such as 12.5.",
                "--lab 162,1,1 --light D65 --observer 10 | L* must be 0 to 100.5, was 162.0.",
                "--lab 62,-3,11 | Say under which light and for which observer --lab was read, such as --light D65"
                        + " --observer 10.",
                "--lab 62,-3,11 --light D65 | --light and --observer belong together, such as --light D65 --observer 10.",
                "--lab 62,-3,11 --light sun --observer 10 | Illuminant must be one of A, D50, D65, D75, FL2, FL11, FL12, LED-B1,"
                        + " LED-B3, LED-B5 or a daylight such as D5500K, was \"sun\".",
                "--lab 62,-3,11 --light D65 --observer 7 | Observer must be 2 or 10 degrees, was 7.",
                "--lab 62,-3,11 --light D65 --observer ten | Invalid value for option '--observer': 'ten' is not an int;"
                        + " \"tintwright match --help\" shows what it takes.",
                "--place nowhere | There is no place \"nowhere\" on the demo boat; its places are port bow, stern quarter.",
                "--place stern --target x.json | Give only one of --lab, --target and --place.",
                "--target no-such.json | no-such.json is not there; check the name and the folder.",
                "--place stern~quarter --grams -5 | The batch must be 1 to 100000 g, was -5.0 g.",
                "--place stern~quarter --grams 5 --scale 0.1 | A batch of 5.0 g cannot be weighed in steps of 0.1 g: make at"
                        + " least 10.0 g or take a finer scale.",
                "stern | \"stern\" is not understood here; \"tintwright match --help\" shows what it takes.",
                "--place stern~quarter --scale 0 | The scale's step must be 0.0001 to 10 g, was 0.0 g.",
                "--place stern~quarter --without gold | There is no tint \"gold\" on the shelf to leave out.",
                "--place stern~quarter --base gold | There is no base \"gold\" on the shelf.",
                "--place stern~quarter --leftover gold | There is no leftover \"gold\" on the shelf.",
                "--place stern~quarter --shelf swatches/tarrowmere/port-bow.json | swatches/tarrowmere/port-bow.json, kind: a"
                        + " shelf file was wanted, this is a target file; name another.",
            })
    void refusesInOneSentence(String typed, String sentence) {
        String[] args = typed.isBlank()
                ? new String[0]
                : java.util.Arrays.stream(typed.split(" "))
                        .map(word -> word.replace('~', ' '))
                        .toArray(String[]::new);
        assertEquals(new CommandLineTest.Ran(2, "", sentence + "\n"), match(args));
    }

    /** The bad files of the first issue, each through the real command; the file stays as it was. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"bases\": [ | \"bases\": [], \"boxes\": [ | boxes: no such field is known here",
                "\"kind\": \"shelf\" | \"kind\": \"shelf\" \"x\" | line 3",
                "\"soot-black\": 0.15 | \"soot-black\": -0.15 | parts.soot-black: a mass must be 0 g or more, was -0.15 g",
                "\"soot-black\": 0.15 | \"coal\": 0.15 | holds \"coal\", which is not on the shelf",
                "\"formatVersion\": 2 | \"formatVersion\": 9 | open it with a newer Tintwright (the file was left as it was)",
            })
    void leavesABadShelfAsItWas(String good, String bad, String said, @TempDir Path folder) throws IOException {
        String text = Files.readString(Path.of(MeteredShop.SHELF_FILE));
        assertTrue(text.contains(good));
        Path file = Files.writeString(folder.resolve("shelf.json"), text.replace(good, bad));
        FileTime touched = Files.getLastModifiedTime(file);
        CommandLineTest.Ran ran = match("--place", "port bow", "--shelf", file.toString());
        assertEquals(2, ran.code());
        assertEquals("", ran.out());
        assertEquals(1, ran.err().lines().count(), ran.err());
        assertTrue(ran.err().contains(file.toString()) && ran.err().contains(said), ran.err());
        assertEquals(text.replace(good, bad), Files.readString(file));
        assertEquals(touched, Files.getLastModifiedTime(file));
    }

    @Test
    void refusesAShelfWithoutABaseAndATintOfWhichNothingIsKnown(@TempDir Path folder) throws IOException {
        Path bare = Files.writeString(
                folder.resolve("bare.json"), "{\"formatVersion\": 1, \"kind\": \"shelf\", \"bases\": []}");
        assertEquals(
                bare + ": the shelf has no base: add the white gel coat that tints go into.\n",
                match("--place", "port bow", "--shelf", bare.toString()).err());
        Path mute = Files.writeString(
                folder.resolve("mute.json"),
                "{\"formatVersion\": 1, \"kind\": \"shelf\","
                        + " \"bases\": [{\"id\": \"w\"}], \"tints\": [{\"id\": \"moss\"}]}");
        CommandLineTest.Ran ran = match("--place", "port bow", "--shelf", mute.toString());
        assertEquals(2, ran.code());
        assertEquals(
                mute + ", tints[0]: the tint \"moss\" has neither a family nor a chip, so nothing is known of"
                        + " it; give it a \"family\" (\"unknown\" is allowed) or a chip.\n",
                ran.err());
    }

    @Test
    void takesWhatAnInstrumentWroteAndAsksWhichSample(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(
                folder.resolve("hull.csv"), "name,L,a,b\nbow,62,-9,3\nbow,62.2,-9.1,3\nstern,80,1,14\n");
        String[] common = {"--target", file.toString(), "--light", "D65", "--observer", "10", "--gloss", "out"};
        assertEquals(
                file + " holds the samples bow, stern; say which one is the target.\n",
                match(common).err());
        String[] bow = java.util.Arrays.copyOf(common, common.length + 3);
        bow[common.length] = "--sample";
        bow[common.length + 1] = "bow";
        bow[common.length + 2] = "--json";
        assertEquals(62.1, json(bow).get("target").get("lab").get(0).doubleValue(), 1e-6);
    }
}
