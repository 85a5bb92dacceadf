package tintwright.window;

import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tintwright.units.UnitSystem;

/** The fill: what is to be filled on one side, cup by cup what to mix on the other. */
final class FillPage {
    /** Width in text sizes below which the sides stand one below the other. */
    private static final double ROOM = 62;

    private final FillModel model;
    private final UnitSystem units;

    FillPage(FillModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
    }

    Region build() {
        VBox typed = new VBox(new RepairForm(model, units).build(), new AtTheHullForm(model, units).build(),
                new CatalystForm(model.catalyst(), units).build());
        typed.getStyleClass().addAll("column", "side");
        return new Sides(new FillAnswer(model, units).build(), typed, true, ROOM);
    }
}
