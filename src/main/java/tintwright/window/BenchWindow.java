package tintwright.window;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.util.Duration;
import tintwright.bench.log.ShopLog;
import tintwright.logbook.DemoLog;
import tintwright.logbook.disk.LogFailure;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.units.UnitSystem;
import tintwright.window.frame.Shell;
import tintwright.window.frame.ShellModel;
import tintwright.window.frame.Step;
import tintwright.window.frame.WindowMemory;
import tintwright.window.pieces.Look;

/** The program's one window. */
public final class BenchWindow extends Application {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    /** Below this the work has no room; a window manager that does not keep the size asked for keeps this one. */
    private static final double LEAST_WIDTH = 900;

    private static final double LEAST_HEIGHT = 600;
    /** Height that a window manager's own title may take on top. */
    private static final double TITLE = 36;

    private static final String MOVES = "moves";

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "engine");
        thread.setDaemon(true);
        return thread;
    });

    private static CompletableFuture<Opening> prepared;

    private final Clock clock = Clock.system(ZoneId.systemDefault());
    private WindowMemory memory;
    private Desk desk;
    private boolean systemMoves;

    @Override
    public void start(Stage stage) {
        Path home = ShopLog.usualHome();
        memory = new WindowMemory(home.resolve("window.json"));
        Scene scene = new Scene(new Group());
        Look.dress(scene);
        Shell frame = open(
                scene,
                prepared == null ? Opening.fetch(home, Opening.lastOwn(home, memory), Knowledge::of) : prepared.join());
        stage.setScene(scene);
        stage.setTitle("Tintwright");
        place(stage, memory);
        stage.setOnCloseRequest(event -> {
            remember(stage);
            desk.phone().close();
            worker.execute(desk.log()::close);
            worker.shutdown();
        });
        double wide = stage.getWidth();
        double tall = stage.getHeight();
        stage.show();
        insist(stage, wide, tall);
        scene.getRoot().lookupAll(".station-key").stream()
                .filter(key -> ((ToggleButton) key).isSelected())
                .findFirst()
                .ifPresent(Node::requestFocus);
        WindowStart.afterPicture(scene, () -> {
            StartTime.say("first picture");
            frame.showStation();
            // Where something is typed first, the cursor stands in it once the window is there.
            desk.shell().pointOut();
            WindowStart.afterPicture(scene, () -> StartTime.say("window usable"));
        });
        desk.plan().planProperty().addListener((property, before, after) -> StartTime.say("match shown"));
    }

    /** Begins to fetch and to learn; called before the toolkit starts, so that both go on at once. */
    static void prepare() {
        Path home = ShopLog.usualHome();
        WindowMemory left = new WindowMemory(home.resolve("window.json"));
        prepared = CompletableFuture.supplyAsync(() -> Opening.fetch(home, Opening.lastOwn(home, left), Knowledge::of));
    }

    /** Opens the demo, or the person's own bench as it was left; its station is still to be shown. */
    private Shell open(Scene scene, Opening opening) {
        Path home = ShopLog.usualHome();
        desk = opening.desk(
                worker,
                Platform::runLater,
                clock,
                () -> opening.own() ? ShopLog.open(ShopLog.usualFolder(), home, clock) : demoLog(home));
        ShellModel shell = desk.shell();
        shell.setTextShare(memory.number("text", 1));
        shell.darkProperty().set(memory.truth("dark", false));
        shell.unitsProperty().set(UnitSystem.named(memory.words("units", "metric")));
        letMove(shell);
        memory.keep("own", opening.own());
        // Before there is a frame around it: no other station is built then.
        if (opening.own()) {
            shell.stepProperty().set(opening.first());
        } else if (!memory.truth("walked", false)) {
            desk.walk().begin();
            memory.keep("walked", true);
        } else if (desk.job().now().cup().isEmpty()) {
            shell.stepProperty().set(Step.HULL);
        }
        Shell frame = desk.frame(opening.own(), Opening.ownBegun(home), () -> changeOver(scene, !opening.own()));
        scene.setRoot(frame);
        // At once: a window that is killed must open on the same bench again, and not walk the person around anew.
        memory.save();
        return frame;
    }

    /** As the person has chosen it; until they have, as the system says, asked when the window has begun to be used. */
    private void letMove(ShellModel shell) {
        String chosen = memory.words(MOVES, "");
        shell.movesProperty().set(Boolean.parseBoolean(chosen));
        if (chosen.isEmpty()) {
            CompletableFuture.delayedExecutor(1, TimeUnit.SECONDS).execute(() -> {
                boolean wanted = SystemMotion.wanted();
                Platform.runLater(() -> {
                    systemMoves = wanted;
                    shell.movesProperty().set(wanted);
                });
            });
        }
    }

    /** Leaves one bench as it is and opens the other as it was left, when all that was to be written has been. */
    private void changeOver(Scene scene, boolean own) {
        rememberSettings();
        memory.keepAtOnce("own", own);
        desk.phone().close();
        worker.execute(desk.log()::close);
        worker.execute(() -> {
            Opening other = Opening.fetch(ShopLog.usualHome(), own, Knowledge::of);
            Platform.runLater(() -> {
                open(scene, other).showStation();
                desk.shell().pointOut();
            });
        });
    }

    /** The demo's log lasts from one day to the next where it can be kept, and until the window closes where it cannot. */
    private ShopLog demoLog(Path home) throws LogFailure {
        Path folder = home.resolve("demo-log");
        try {
            DemoLog.copyTo(folder);
            return ShopLog.open(folder, home, clock);
        } catch (LogFailure e) {
            return ShopLog.demo(clock);
        }
    }

    private static void place(Stage stage, WindowMemory memory) {
        double width = memory.number("width", WIDTH);
        double height = memory.number("height", HEIGHT);
        double x = memory.number("x", Double.NaN);
        double y = memory.number("y", Double.NaN);
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        stage.setMinWidth(Math.min(LEAST_WIDTH, screen.getWidth()));
        stage.setMinHeight(Math.min(LEAST_HEIGHT, screen.getHeight()));
        stage.setWidth(Math.min(width, screen.getWidth()));
        stage.setHeight(Math.min(height, screen.getHeight() - TITLE));
        // A screen that was there last time may be gone.
        if (!Screen.getScreensForRectangle(x, y, width, height).isEmpty()) {
            stage.setX(x);
            stage.setY(y);
        }
    }

    /**
     * A plain window manager may answer the first show with a size of its own, as small as 200 by 200, and once more
     * after that; the wanted size is asked for again until it has held for a moment. What it had put in the middle of
     * the screen while it was small then stands with its title above the edge.
     */
    private static void insist(Stage stage, double wide, double tall) {
        Timeline again = new Timeline(new KeyFrame(Duration.millis(100), event -> {
            if (!stage.isMaximized()
                    && (Math.abs(stage.getWidth() - wide) > 2 || Math.abs(stage.getHeight() - tall) > 2)) {
                stage.setWidth(wide);
                stage.setHeight(tall);
            }
            Rectangle2D screen = Screen.getPrimary().getVisualBounds();
            boolean here = screen.contains(stage.getX() + wide / 2, stage.getY() + tall / 2);
            if (here && !stage.isMaximized()) {
                stage.setX(Math.max(screen.getMinX(), Math.min(stage.getX(), screen.getMaxX() - wide)));
                stage.setY(Math.max(screen.getMinY(), Math.min(stage.getY(), screen.getMaxY() - tall)));
            }
        }));
        again.setCycleCount(10);
        again.play();
    }

    private void remember(Stage stage) {
        memory.keep("width", stage.getWidth());
        memory.keep("height", stage.getHeight());
        memory.keep("x", stage.getX());
        memory.keep("y", stage.getY());
        rememberSettings();
        memory.save();
    }

    private void rememberSettings() {
        boolean moves = desk.shell().movesProperty().get();
        if (moves != systemMoves || !memory.words(MOVES, "").isEmpty()) {
            memory.keep(MOVES, moves);
        }
        memory.keep("text", desk.shell().textShareProperty().get());
        memory.keep("dark", desk.shell().darkProperty().get());
        memory.keep("units", desk.shell().unitsProperty().get().name().toLowerCase(Locale.ROOT));
    }
}
