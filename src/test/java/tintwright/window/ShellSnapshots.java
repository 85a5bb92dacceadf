package tintwright.window;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Supplier;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;

class ShellSnapshots {
    @Test
    void frame() {
        Stagehand.onScreen(() -> {
            for (double share : new double[] {1, 2}) {
                ShellModel model = new ShellModel();
                model.jobProperty().set("Brindlewake, port bow");
                model.answer("0.4 apart", "alike side by side", "within 1.6", "no chip of this cup yet");
                model.next("Weigh 0.42 g of black into the cup.", "It is in", () -> { });
                model.canUndoProperty().set(true);
                Map<Step, Supplier<Node>> stations = new EnumMap<>(Step.class);
                for (Step step : Step.values()) {
                    stations.put(step, () -> Pieces.sheet("A sheet", Pieces.plain("Some words"),
                            Pieces.row(Pieces.mainButton("Do it", () -> { }), Pieces.button("Other", () -> { }))));
                }
                Shell shell = new Shell(model, stations);
                model.setTextShare(share);
                model.darkProperty().set(share > 1);
                var scene = new javafx.scene.Scene(shell, 1280, 800);
                scene.getStylesheets().add(Shell.class.getResource("bench.css").toExternalForm());
                Stagehand.snapshot(scene, "shell-" + (int) (share * 100));
            }
            return null;
        });
    }
}
