package tintwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own, where there is no display and no home to write in. */
class MainTest {
    private record Ran(int code, String out, String err) {}

    private static Ran run(Path folder, List<String> options, String... args) throws Exception {
        return run(folder, "", options, args);
    }

    private static Ran run(Path folder, String display, List<String> options, String... args) throws Exception {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        // What holds for the tests' own headless window must not hold for a person's machine.
        command.addAll(
                List.of("-Duser.home=/nowhere", "-cp", System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().remove("DISPLAY");
        builder.environment().remove("WAYLAND_DISPLAY");
        if (!display.isEmpty()) {
            builder.environment().put("DISPLAY", display);
        }
        builder.environment().put("HOME", "/nowhere");
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Process process =
                builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), "still running after a minute");
        return new Ran(process.exitValue(), read(out), read(err));
    }

    private static String read(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    @Test
    void printsTheDemoWhereThereIsNoDisplay(@TempDir Path folder) throws Exception {
        Ran ran = run(folder, List.of());
        assertEquals(0, ran.code(), ran.err());
        for (String words : List.of(
                "photographed with the printed sheet on it",
                "good to about",
                "The recipe for 100 g",
                "g  plain white",
                "How sure: ",
                "held back",
                "The cured dab held against the hull is",
                "The doses after it\n")) {
            assertTrue(ran.out().contains(words), words + " in: " + ran.out());
        }
        assertTrue(
                ran.out().substring(ran.out().indexOf("The doses after it")).contains("Weigh in "),
                "a dose follows what was seen: " + ran.out());
        assertEquals("", ran.err());
    }

    /** Whether the display or the libraries are at fault depends on the machine; words and a match come either way. */
    @Test
    void printsTheDemoWhereTheDisplayCannotBeOpened(@TempDir Path folder) throws Exception {
        Ran ran = run(folder, ":4242", List.of());
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("Here is the demo in words."), ran.out());
        assertTrue(ran.out().contains("The recipe for 100 g"), ran.out());
        assertFalse((ran.out() + ran.err()).contains("\tat "), ran.err());
    }

    @Test
    void keepsTheExitCodeAndSaysOneSentence(@TempDir Path folder) throws Exception {
        Ran ran = run(folder, List.of("-Duser.language=tr"), "match", "--place", "bilge");
        assertEquals(
                new Ran(
                        2,
                        "",
                        "There is no place \"bilge\" on the demo boat; its places are port bow, stern" + " quarter.\n"),
                ran);
    }

    /** A terminal that claims to know only ASCII still gets UTF-8. */
    @Test
    void writesNamesInAnyScript(@TempDir Path folder) throws Exception {
        String shelf = Files.readString(Path.of("swatches/shelf.json"));
        Path named = Files.writeString(
                folder.resolve("shelf.json"), shelf.replace("Demo shelf (invented)", "Gr\u00fcne K\u00fcste \u6d77"));
        Ran ran = run(
                folder,
                List.of("-Dfile.encoding=US-ASCII"),
                "match",
                "--place",
                "port bow",
                "--shelf",
                named.toString());
        assertTrue(ran.out().contains("Gr\u00fcne K\u00fcste \u6d77"), ran.out());
    }
}
