package tintwright.window.holes;

import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import org.junit.jupiter.api.Test;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairKind;
import tintwright.units.UnitSystem;
import tintwright.window.Desk;
import tintwright.window.Desks;
import tintwright.window.Stagehand;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/**
 * Pictures of the fill at work, to be looked at, in target/snapshots: {@code mvn test -Dtest=FillSnapshots}. The name
 * keeps it out of the everyday run.
 */
class FillSnapshots {
    @Test
    void theFillAtWork() {
        Stagehand.onScreen(() -> {
            for (double text : new double[] {1, 2}) {
                Desk desk = Desks.demo(Clock.systemUTC());
                desk.cup().begin();
                for (int i = 0; i < 4; i++) {
                    desk.cup().accept();
                }
                FillModel fill = desk.fill();
                fill.add(
                        "old cleat holes",
                        RepairKind.COUNTERSUNK,
                        Map.of("hole", "5", "top", "9", "countersink", "2", "depth", "6"),
                        Lie.VERTICAL,
                        "8",
                        UnitSystem.METRIC);
                fill.add(
                        "keel strip",
                        RepairKind.GOUGE,
                        Map.of("length", "60", "width", "12", "depth", "3"),
                        Lie.OVERHEAD,
                        "2",
                        UnitSystem.METRIC);
                fill.add(
                        "topside",
                        RepairKind.SPRAY,
                        Map.of("length", "300", "width", "200"),
                        Lie.VERTICAL,
                        "1",
                        UnitSystem.METRIC);
                desk.shell().setTextShare(text);
                desk.shell().stepProperty().set(Step.FILL);
                Scene scene = new Scene(desk.view(), 1280, 800);
                Look.dress(scene);
                String name = "fill-" + (int) (text * 100) + "-";
                pictures(scene, name + "list");
                fill.hull().weather("34", "31", "31", "55", UnitSystem.METRIC);
                fill.hull()
                        .know(
                                new AtTheHullModel.Known("0.5", "0.4", "", "500", Optional.empty(), "22", ""),
                                UnitSystem.METRIC);
                fill.catalyst().row("Grey tin", "18", "2", Basis.MASS, "18", "24", UnitSystem.METRIC);
                fill.catalyst().row("", "22", "1.6", Basis.MASS, "14", "18", UnitSystem.METRIC);
                fill.catalyst().row("", "26", "3.4", Basis.MASS, "9", "12", UnitSystem.METRIC);
                fill.catalysed(1);
                desk.shell().unitsProperty().set(UnitSystem.US);
                pictures(scene, name + "curing-us");
                fill.hull().weather("20 F", "", "", "", UnitSystem.US);
                pictures(scene, name + "refused");
            }
            return null;
        });
    }

    /** The top of the station, and as far down as it goes. */
    private static void pictures(Scene scene, String name) {
        Stagehand.snapshot(scene, name);
        for (double down : new double[] {0.5, 1}) {
            // Twice: what comes into sight for the first time is laid out for the first time.
            for (int i = 0; i < 2; i++) {
                for (Node node : scene.getRoot().lookupAll(".scroll-pane")) {
                    ((ScrollPane) node).setVvalue(down);
                }
                scene.getRoot().applyCss();
                scene.getRoot().layout();
            }
            Stagehand.snapshot(scene, name + "-down" + (int) (down * 100));
        }
        for (Node node : scene.getRoot().lookupAll(".scroll-pane")) {
            ((ScrollPane) node).setVvalue(0);
        }
    }
}
