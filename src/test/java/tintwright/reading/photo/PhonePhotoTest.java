package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.SheetBench;
import tintwright.bench.top.BenchTop;
import tintwright.bench.top.PhonePhoto;
import tintwright.colour.Ciede2000;
import tintwright.reading.photo.file.PhotoException;
import tintwright.shelf.Shelf;

/** A made-up photo of the sheet, sent by a phone: read with no hand at it. */
class PhonePhotoTest {
    @TempDir
    Path folder;

    @Test
    void theHullInTheWindowIsReadAndSaidInWords() throws Exception {
        SheetScene scene = new SheetScene(1, new SimulatedScene().chart, new PaintedHulls());
        Shelf shelf = scene.shop.shelf(List.of());
        Path photo = folder.resolve("phone.jpg");
        scene.shoot(photo, SheetBench.signOf(shelf), 0, 0.3);
        PhonePhoto.Colours read = (PhonePhoto.Colours) PhonePhoto.read(photo, BenchTop.Wanted.HULL, shelf);
        assertTrue(Ciede2000.between(scene.truth(), read.hull().lab()) < 10);
        assertTrue(read.words().startsWith("The hull is read, good to about "), read.words());
        assertEquals(Optional.empty(), read.chip());
    }

    @Test
    void aPhotoWithoutASheetSaysWhatToDo() throws Exception {
        Path photo = folder.resolve("phone.jpg");
        ImageIO.write(new BufferedImage(800, 600, BufferedImage.TYPE_INT_RGB), "jpg", photo.toFile());
        SheetScene scene = new SheetScene(1, new SimulatedScene().chart, new PaintedHulls());
        PhotoException said = assertThrows(
                PhotoException.class, () -> PhonePhoto.read(photo, BenchTop.Wanted.HULL, scene.shop.shelf(List.of())));
        assertTrue(said.getMessage().contains("sheet"), said.getMessage());
    }
}
