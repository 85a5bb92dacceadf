package tintwright.window.frame;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.SimpleBooleanProperty;

/** The first walk along the stations: four stops, each in its place, to be skipped at any time. */
public final class WalkModel {
    /**
     * One stop.
     *
     * @param where the station it is at
     * @param words what there is to see
     */
    public record Stop(Step where, String words) {}

    public static final List<Stop> STOPS = List.of(
            new Stop(
                    Step.HULL,
                    "The port bow of the Tarrowmere, an invented boat: photographed with the printed sheet and a few weighed"
                            + " chips on it. A meter or your eye alone will do as well."),
            new Stop(
                    Step.SHELF, "The white and the tints. The chips in that photo have taught how strong each one is."),
            new Stop(Step.FILL, "What is to be filled says how much to mix, how much catalyst, and what comes when."),
            new Stop(
                    Step.CUP,
                    "One dose at a time, small enough to be safe. Hold each cured dab to the hull and say what you see; the"
                            + " log writes itself."));

    private final ShellModel shell;
    private final ReadOnlyIntegerWrapper at = new ReadOnlyIntegerWrapper(0);
    private final BooleanProperty walking = new SimpleBooleanProperty(false);

    public WalkModel(ShellModel shell) {
        this.shell = shell;
        // Whoever goes another way meanwhile is told of where they are.
        shell.stepProperty().addListener((property, before, after) -> {
            for (int i = 0; i < STOPS.size(); i++) {
                if (STOPS.get(i).where() == after) {
                    at.set(i);
                }
            }
        });
    }

    public void begin() {
        at.set(0);
        walking.set(true);
        shell.stepProperty().set(STOPS.get(0).where());
    }

    /** Goes on; after the last stop the walk is over. */
    public void next() {
        if (at.get() + 1 >= STOPS.size()) {
            skip();
            return;
        }
        at.set(at.get() + 1);
        shell.stepProperty().set(STOPS.get(at.get()).where());
    }

    /** Whoever has begun a cup walks no more; they stay where they are. */
    public void over() {
        walking.set(false);
    }

    public void skip() {
        walking.set(false);
        shell.stepProperty().set(Step.CUP);
    }

    ReadOnlyIntegerProperty atProperty() {
        return at.getReadOnlyProperty();
    }

    public BooleanProperty walkingProperty() {
        return walking;
    }
}
