package tintwright.window.boat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tintwright.bench.job.Job;
import tintwright.match.Aim;
import tintwright.window.job.JobModel;
import tintwright.window.picture.BoatPicture;
import tintwright.window.picture.Patches;
import tintwright.window.picture.Shade;
import tintwright.window.pieces.Controls;
import tintwright.window.pieces.Doors;
import tintwright.window.pieces.SideBySide;

/** Which boat and which place: a list to search as you type, the places as colours, and a new boat in three fields. */
public final class BoatPage {
    private final BoatsModel inTheLog;
    private final JobModel job;
    private final RecentModel recent;
    /** What can be done with boats. */
    private enum Deed {
        NEW,
        BOATS
    }

    private final Doors<Deed> doors = new Doors<>(deed -> "boat-" + deed.name().toLowerCase(Locale.ROOT));
    private final boolean own;
    private final String toTheOther;
    private final Runnable other;
    private final Runnable toTheHull;
    private final Patches patches = new Patches();
    private final Button readPlace;
    private final Button write;
    private final FlowPane keys = Controls.flow();
    private final Label title = Controls.heading("");
    private final Label none = Controls.soft(
            "Give her a name, then read her hull place by place, for each has faded in its own way: a phone and a printed"
                    + " sheet will do, or your eye.");
    private final BoatPicture drawn = new BoatPicture();
    private final VBox places = new VBox();
    private final VBox boats = new VBox();
    private final VBox lately = new VBox();
    private final TextField search = new TextField();
    private final TextField name = new TextField();
    private final TextField type = new TextField();
    private final TextField year = new TextField();

    /**
     * @param writeReadings writes down today's readings of the place in hand
     * @param toTheHull  opens the station where a place is read
     * @param own       true on the person's own bench, false on the demo's
     * @param toTheOther what the way to the other bench is called
     * @param other     goes over to the other bench
     */
    public BoatPage(
            BoatsModel inTheLog,
            Runnable writeReadings,
            JobModel job,
            RecentModel recent,
            Runnable toTheHull,
            boolean own,
            String toTheOther,
            Runnable other) {
        this.toTheOther = toTheOther;
        this.own = own;
        this.other = other;
        this.toTheHull = toTheHull;
        this.inTheLog = inTheLog;
        this.job = job;
        this.recent = recent;
        readPlace = Controls.button("Read another place", toTheHull);
        write = Controls.quietButton("Write today's readings into the log", writeReadings);
        boats.getStyleClass().add("asked");
        places.getStyleClass().add("asked");
    }

    public Region build() {
        search.setId("boat-search");
        search.setPromptText("name, place or note");
        search.textProperty().addListener((property, before, after) -> inTheLog.search(after));
        keys.getChildren().setAll(readPlace, write);
        VBox inHand = Controls.sheet("", title, none, drawn, places, keys);
        VBox wide = new VBox(
                patches,
                inHand,
                bench(
                        own
                                ? "This is your own bench. The demo boat is as you left it."
                                : "An invented boat and shelf, to try everything on."));
        wide.getStyleClass().add("pictures");
        lately.getStyleClass().add("asked");
        VBox worked = Controls.onlyWhen(
                recent.shownProperty().map(lines -> !lines.isEmpty()), Controls.sheet("Worked on lately", lately));
        doors.with(Deed.NEW, "A new boat", newBoat())
                .with(Deed.BOATS, "Boats", worked, Controls.sheet("", Controls.asked("Search", search), boats));
        if (!job.now().boat().isBlank()) {
            doors.take(Deed.BOATS);
        }
        VBox side = new VBox(doors);
        side.getStyleClass().add("side");
        inTheLog.shownProperty().addListener((property, before, after) -> show(after));
        job.jobProperty().addListener((property, before, after) -> showPlaces());
        recent.shownProperty().addListener((property, was, now) -> showLately(now));
        show(inTheLog.shownProperty().get());
        showLately(recent.shownProperty().get());
        showPlaces();
        return new SideBySide(wide, side, false).narrowFirst();
    }

    /** Which bench this is, and the way to the other one. */
    private Node bench(String words) {
        Button key = Controls.button(toTheOther, other);
        key.setId("other-bench");
        FlowPane line = Controls.flow(key, Controls.plain(words));
        line.setRowValignment(VPos.CENTER);
        VBox sheet = Controls.sheet("", line);
        sheet.getStyleClass().add("slim");
        return sheet;
    }

