package tintwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tintwright.demo.MeteredShop;

/** A cup from the first white to the last word, by commands alone. */
class CupCommandTest {
    @TempDir
    private Path folder;

    private CommandLineTest.Ran run(String at, String word, String... rest) {
        List<String> args = new ArrayList<>(List.of(word.split(" ")));
        args.addAll(List.of(
                "--cup",
                folder.resolve("bow.json").toString(),
                "--shelf",
                MeteredShop.SHELF_FILE,
                "--at",
                "2026-05-31T09:" + at + "Z"));
        args.addAll(List.of(rest));
        return CommandLineTest.run(Commands.all(), args.toArray(String[]::new));
    }

    private JsonNode json(String at, String word, String... rest) throws Exception {
        List<String> more = new ArrayList<>(List.of(rest));
        more.add("--json");
        CommandLineTest.Ran ran = run(at, word, more.toArray(String[]::new));
        assertEquals(0, ran.code(), ran.err());
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    void theEyeBringsACupOnWhoseHullNobodyRead() throws Exception {
        assertEquals(
                0,
                run("01:00", "cup start", "--hull-like", "cream", "--grams", "100")
                        .code());
        run("01:10", "cup add", "--planned");
        JsonNode dosed = json("01:20", "cup show");
        JsonNode seen = json("02:00", "cup eye", "--depth", "a little light", "--hue", "much blue");
        assertEquals(1, seen.get("eye").get("answers").intValue());
        assertTrue(
                seen.get("outlook").get("within90").doubleValue()
                        < dosed.get("outlook").get("within90").doubleValue(),
                seen.toString());
        assertEquals("doses", seen.get("plan").get("next").textValue());
        assertTrue(run("02:10", "cup show").out().contains("a little too light and much too blue"));

        CommandLineTest.Ran early = run("02:11", "cup eye", "--trial", "--depth", "same");
        assertEquals(2, early.code());
        assertTrue(early.err().contains("o trial dab is asked for now"), early.err());
        JsonNode asked = seen;
        for (int turn = 0; turn < 4 && asked.get("plan").get("next").textValue().equals("doses"); turn++) {
            run("02:12", "cup add", "--planned");
            asked = json("02:12", "cup plan");
        }
        assertEquals("trial", asked.get("plan").get("next").textValue(), asked.toString());
        double mass = asked.get("mass").doubleValue();
        JsonNode tried = json("02:13", "cup eye", "--trial", "--depth", "much dark", "--hue", "none");
        assertEquals(2, tried.get("eye").get("answers").intValue());
        assertEquals(mass - 4, tried.get("mass").doubleValue(), 1e-6);
        String story = run("02:14", "cup show").out();
        assertTrue(story.contains("trial dab of 4 g with ") && story.contains("much too dark and no other hue"), story);

        JsonNode row = json("02:15", "cup plan").get("plan");
        assertEquals("trial", row.get("next").textValue(), row.toString());
        assertEquals(2, row.get("dabs").size());
        assertEquals(row.get("doses"), row.get("dabs").get(0).get("doses"));
        CommandLineTest.Ran absent = run("02:16", "cup eye", "--trial", "3", "--depth", "much dark");
        assertEquals(2, absent.code());
        assertTrue(absent.err().contains("numbered 1 to 2, the lightest first"), absent.err());
        JsonNode nearest = json("02:17", "cup eye", "--trial", "1", "--depth", "little dark", "--hue", "none");
        assertEquals(mass - 12, nearest.get("mass").doubleValue(), 1e-6);
        assertTrue(run("02:18", "cup show").out().contains("nearer than with "));

        String before = Files.readString(folder.resolve("bow.json"));
        CommandLineTest.Ran warm = run("02:20", "cup eye", "--hue", "warm");
        assertEquals(2, warm.code());
        assertTrue(warm.err().contains("is no answer this bench knows"), warm.err());
        assertEquals(2, run("02:21", "cup eye").code());
        assertEquals(
                2, run("02:22", "cup eye", "--cannot-tell", "--hue", "none").code());
        assertEquals(before, Files.readString(folder.resolve("bow.json")));
        JsonNode none = json("02:30", "cup eye", "--cannot-tell");
        assertEquals(nearest.get("outlook"), none.get("outlook"));
    }

    @Test
    void worksACupByCommands() throws Exception {
        JsonNode start = json("00:00", "cup start", "--target", MeteredShop.BOW_FILE, "--grams", "100");
        assertEquals("cup start", start.get("command").textValue());
        double white = start.get("plan").get("white").doubleValue();
        double reserve = start.get("plan").get("reserve").doubleValue();
        assertTrue(reserve >= (white + reserve) / 3 - 0.01, start.toString());

        CommandLineTest.Ran again = run("00:30", "cup start", "--target", MeteredShop.BOW_FILE);
        assertEquals(2, again.code());
        assertTrue(again.err().contains("is there already"), again.err());

        JsonNode planned = json("01:00", "cup add", "--planned");
        assertEquals(white, planned.get("mass").doubleValue(), 1e-6);
        assertEquals("doses", planned.get("plan").get("next").textValue());
        assertEquals(
                "soot-black",
                planned.get("plan").get("doses").get(0).get("part").textValue());

        assertEquals(
                0,
                run("02:00", "cup add", "--part", "soot-black", "--grams", "0.13")
                        .code());
        CommandLineTest.Ran twice = run("02:05", "cup add", "--part", "soot-black", "--grams", "0.13");
        assertEquals(2, twice.code());
        assertTrue(twice.err().contains("did it go in twice?"), twice.err());
        assertTrue(json("02:06", "cup show").get("entries").size() == 3, "nothing was written");
        assertEquals(
                0,
                run("02:07", "cup add", "--part", "soot-black", "--grams", "0.13", "--again")
                        .code());
        assertEquals(0, run("02:20", "cup undo").code());
        JsonNode fixed = json("03:00", "cup fix", "--entry", "e3", "--grams", "0.31");
        assertEquals(0.31, fixed.get("grams").get("soot-black").doubleValue(), 1e-9);

        CommandLineTest.Ran can = run("04:00", "cup add", "--part", "soot-black", "--grams", "2500");
        assertEquals(2, can.code());
        assertTrue(can.err().startsWith("The can of soot black holds 210 g"), can.err());

        String before = Files.readString(folder.resolve("bow.json"));
        JsonNode strange =
                json("05:00", "cup read", "--lab", "40,30,-20", "--light", "D65", "--observer", "10", "--gloss", "in");
        assertFalse(strange.get("counts").booleanValue());
        assertEquals(fixed.get("verdict"), strange.get("verdict"), "nothing was learned");
        assertEquals(0, run("05:30", "cup undo").code());
        assertTrue(Files.readString(folder.resolve("bow.json")).length() > before.length(), "nothing is ever lost");

        JsonNode really = json("05:40", "cup fix", "--entry", "e3", "--grams", "0.93");
        json("05:41", "cup fix", "--entry", "e3", "--grams", "0.31");
        JsonNode lab = really.get("outlook").get("lab");
        CommandLineTest.Ran torn = run(
                "05:42",
                "cup read",
                "--lab",
                lab.get(0) + "," + lab.get(1) + "," + lab.get(2),
                "--light",
                "D65",
                "--observer",
                "10",
                "--gloss",
                "in");
        assertEquals(0, torn.code(), torn.err());
        assertTrue(
                torn.out().contains("disagree by") && torn.out().contains("cup fix --entry e3 --grams 0.9"),
                torn.out());
        assertEquals(
                "e3",
                json("05:43", "cup plan")
                        .get("contradiction")
                        .get("slips")
                        .get(0)
                        .get("entry")
                        .textValue());
        assertEquals(0, run("05:44", "cup undo").code());

        double l = fixed.get("outlook").get("lab").get(0).doubleValue();
        double a = fixed.get("outlook").get("lab").get(1).doubleValue();
        double b = fixed.get("outlook").get("lab").get(2).doubleValue();
        JsonNode read = json(
                "06:00",
                "cup read",
                "--lab",
                l + "," + a + "," + b,
                "--light",
                "D65",
                "--observer",
                "10",
                "--gloss",
                "in");
        assertTrue(read.get("counts").booleanValue());
        JsonNode ways = json("07:00", "correct");
        assertEquals("climb", ways.get("ways").get(0).get("way").textValue());
        long recommended = 0;
        for (JsonNode way : ways.get("ways")) {
            recommended += way.get("recommended").isNull() ? 0 : 1;
        }
        assertEquals(ways.get("ways").size() > 1 ? 1 : 0, recommended, "where there is a choice one is recommended");
        JsonNode followed = json("08:00", "correct", "--follow", "1");
        assertTrue(
                followed.get("outlook").get("expected").doubleValue()
                        < read.get("outlook").get("expected").doubleValue(),
                followed.toString());
        assertTrue(run("09:00", "cup plan").out().contains("Put a dab on a card"), "a dose is read before the next");
    }

    @Test
    void aChipIsReadAsTheHullWasWhereNobodySaysTheGloss() throws Exception {
        run("00:00", "cup start", "--target", MeteredShop.BOW_FILE, "--grams", "100");
        run("01:00", "cup add", "--planned");
        run("02:00", "cup read", "--lab", "93,-1,3", "--light", "D65", "--observer", "10", "--sure");
        JsonNode cup = new ObjectMapper().readTree(Files.readString(folder.resolve("bow.json")));
        String hull = cup.get("hull").get("readings").get(0).get("geometry").textValue();
        JsonNode entries = cup.get("entries");
        assertEquals(
                hull,
                entries.get(entries.size() - 1)
                        .get("read")
                        .get("reading")
                        .get("geometry")
                        .textValue());
    }

    @Test
    void whatIsNotPlannedCannotHaveGoneInAsPlanned() throws Exception {
        run("00:00", "cup start", "--target", MeteredShop.BOW_FILE, "--grams", "100");
        CommandLineTest.Ran last = run("01:00", "cup add", "--planned");
        for (int i = 2; last.code() == 0 && i < 9; i++) {
            last = run("0" + i + ":00", "cup add", "--planned");
        }
        assertEquals(2, last.code());
        assertTrue(last.err().startsWith("Nothing is planned to go in now"), last.err());
    }

    @Test
    void guessesACupNobodyWroteDown() throws Exception {
        CommandLineTest.Ran ran = run(
                "00:00",
                "cup start",
                "--target",
                MeteredShop.BOW_FILE,
                "--unknown",
                "80",
                "--lab",
                "70,-6,1",
                "--light",
                "D65",
                "--observer",
                "10",
                "--gloss",
                "in");
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().startsWith("Most likely in this cup:"), ran.out());
        JsonNode show = json("01:00", "cup show");
        assertEquals(80, show.get("mass").doubleValue(), 1e-3);
        assertEquals(70, show.get("outlook").get("lab").get(0).doubleValue(), 0.7);
    }

