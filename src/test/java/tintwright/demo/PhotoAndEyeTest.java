package tintwright.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.command.Commands;
import tintwright.files.Demo;
import tintwright.files.ShelfFile;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.study.HiddenEye;

/**
 * The whole job of somebody with eyes, a phone and a pocket scale, by commands alone: a photo file in, the sheet found,
 * the hull read, the recipe, doses, what the eye sees, a slip that makes it too dark, the way back, done, logged, made
 * again. Hull, pigments and eye are the invented world's; the bench sees only the photo, the weights and the words.
 */
class PhotoAndEyeTest {
    /** A cup that no more looks can bring nearer is this near in truth; the study EyeStudy says how near it mostly is. */
    private static final double DONE = 2.5;

    private final DemoPhoto world = DemoGenerator.hiddenPhoto();
    private final HiddenEye eye = new HiddenEye(1, 0);

    @TempDir
    private Path folder;

    private Path shelf;
    private int minutes;

    private record Ran(int code, String out, String err) {}

    private Ran run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Commands.run(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                args);
        return new Ran(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private String did(String... args) {
        Ran ran = run(args);
        assertEquals(0, ran.code(), ran.err());
        return ran.out();
    }

    /** A deed at the cup, a few minutes after the one before. */
    private JsonNode cup(String word, String... rest) throws Exception {
        List<String> args = new ArrayList<>(List.of(word.split(" ")));
        args.addAll(List.of("--cup", folder.resolve("bow-1.json").toString(), "--shelf", shelf.toString(), "--json"));
        args.addAll(List.of(
                "--at", String.format(Locale.ROOT, "2026-05-02T%02d:%02d:00Z", 8 + minutes / 60, minutes % 60)));
        minutes += 5;
        args.addAll(List.of(rest));
        return new ObjectMapper().readTree(did(args.toArray(String[]::new)));
    }

    private static String next(JsonNode cup) {
        return cup.get("plan").get("next").textValue();
    }

    private static Map<String, Double> grams(JsonNode cup) {
        Map<String, Double> grams = new LinkedHashMap<>();
        cup.get("grams")
                .properties()
                .forEach(part -> grams.put(part.getKey(), part.getValue().doubleValue()));
        return grams;
    }

    private double off(JsonNode cup) {
        return Ciede2000.between(world.dab(grams(cup)), world.truth());
    }

    /** The cured dab is held against the hull, and what is seen is said in words. */
    private JsonNode look(JsonNode cup) throws Exception {
        EyeVerdict seen = eye.look(world.dab(grams(cup)), world.truth());
        return cup(
                "cup eye",
                "--depth",
                seen.depth().map(Depth::words).orElseThrow(),
                "--hue",
                seen.hue().orElseThrow() == Hue.NONE
                        ? "none"
                        : (seen.amount() == EyeVerdict.Amount.MUCH ? "much " : "a little ")
                                + seen.hue().get().words());
    }

    /** The shelf of somebody who has weighed chips and never read one. */
    @BeforeEach
    void lay() throws Exception {
        shelf = folder.resolve("shelf.json");
        ShelfFile.at(shelf).create(Demo.shelf().withChips(List.of()));
        Demo.copyPhoto(folder.resolve("bow.jpg"));
    }

    @Test
    void fromThePhotoFileToTheCupThatIsMadeAgain() throws Exception {
        String target = folder.resolve("bow-target.json").toString();
        String read = did(
                "read",
                folder.resolve("bow.jpg").toString(),
                "--on-sheet",
                "swatches/tarrowmere/on-sheet.json",
                "--shelf",
                shelf.toString(),
                "--learn",
                "--out",
                target,
                "--boat",
                "Tarrowmere",
                "--place",
                "port bow");
        assertTrue(read.contains("4 of 4 corner codes") && read.contains("good to about"), read);
        assertEquals(7, ShelfFile.read(shelf).chips().size());

        JsonNode match = new ObjectMapper()
                .readTree(did("match", "--target", target, "--shelf", shelf.toString(), "--json"))
                .get("recipes")
                .get(0);
        assertTrue(match.get("within90").doubleValue() < 5, "hull and chips are off together: " + match);

        cup("cup start", "--target", target, "--grams", "100");
        JsonNode cup = cup("cup add", "--planned");
        assertEquals("doses", next(cup), cup.toString());
        cup = cup("cup add", "--planned");
        cup = look(cup);
        assertEquals("doses", next(cup), "the eye's word leads to the next doses: " + cup);

        cup = cup("cup add", "--part", "soot-black", "--grams", "1.20");
        Lab slipped = world.dab(grams(cup));
        assertTrue(slipped.lightness() < world.truth().lightness() - 3, "it is too dark: " + slipped);
        cup = look(cup);
        assertTrue(cup.get("outlook").get("chanceTooDark").doubleValue() > 0.9, cup.toString());
        boolean back = false;
        for (int i = 0; i < 25 && !next(cup).equals("stop"); i++) {
            back |= next(cup).equals("correct");
            cup = switch (next(cup)) {
                case "doses" -> cup("cup add", "--planned");
                case "correct" -> {
                    cup("correct", "--follow", "1");
                    yield cup("cup plan");
                }
                default -> look(cup);
            };
        }
        assertTrue(back, "the white held back was not enough for that slip, so a way back was taken");
        assertEquals("stop", next(cup), "never done: " + cup.get("plan"));
        double done = off(cup);
        assertTrue(done < DONE, "done at " + done);

        logged(cup, target);
    }

    private void logged(JsonNode cup, String target) {
        String[] log = {
            "--log",
            folder.resolve("log").toString(),
            "--home",
            folder.resolve("home").toString()
        };
        logged(log, "boat", "--add", "Tarrowmere");
        logged(log, "boat", "--name", "Tarrowmere", "--add-place", "port bow");
        logged(log, "log", "--boat", "Tarrowmere", "--place", "port bow", "--read", target);
        List<String> parts = new ArrayList<>();
        grams(cup).forEach((id, grams) -> parts.add(String.format(Locale.ROOT, "%s=%.3f", id, grams)));
        logged(
                log,
                "log",
                "--boat",
                "Tarrowmere",
                "--place",
                "port bow",
                "--cup",
                "bow-1",
                "--parts",
                String.join(",", parts),
                "--shelf",
                shelf.toString());
        logged(log, "log", "--boat", "Tarrowmere", "--verdict", "invisible");
        String again = logged(log, "again", "--boat", "Tarrowmere", "--grams", "60", "--shelf", shelf.toString());
        assertTrue(again.contains("stands on the shelf under the same name") && again.contains("plain white"), again);
    }

    private String logged(String[] log, String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        all.addAll(List.of(log));
        return did(all.toArray(String[]::new));
    }

    /** What the demo in words says that the eye sees is what the invented world's own eye sees there. */
    @Test
    void theDemosWordOfTheDabIsTrue() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(0, Commands.demo(new PrintStream(out, true, StandardCharsets.UTF_8), System.err));
        String said = out.toString(StandardCharsets.UTF_8);
        shelf = Path.of("swatches/shelf.json");
        cup("cup start", "--target", "swatches/tarrowmere/port-bow.json", "--grams", "100");
        cup("cup add", "--planned");
        JsonNode cup = cup("cup add", "--planned");
        String seen = eye.look(world.dab(grams(cup)), world.truth()).words();
        assertTrue(said.contains("The cured dab held against the hull is " + seen + "."), seen + ", but: " + said);
    }
}
