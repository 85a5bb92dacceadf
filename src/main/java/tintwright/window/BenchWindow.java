package tintwright.window;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import tintwright.bench.ShopLog;

/** The program's one window. */
public final class BenchWindow extends Application {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "engine");
        thread.setDaemon(true);
        return thread;
    });

    @Override
    public void start(Stage stage) {
        WindowMemory memory = new WindowMemory(Path.of(System.getProperty("user.home", "."), ".tintwright",
                "window.properties"));
        Clock clock = Clock.systemDefaultZone();
        Desk desk = new Desk(Desk.demo(), worker, Platform::runLater, clock,
                () -> ShopLog.demo(clock));
        desk.shell().setTextShare(memory.number("text", 1));
        desk.shell().darkProperty().set(memory.truth("dark", false));
        Scene scene = new Scene(desk.view());
        scene.getStylesheets().add(BenchWindow.class.getResource("bench.css").toExternalForm());
        stage.setScene(scene);
        stage.setTitle("Tintwright");
        place(stage, memory);
        stage.setOnCloseRequest(event -> {
            remember(stage, desk, memory);
            worker.execute(desk.log()::close);
            worker.shutdown();
        });
        stage.show();
        scene.getRoot().lookup(".station-key").requestFocus();
    }

    private static void place(Stage stage, WindowMemory memory) {
        double width = memory.number("width", WIDTH);
        double height = memory.number("height", HEIGHT);
        double x = memory.number("x", Double.NaN);
        double y = memory.number("y", Double.NaN);
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        stage.setWidth(Math.min(width, screen.getWidth()));
        stage.setHeight(Math.min(height, screen.getHeight()));
        // A screen that was there last time may be gone.
        if (!Screen.getScreensForRectangle(x, y, width, height).isEmpty()) {
            stage.setX(x);
            stage.setY(y);
        }
    }

    private static void remember(Stage stage, Desk desk, WindowMemory memory) {
        memory.keep("width", stage.getWidth());
        memory.keep("height", stage.getHeight());
        memory.keep("x", stage.getX());
        memory.keep("y", stage.getY());
        memory.keep("text", desk.shell().textShareProperty().get());
        memory.keep("dark", desk.shell().darkProperty().get());
        memory.save();
    }
}
