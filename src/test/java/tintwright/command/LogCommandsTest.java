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

/** A season at the bench by the commands alone. */
class LogCommandsTest {
    @TempDir
    Path tmp;

    private CommandLineTest.Ran run(String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        all.addAll(List.of(
                "--log",
                tmp.resolve("log").toString(),
                "--home",
                tmp.resolve("home").toString()));
        return CommandLineTest.run(Commands.all(), all.toArray(String[]::new));
    }

    private String did(String... args) {
        CommandLineTest.Ran ran = run(args);
        assertEquals(0, ran.code(), ran.err());
        return ran.out();
    }

    private void refused(String words, String... args) {
        CommandLineTest.Ran ran = run(args);
        assertEquals(2, ran.code(), ran.out());
        assertEquals(1, ran.err().lines().count(), ran.err());
        assertTrue(ran.err().contains(words), ran.err());
    }

    @Test
    void aSeasonFromTheFirstReadingToTheLabel() throws Exception {
        assertTrue(did("boat").contains("There is no boat in the log"));
        did("boat", "--add", "Sallowquay", "--type", "dinghy", "--year", "1990");
        did("boat", "--name", "sallowquay", "--add-place", "transom", "--aged", "yellowed");
        did("log", "--boat", "Sallowquay", "--place", "transom", "--read", "swatches/tarrowmere/port-bow.json");
        did(
                "log",
                "--boat",
                "Sallowquay",
                "--place",
                "transom",
                "--cup",
                "may 1",
                "--parts",
                "plain-white=58.2,soot-black=0.31,soot-black=0.1,bottle-green=0.4",
                "--note",
                "a touch warm");
        did("log", "--boat", "Sallowquay", "--verdict", "invisible");
        String told = did("log", "--boat", "Sallowquay");
        assertTrue(told.contains("\"may 1\", transom: 58.20 g plain white, 0.41 g soot black"), told);
        assertTrue(told.contains("verdict  \"may 1\": invisible"), told);
        assertTrue(did("boat", "--find", "yellowed").contains("Sallowquay"));
        assertTrue(did("again", "--boat", "Sallowquay", "--grams", "30").contains("0.21 g  soot black"));

        Path csv = tmp.resolve("all.csv");
        Path label = tmp.resolve("label.pdf");
        Path card = tmp.resolve("card.pdf");
        Path zip = tmp.resolve("sallowquay.zip");
        did(
                "export",
                "--boat",
                "Sallowquay",
                "--csv",
                csv.toString(),
                "--label",
                label.toString(),
                "--card",
                card.toString(),
                "--zip",
                zip.toString());
        assertEquals(6, Files.readAllLines(csv, StandardCharsets.UTF_8).size());
        assertTrue(Files.readString(label, StandardCharsets.ISO_8859_1).startsWith("%PDF-"));

        CommandLineTest.Ran other = CommandLineTest.run(
                Commands.all(),
                "import",
                zip.toString(),
                "--log",
                tmp.resolve("other").toString(),
                "--home",
                tmp.resolve("other-home").toString());
        assertTrue(other.out().startsWith("Taken in: Sallowquay, 5 new entries, 0 known already."), other.out());
    }

    @Test
    void aChipALeftoverAFillAndAPhotoAreWrittenDownToo() throws Exception {
        did("boat", "--add", "Sallowquay");
        did("boat", "--name", "Sallowquay", "--add-place", "transom");
        did(
                "log",
                "--boat",
                "Sallowquay",
                "--chip",
                "one",
                "--parts",
                "plain-white=49,soot-black=1",
                "--read",
                "swatches/tarrowmere/port-bow.json",
                "--note",
                "two days at 18 C");
        did("log", "--boat", "Sallowquay", "--leftover", "grey rest", "--parts", "plain-white=30,soot-black=0.2");
        did("log", "--boat", "Sallowquay", "--place", "transom", "--filled", "gouge; sanded 600", "--grams", "34");
        Path photo = Files.write(tmp.resolve("transom 1.jpg"), new byte[] {1, 2, 3});
        did("boat", "--name", "Sallowquay", "--place", "transom", "--photo", photo.toString());
        String told = did("boat", "--name", "Sallowquay");
        for (String words : List.of(
                "photos: transom 1-039058c6.jpg",
                "chip  \"one\"",
                "two days at 18 C",
                "left over  \"grey rest\", 30.2 g",
                "filled  transom, 34.0 g: gouge; sanded 600")) {
            assertTrue(told.contains(words), words + " in: " + told);
        }
        assertTrue(Files.exists(tmp.resolve("log/photos/transom 1-039058c6.jpg")));
        refused(
                "rename it",
                "boat",
                "--name",
                "Sallowquay",
                "--photo",
                Files.copy(photo, tmp.resolve("x.exe")).toString());
        refused(
                "needs at least one reading",
                "log",
                "--boat",
                "Sallowquay",
                "--chip",
                "two",
                "--parts",
                "plain-white=49");
        refused(
                "--cup NAME, --chip NAME or --leftover NAME",
                "log",
                "--boat",
                "Sallowquay",
                "--parts",
                "plain-white=4");
    }

