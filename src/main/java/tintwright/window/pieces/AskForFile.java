package tintwright.window.pieces;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.scene.Node;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;

/** Asks for a file by the system's own dialog, which begins where the last one was, at first in the person's documents. */
public final class AskForFile {
    /** Where a desktop of the free kind says what its documents' folder is called in the person's language. */
    private static final String USER_DIRS = ".config/user-dirs.dirs";

    private static final String DOCUMENTS = "XDG_DOCUMENTS_DIR=\"$HOME/";

    private static Optional<Path> last = Optional.empty();

    private AskForFile() {}

    /**
     * @param near  a node of the window that asks
     * @param take  takes the file; not called when none was chosen
     * @param kinds of files to show; none for all
     */
    public static void toRead(Node near, String title, Consumer<Path> take, ExtensionFilter... kinds) {
        taken(dialog(title, kinds).showOpenDialog(near.getScene().getWindow()), take);
    }

    /** @param name what the file is called unless the person calls it otherwise */
    public static void toWrite(Node near, String title, String name, Consumer<Path> take, ExtensionFilter... kinds) {
        FileChooser dialog = dialog(title, kinds);
        dialog.setInitialFileName(name);
        taken(dialog.showSaveDialog(near.getScene().getWindow()), take);
    }

    private static FileChooser dialog(String title, ExtensionFilter... kinds) {
        FileChooser dialog = new FileChooser();
        dialog.setTitle(title);
        dialog.getExtensionFilters().addAll(kinds);
        Path folder = last.filter(Files::isDirectory)
                .orElseGet(() -> documents(Path.of(System.getProperty("user.home", ""))));
        if (Files.isDirectory(folder)) {
            dialog.setInitialDirectory(folder.toFile());
        }
        return dialog;
    }

    private static void taken(File chosen, Consumer<Path> take) {
        if (chosen != null) {
            last = Optional.ofNullable(chosen.toPath().getParent());
            take.accept(chosen.toPath());
        }
    }

    /** @return the person's documents, else their home */
    static Path documents(Path home) {
        Path named = home.resolve(USER_DIRS);
        try {
            if (Files.isReadable(named)) {
                for (String line : Files.readAllLines(named, StandardCharsets.UTF_8)) {
                    if (line.startsWith(DOCUMENTS) && line.endsWith("\"")) {
                        Path folder = home.resolve(line.substring(DOCUMENTS.length(), line.length() - 1));
                        if (Files.isDirectory(folder)) {
                            return folder;
                        }
                    }
                }
            }
        } catch (IOException | RuntimeException e) {
            Logger.getLogger(AskForFile.class.getName()).log(Level.FINE, "no folder for documents", e);
        }
        Path usual = home.resolve("Documents");
        return Files.isDirectory(usual) ? usual : home;
    }
}
