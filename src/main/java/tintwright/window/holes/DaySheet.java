package tintwright.window.holes;

import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tintwright.bench.PlanFill;
import tintwright.bench.top.DayTicks;
import tintwright.fill.Conditions;
import tintwright.fill.DayWords;
import tintwright.fill.FillPlan;
import tintwright.units.UnitSystem;
import tintwright.window.pieces.Controls;

/** The day as a line of time: when, a box to tick, what to do and why. What was ticked stays while the steps are the same. */
final class DaySheet {
    private final FillModel model;
    private final UnitSystem units;
    private final VBox place = new VBox();

    DaySheet(FillModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
    }

    Node build() {
        place.getStyleClass().add("column");
        Controls.follow(place, model.planProperty(), (before, after) -> show(after));
        show(model.planProperty().get());
        return place;
    }

    private void show(Optional<PlanFill> made) {
        place.getChildren()
                .setAll(
                        made.isPresent()
                                ? of(made.get().plan())
                                : Controls.sheet(
                                        "The day",
                                        Controls.plain("Put a hole on the list: then every step stands here with its "
                                                + "time, to be ticked.")));
    }

    private Node of(FillPlan plan) {
        GridPane line = new GridPane();
        line.setId("day");
        line.getStyleClass().add("day");
        ColumnConstraints what = new ColumnConstraints();
        what.setHgrow(Priority.ALWAYS);
        line.getColumnConstraints().addAll(new ColumnConstraints(), what);
        List<DayWords.Line> steps = DayWords.of(plan, units);
        for (int i = 0; i < steps.size(); i++) {
            DayWords.Line step = steps.get(i);
            Label at = new Label(step.when());
            at.getStyleClass().add("strong");
            CheckBox done = new CheckBox();
            done.setAccessibleText(step.when() + ": " + step.words());
            done.setSelected(model.ticks().has(step));
            done.selectedProperty()
                    .addListener((property, before, after) -> model.ticks().tick(DayTicks.name(step), after));
            Controls.follow(
                    done,
                    model.ticks().doneProperty(),
                    (before, after) -> done.setSelected(model.ticks().has(step)));
            VBox words = new VBox(at, Controls.plain(step.words()));
            if (!step.why().isEmpty()) {
                words.getChildren().add(Controls.soft(step.why()));
            }
            line.addRow(i, done, words);
            GridPane.setValignment(done, VPos.TOP);
        }
        Conditions weather = plan.job().conditions();
        String title = units.temperature(weather.airCelsius());
        String words = weather.words(units);
        return Controls.sheet(
                "The day, at " + title, Controls.whenSaid(Controls.soft(words.equals(title) ? "" : words)), line);
    }
}