    @Test
    void whatWasWrittenCanBeTakenBackByTheLettersOfItsLine() {
        did("boat", "--add", "Sallowquay");
        did("log", "--boat", "Sallowquay", "--note", "on the wrong boat");
        String line = did("log", "--boat", "Sallowquay");
        did("log", "--boat", "Sallowquay", "--withdraw", line.substring(0, 8));
        assertTrue(did("log", "--boat", "Sallowquay").startsWith("Nothing was written down"));
    }

    @Test
    void refusesInOneSentence() throws Exception {
        did("boat", "--add", "Sallowquay");
        refused("There is a boat \"Sallowquay\" in the log already", "boat", "--add", "SALLOWQUAY");
        refused("did you mean Sallowquay?", "log", "--boat", "Sal");
        refused(
                "here is no place \"bow\" on the Sallowquay; add it first",
                "log",
                "--boat",
                "Sallowquay",
                "--place",
                "bow",
                "--read",
                "swatches/tarrowmere/port-bow.json");
        refused("o cup was written down", "again", "--boat", "Sallowquay");
        refused("A verdict is", "log", "--boat", "Sallowquay", "--cup", "x", "--verdict", "fine");
        refused("plain-white=58.2", "log", "--boat", "Sallowquay", "--cup", "x", "--parts", "white");
        refused(
                "There is no \"white\" on the shelf",
                "log",
                "--boat",
                "Sallowquay",
                "--cup",
                "x",
                "--parts",
                "white=5");
        refused("ay under which light", "near", "--lab", "60,0,0");
        refused("ay what to hand out", "export");
        Path noZip = Files.writeString(tmp.resolve("no.zip"), "no zip");
        refused("The zip was refused", "import", noZip.toString());
        refused("is not there", "import", tmp.resolve("missing.zip").toString());
    }

    @Test
    void namesWhatIsDamagedUnderEveryAnswer() throws Exception {
        did("boat", "--add", "Sallowquay");
        did("boat", "--add", "Mizzlebrook");
        Path file;
        try (var files = Files.list(tmp.resolve("log"))) {
            file = files.findFirst().orElseThrow();
        }
        Files.writeString(file, Files.readString(file).replace("Mizzlebrook", "Mizzlebroke"));
        String answer = did("boat");
        assertTrue(answer.contains("Sallowquay"), answer);
        assertTrue(answer.contains(file.getFileName() + ", line 3: this line is not as it was written"), answer);
        JsonNode json = new ObjectMapper().readTree(did("log", "--json"));
        assertEquals(1, json.get("troubles").size());
        assertEquals(1, json.get("boats").intValue());
    }

    @Test
    void whatCannotBeWrittenWaitsAndIsSaid() throws Exception {
        Files.writeString(tmp.resolve("log"), "a file where the folder should be");
        String answer = did("boat", "--add", "Sallowquay");
        assertTrue(answer.contains("is a file, not a folder. Choose another folder."), answer);
        assertTrue(answer.contains("kept in"), answer);
        Files.delete(tmp.resolve("log"));
        assertTrue(did("boat").contains("Sallowquay"));
    }

    @Test
    void theDemoNeedsNoFolder() {
        CommandLineTest.Ran ran = CommandLineTest.run(Commands.all(), "boat", "--demo", "--name", "Tarrowmere");
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("it has moved by"), ran.out());
        CommandLineTest.Ran near = CommandLineTest.run(
                Commands.all(), "near", "--demo", "--target", "swatches/tarrowmere/port-bow.json", "--count", "2");
        assertEquals(0, near.code(), near.err());
        assertTrue(near.out().contains("cup \"bow 2\" of the Tarrowmere"), near.out());
    }
}
