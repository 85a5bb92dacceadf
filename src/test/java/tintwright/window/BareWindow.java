package tintwright.window;

import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/** The least window the toolkit can open, timed like ours: what our start is held against. */
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
        stage.setScene(new Scene(new StackPane(new Button("bare")), 1280, 800));
        stage.show();
        WindowStart.afterPicture(stage.getScene(), () -> {
            StartTime.say("window usable");
            Platform.exit();
        });
    }
}
