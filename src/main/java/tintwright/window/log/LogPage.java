package tintwright.window.log;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tintwright.bench.job.Job;
import tintwright.bench.log.BoatLog;
import tintwright.logbook.Page;
import tintwright.window.picture.Patches;
import tintwright.window.picture.Shade;
import tintwright.window.pieces.AskForFile;
import tintwright.window.pieces.Controls;
import tintwright.window.pieces.FileNames;
import tintwright.window.pieces.SideBySide;

/** The log of the boat in hand: how its places moved, what was mixed, and what comes near. */
public final class LogPage {
    /** A name of fewer letters stands in one line. */
    private static final int SHORT_NAME = 20;

    private final LogModel model;
    private final Patches patches = new Patches();
    private final Label title = Controls.heading("");
    private final GridPane places = new GridPane();
    private final VBox entries = new VBox();
    private final VBox near = new VBox();
    private final VBox again = new VBox();
    private final Label trouble = Controls.whenSaid(Controls.wrapped("", "caution"));

    private final Label nothing =
            Controls.plain("Nothing is written of her yet. What is read of her and what goes into a"
                    + " cup for her stands here by its day, and next spring it is made again from here.");

    public LogPage(LogModel model) {
        this.model = model;
        places.getStyleClass().add("table");
        entries.getStyleClass().add("pictures");
        near.getStyleClass().add("column");
        again.getStyleClass().add("asked");
    }

    public Region build() {
        VBox wide = new VBox(patches, Controls.sheet("", title, trouble, nothing, places), entries);
        wide.getStyleClass().add("pictures");
        VBox againSheet =
                Controls.sheet("", Controls.bound(model.againProperty().map(LogModel.Again::title), "heading"), again);
        Controls.onlyWhen(model.againProperty().map(made -> !made.lines().isEmpty()), againSheet);
        VBox side = new VBox(
                againSheet,
                Controls.sheet(
                        "Write down",
                        Controls.soft("The cup in hand is written down dose by dose, by itself. "
                                + "The rest when you say so."),
                        when(job -> job.cup().isPresent(), "Done with this cup", model::doneWithCup),
                        when(
                                job -> !job.fill().lines().isEmpty() && job.place() >= 0,
                                "These holes are filled",
                                model::filled),
                        when(job -> job.place() >= 0, "Today's readings of this place", model::writeReadings),
                        Controls.whenSaid(Controls.bound(model.problemProperty(), "caution"))),
                Controls.sheet("Mixed before, near this hull", near));
        side.getStyleClass().addAll("column", "side");
        model.shownProperty().addListener((property, before, after) -> show(after));
        model.againProperty().addListener((property, before, after) -> {
            again.getChildren()
                    .setAll(after.lines().stream().map(Controls::plain).toList());
            Controls.bringIntoSight(againSheet);
        });
        show(model.shownProperty().get());
        return new SideBySide(wide, side, false);
    }

    /** A key that is there only while there is something to write down. */
    private Button when(Predicate<Job> there, String words, Runnable action) {
        return Controls.onlyWhen(model.job().jobProperty().map(there::test), Controls.button(words, action));
    }

