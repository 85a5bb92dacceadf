package tintwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlainLineTest {
    @TempDir
    private Path folder;

    @Test
    void aNameFromAFileCannotSpeakToTheTerminal() throws Exception {
        Path shelf = folder.resolve("shelf.json");
        Files.writeString(shelf, """
                {"formatVersion": 1, "kind": "shelf", "name": "\\u001b]0;gone\\u0007 \\u009b2J \\u202eshop",
                 "bases": [{"id": "white", "name": "\\u001b[31mwhite"}],
                 "tints": [{"id": "soot", "name": "soot\\u0008\\u0008", "family": "carbon-black"}]}
                """);
        for (String[] form :
                new String[][] {{"shelf", "--shelf", shelf.toString()}, {"shelf", "--shelf", shelf.toString(), "--json"}
                }) {
            CommandLineTest.Ran ran = CommandLineTest.run(Commands.all(), form);
            assertEquals(0, ran.code(), ran.err());
            assertFalse(
                    ran.out().chars().anyMatch(c -> Character.isISOControl(c) && c != '\n' || c == 0x202e), ran.out());
        }
        CommandLineTest.Ran refused = CommandLineTest.run(Commands.all(), "shelf", "--shelf", "no\u001b[2Jsuch.json");
        assertEquals(2, refused.code());
        assertFalse(refused.err().contains("\u001b"), refused.err());
    }
}
