package tintwright.window.holes;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tintwright.fill.DayWords;
import tintwright.fill.FillPlan;
import tintwright.units.UnitSystem;
import tintwright.window.pieces.Pieces;

/** The day as a line of time: when, a box to tick, what to do and why. What was ticked stays while the steps are the same. */
final class DaySheet {
    private final FillModel model;
    private final UnitSystem units;

    DaySheet(FillModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
    }

    Node of(FillPlan plan) {
        GridPane line = new GridPane();
        line.setId("day");
        line.getStyleClass().add("day");
        ColumnConstraints when = new ColumnConstraints();
        when.setHalignment(HPos.RIGHT);
        when.setMinWidth(ColumnConstraints.CONSTRAIN_TO_PREF);
        ColumnConstraints tick = new ColumnConstraints();
        ColumnConstraints what = new ColumnConstraints();
        what.setHgrow(Priority.ALWAYS);
        what.setFillWidth(true);
        line.getColumnConstraints().addAll(when, tick, what);
        List<DayWords.Line> steps = DayWords.of(plan, units);
        for (int i = 0; i < steps.size(); i++) {
            DayWords.Line step = steps.get(i);
            Label at = new Label(step.when());
            at.getStyleClass().add("strong");
            CheckBox done = new CheckBox();
            done.setAccessibleText(step.when() + ": " + step.words());
            done.setSelected(model.ticked().contains(step));
            done.selectedProperty().addListener((property, before, after) -> model.tick(step, after));
            VBox words = new VBox(Pieces.plain(step.words()));
            if (!step.why().isEmpty()) {
                words.getChildren().add(Pieces.soft(step.why()));
            }
            line.addRow(i, at, done, words);
            GridPane.setValignment(at, VPos.TOP);
            GridPane.setValignment(done, VPos.TOP);
        }
        return Pieces.sheet(
                "The day, at " + units.temperature(plan.job().conditions().airCelsius()),
                Pieces.soft(plan.job().conditions().words(units)),
                line);
    }
}
