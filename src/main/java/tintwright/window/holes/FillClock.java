package tintwright.window.holes;

import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.Node;
import javafx.util.Duration;

/** Moves the running times on once a second, at every station, as long as the window stands. */
public final class FillClock {
    private FillClock() {}

    public static void runWith(Node view, FillTimers timers) {
        Timeline seconds = new Timeline(new KeyFrame(Duration.seconds(1), event -> timers.tick()));
        seconds.setCycleCount(Animation.INDEFINITE);
        view.sceneProperty().addListener((property, before, after) -> {
            if (after == null) {
                seconds.stop();
            } else {
                seconds.play();
            }
        });
    }
}
