package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
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
    private static final SimulatedScene CHART = new SimulatedScene();

    @TempDir
    Path folder;

    private SheetScene scene(long seed) {
        return new SheetScene(seed, CHART.chart, new PaintedHulls());
    }

    private static Shelf shelf(SheetScene scene) {
        return scene.shop.shelf(java.util.List.of());
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
}