    @Test
    void refusesWhatItCannotUseInOneSentence() {
        assertEquals(
                2,
                run("00:00", "cup add", "--part", "soot-black", "--grams", "1").code());
        CommandLineTest.Ran bare = CommandLineTest.run(Commands.all(), "cup");
        assertEquals(2, bare.code());
        assertTrue(bare.err().startsWith("Say what to do with the cup"), bare.err());
        CommandLineTest.Ran unread = run("00:00", "cup start", "--target", MeteredShop.BOW_FILE, "--unknown", "80");
        assertEquals(2, unread.code());
        assertFalse(Files.exists(folder.resolve("bow.json")));
    }

    @Test
    void everyWordBelowCupHasHelpWithAnExample() {
        for (String word : List.of("start", "add", "read", "undo", "fix", "show", "plan")) {
            CommandLineTest.Ran help = CommandLineTest.run(Commands.all(), "cup", word, "--help");
            assertEquals(0, help.code(), word);
            assertTrue(help.out().contains("tintwright cup " + word), help.out());
        }
    }

    @Test
    void aTintIntoAnEmptyCupIsAnsweredOrNotWritten() throws Exception {
        assertEquals(
                0,
                run("00:00", "cup start", "--target", MeteredShop.BOW_FILE, "--grams", "100")
                        .code());
        String before = Files.readString(folder.resolve("bow.json"));
        CommandLineTest.Ran added = run("01:00", "cup add", "--part", "soot-black", "--grams", "0.3");
        String after = Files.readString(folder.resolve("bow.json"));
        assertEquals(added.code() == 0, !after.equals(before), added.code() + ": " + added.err());
        assertEquals(1, added.err().isEmpty() ? 1 : added.err().strip().lines().count());
    }

