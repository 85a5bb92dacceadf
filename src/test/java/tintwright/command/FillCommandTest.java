package tintwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FillCommandTest {
    private static CommandLineTest.Ran fill(String... args) {
        List<String> line = new ArrayList<>(List.of("fill"));
        line.addAll(List.of(args));
        return CommandLineTest.run(Commands.all(), line.toArray(String[]::new));
    }

    @Test
    void worksOutTheDemoAndWritesBothSheets(@TempDir Path folder) throws Exception {
        Path pdf = folder.resolve("sheet.pdf");
        Path html = folder.resolve("sheet.html");
        CommandLineTest.Ran ran = fill("--demo", "--pdf", pdf.toString(), "--html", html.toString());
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().startsWith("Fill job: Tarrowmere, port bow"), ran.out());
        assertEquals("%PDF-", new String(Files.readAllBytes(pdf), 0, 5, StandardCharsets.US_ASCII));
        assertTrue(Files.readString(html).contains("Tarrowmere, port bow"));
    }

    @Test
    void typedRepairsAndAFileOfTheSameJobAgree(@TempDir Path folder) throws Exception {
        Path job = folder.resolve("job.json");
        Files.writeString(job, """
                {"formatVersion": 1, "kind": "fill-job", "conditions": {"celsius": 20, "humidityPercent": 60},
                 "materials": {"hidingFilm": 0.4},
                 "repairs": [{"name": "fender", "kind": "gouge", "count": 2, "lie": "vertical",
                              "length": 60, "width": 12, "depth": 3},
                             {"name": "patch", "kind": "spray", "lie": "vertical", "length": 200, "width": 100}]}
                """);
        CommandLineTest.Ran file = fill("--job", job.toString(), "--json");
        CommandLineTest.Ran typed = fill(
                "--celsius",
                "68F",
                "--humidity",
                "60",
                "--hiding",
                "0.4mm",
                "--repair",
                "gouge:name=fender,count=2,lie=vertical,length=60,width=12,depth=3",
                "--repair",
                "spray:name=patch,lie=vertical,length=200,width=100",
                "--json");
        assertEquals(0, typed.code(), typed.err());
        assertEquals(file.out(), typed.out());
        JsonNode plan = new ObjectMapper().readTree(typed.out());
        assertEquals("fill", plan.get("command").textValue());
        JsonNode gouges = plan.get("repairs").get(0);
        assertEquals(
                2 * Math.PI / 6 * 60 * 12 * 3 / 1000,
                gouges.get("netMl").doubleValue() + gouges.get("belowMl").doubleValue(),
                1e-6); // two numbers of six decimals
    }

    @Test
    void inchesAndMillimetresOfTheSameHoleAgree() {
        CommandLineTest.Ran metric =
                fill("--celsius", "22", "--json", "--repair", "hole:hole=12.7,depth=6.35,lie=vertical,count=9");
        CommandLineTest.Ran us = fill(
                "--celsius",
                "22",
                "--json",
                "--units",
                "us",
                "--repair",
                "hole:hole=1/2,depth=0.25in,lie=vertical,count=9");
        assertEquals(0, us.code(), us.err());
        String grams = "\"gelCoatGrams\": [0-9.]+";
        assertEquals(first(metric.out(), grams), first(us.out(), grams));
        assertTrue(us.out().contains(" in "), "words are in inches");
    }

    @Test
    void aRecipeBringsItsDensityItsHidingAndItsPaste() throws Exception {
        CommandLineTest.Ran ran = fill(
                "--celsius",
                "20",
                "--recipe",
                "plain-white=97,soot-black=3",
                "--base-hides",
                "0.5mm",
                "--repair",
                "hole:hole=9,depth=5,lie=vertical,count=20");
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("plain white: ") && ran.out().contains("soot black: "), ran.out());
        assertTrue(
                java.util.regex.Pattern.compile("Hides from: 0\\.[0-4]\\d mm neat")
                        .matcher(ran.out())
                        .find(),
                ran.out());
    }

    @Test
    void showsTimesOfDayFromCatalysedNow() {
        CommandLineTest.Ran ran = fill("--demo", "--catalysed", "23:55");
        assertTrue(
                ran.out().contains("Catalysed at 23:55:\n  stop spreading: 00:08 next day to 00:19 next day"),
                ran.out());
    }

    @Test
    void aRepairThatCannotBeIsLeftOutWithItsReasonAndTheRestIsPlanned() throws Exception {
        CommandLineTest.Ran ran = fill(
                "--celsius",
                "22",
                "--repair",
                "hole:hole=-5,depth=4,lie=vertical",
                "--repair",
                "hole:hole=5,depth=4,lie=vertical,count=3",
                "--json");
        assertEquals(0, ran.code(), ran.err());
        JsonNode plan = new ObjectMapper().readTree(ran.out());
        assertTrue(plan.get("leftOut").get(0).textValue().startsWith("repair 1: "), ran.out());
        assertTrue(plan.get("leftOut").get(0).textValue().contains("was -5 mm"), ran.out());
        assertEquals("hole 2", plan.get("repairs").get(0).get("name").textValue());
    }

    @Test
    void weatherThatForbidsWorkSaysWhatWouldAllowItAndShowsThePlan() throws Exception {
        CommandLineTest.Ran ran =
                fill("--celsius", "3", "--repair", "hole:hole=5,depth=4,lie=vertical,count=3", "--json");
        assertEquals(0, ran.code(), ran.err());
        JsonNode plan = new ObjectMapper().readTree(ran.out());
        assertTrue(plan.get("workForbidden").booleanValue());
        assertTrue(ran.out().contains("Warm hull, cup and air to that"), ran.out());
        assertTrue(plan.get("batches").size() > 0);
    }

    @Test
    void hullCupAndAirAreTakenApartAndTheShopsTimesTeach() throws Exception {
        String[] hot = {
            "--celsius",
            "31",
            "--hull-celsius",
            "34C",
            "--humidity",
            "60",
            "--repair",
            "hole:hole=5,depth=4,lie=vertical,count=3",
            "--json"
        };
        CommandLineTest.Ran plain = fill(hot);
        assertTrue(plain.out().contains("HOT".toLowerCase(java.util.Locale.ROOT) + "-hull"), plain.out());
        List<String> taught = new ArrayList<>(List.of(hot));
        taught.addAll(List.of("--noted", "31C,1.6,20,35", "--noted", "90F,1.6,19"));
        JsonNode before = new ObjectMapper().readTree(plain.out());
        JsonNode after =
                new ObjectMapper().readTree(fill(taught.toArray(String[]::new)).out());
        assertTrue(after.get("workingMinutes").get(0).doubleValue()
                > before.get("workingMinutes").get(0).doubleValue());
    }

    private static String first(String text, String pattern) {
        return java.util.regex.Pattern.compile(pattern)
                .matcher(text)
                .results()
                .findFirst()
                .orElseThrow()
                .group();
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "--celsius 20|Give the repairs in one way: --job FILE, --repair ... or --demo.",
                "--demo --celsius 20|With --job and --demo everything about the job stands in its file",
                "--repair hole:hole=5,depth=4,lie=vertical|Say how warm it is with --celsius",
                "--celsius 20 --repair hole:hole=5,depth=4|Repair 1 must say how its surface lies",
                "--celsius 20 --repair hole:hole=0,depth=4,lie=vertical|must be above 0 and at most",
                "--celsius 20 --repair hole:hole=-2,depth=4,lie=vertical|was -2 mm",
                "--celsius 20 --repair countersunk:hole=8,top=6,countersink=2,depth=9,lie=vertical|wider than its hole of 8 mm",
                "--celsius 20 --repair hole|a repair is typed as kind:size",
                "--celsius 20 --repair hole:hole=5,depth=4,lie=vertical,count=many|must be a whole number",
                "--celsius 20 --repair dent:hole=5|the kind of repair must be one of",
                "--celsius 20 --repair hole:hole=5,depth=4,lie=vertical,found=rot|what was found must be one of cracked, soft",
                "--celsius 20 --repair hole:hole=5mm3/8in,depth=4,lie=vertical|hole must be a number with a unit",
                "--celsius 20 --repair hole:hole=5,depth=4,lie=vertical --catalyst-with ladle=1|a scale, a syringe, a dropper or a spoon",
                "--celsius 20 --repair hole:hole=5,depth=4,lie=vertical --catalyst-with dropper=2|Drops in a millilitre must be 5 to 100",
                "--celsius 20 --repair hole:hole=5,depth=4,lie=vertical --noted 24C,1.8|--noted is temperature",
                "--celsius 90F --repair hole:hole=5,depth=4,lie=vertical --catalyst 4 --basis mass|Catalyst must be 1.2 to 3 %",
                "--celsius 20 --repair hole:hole=5,depth=4,lie=vertical --catalyst 2|--catalyst and --basis go together",
                "--celsius 20 --repair hole:hole=5,depth=4,lie=vertical --gelcoat-density 0|was 0 g/ml; the data sheet gives it",
                "--celsius 20 --repair hole:hole=5,depth=4,lie=vertical --reserve 9|--reserve needs --cup beside it",
                "--demo --catalysed noon|--catalysed must be a time of day such as 14:05",
                "--celsius 20 --repair hole:hole=5,depth=4,lie=vertical --base-hides 0.5mm|need --recipe",
                "--celsius 20 --repair hole:hole=5,depth=4,lie=vertical --recipe chalk=5|no base, tint or leftover",
                "--celsius 20 --repair hole:hole=5,depth=4,lie=vertical --recipe chalk=5 --waxed|come from the shelf",
                "--demo --units imperial|Units must be metric or us",
                "--demo --paper legal|The paper must be a4 or letter",
                "--job no-such-file.json|o-such-file.json is not there"
            })
    void refusesInOneSentenceWithTwo(String line, String words) {
        CommandLineTest.Ran ran = fill(line.split(" +"));
        assertEquals(2, ran.code(), ran.err());
        assertEquals("", ran.out());
        assertEquals(1, ran.err().lines().count(), ran.err());
        assertTrue(ran.err().contains(words), ran.err());
    }
}
