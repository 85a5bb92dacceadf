package tintwright.window.holes;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tintwright.units.UnitSystem;
import tintwright.window.pieces.Sides;

/** The fill: what is to be filled on one side, cup by cup what to mix on the other. */
public final class FillPage {
    /** Width in text sizes below which the sides stand one below the other. */
    private static final double ROOM = 62;

    private final FillModel model;
    private final UnitSystem units;

    public FillPage(FillModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
    }

    public Region build() {
        Node repair = new RepairForm(model, units).build();
        Node list = new HolesList(model, units).build();
        Node hull = new AtTheHullForm(model, units).build();
        Node catalyst = new CatalystForm(model.catalyst(), units).build();
        Node timers = new TimerBoard(model);
        Node answer = new FillAnswer(model, units).build();
        VBox typed = new VBox();
        typed.getStyleClass().addAll("column", "side");
        VBox mixed = new VBox();
        mixed.getStyleClass().add("column");
        // One below the other, the answer stands right under the list it answers.
        return new Sides(mixed, typed, true, ROOM, stacked -> {
            mixed.getChildren().clear();
            typed.getChildren().setAll(stacked ? List.of(hull, catalyst) : List.of(repair, hull, catalyst));
            mixed.getChildren().setAll(stacked ? List.of(timers, list, repair, answer) : List.of(timers, list, answer));
        });
    }
}
