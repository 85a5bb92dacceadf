package tintwright.bare;

import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/**
 * The least window the toolkit can open, timed as ours is: what our start is held against. Stands alone in a room of its
 * own, so that the Java of a packed image can run it from a class path too.
 */
public final class BareWindow extends Application {
    /** Starts it from a class that is no application, as our own program does. */
    public static final class Start {
        private static final Logger TOOLKIT = Logger.getLogger("javafx");

        private Start() {}

        public static void main(String[] args) {
            TOOLKIT.setLevel(Level.SEVERE);
            Application.launch(BareWindow.class, args);
        }
    }

    @Override
    public void start(Stage stage) {
        Scene scene = new Scene(new StackPane(new Button("bare")), 1280, 800);
        stage.setScene(scene);
        stage.show();
        scene.addPostLayoutPulseListener(() -> Platform.runLater(() -> {
            long began = Long.parseLong(System.getProperty("tintwright.timing"));
            System.out.println("first picture after " + (System.currentTimeMillis() - began) + " ms");
            Platform.exit();
        }));
    }
}
