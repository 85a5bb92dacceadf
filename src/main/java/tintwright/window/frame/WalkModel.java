package tintwright.window.frame;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.SimpleBooleanProperty;

/** The first walk along the stations: five stops, each in its place, to be skipped at any time. */
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
                    Step.BOAT,
                    "This is the Tarrowmere, a boat that was invented for you to try things on. Each place on a "
                            + "boat has faded in its own way; one is chosen here."),
            new Stop(
                    Step.HULL,
                    "The colour the place has today, by a phone and a printed sheet, by a meter or its file. "
                            + "Three readings are better than one; one that does not fit is named."),
            new Stop(
                    Step.SHELF,
                    "The white and the tints to mix with. Each chip of known parts that you read teaches "
                            + "how strong a tint really is."),
            new Stop(
                    Step.CUP,
                    "The heart of it: hull and mix edge to edge, how deep the cup has sunk, which way to "
                            + "swing. Begin a cup and every dose stands here as large as a hand, small enough to be safe."),
            new Stop(
                    Step.FILL,
                    "When the colour stands: how much to mix for the holes, how much catalyst, how long "
                            + "there is. The log beside it keeps everything for next spring."));

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
