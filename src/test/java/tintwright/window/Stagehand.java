package tintwright.window;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import tintwright.window.frame.Shell;
import tintwright.window.pieces.Look;

/** Starts the toolkit once, does things on its thread with a limit, and takes pictures of views. */
public final class Stagehand {
    private static final long LIMIT_SECONDS = 180;
    private static boolean started;

    private Stagehand() {}

    /** Runs on the screen's thread and waits; what it throws is thrown here. */
    public static synchronized <T> T onScreen(Callable<T> work) {
        start();
        CompletableFuture<T> answer = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                answer.complete(work.call());
            } catch (Throwable failure) {
                answer.completeExceptionally(failure);
            }
        });
        try {
            return answer.get(LIMIT_SECONDS, TimeUnit.SECONDS);
        } catch (Exception e) {
            throw new AssertionError("on the screen's thread: " + e, e);
        }
    }

    private static void start() {
        if (started) {
            return;
        }
        CountDownLatch ready = new CountDownLatch(1);
        try {
            Platform.startup(ready::countDown);
        } catch (IllegalStateException running) {
            ready.countDown();
        }
        Platform.setImplicitExit(false);
        try {
            if (!ready.await(LIMIT_SECONDS, TimeUnit.SECONDS)) {
                throw new AssertionError("the toolkit did not start");
            }
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
        started = true;
    }

    /** Dresses a view as the program does and lays it out at a size. */
    public static Scene dressed(Parent view, double width, double height, double textShare, boolean dark) {
        Scene scene = new Scene(view, width, height);
        Look.dress(scene);
        view.setStyle("-fx-font-size: " + 15 * textShare + "px;");
        if (dark) {
            view.getStyleClass().add("dark");
        }
        return scene;
    }

    /** Draws a scene; must be called on the screen's thread. */
    public static BufferedImage picture(Scene scene) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        if (scene.getRoot() instanceof Shell shell) {
            // No pulse comes between two things that are done here at once.
            shell.oneSignal();
        }
        WritableImage image = scene.snapshot(null);
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                copy.setRGB(x, y, image.getPixelReader().getArgb(x, y));
            }
        }
        return copy;
    }

    /** Writes a picture of a scene to target/snapshots; must be called on the screen's thread. */
    public static Path snapshot(Scene scene, String name) {
        BufferedImage copy = picture(scene);
        try {
            Path folder = Files.createDirectories(Path.of("target", "snapshots"));
            Path file = folder.resolve(name + ".png");
            ImageIO.write(copy, "png", file.toFile());
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
