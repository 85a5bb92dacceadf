package tintwright.window.pieces;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AskForFileTest {
    @Test
    void aDialogBeginsInThePersonsDocumentsWhateverTheyAreCalled(@TempDir Path home) throws Exception {
        assertEquals(home, AskForFile.documents(home), "no documents there");
        Path usual = Files.createDirectory(home.resolve("Documents"));
        assertEquals(usual, AskForFile.documents(home));
        Files.createDirectories(home.resolve(".config"));
        Path named = home.resolve(".config/user-dirs.dirs");
        Files.writeString(named, "# a comment\nXDG_DOCUMENTS_DIR=\"$HOME/Dokumente\"\n");
        assertEquals(usual, AskForFile.documents(home), "what is named is not there");
        Path theirs = Files.createDirectory(home.resolve("Dokumente"));
        assertEquals(theirs, AskForFile.documents(home));
        Files.write(named, new byte[] {(byte) 0xff, (byte) 0xfe});
        assertEquals(usual, AskForFile.documents(home), "not text");
    }
}