    /** A place of the demo boat goes by the same words, whether it is matched or a cup is begun for it. */
    @ParameterizedTest
    @ValueSource(strings = {"port bow", " Port Bow ", "bow", "quarter", "", " ", "r", "keel"})
    void aPlaceIsFoundAsAMatchFindsIt(String place) {
        CommandLineTest.Ran cup = run("00:00", "cup start", "--place", place, "--grams", "100");
        CommandLineTest.Ran match = CommandLineTest.run(Commands.all(), "match", "--place", place);
        boolean known = place.contains("o") || place.equals("quarter");
        assertEquals(known ? 0 : 2, match.code(), match.err());
        assertEquals(match.code(), cup.code(), cup.err());
        assertEquals(match.err(), cup.err());
    }

    /** What is weighed by hand and what is planned come from the same cans. */
    @Test
    void noPlanTakesMoreThanTheCanHolds() throws Exception {
        Path nearlyEmpty = folder.resolve("shelf.json");
        Files.writeString(
                nearlyEmpty,
                Files.readString(Path.of(MeteredShop.SHELF_FILE))
                        .replaceFirst("\"gramsLeft\": [0-9.]+", "\"gramsLeft\": 20"));
        Path cup = folder.resolve("bow.json");
        String[] at = {"--cup", cup.toString(), "--shelf", nearlyEmpty.toString()};
        assertEquals(0, ran("cup start", at, "--target", MeteredShop.BOW_FILE).code());
        String before = Files.readString(cup);
        CommandLineTest.Ran typed = ran("cup add", at, "--part", "plain-white", "--grams", "60");
        CommandLineTest.Ran planned = ran("cup add", at, "--planned");
        assertEquals(2, typed.code());
        assertEquals(2, planned.code(), planned.out());
        assertTrue(planned.err().startsWith("The can of plain white holds 20"), planned.err());
        assertEquals(before, Files.readString(cup), "nothing was written that was refused");
    }

    private static CommandLineTest.Ran ran(String word, String[] at, String... rest) {
        return CommandLineTest.run(
                Commands.all(),
                Stream.of(word.split(" "), at, rest).flatMap(Arrays::stream).toArray(String[]::new));
    }
}
