package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.function.UnaryOperator;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.SheetBench;
import tintwright.colour.Ciede2000;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.shelf.Shelf;

/** Made-up photos of the sheet, read from the file on: what lies there, what is missing, what is wrong with the light. */
class SheetReaderTest {
    private static SimulatedScene chart;

    /** Not with the class: a table that is absent is a reason to skip, no error. */
    @BeforeAll
    static void readTheChart() {
        chart = new SimulatedScene();
    }

    @TempDir
    Path folder;

    private SheetScene scene(long seed) {
        return new SheetScene(seed, chart.chart, new PaintedHulls());
    }

    private static Shelf shelf(SheetScene scene) {
        return scene.shop.shelf(List.of());
    }

    private PhotoReadings paperAlone(Path photo) throws PhotoException {
        return SheetReader.read(
                        PhotoFile.open(photo),
                        Optional.empty(),
                        SheetContents.PAPER_ALONE,
                        SheetScene.VIEWING,
                        Progress.NONE)
                .readings();
    }

    private static boolean flagged(PhotoReadings readings, Flag.Kind kind, String where) {
        return readings.flags().stream()
                .anyMatch(flag -> flag.kind() == kind && flag.where().equals(where));
    }

    @Test
    void paperAloneReadsTheHullWithinWhatItStates() throws Exception {
        SheetScene scene = scene(1);
        Path photo = folder.resolve("bow.jpg");
        scene.shoot(photo, "K7QD", 0, 0.3);
        PhotoReadings readings = paperAlone(photo);
        SpotReading hull = readings.spot(SheetContents.HULL).orElseThrow();
        double error = Ciede2000.between(scene.truth(), hull.reading().lab());
        assertTrue(error < hull.goodTo(), error + " off, " + hull.inWords());
        assertTrue(hull.goodTo() < 10, hull.inWords());
        assertTrue(readings.flags().isEmpty(), readings.flags().toString());
    }

    @Test
    void lightThatFallsOffIsTakenOutAndAShadowsEdgeIsSaid() throws Exception {
        SheetScene scene = scene(2);
        Path even = folder.resolve("even.jpg");
        scene.shoot(even, "K7QD", 0, 0);
        PhotoReadings flat = paperAlone(even);
        Path sloping = folder.resolve("sloping.jpg");
        scene.codes(sloping, "K7QD", 0, 0, (x, y) -> 1 + 0.3 * (x / scene.layout.width() - 0.5));
        PhotoReadings slope = paperAlone(sloping);
        double apart = Ciede2000.between(
                flat.spot(SheetContents.HULL).orElseThrow().reading().lab(),
                slope.spot(SheetContents.HULL).orElseThrow().reading().lab());
        assertTrue(apart < 1, "the slope moved the hull by " + apart);
        Path shadow = folder.resolve("shadow.jpg");
        scene.codes(shadow, "K7QD", 0, 0, (x, y) -> y > scene.layout.window().middleY() ? 0.6 : 1);
        assertTrue(flagged(paperAlone(shadow), Flag.Kind.SHADOW_EDGE, SheetContents.HULL));
    }

    @Test
    void aMissingChipIsNamedAndTheOthersAreRead() throws Exception {
        SheetScene scene = scene(3);
        Path photo = folder.resolve("bow.jpg");
        scene.shoot(photo, SheetBench.signOf(shelf(scene)), 5, 0.2);
        SheetBench.Read read = SheetBench.read(
                photo, scene.contents(7, false), Optional.of(shelf(scene)), SheetScene.VIEWING, Progress.NONE);
        assertTrue(
                flagged(read.readings(), Flag.Kind.NOTHING_THERE, "red"),
                read.readings().flags().toString());
        assertEquals(6, read.chips().size());
        assertTrue(read.readings().spot("black 0.5").isPresent());
    }

    @Test
    void anotherShopsSheetCountsByItsPaperOnly() throws Exception {
        SheetScene scene = scene(4);
        Path photo = folder.resolve("bow.jpg");
        scene.shoot(photo, "AAAA", 0, 0.2);
        SheetBench.Read read = SheetBench.read(
                photo, scene.contents(7, false), Optional.of(shelf(scene)), SheetScene.VIEWING, Progress.NONE);
        assertTrue(flagged(read.readings(), Flag.Kind.ANOTHER_SHOP, "sheet"));
        assertTrue(read.chips().isEmpty());
    }

