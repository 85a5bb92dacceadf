package tintwright.window;

import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import tintwright.units.UnitSystem;

/** The plan before a cup is begun, the cup from then on. */
final class CupStation extends StackPane {
    private final CupModel cup;
    private final Region plan;
    private Region inHand;

    CupStation(PlanModel planModel, CupModel cup, UnitSystem units) {
        this.cup = cup;
        this.plan = new PlanPage(planModel, cup::begin, units).build();
        cup.inHandProperty().addListener((property, before, after) -> {
            if (before.isPresent() != after.isPresent()) {
                show();
            }
        });
        show();
    }

    private void show() {
        if (cup.inHandProperty().get().isEmpty()) {
            getChildren().setAll(plan);
            return;
        }
        if (inHand == null) {
            inHand = new CupPage(cup).build();
        }
        getChildren().setAll(inHand);
    }
}
