package tintwright.window.pieces;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import javafx.scene.Scene;
import javafx.scene.text.Font;
import tintwright.paper.Typeface;

/** How every scene of the program is dressed: one typeface and one style sheet. */
public final class Look {
    private static boolean loaded;

    private Look() {}

    /** Gives a scene the program's typeface and style sheet; call on the screen's thread. */
    public static void dress(Scene scene) {
        loadTypeface();
        scene.getStylesheets()
                .add(Look.class.getResource("/tintwright/window/bench.css").toExternalForm());
    }

    private static void loadTypeface() {
        if (loaded) {
            return;
        }
        for (Typeface cut : Typeface.values()) {
            try (InputStream file = cut.file().openStream()) {
                Font.loadFont(file, 15);
            } catch (IOException e) {
                throw new UncheckedIOException("the typeface cannot be read from the program's own library", e);
            }
        }
        loaded = true;
    }
}