    @Test
    void burntOutIsSaidWithWhatToDo() throws Exception {
        SheetScene scene = scene(5);
        scene.phone.expose(2.5);
        Path photo = folder.resolve("bow.jpg");
        scene.shoot(photo, "K7QD", 0, 0.2);
        PhotoException said = assertThrows(PhotoException.class, () -> paperAlone(photo));
        assertTrue(said.getMessage().contains("a little darker"), said.getMessage());
    }

    private void assertRefused(Path photo, String words) {
        String said =
                assertThrows(PhotoException.class, () -> paperAlone(photo)).getMessage();
        assertTrue(said.contains(words), said);
    }

    /** What a person did to the picture after it was taken. */
    private Path changed(Path photo, String name, UnaryOperator<BufferedImage> change) throws Exception {
        Path file = folder.resolve(name);
        assertTrue(ImageIO.write(change.apply(ImageIO.read(photo.toFile())), "png", file.toFile()));
        return file;
    }

    private static BufferedImage each(BufferedImage photo, IntUnaryOperator rgb) {
        BufferedImage out = new BufferedImage(photo.getWidth(), photo.getHeight(), BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < photo.getHeight(); y++) {
            for (int x = 0; x < photo.getWidth(); x++) {
                out.setRGB(x, y, rgb.applyAsInt(photo.getRGB(x, y)));
            }
        }
        return out;
    }

    @Test
    void aFilterOverThePictureIsSaid() throws Exception {
        SheetScene scene = scene(1);
        Path photo = folder.resolve("bow.jpg");
        scene.shoot(photo, "K7QD", 0, 0.2);
        assertFalse(flagged(paperAlone(photo), Flag.Kind.STRONG_PROCESSING, "paper"));
        Path sepia = changed(
                photo,
                "sepia.png",
                plain -> each(plain, rgb -> {
                    int grey = ((rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255)) / 3;
                    int little = (rgb & 7);
                    return (grey << 16 | grey * 8 / 10 << 8 | grey * 6 / 10) ^ little;
                }));
        assertTrue(flagged(paperAlone(sepia), Flag.Kind.STRONG_PROCESSING, "paper"));
    }

    @Test
    void aMirroredFileAndOneThatIsCutOffAreRefusedWithWhatToDo() throws Exception {
        SheetScene scene = scene(1);
        Path photo = folder.resolve("bow.jpg");
        scene.shoot(photo, "K7QD", 0, 0.2);
        Path mirrored = changed(photo, "mirrored.png", plain -> {
            BufferedImage out = new BufferedImage(plain.getWidth(), plain.getHeight(), BufferedImage.TYPE_INT_RGB);
            for (int y = 0; y < plain.getHeight(); y++) {
                for (int x = 0; x < plain.getWidth(); x++) {
                    out.setRGB(plain.getWidth() - 1 - x, y, plain.getRGB(x, y));
                }
            }
            return out;
        });
        assertRefused(mirrored, "mirror");
        Path half = changed(
                photo, "half.png", plain -> plain.getSubimage(0, 0, plain.getWidth() * 6 / 10, plain.getHeight()));
        assertRefused(half, "all four");
    }

    /** Two chips have changed places: their colours contradict their weights, and one of them is named. */
    @Test
    void chipsInEachOthersPlacesAreNamed() throws Exception {
        SheetScene scene = scene(3);
        Path photo = folder.resolve("bow.jpg");
        scene.shoot(photo, SheetBench.signOf(shelf(scene)), 0, 0.2);
        List<SheetContents.Chip> said = new ArrayList<>(scene.contents(7, false).chips());
        SheetContents.Chip red = said.get(4);
        SheetContents.Chip blue = said.get(6);
        said.set(4, new SheetContents.Chip(7, red.name(), red.parts(), red.film()));
        said.set(6, new SheetContents.Chip(5, blue.name(), blue.parts(), blue.film()));
        SheetBench.Read read = SheetBench.read(
                photo,
                new SheetContents(said, 0, Optional.empty()),
                Optional.of(shelf(scene)),
                SheetScene.VIEWING,
                Progress.NONE);
        assertTrue(
                flagged(read.readings(), Flag.Kind.WRONG_PLACE, "red in bow.jpg"),
                read.readings().flags().toString());
        assertTrue(read.chips().stream().noneMatch(chip -> chip.id().startsWith("red")), "nothing is learned from it");
        SheetBench.Read right = SheetBench.read(
                photo, scene.contents(7, false), Optional.of(shelf(scene)), SheetScene.VIEWING, Progress.NONE);
        assertEquals(7, right.chips().size());
    }
}
