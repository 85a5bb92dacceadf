package tintwright.window;

import java.time.Clock;
import java.util.List;
import javafx.scene.Scene;
import org.junit.jupiter.api.Test;
import tintwright.fill.CountersunkHole;
import tintwright.fill.Lie;
import tintwright.fill.RepairLine;
import tintwright.fill.ScratchGroove;

/**
 * Pictures of every station, to be looked at, in target/snapshots:
 * {@code mvn test -Dtest=WindowSnapshots}. The name keeps it out of the everyday run.
 */
class WindowSnapshots {
    private record Size(String name, double width, double height, double text, boolean dark) {
    }

    private static final List<Size> SIZES = List.of(new Size("1280", 1280, 800, 1, false),
            new Size("1920-dark", 1920, 1080, 1.2, true), new Size("200", 1280, 800, 2, false));

    @Test
    void everyStation() {
        Stagehand.onScreen(() -> {
            for (Size size : SIZES) {
                for (Step step : Step.values()) {
                    Desk desk = new Desk(Desk.demo(), Runnable::run, Runnable::run, Clock.systemUTC());
                    desk.job().change(job -> job.filling(job.fill()
                            .plus(new RepairLine("old cleat holes", new CountersunkHole(5, 9, 2, 6, 0), Lie.VERTICAL, 8))
                            .plus(new RepairLine("fender scratch", new ScratchGroove(300, 2, 0.6), Lie.VERTICAL, 1))));
                    desk.shell().setTextShare(size.text());
                    desk.shell().darkProperty().set(size.dark());
                    if (!desk.stations().contains(step)) {
                        continue;
                    }
                    desk.shell().stepProperty().set(step);
                    Scene scene = new Scene(desk.view(), size.width(), size.height());
                    scene.getStylesheets().add(Shell.class.getResource("bench.css").toExternalForm());
                    Stagehand.snapshot(scene, step.name().toLowerCase() + "-" + size.name());
                }
            }
            return null;
        });
    }
}
