package tintwright.window;

import java.io.File;
import java.util.List;
import java.util.function.BiConsumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import tintwright.logbook.Page;
import tintwright.window.picture.Patches;

/** The log of the boat in hand: how its places moved, what was mixed, and what comes near. */
final class LogPage {
    private final LogModel model;
    private final Patches patches = new Patches();
    private final Label title = Pieces.heading("");
    private final VBox places = new VBox();
    private final VBox entries = new VBox();
    private final VBox near = new VBox();
    private final VBox again = new VBox();
    private final Label trouble = Pieces.whenSaid(Pieces.wrapped("", "caution"));

    LogPage(LogModel model) {
        this.model = model;
        places.getStyleClass().add("lines");
        entries.getStyleClass().add("pictures");
        near.getStyleClass().add("asked");
        again.getStyleClass().add("asked");
    }

    Region build() {
        VBox wide = new VBox(patches, Pieces.sheet("", title, trouble, places), entries);
        wide.getStyleClass().add("pictures");
        VBox againSheet = Pieces.sheet("Make it again", again);
        Pieces.onlyWhen(model.againProperty().map(lines -> !lines.isEmpty()), againSheet);
        VBox side = new VBox(
                Pieces.sheet("Write down", Pieces.soft("Every dose of the cup in hand is written down as it happens."),
                        Pieces.button("Done with this cup", model::doneWithCup),
                        Pieces.button("These holes are filled", model::filled),
                        Pieces.button("Today's readings of this place", model::writeReadings),
                        Pieces.whenSaid(Pieces.bound(model.problemProperty(), "caution"))),
                againSheet, Pieces.sheet("Mixed before, near this hull", near));
        side.getStyleClass().addAll("column", "side");
        model.shownProperty().addListener((property, before, after) -> show(after));
        model.againProperty().addListener((property, before, after) -> again.getChildren().setAll(after.stream()
                .map(Pieces::plain).toList()));
        show(model.shownProperty().get());
        return new Sides(wide, side, true, 62);
    }

    private void show(LogModel.Shown shown) {
        title.setText(shown.boat().isBlank() ? "No boat yet" : shown.boat());
        trouble.setText(shown.trouble());
        places.getChildren().clear();
        StringBuilder words = new StringBuilder("Places of " + shown.boat() + " each time they were read:");
        for (LogModel.PlaceLine place : shown.places()) {
            places.getChildren().add(Pieces.plain(place.name() + ": " + place.words()));
            words.append(' ').append(place.name()).append(", ").append(place.words()).append('.');
        }
        patches.show(shown.places().stream().flatMap(place -> place.looks().stream().map(look ->
                new Patches.Patch(look.shade(), place.name() + " " + look.day(), true))).toList(), words.toString());
        near.getChildren().clear();
        if (shown.near().isEmpty()) {
            near.getChildren().add(Pieces.soft("Nothing yet."));
        }
        shown.near().forEach(line -> near.getChildren().add(Pieces.plain(line.words())));
        entries.getChildren().clear();
        List<LogModel.EntryLine> lines = shown.entries();
        for (int i = lines.size() - 1; i >= 0; i--) {
            entries.getChildren().add(entry(lines.get(i)));
        }
    }

    private Node entry(LogModel.EntryLine line) {
        VBox sheet = Pieces.sheet("", Pieces.soft(line.day()), Pieces.plain(line.words()));
        if (!line.cup()) {
            return sheet;
        }
        TextField grams = new TextField(String.format(java.util.Locale.ROOT, "%.0f", line.grams()));
        grams.setPrefColumnCount(4);
        grams.setAccessibleText("grams to make again");
        FlowPane row = new FlowPane(grams, Pieces.button("g again", () -> model.again(line.id(), grams.getText())),
                Pieces.quietButton("Label", () -> save("label.pdf", (name, file) -> model.label(line.id(),
                        file.toPath()))),
                Pieces.quietButton("Card", () -> save("card.pdf", (name, file) -> model.card(line.id(),
                        file.toPath()))));
        row.getStyleClass().add("fields");
        FlowPane came = new FlowPane(Pieces.soft("It came out:"));
        came.getStyleClass().add("fields");
        for (Page.Outcome outcome : Page.Outcome.values()) {
            came.getChildren().add(Pieces.quietButton(outcome.words(), () -> model.judge(line.id(), outcome, "")));
        }
        sheet.getChildren().addAll(row, came);
        return sheet;
    }

    private void save(String name, BiConsumer<String, File> take) {
        FileChooser chooser = new FileChooser();
        chooser.setInitialFileName(name);
        File chosen = chooser.showSaveDialog(patches.getScene().getWindow());
        if (chosen != null) {
            take.accept(name, chosen);
        }
    }
}
