package tintwright.window.holes;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tintwright.fill.FillPlan;
import tintwright.fill.repair.RepairLine;
import tintwright.units.UnitSystem;
import tintwright.window.picture.RepairPicture;
import tintwright.window.pieces.Controls;

/** What needs filling: each line of repairs as it was measured, and what is wrong with it. */
final class HolesList {
    /** Drawn where nobody measured it; as {@code fill.Hull} takes it, a maker's guide. */
    static final double USUAL_GEL_MM = 0.5;

    private final FillModel model;
    private final UnitSystem units;
    private final VBox list = new VBox();

    HolesList(FillModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
        list.getStyleClass().add("hole-list");
    }

    Node build() {
        Controls.follow(list, model.job().jobProperty(), (before, after) -> showList());
        Controls.follow(list, model.planProperty(), (before, after) -> showList());
        Controls.follow(list, model.measuringProperty(), (before, after) -> showFirst());
        showList();
        return Controls.sheet("What needs filling", list);
    }

    /** While there is no list: where the first of it is measured, and how it looks so far. */
    private void showFirst() {
        if (!model.job().now().fill().lines().isEmpty()) {
            return;
        }
        list.getChildren()
                .setAll(Controls.plain(
                        "Measure one hole, scratch or worn patch and put it on the list: how much colour to"
                                + " mix, how much catalyst and how the day runs then stands here."));
        model.measuringProperty()
                .get()
                .ifPresent(hole -> list.getChildren()
                        .add(RepairPicture.measured(
                                hole.drawn(),
                                USUAL_GEL_MM,
                                hole.drawn().kind() + " cut through, with what is measured of it",
                                hole.names())));
    }

    /** Each hole as measured, the colour it takes, and what is wrong with one in its own line. */
    private void showList() {
        list.getChildren().clear();
        List<RepairLine> lines = model.job().now().fill().lines();
        if (lines.isEmpty()) {
            showFirst();
        }
        for (int i = 0; i < lines.size(); i++) {
            int index = i;
            RepairLine line = lines.get(i);
            Optional<FillPlan.Amount> planned = model.planProperty()
                    .get()
                    .flatMap(made -> made.plan().amounts().stream()
                            .filter(amount -> amount.line().equals(line))
                            .findFirst());
            VBox words = new VBox(
                    Controls.wrapped(line.count() + " \u00d7 " + line.name(), "strong"),
                    Controls.soft(
                            line.repair().sizeWords(units) + ", " + line.lie().words()));
            words.getStyleClass().add("hole-words");
            RepairPicture drawn = new RepairPicture(
                    line.repair(),
                    model.job().now().fill().facts().oldFilm().orElse(USUAL_GEL_MM),
                    line.repair().kind() + " cut through, " + line.repair().sizeWords(units));
            HBox.setHgrow(words, Priority.ALWAYS);
            words.setMaxWidth(Double.MAX_VALUE);
            Button remove = Controls.quietButton("Remove", () -> model.remove(index));
            remove.setAccessibleText("Remove " + line.name());
            Label ml =
                    new Label(units.volume(planned.map(FillPlan.Amount::netMl).orElse(line.netMl())));
            ml.getStyleClass().add("strong");
            ml.setMinWidth(Region.USE_PREF_SIZE);
            VBox hole = new VBox(Controls.row(drawn, words, ml, remove));
            planned.flatMap(amount -> amount.triage().words(units))
                    .ifPresent(wrong -> hole.getChildren().add(Controls.wrapped(wrong, "hole-wrong")));
            hole.getStyleClass().add("hole-row");
            list.getChildren().add(hole);
        }
    }
}
