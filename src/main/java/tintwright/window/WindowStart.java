package tintwright.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;

/** Opens the window. */
public final class WindowStart {
    /** Kept, so that the toolkit's remark about the class path stays switched off. */
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    private WindowStart() {}

    /** @return false when there is surely no screen to draw on; true is no promise */
    public static boolean likely() {
        if (!System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux")) {
            return true;
        }
        return isSet("DISPLAY") || isSet("WAYLAND_DISPLAY");
    }

    private static boolean isSet(String variable) {
        String value = System.getenv(variable);
        return value != null && !value.isBlank();
    }

    /**
     * Opens the window and returns when it is closed.
     *
     * @param args as the program was given them
     * @throws NoScreenException when no window can be drawn here; nothing has been shown or changed
     */
    public static void open(String[] args) throws NoScreenException {
        TOOLKIT.setLevel(Level.SEVERE);
        if (!likely()) {
            throw new NoScreenException(
                    "There is no display to open the window on. The command words work without "
                            + "one; \"--help\" lists them.",
                    null);
        }
        unpackWhereAllowed();
        BenchWindow.prepare();
        try {
            Application.launch(BenchWindow.class, args);
        } catch (UnsupportedOperationException e) {
            // The toolkit says the same kind of thing for both; only its words tell them apart.
            boolean display = e.getMessage() != null && e.getMessage().contains("DISPLAY");
            throw display
                    ? new NoScreenException(
                            "The display cannot be opened. Check DISPLAY, or use the command "
                                    + "words; \"--help\" lists them.",
                            e)
                    : libraryMissing(e);
        } catch (UnsatisfiedLinkError | NoClassDefFoundError | ExceptionInInitializerError e) {
            throw libraryMissing(e);
        }
    }

    /** Runs something once, as soon as the next picture of the scene is handed on to be drawn; on the screen's thread. */
    static void afterPicture(Scene scene, Runnable then) {
        scene.addPostLayoutPulseListener(new Runnable() {
            @Override
            public void run() {
                scene.removePostLayoutPulseListener(this);
                Platform.runLater(then);
            }
        });
    }

    private static NoScreenException libraryMissing(Throwable e) {
        return new NoScreenException(
                "A library the window is drawn with is missing (on Debian: libgtk-3-0 and "
                        + "libxtst6). The command words work without it; \"--help\" lists them.",
                e);
    }

    /** The toolkit unpacks its own libraries into the home folder, and complains line by line where it may not. */
    private static void unpackWhereAllowed() {
        Path home = Path.of(System.getProperty("user.home", ""));
        if (System.getProperty("javafx.cachedir") == null && !Files.isWritable(home)) {
            try {
                Path folder = Files.createTempDirectory("tintwright-window");
                System.setProperty("javafx.cachedir", folder.toString());
            } catch (IOException e) {
                Logger.getLogger(WindowStart.class.getName()).log(Level.FINE, "no folder for the toolkit", e);
            }
        }
    }
}
