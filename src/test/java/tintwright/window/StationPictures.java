package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import tintwright.bench.log.ShopLog;
import tintwright.cup.CupDeeds;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairKind;
import tintwright.reading.EyeVerdict;
import tintwright.reading.FilmState;
import tintwright.units.UnitSystem;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/**
 * Every station at three sizes, light and dark, at 100 and 200 % text, drawn by the program itself:
 * {@code mvn test -Dtest=StationPictures -Dtintwright.pictures=docs/images}. Without that property they go to
 * target/pictures. With {@code -Dtintwright.only=shelf} one station alone. The name keeps it out of the everyday run.
 */
class StationPictures {
    private static final int ACROSS = 3;
    private static final double SMALL = 0.5;

    private final Path folder = Path.of(System.getProperty("tintwright.pictures", "target/pictures"));
    private final String only = System.getProperty("tintwright.only", "");

    private record Variant(String size, int width, int height, double text, boolean dark) {
        String name() {
            return size + (dark ? "-dark" : "-light") + (text > 1 ? "-200" : "-100");
        }
    }

    private static List<Variant> looks() {
        Map<String, int[]> sizes = new LinkedHashMap<>();
        sizes.put("1366", new int[] {1366, 768});
        sizes.put("1280", new int[] {1280, 800});
        sizes.put("1024", new int[] {1024, 700});
        return sizes.entrySet().stream()
                .flatMap(size -> List.of(1.0, 2.0).stream()
                        .flatMap(text -> List.of(false, true).stream()
                                .map(dark -> new Variant(
                                        size.getKey(), size.getValue()[0], size.getValue()[1], text, dark))))
                .toList();
    }

    /** A station in the middle of a job, and what is pressed once it is on the screen. */
    private record Shown(String name, Step step, Desk desk, Consumer<Scene> then) {}

    private static Desk begun(Desk desk) {
        desk.cup().begin();
        desk.cup().accept();
        return desk;
    }

    /** Far more went in than the white held back can lift, and the eye says so: there are ways back. */
    private static Desk tooDark(Desk desk) {
        begun(desk);
        while (Desks.kind(desk) == CupDeeds.Kind.WEIGH) {
            desk.cup().accept();
        }
        desk.cup().alsoWeighed("soot-black", "1.2");
        desk.cup()
                .seen(
                        new EyeVerdict(
                                Optional.of(EyeVerdict.Depth.MUCH_TOO_DARK),
                                Optional.of(EyeVerdict.Hue.NONE),
                                EyeVerdict.Amount.NOT_SAID,
                                FilmState.CURED),
                        OptionalInt.empty());
        assertFalse(
                desk.cup().inHandProperty().get().orElseThrow().ways().isEmpty(),
                "a picture of the ways back needs some");
        return desk;
    }

    private static void toTheEye(Scene scene) {
        scene.getRoot().lookupAll(".button").stream()
                .filter(Button.class::isInstance)
                .map(Button.class::cast)
                .filter(button -> button.getText().contains("I see"))
                .findFirst()
                .ifPresent(Button::fire);
    }

    private static Desk withHoles(Desk desk) {
        desk.fill()
                .add(
                        "old cleat holes",
                        RepairKind.COUNTERSUNK,
                        Map.of("hole", "5", "top", "9", "countersink", "2", "depth", "6"),
                        Lie.VERTICAL,
                        "8",
                        UnitSystem.METRIC);
        desk.fill()
                .add(
                        "keel gouge",
                        RepairKind.GOUGE,
                        Map.of("length", "140", "width", "12", "depth", "3"),
                        Lie.OVERHEAD,
                        "1",
                        UnitSystem.METRIC);
        return desk;
    }

    /** As somebody opens it who has eyes, a phone and a pocket scale. */
    private static Desk demo() {
        Clock clock = Clock.systemUTC();
        return new Desk(Desk.demo(), Runnable::run, Runnable::run, clock, () -> ShopLog.demo(clock), Desks::learn);
    }

    /** Nothing is pressed. */
    private static void nothing(Scene scene) {}

