package tintwright.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Locale;
import java.util.OptionalInt;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.HandClock;
import tintwright.bench.log.ShopLog;
import tintwright.demo.DemoGenerator;
import tintwright.demo.DemoPhoto;
import tintwright.files.Demo;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairKind;
import tintwright.logbook.DemoLog;
import tintwright.study.HiddenEye;
import tintwright.units.UnitSystem;
import tintwright.window.cup.CupModel;
import tintwright.window.frame.ShellModel;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/**
 * One whole job of the invented boat in pictures, written by the program itself:
 * {@code mvn test -Dtest=TourSnapshots -Dtintwright.tour=docs}. Without that property it goes to target/tour.
 */
class TourSnapshots {
    private final StringBuilder page = new StringBuilder(
            "# One job of the invented boat\n\nMade from the running program by `mvn test"
                    + " -Dtest=TourSnapshots -Dtintwright.tour=docs`; the boat, the shop and every reading are invented.\n");
    private final Path folder = Path.of(System.getProperty("tintwright.tour", "target/tour"));
    private final DemoPhoto world = DemoGenerator.hiddenPhoto();
    private final HiddenEye eye = new HiddenEye(1, 0);
    private int number;
    private Desk desk;
    private ShellModel shell;
    private Scene scene;

    private void picture(Scene scene, String title, String words) throws IOException {
        number++;
        String name = String.format(Locale.ROOT, "tour-%d", number);
        Path shot = Stagehand.snapshot(scene, name);
        Files.createDirectories(folder.resolve("images"));
        Files.copy(
                shot,
                folder.resolve("images").resolve(name + ".png"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        page.append("\n## ")
                .append(number)
                .append(". ")
                .append(title)
                .append("\n")
                .append(words)
                .append("\n\n![")
                .append(title)
                .append("](images/")
                .append(name)
                .append(".png)\n");
    }

    /** The cured dab is held against the hull of the invented world, and what its eye sees is written down. */
    private void look(Desk desk) {
        desk.cup()
                .seen(
                        eye.look(
                                world.dab(desk.job()
                                        .now()
                                        .cup()
                                        .orElseThrow()
                                        .state()
                                        .grams()),
                                world.truth()),
                        OptionalInt.empty());
    }

    private static void press(Scene scene, String id) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        ((ButtonBase) scene.getRoot().lookup("#" + id)).fire();
    }

    private static void door(Scene scene, int number) {
        press(scene, "way-to-read-" + number);
    }

    private static CupModel.InHand cup(Desk desk) {
        return desk.cup().inHandProperty().get().orElseThrow();
    }

    @Test
    void walk(@TempDir Path home) {
        Stagehand.onScreen(() -> {
            DemoLog.copyTo(home.resolve("log"));
            Clock clock = new HandClock("2026-05-04T09:00:00Z", Duration.ofMinutes(2));
            desk = new Desk(
                    Desk.demo(),
                    Runnable::run,
                    Runnable::run,
                    clock,
                    () -> ShopLog.open(home.resolve("log"), home.resolve("home"), clock),
                    Desks::learn);
            shell = desk.shell();
            scene = new Scene(desk.view(), 1280, 800);
            Look.dress(scene);
            shell.stepProperty().set(Step.BOAT);
            picture(scene, "The boat", "Which boat, and which place on her: each has faded in its own way.");
            shell.stepProperty().set(Step.HULL);
            desk.sheet().lay(Demo.onSheet());
            Path photo = home.resolve(Demo.PHOTO);
            Demo.copyPhoto(photo);
            desk.sheet().show(photo);
            picture(
                    scene,
                    "The hull, by a photo",
                    "The printed sheet lay on the port bow, with chips that were weighed and nothing more. It is found with"
                            + " no mark made by hand; the chips in the photo teach the camera and the tints at once.");
            door(scene, 1);
            picture(scene, "The hull, by a meter", "Three numbers typed, or the meter's file dropped anywhere.");
            door(scene, 2);
            picture(
                    scene,
                    "The hull, by eye",
                    "No photo and no meter: what the hull looks like is where to begin, and dabs do the rest.");
            shell.stepProperty().set(Step.SHELF);
            picture(
                    scene,
                    "The shelf",
                    "What there is to mix with, how well each tint is known, and the next chip to make.");
            shell.stepProperty().set(Step.CUP);
            picture(
                    scene,
                    "The plan",
                    "Hull and mix edge to edge under four lights; the depth gauge and the hue rose; the " + "grams.");
            desk.cup().begin();
            desk.cup().accept();
            picture(
                    scene,
                    "The first dose",
                    "White is in, some is held back. The one thing to weigh now stands as large as a hand.");
            while (cup(desk).deeds().now().deed().isPresent()) {
                desk.cup().accept();
            }
            press(scene, "eye-now");
            picture(
                    scene,
                    "The dab against the hull",
                    "It has cured, and is held against the hull in daylight. What is seen is pressed, one answer in each"
                            + " row.");
            press(scene, "eye-much-too-light");
            press(scene, "eye-none");
            press(scene, "eye-seen");
            desk.cup().alsoWeighed("soot-black", "1.2");
            while (cup(desk).deeds().now().deed().isPresent()) {
                desk.cup().accept();
            }
            look(desk);
            picture(
                    scene,
                    "Too dark",
                    "A slip of the hand: too much black went in. What was really weighed was typed, the dab looks much"
                            + " too dark, and the ways back stand side by side.");
            return null;
        });
        Stagehand.onScreen(() -> {
            for (int i = 0; i < 40 && !cup(desk).deeds().now().kind().equals(tintwright.cup.CupDeeds.Kind.STOP); i++) {
                if (cup(desk).deeds().now().deed().isPresent()) {
                    desk.cup().accept();
                } else if (!cup(desk).ways().isEmpty()) {
                    desk.cup().choose(0);
                } else {
                    look(desk);
                }
            }
            picture(
                    scene,
                    "Back at the hull",
                    "White and a little tint have lifted it, look by look, until the eye can tell no more.");
            desk.fill()
                    .add(
                            "old cleat holes",
                            RepairKind.COUNTERSUNK,
                            java.util.Map.of("hole", "5", "top", "9", "countersink", "2", "depth", "6"),
                            Lie.VERTICAL,
                            "8",
                            UnitSystem.METRIC);
            desk.fill()
                    .add(
                            "fender scratch",
                            RepairKind.SCRATCH,
                            java.util.Map.of("length", "300", "width", "2", "depth", "0.6"),
                            Lie.VERTICAL,
                            "1",
                            UnitSystem.METRIC);
            shell.stepProperty().set(Step.FILL);
            picture(
                    scene,
                    "The fill",
                    "What the holes need, batch by batch, with the catalyst, its limits and the cautions.");
            desk.log().doneWithCup();
            shell.say("");
            shell.stepProperty().set(Step.LOG);
            picture(
                    scene,
                    "The log",
                    "Every dose was written down as it happened; next spring it is made again from here.");
            desk.log().close();
            Files.writeString(folder.resolve("tour.md"), page);
            return null;
        });
    }
}
