package tintwright.window.cup;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tintwright.cup.CupDeeds;
import tintwright.window.picture.Shade;
import tintwright.window.pieces.Controls;

/** What is in the cup, what goes in now and what comes after it, one line each; what is in can be put right. */
final class DeedList extends VBox {
    /** So many of the things done are shown until all are asked for: what to do now stays in sight. */
    private static final int LAST = 3;

    private final CupModel model;
    private boolean all;

    DeedList(CupModel model) {
        this.model = model;
        getStyleClass().add("deed-list");
    }

    void show(CupDeeds deeds) {
        getChildren().clear();
        int before = all ? 0 : Math.max(0, deeds.done().size() - LAST);
        if (before > 0) {
            Button more = Controls.quietButton("Show the " + before + " before", () -> {
                all = true;
                show(deeds);
            });
            more.setId("all-done");
            getChildren().add(more);
        }
        for (CupDeeds.Done line : deeds.done().subList(before, deeds.done().size())) {
            HBox row = line("\u2713", "deed-done", line.words());
            line.chip().ifPresent(chip -> {
                row.getChildren().add(1, Controls.speck(Shade.of(chip.colour()).css()));
                Tooltip.install(row, new Tooltip(chip.figures()));
                row.setAccessibleText(line.words() + ", " + chip.figures());
            });
            if (line.weighed()) {
                row.getChildren().add(Controls.quietButton("Put right", () -> putRight(row, line)));
            }
            if (line.chip().isPresent()) {
                row.getChildren().add(Controls.quietButton("Cross out", () -> model.crossOut(line.entry())));
            }
            getChildren().add(row);
        }
        getChildren().add(todo("\u25cf", "deed-now", deeds.now()));
        for (CupDeeds.Todo next : deeds.next()) {
            getChildren().add(todo("\u25cb", "deed-next", next));
        }
    }

    private static HBox todo(String sign, String style, CupDeeds.Todo todo) {
        HBox row = line(sign, style, todo.amount().map(CupDeeds.Amount::of).orElse(todo.sentence()));
        todo.amount().ifPresent(amount -> {
            Label grams = new Label(amount.shown());
            grams.getStyleClass().add("deed-grams");
            grams.setMinWidth(Region.USE_PREF_SIZE);
            row.getChildren().add(grams);
        });
        return row;
    }

    /** What is wanted before there is anything to weigh, ticked when it is there. */
    static HBox wanted(boolean there, String words) {
        return there ? line("\u2713", "deed-done", words) : line("\u25cb", "deed-next", words);
    }

    private static HBox line(String sign, String style, String words) {
        Label mark = new Label(sign);
        mark.getStyleClass().add("deed-sign");
        mark.setMinWidth(Region.USE_PREF_SIZE);
        Label said = Controls.plain(words);
        said.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(said, Priority.ALWAYS);
        HBox row = new HBox(mark, said);
        row.getStyleClass().addAll("deed-line", style);
        return row;
    }

    /** Asks in place what it really was: no dialog comes up. */
    private void putRight(HBox row, CupDeeds.Done line) {
        TextField field = new TextField();
        field.setPrefColumnCount(5);
        field.setAccessibleText("what it really was, grams");
        field.setOnAction(event -> model.correct(line.entry(), field.getText()));
        Node key = row.getChildren().get(row.getChildren().size() - 1);
        row.getChildren().set(row.getChildren().indexOf(key), field);
        row.getChildren().add(Controls.button("Write", () -> model.correct(line.entry(), field.getText())));
        field.requestFocus();
    }
}
