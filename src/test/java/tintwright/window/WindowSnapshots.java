package tintwright.window;

import java.time.Clock;
import java.util.List;
import java.util.Locale;
import javafx.scene.Scene;
import org.junit.jupiter.api.Test;
import tintwright.fill.repair.CountersunkHole;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairLine;
import tintwright.fill.repair.ScratchGroove;
import tintwright.window.frame.Step;
import tintwright.window.hull.HullModel;
import tintwright.window.pieces.Look;

/**
 * Pictures of every station, to be looked at, in target/snapshots:
 * {@code mvn test -Dtest=WindowSnapshots}. The name keeps it out of the everyday run.
 */
class WindowSnapshots {
    private record Size(String name, double width, double height, double text, boolean dark) {}

    private static final List<Size> SIZES = List.of(
            new Size("1280", 1280, 800, 1, false),
            new Size("1920-dark", 1920, 1080, 1.2, true),
            new Size("200", 1280, 800, 2, false),
            new Size("1024", 1024, 700, 1, false),
            new Size("1024-200", 1024, 700, 2, false));

    @Test
    void everyStation() {
        Stagehand.onScreen(() -> {
            for (Size size : SIZES) {
                for (Step step : Step.values()) {
                    Desk desk = Desks.demo(Clock.systemUTC());
                    desk.job()
                            .change(job -> job.filling(job.fill()
                                    .plus(new RepairLine(
                                            "old cleat holes", new CountersunkHole(5, 9, 2, 6, 0), Lie.VERTICAL, 8))
                                    .plus(new RepairLine(
                                            "fender scratch", new ScratchGroove(300, 2, 0.6), Lie.VERTICAL, 1))));
                    desk.shell().setTextShare(size.text());
                    desk.shell().darkProperty().set(size.dark());
                    if (!desk.stations().contains(step)) {
                        continue;
                    }
                    desk.shell().stepProperty().set(step);
                    Scene scene = new Scene(desk.view(), size.width(), size.height());
                    Look.dress(scene);
                    Stagehand.snapshot(scene, step.name().toLowerCase(Locale.ROOT) + "-" + size.name());
                }
            }
            return null;
        });
    }

    @Test
    void theCupOnItsWay() {
        Stagehand.onScreen(() -> {
            for (Size size : SIZES) {
                Desk desk = Desks.demo(Clock.systemUTC());
                desk.shell().setTextShare(size.text());
                desk.shell().darkProperty().set(size.dark());
                Scene scene = new Scene(desk.view(), size.width(), size.height());
                Look.dress(scene);
                desk.cup().begin();
                Stagehand.snapshot(scene, "cup-begun-" + size.name());
                desk.cup().accept();
                Stagehand.snapshot(scene, "cup-white-" + size.name());
                for (int i = 0;
                        i < 6
                                && desk.cup()
                                        .inHandProperty()
                                        .get()
                                        .orElseThrow()
                                        .deeds()
                                        .now()
                                        .deed()
                                        .isPresent();
                        i++) {
                    desk.cup().accept();
                }
                Stagehand.snapshot(scene, "cup-dosed-" + size.name());
                desk.cup().alsoWeighed("soot-black", "0.6");
                desk.cup()
                        .read(
                                "57.6",
                                "-8.2",
                                "1.5",
                                tintwright.colour.Viewing.D65_10,
                                tintwright.reading.FilmState.CURED);
                Stagehand.snapshot(scene, "cup-dark-" + size.name());
                desk.cup().choose(0);
                Stagehand.snapshot(scene, "cup-climb-" + size.name());
                desk.log().doneWithCup();
                desk.shell().stepProperty().set(Step.LOG);
                Stagehand.snapshot(scene, "log-written-" + size.name());
            }
            return null;
        });
    }

    @Test
    void theOwnBenchBeforeAnythingIsOnIt() {
        Stagehand.onScreen(() -> {
            Clock clock = Clock.systemUTC();
            Desk desk = new Desk(
                    Desk.own(),
                    Runnable::run,
                    Runnable::run,
                    clock,
                    () -> tintwright.bench.log.ShopLog.demo(clock),
                    Desks::learn);
            Scene scene = new Scene(Desks.view(desk, true, true), 1280, 800);
            Look.dress(scene);
            for (Step step : desk.stations()) {
                desk.shell().stepProperty().set(step);
                Stagehand.snapshot(scene, "own-" + step.name().toLowerCase(Locale.ROOT) + "-1280");
            }
            desk.shelf()
                    .addTint(
                            "rust orange",
                            java.util.Optional.of(tintwright.shelf.PigmentFamily.ORANGE),
                            "120",
                            tintwright.units.UnitSystem.METRIC);
            desk.shell().stepProperty().set(Step.SHELF);
            Stagehand.snapshot(scene, "own-shelf-one-1280");
            return null;
        });
    }

    @Test
    void oneReadingFarFromTheOthers() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(Clock.systemUTC());
            HullModel hull = desk.hull();
            hull.newPlace(
                    "transom",
                    "55.5",
                    "-2.0",
                    "6.5",
                    tintwright.colour.Viewing.D65_10,
                    tintwright.colour.Geometry.SPECULAR_EXCLUDED);
            for (String lightness : new String[] {"55.3", "55.6", "70"}) {
                hull.type(
                        lightness,
                        "-2.0",
                        "6.5",
                        tintwright.colour.Viewing.D65_10,
                        tintwright.colour.Geometry.SPECULAR_EXCLUDED);
            }
            desk.shell().stepProperty().set(Step.HULL);
            Scene scene = new Scene(desk.view(), 1280, 800);
            Look.dress(scene);
            Stagehand.snapshot(scene, "hull-outlier-1280");
            return null;
        });
    }

    @Test
    void thePhotoPage() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(Clock.systemUTC());
            desk.shell().stepProperty().set(Step.HULL);
            Scene scene = new Scene(desk.view(), 1280, 800);
            Look.dress(scene);
            scene.getRoot().applyCss();
            ((javafx.scene.control.ToggleButton) scene.getRoot().lookup("#way-to-read-1")).fire();
            Stagehand.snapshot(scene, "hull-file-1280");
            ((javafx.scene.control.ToggleButton) scene.getRoot().lookup("#way-to-read-0")).fire();
            for (var node : scene.getRoot().lookupAll(".button")) {
                if (node instanceof javafx.scene.control.Button button
                        && "Mark the spots by hand".equals(button.getText())) {
                    button.fire();
                }
            }
            Stagehand.snapshot(scene, "hull-photo-1280");
            return null;
        });
    }
}
