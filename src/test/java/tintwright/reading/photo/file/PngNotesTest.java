package tintwright.reading.photo.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PngNotesTest {
    @TempDir
    private Path folder;

    private Path png(String chunk, String head, int zeros) throws Exception {
        BufferedImage image = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
        ByteArrayOutputStream plain = new ByteArrayOutputStream();
        ImageIO.write(image, "png", plain);
        ByteArrayOutputStream note = new ByteArrayOutputStream();
        note.writeBytes((chunk + head).getBytes(StandardCharsets.ISO_8859_1));
        try (DeflaterOutputStream packed = new DeflaterOutputStream(note)) {
            packed.write(new byte[zeros]);
        }
        CRC32 check = new CRC32();
        check.update(note.toByteArray());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain.toByteArray(), 0, 33);
        out.writeBytes(ByteBuffer.allocate(4).putInt(note.size() - 4).array());
        out.writeBytes(note.toByteArray());
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
        out.write(plain.toByteArray(), 33, plain.size() - 33);
        return Files.write(folder.resolve("bow.png"), out.toByteArray());
    }

    @ParameterizedTest
    @ValueSource(strings = {"zTXt:Comment\0\0", "iTXt:Comment\0\1\0en\0said\0", "iCCP:profile\0\0"})
    void aNoteThatUnpacksWithoutEndIsRefused(String kind) throws Exception {
        Path bomb = png(kind.substring(0, 4), kind.substring(5), 40 << 20);
        assertTrue(Files.size(bomb) < 100_000, "small on disk");
        PhotoException refused = assertThrows(PhotoException.class, () -> PhotoFile.open(bomb));
        assertTrue(refused.getMessage().contains("unpack to more than 16 MB"), refused.getMessage());
        assertEquals(1, refused.getMessage().lines().count());
    }

    @Test
    void anOrdinaryNoteIsNot() throws Exception {
        assertEquals(400, PhotoFile.open(png("zTXt", "Comment\0\0", 5000)).width());
    }
}