    private Node newBoat() {
        name.setId("boat-name");
        if (job.now().boat().isBlank()) {
            name.getStyleClass().add("do-now");
        }
        type.setId("boat-type");
        type.setPromptText("such as: open boat, 7 m");
        year.setId("boat-year");
        year.setPrefColumnCount(5);
        for (TextField field : List.of(name, type, year)) {
            field.setOnAction(event -> takeOn());
            field.textProperty().addListener((property, before, after) -> inTheLog.mended());
        }
        Label wrong = Controls.whenSaid(Controls.bound(inTheLog.problemProperty(), "caution"));
        wrong.setId("boat-wrong");
        // Below the button, which so stays where it is while something is said.
        return Controls.sheet(
                "",
                Controls.asked("What is she called?", name),
                Controls.asked("What she is, if you like", type),
                Controls.asked("Built in, if known", year),
                Controls.row(Controls.mainButton("Take her on", this::takeOn)),
                wrong);
    }

    private void takeOn() {
        inTheLog.newBoat(name.getText(), type.getText(), year.getText(), () -> {
            name.clear();
            type.clear();
            year.clear();
            doors.take(Deed.BOATS);
            // A boat that is new has no place yet: nothing else comes next.
            toTheHull.run();
        });
    }

    private void show(List<BoatsModel.Line> shown) {
        boats.getChildren().clear();
        for (BoatsModel.Line boat : shown) {
            ToggleButton key =
                    new ToggleButton(boat.words().isEmpty() ? boat.name() : boat.name() + "\n" + boat.words());
            key.getStyleClass().setAll("choice-key");
            key.setMaxWidth(Double.MAX_VALUE);
            key.setSelected(boat.inHand());
            key.setOnAction(event -> {
                if (!recent.open(boat.name())) {
                    inTheLog.take(boat.id());
                }
            });
            boats.getChildren().add(key);
        }
    }

    private void showLately(List<RecentModel.Line> lines) {
        lately.getChildren().clear();
        for (int i = 0; i < lines.size(); i++) {
            RecentModel.Line line = lines.get(i);
            Button key = Controls.button(line.boat() + "\n" + line.words(), () -> recent.open(line.boat()));
            key.getStyleClass().setAll("choice-key");
            key.setMaxWidth(Double.MAX_VALUE);
            key.setId("recent-" + i);
            if (i == 0) {
                key.setTooltip(new Tooltip("Ctrl and B"));
            }
            lately.getChildren().add(key);
        }
    }

    private void showPlaces() {
        Job now = job.now();
        title.setText(now.boat().isBlank() ? "No boat yet" : now.boat());
        Controls.show(none, now.boat().isBlank());
        Controls.show(drawn, now.boat().isBlank());
        Controls.show(places, !now.places().isEmpty());
        places.getChildren().clear();
        List<Patches.Patch> colours = new ArrayList<>();
        StringBuilder words = new StringBuilder("Places of " + now.boat() + " as colours:");
        for (int i = 0; i < now.places().size(); i++) {
            int index = i;
            String place = now.places().get(i).place();
            int readings = now.places().get(i).readings().size();
            now.places()
                    .get(i)
                    .readings()
                    .get(0)
                    .colour(Aim.judgedUnder(now.places().get(i)))
                    .ifPresent(lab -> colours.add(new Patches.Patch(Shade.of(lab), place, true)));
            words.append(' ').append(place).append('.');
            ToggleButton key = new ToggleButton(place + "\n" + (readings == 1 ? "1 reading" : readings + " readings"));
            key.getStyleClass().setAll("choice-key");
            key.setMaxWidth(Double.MAX_VALUE);
            key.setSelected(i == now.place());
            key.setId("place-" + i);
            key.setOnAction(event -> {
                key.setSelected(true);
                job.change(before -> before.at(index));
                // The list is built anew; the focus stays on what was pressed.
                Node again = places.lookup("#place-" + index);
                if (again != null) {
                    again.requestFocus();
                }
            });
            HBox.setHgrow(key, Priority.ALWAYS);
            places.getChildren().add(key);
        }
        Controls.show(patches, !colours.isEmpty());
        Controls.show(keys, !now.boat().isBlank());
        Controls.show(write, now.place() >= 0);
        readPlace.setText(now.places().isEmpty() ? "Read the first place" : "Read another place");
        patches.show(colours, words.toString());
    }
}
