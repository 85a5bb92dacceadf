package tintwright.window.frame;

import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import tintwright.window.pieces.Controls;

/** The first walk as a bar above the work; it blocks nothing. */
public final class WalkBar extends HBox {
    /**
     * @param toOwn    what the way to the person's own bench is called
     * @param startOwn goes there
     */
    public WalkBar(WalkModel walk, String toOwn, Runnable startOwn) {
        getStyleClass().add("walk");
        Label count = Controls.bound(
                Bindings.createStringBinding(
                        () -> (walk.atProperty().get() + 1) + " of " + WalkModel.STOPS.size(), walk.atProperty()),
                "walk-count");
        count.setMinWidth(USE_PREF_SIZE);
        Label words = Controls.bound(
                Bindings.createStringBinding(
                        () -> WalkModel.STOPS.get(walk.atProperty().get()).words(), walk.atProperty()),
                "walk-words");
        words.setMaxWidth(Double.MAX_VALUE);
        setHgrow(words, Priority.ALWAYS);
        Button next = Controls.button("Next", walk::next);
        next.setId("walk-next");
        next.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> walk.atProperty().get() + 1 < WalkModel.STOPS.size() ? "Next" : "Try it",
                        walk.atProperty()));
        Button skip = Controls.quietButton("Skip the walk", walk::skip);
        skip.setId("walk-skip");
        // At the last stop the key beside it does the same.
        Controls.onlyWhen(walk.atProperty().lessThan(WalkModel.STOPS.size() - 1), skip);
        getChildren().addAll(count, words, next, skip, Controls.quietButton(toOwn, startOwn));
        Controls.onlyWhen(walk.walkingProperty(), this);
    }
}
