package tintwright.window.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.colour.Ciede2000;
import tintwright.files.CardFile;
import tintwright.files.MarksFile;
import tintwright.reading.ColourReading;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.reading.photo.Flag;
import tintwright.reading.photo.PhotoReadings;
import tintwright.reading.photo.card.PixelPoint;

class PhotoModelTest {
    @TempDir
    static Path folder;

    private static Path photo;

    private final List<Reading> taken = new ArrayList<>();
    private final PhotoModel model = new PhotoModel(Runnable::run, Runnable::run, taken::addAll);

    @BeforeAll
    static void draw() throws Exception {
        photo = DrawnPhoto.of(folder.resolve("bow.png"));
    }

    @Test
    void findsTheCardReadsTheSpotsAndHandsThemOver() throws Exception {
        model.open(photo);
        assertNotNull(model.previewProperty().get());
        model.findCard();
        assertTrue(
                model.marksProperty().get().placed().isPresent(),
                model.messageProperty().get());
        assertEquals(
                220 + 9,
                model.marksProperty().get().placed().get().corners().get(0).x(),
                8);
        model.addSpot(new PixelPoint(1150, 300));
        model.addSpot(new PixelPoint(1250, 700));
        assertEquals("", model.problemProperty().get());
        assertEquals(2, model.readingsProperty().get().spots().size());
        model.use();
        assertEquals(2, taken.size());
        double apart = Ciede2000.between(((ColourReading) taken.get(0)).lab(), ((ColourReading) taken.get(1)).lab());
        assertTrue(apart < 2.5, "one hull, two spots, " + apart + " apart");
        Path kept = MarksFile.beside(photo);
        assertTrue(Files.exists(kept));
        PhotoModel again = new PhotoModel(Runnable::run, Runnable::run, taken::addAll);
        again.open(photo);
        assertEquals(2, again.readingsProperty().get().spots().size());
        Files.delete(kept);
    }

    @Test
    void aChipAndTheHullBesideItComeFromOnePhoto() throws Exception {
        List<ColourReading> chips = new ArrayList<>();
        List<ColourReading> hulls = new ArrayList<>();
        PhotoModel chip = PhotoModel.ofChip(Runnable::run, Runnable::run, (read, hull) -> {
            chips.add(read);
            hull.ifPresent(hulls::add);
        });
        chip.open(photo);
        chip.findCard();
        assertTrue(
                chip.messageProperty().get().contains("Is this the card"),
                chip.messageProperty().get());
        chip.addSpot(new PixelPoint(1150, 300));
        assertTrue(
                chip.messageProperty().get().contains("hull beside"),
                chip.messageProperty().get());
        chip.addSpot(new PixelPoint(1200, 500));
        chip.addSpot(new PixelPoint(1250, 700));
        assertEquals(2, chip.marksProperty().get().spots().size(), "a later click moves the hull");
        assertEquals("", chip.messageProperty().get());
        chip.film(FilmState.WET);
        chip.use();
        assertEquals("", chip.problemProperty().get());
        assertEquals(1, chips.size());
        assertEquals(1, hulls.size());
        assertEquals(FilmState.WET, chips.get(0).film());
        assertEquals(FilmState.CURED, hulls.get(0).film());
        assertEquals(chips.get(0).photo().orElseThrow(), hulls.get(0).photo().orElseThrow(), "one photo, one bias");
        Files.delete(MarksFile.beside(photo));
    }

    @Test
    void aCardOfOneRowIsNotLookedForButGetsItsFrameAndASentence() {
        model.open(photo);
        model.addSpot(DrawnPhoto.HULL);
        model.choose(CardFile.shipped("grey-six"));
        assertTrue(
                model.messageProperty().get().contains("single row")
                        && model.messageProperty().get().contains("drag"),
                model.messageProperty().get());
        assertEquals(4, model.marksProperty().get().corners().size());
        assertNull(model.readingsProperty().get(), "nothing is read through a frame that nobody laid on the card");
    }

    @Test
    void aTickThatTheCardLiesOnTheHullIsKeptWithThePhoto() throws Exception {
        double[] hull = {0.52, 0.60, 0.62};
        Path table = DrawnPhoto.of(folder.resolve("table.png"), hull, new double[] {0.3, 0.25, 0.2});
        model.open(table);
        model.findCard();
        model.addSpot(DrawnPhoto.CHIP);
        assertEquals(
                Flag.Kind.OTHER_GROUND,
                last(model).flags().get(last(model).flags().size() - 1).kind());
        double wide = last(model).spots().get(0).goodTo();
        model.cardOnHull(true);
        double narrow = last(model).spots().get(0).goodTo();
        assertTrue(narrow < wide / 3, wide + " became " + narrow);
        assertTrue(last(model).flags().stream().noneMatch(flag -> flag.kind() == Flag.Kind.OTHER_GROUND));
        model.use();
        PhotoModel again = new PhotoModel(Runnable::run, Runnable::run, taken::addAll);
        again.open(table);
        assertEquals(narrow, last(again).spots().get(0).goodTo(), 0.01, "but for tenths of a pixel");
    }

    private static PhotoReadings last(PhotoModel model) {
        return model.readingsProperty().get();
    }

    @Test
    void crossedCornersAreSaidAndMendedByDraggingThemBack() {
        model.open(photo);
        model.findCard();
        model.addSpot(DrawnPhoto.HULL);
        PixelPoint was = model.marksProperty().get().corners().get(0);
        model.moveCorner(0, new PixelPoint(1590, 990));
        model.readAgain();
        assertTrue(
                model.problemProperty().get().contains("crossed"),
                model.problemProperty().get());
        model.moveCorner(0, was);
        model.readAgain();
        assertEquals("", model.problemProperty().get());
    }

    @Test
    void aPhotoThatCannotBeReadIsSaidAndTheLastOneStays() throws Exception {
        model.open(photo);
        Path bad = Files.writeString(folder.resolve("bad.jpg"), "no photo");
        model.open(bad);
        assertTrue(
                model.problemProperty().get().contains("not a JPEG"),
                model.problemProperty().get());
        assertNotNull(model.previewProperty().get());
        assertFalse(model.busyProperty().get());
    }

    @Test
    void aNewerRequestMakesTheOlderStopAndItsAnswerIsNotShown() {
        Deque<Runnable> waiting = new ArrayDeque<>();
        PhotoModel slow = new PhotoModel(waiting::add, Runnable::run, taken::addAll);
        slow.open(folder.resolve("absent.jpg"));
        slow.open(photo);
        assertTrue(slow.busyProperty().get());
        waiting.removeFirst().run();
        assertEquals("", slow.problemProperty().get());
        assertNull(slow.previewProperty().get());
        waiting.removeFirst().run();
        assertNotNull(slow.previewProperty().get());
        slow.findCard();
        slow.stop();
        waiting.removeFirst().run();
        assertTrue(
                slow.problemProperty().get().contains("stopped"),
                slow.problemProperty().get());
        assertFalse(slow.busyProperty().get());
    }
}