    private void show(LogModel.Shown shown) {
        title.setText(shown.boat().isBlank() ? "No boat yet" : shown.boat());
        trouble.setText(shown.trouble());
        places.getChildren().clear();
        StringBuilder words = new StringBuilder("Places of " + shown.boat() + " each time they were read:");
        for (LogModel.PlaceLine place : shown.places()) {
            int row = places.getRowCount();
            Label name = Controls.wrapped(place.name(), "strong");
            GridPane.setValignment(name, VPos.TOP);
            if (place.name().length() < SHORT_NAME) {
                name.setMinWidth(Region.USE_PREF_SIZE);
            }
            Label read = Controls.plain(place.read());
            GridPane.setHgrow(read, Priority.ALWAYS);
            places.addRow(
                    row,
                    name,
                    new VBox(
                            read,
                            Controls.whenSaid(Controls.soft(place.moved())),
                            Controls.whenSaid(Controls.soft(place.figures()))));
            words.append(' ')
                    .append(place.name())
                    .append(", ")
                    .append(place.read())
                    .append(", ")
                    .append(place.moved())
                    .append('.');
        }
        Controls.show(
                patches,
                shown.places().stream().anyMatch(place -> !place.looks().isEmpty()));
        patches.show(
                shown.places().stream()
                        .flatMap(place -> place.looks().stream()
                                .map(look -> new Patches.Patch(look.shade(), place.name() + " " + look.day(), true)))
                        .toList(),
                words.toString());
        near.getChildren().clear();
        if (shown.near().isEmpty()) {
            near.getChildren().add(Controls.soft("No other cup yet."));
        }
        shown.near().forEach(line -> near.getChildren().add(near(line)));
        entries.getChildren().clear();
        List<BoatLog.Line> lines = shown.entries();
        Controls.show(nothing, lines.isEmpty() && shown.places().isEmpty());
        for (int i = lines.size() - 1; i >= 0; i--) {
            entries.getChildren().add(entry(lines.get(i)));
        }
    }

    /** Name and boat, how far and which way, how it came out, and the key to make it again. */
    private Node near(LogModel.NearLine line) {
        VBox said = new VBox(
                Controls.wrapped(line.name(), "strong"),
                Controls.whenSaid(Controls.soft(line.boat())),
                Controls.plain(line.apart()),
                Controls.whenSaid(Controls.soft(line.verdict())));
        line.cup().ifPresent(cup -> {
            Button key = Controls.quietButton("Make it again", () -> model.again(cup, grams(line.grams())));
            key.setAccessibleText("Make " + line.name() + " again");
            said.getChildren().add(key);
        });
        said.getStyleClass().add("asked");
        return said;
    }

    private static String grams(double grams) {
        return String.format(Locale.ROOT, "%.0f", grams);
    }

    private Node entry(BoatLog.Line line) {
        Label day = Controls.soft(line.day());
        day.setStyle("-fx-min-width: 5.6em;");
        VBox sheet = Controls.sheet(
                "",
                Controls.row(Controls.wrapped(line.title(), "strong"), Controls.gap(), day),
                Controls.whenSaid(Controls.plain(line.words())));
        line.colour()
                .ifPresent(lab -> ((HBox) sheet.getChildren().get(0))
                        .getChildren()
                        .add(0, Controls.speck(Shade.of(lab).css())));
        if (!line.cup()) {
            return sheet;
        }
        TextField grams = new TextField(grams(line.grams()));
        grams.setPrefColumnCount(4);
        grams.setAccessibleText("grams to make again");
        grams.setOnAction(event -> model.again(line.id(), grams.getText()));
        FlowPane row = Controls.flow(
                Controls.button("Make it again,", () -> model.again(line.id(), grams.getText())),
                grams,
                Controls.plain("g"),
                Controls.gap(),
                Controls.quietButton(
                        "Label to print",
                        () -> AskForFile.toWrite(
                                patches,
                                "Label to print",
                                name(line, "label") + ".pdf",
                                file -> model.label(line.id(), file))),
                Controls.quietButton(
                        "Recipe card",
                        () -> AskForFile.toWrite(
                                patches,
                                "Recipe card",
                                name(line, "recipe") + ".pdf",
                                file -> model.card(line.id(), file))));
        FlowPane came = Controls.flow(Controls.soft("It came out:"));
        for (Page.Outcome outcome : Page.Outcome.values()) {
            boolean so = line.verdict().filter(outcome::equals).isPresent();
            Button key = Controls.quietButton(
                    (so ? "\u2713 " : "") + outcome.words(), () -> model.judge(line.id(), outcome, ""));
            key.setAccessibleText(outcome.words() + (so ? ", written down" : ""));
            came.getChildren().add(key);
        }
        List.of(row, came).forEach(flow -> flow.setRowValignment(VPos.CENTER));
        sheet.getChildren().addAll(row, came);
        return sheet;
    }

    /** A file's name that no other cup's takes, safe on every system. */
    private static String name(BoatLog.Line line, String what) {
        return FileNames.safe(line.title() + " " + line.day() + " " + what);
    }
}
