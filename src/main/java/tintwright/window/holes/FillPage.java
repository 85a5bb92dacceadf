package tintwright.window.holes;

import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tintwright.units.UnitSystem;
import tintwright.window.pieces.Controls;
import tintwright.window.pieces.Doors;
import tintwright.window.pieces.SideBySide;

/** The holes: what is to be filled and what to mix on one side, one thing to do or to look at on the other. */
public final class FillPage {
    private final FillModel model;
    private final UnitSystem units;

    public FillPage(FillModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
    }

    /** What can be done beside the list. */
    private enum Deed {
        DAY,
        HOLE,
        HULL,
        CATALYST
    }

    public Region build() {
        Node list = new HolesList(model, units).build();
        Node timers = new TimerBoard(model);
        FillAnswer answer = new FillAnswer(model, units);
        RepairForm form = new RepairForm(model, units);
        Doors<Deed> doors = new Doors<Deed>(deed -> "holes-" + deed.name().toLowerCase(Locale.ROOT))
                .with(Deed.HOLE, "Add a hole", form.build())
                .with(Deed.DAY, "The day", new DaySheet(model, units).build())
                .with(Deed.HULL, "At the hull", new AtTheHullForm(model, units).build())
                .with(Deed.CATALYST, "Catalyst", new CatalystForm(model.catalyst(), units).build());
        // Who comes here with holes on the list has a day to look at.
        doors.sceneProperty().addListener((property, before, after) -> {
            if (after != null
                    && doors.isOpen(Deed.HOLE)
                    && !form.begun()
                    && !model.job().now().fill().lines().isEmpty()) {
                doors.take(Deed.DAY);
            }
        });
        VBox typed = new VBox(doors);
        typed.getStyleClass().add("side");
        VBox mixed = new VBox(timers, list, answer.build());
        mixed.getStyleClass().add("column");
        SideBySide sides = new SideBySide(mixed, typed, false);
        // Until there is a list, what is typed comes before the picture that explains it.
        Controls.follow(
                sides,
                model.job().jobProperty(),
                (before, after) -> sides.narrowAbove(after.fill().lines().isEmpty()));
        sides.narrowAbove(model.job().now().fill().lines().isEmpty());
        return sides;
    }
}
