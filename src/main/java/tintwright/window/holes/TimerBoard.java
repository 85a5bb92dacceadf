package tintwright.window.holes;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tintwright.bench.top.CureClock.Phase;
import tintwright.window.pieces.Controls;

/**
 * The cups with catalyst in them, with a large countdown for each thing it will be time for. From second to second
 * only the words change, so that a key in focus stays in focus.
 */
final class TimerBoard extends VBox {
    private final FillModel model;
    private final List<Label> texts = new ArrayList<>();
    private List<String> built = List.of();
    private List<FillTimers.Cup> shown = List.of();

    TimerBoard(FillModel model) {
        this.model = model;
        getStyleClass().add("column");
        Controls.follow(this, model.timers().runningProperty(), (before, after) -> show(after));
        setVisible(false);
        setManaged(false);
        show(model.timers().runningProperty().get());
    }

    private void show(List<FillTimers.Running> running) {
        List<FillTimers.Cup> cups =
                running.stream().map(FillTimers.Running::cup).toList();
        boolean more = cups.stream().anyMatch(cup -> !shown.contains(cup));
        shown = cups;
        List<String> wanted = running.stream()
                .flatMap(cup -> Stream.concat(
                        Stream.of(cup.name() + cup.words()), cup.cues().stream().map(cue -> cue.cue() + cue.phase())))
                .toList();
        if (!wanted.equals(built)) {
            build(running);
            built = wanted;
        }
        if (more && getScene() != null) {
            // The key that was pressed goes: the next one would catalyse another batch at a second press.
            getChildren().get(cups.size() - 1).requestFocus();
            Controls.bringIntoSight(this);
        }
        int next = 0;
        for (FillTimers.Running cup : running) {
            for (FillTimers.Cue cue : cup.cues()) {
                texts.get(next++).setText(cue.figure());
                texts.get(next++).setText(cue.words());
            }
        }
    }

    private void build(List<FillTimers.Running> running) {
        getChildren().clear();
        texts.clear();
        for (FillTimers.Running cup : running) {
            VBox sheet = Controls.sheet(cup.name() + " is curing", Controls.soft(cup.words()));
            sheet.setFocusTraversable(true);
            sheet.setAccessibleRole(AccessibleRole.TEXT);
            sheet.setAccessibleText(cup.name() + " is curing, " + cup.words());
            for (FillTimers.Cue cue : cup.cues()) {
                sheet.getChildren().add(line(cup.cup(), cue));
            }
            sheet.getChildren()
                    .add(Controls.quietButton("Stop: it was not catalysed", () -> model.stopTimers(cup.cup())));
            getChildren().add(sheet);
        }
        setVisible(!running.isEmpty());
        setManaged(!running.isEmpty());
    }

    private HBox line(FillTimers.Cup cup, FillTimers.Cue cue) {
        boolean due = cue.phase() != Phase.WAIT;
        Label figure = Controls.wrapped(cue.figure(), due ? "caution" : "plain");
        figure.getStyleClass().add("countdown");
        VBox time = new VBox(figure);
        if (!due) {
            time.getChildren().add(Controls.soft("until " + cue.until()));
        }
        Label words = Controls.wrapped(cue.words(), due ? "caution" : "plain");
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        texts.add(figure);
        texts.add(words);
        HBox line = Controls.row(time, words);
        if (due) {
            line.getChildren().add(Controls.button("Done", () -> model.done(cup, cue.cue())));
        }
        return line;
    }
}