    private static Map<String, Supplier<Shown>> stations() {
        Map<String, Supplier<Shown>> all = new LinkedHashMap<>();
        all.put("boat", () -> new Shown("boat", Step.BOAT, demo(), StationPictures::nothing));
        all.put("hull", () -> new Shown("hull", Step.HULL, demo(), StationPictures::nothing));
        all.put("shelf", () -> new Shown("shelf", Step.SHELF, demo(), StationPictures::nothing));
        all.put("holes", () -> new Shown("holes", Step.FILL, withHoles(demo()), StationPictures::nothing));
        all.put("plan", () -> new Shown("plan", Step.CUP, demo(), StationPictures::nothing));
        all.put("dose", () -> new Shown("dose", Step.CUP, begun(demo()), StationPictures::nothing));
        all.put("eye", () -> new Shown("eye", Step.CUP, begun(demo()), StationPictures::toTheEye));
        all.put("dabs", () -> new Shown("dabs", Step.CUP, Desks.trying(demo()), StationPictures::nothing));
        all.put("nearest", () -> new Shown("nearest", Step.CUP, Desks.trying(demo()), StationPictures::toTheEye));
        all.put("ways", () -> new Shown("ways", Step.CUP, tooDark(demo()), StationPictures::nothing));
        all.put("log", () -> new Shown("log", Step.LOG, demo(), StationPictures::nothing));
        all.put(
                "own-boat",
                () -> new Shown("own-boat", Step.BOAT, Desks.blank(Clock.systemUTC()), StationPictures::nothing));
        all.put(
                "own-shelf",
                () -> new Shown("own-shelf", Step.SHELF, Desks.blank(Clock.systemUTC()), StationPictures::nothing));
        all.put(
                "chip",
                () -> new Shown("chip", Step.SHELF, demo(), scene -> {
                    ((ToggleButton) scene.getRoot().lookup("#shelf-chip")).fire();
                    ((TextField) scene.getRoot().lookup("#chip-grams")).setText("0.2");
                    ((TextField) scene.getRoot().lookup("#chip-white")).setText("19.8");
                    ((Button) scene.getRoot().lookup("#chip-meter")).fire();
                    ((TextField) scene.getRoot().lookup("#chip-lightness")).setText("60.4");
                    ((TextField) scene.getRoot().lookup("#chip-a")).setText("-0.4");
                    ((TextField) scene.getRoot().lookup("#chip-b")).setText("-1.1");
                }));
        return all;
    }

    @Test
    void everyStation() throws IOException {
        Files.createDirectories(folder);
        Map<Variant, Map<String, BufferedImage>> sheets = new LinkedHashMap<>();
        for (Map.Entry<String, Supplier<Shown>> station : stations().entrySet()) {
            if (!only.isEmpty() && !List.of(only.split(",")).contains(station.getKey())) {
                continue;
            }
            Shown shown = Stagehand.onScreen(station.getValue()::get);
            for (Variant look : looks()) {
                BufferedImage picture = Stagehand.onScreen(() -> draw(shown, look));
                sheets.computeIfAbsent(look, any -> new LinkedHashMap<>()).put(shown.name(), picture);
            }
        }
        for (Map.Entry<Variant, Map<String, BufferedImage>> sheet : sheets.entrySet()) {
            Variant look = sheet.getKey();
            if (folder.endsWith("pictures")) {
                for (Map.Entry<String, BufferedImage> one : sheet.getValue().entrySet()) {
                    ImageIO.write(
                            one.getValue(),
                            "png",
                            folder.resolve(one.getKey() + "-" + look.name() + ".png")
                                    .toFile());
                }
            }
            write(sheet.getValue().values().stream().toList(), look);
        }
    }

    private static BufferedImage draw(Shown shown, Variant look) {
        Desk desk = shown.desk();
        desk.shell().setTextShare(look.text());
        desk.shell().darkProperty().set(look.dark());
        desk.shell().stepProperty().set(shown.step());
        Scene scene = new Scene(desk.view(), look.width(), look.height());
        Look.dress(scene);
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        shown.then().accept(scene);
        // The window opens a page at its top; without one, the field with the cursor was scrolled to before it had its
        // place.
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        scene.getRoot().lookupAll(".middle").forEach(pane -> ((ScrollPane) pane).setVvalue(0));
        return Stagehand.picture(scene);
    }

    /** All stations of one look on one sheet, half as large. */
    private void write(List<BufferedImage> pictures, Variant look) throws IOException {
        int wide = (int) (look.width() * SMALL);
        int tall = (int) (look.height() * SMALL);
        int rows = (pictures.size() + ACROSS - 1) / ACROSS;
        int gap = 8;
        BufferedImage sheet =
                new BufferedImage(ACROSS * (wide + gap) + gap, rows * (tall + gap) + gap, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = sheet.createGraphics();
        pen.setRenderingHint(
                java.awt.RenderingHints.KEY_INTERPOLATION, java.awt.RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        for (int i = 0; i < pictures.size(); i++) {
            pen.drawImage(
                    pictures.get(i),
                    gap + i % ACROSS * (wide + gap),
                    gap + i / ACROSS * (tall + gap),
                    wide,
                    tall,
                    null);
        }
        pen.dispose();
        ImageIO.write(
                sheet,
                "png",
                folder.resolve(String.format(Locale.ROOT, "stations-%s.png", look.name()))
                        .toFile());
    }
}
