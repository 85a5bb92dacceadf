package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.colour.Viewing;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Preview;
import tintwright.reading.photo.file.Progress;

/**
 * A photo of 100 megapixels with 16 bits, the largest there is, looked at and read. Run with a heap of 1 GiB:
 * {@code mvn test -Dwanted.groups=study -Dtest=LargePhotoStudy}; the heap used is printed.
 */
@Tag("study")
class LargePhotoStudy {
    private static final int WIDTH = 11_600;
    private static final int HEIGHT = 8_700;

    @TempDir
    Path folder;

    @Test
    void aHundredMegapixelsAreLookedAtAndRead() throws Exception {
        PhotoFile photo = PhotoFile.open(write(folder.resolve("large.png")));
        long most = 0;
        Preview preview = photo.preview(2400, Progress.NONE);
        most = Math.max(most, held());
        assertTrue(preview.width() <= 2400 && preview.width() > 1100, "preview is " + preview.width());
        PhotoReadings read = PhotoReader.read(
                photo,
                new Marks(
                        List.of(),
                        List.of(),
                        List.of(
                                Spot.hull("one end", 300, 300, 200),
                                Spot.hull("other end", WIDTH - 300.0, HEIGHT - 300.0, 200)),
                        false),
                Viewing.D65_10,
                Progress.NONE);
        most = Math.max(most, held());
        assertEquals(2, read.spots().size());
        System.out.println("held after work: " + most / (1 << 20) + " MiB of "
                + Runtime.getRuntime().maxMemory() / (1 << 20) + " MiB");
    }

    private static long held() {
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    /** Row by row, so that the test itself holds next to nothing. */
    private static Path write(Path file) throws Exception {
        try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(file)))) {
            out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
            ByteArrayOutputStream head = new ByteArrayOutputStream();
            DataOutputStream h = new DataOutputStream(head);
            h.writeInt(WIDTH);
            h.writeInt(HEIGHT);
            h.write(new byte[] {16, 2, 0, 0, 0});
            chunk(out, "IHDR", head.toByteArray(), head.size());
            Deflater deflater = new Deflater(1);
            byte[] packed = new byte[1 << 16];
            byte[] row = new byte[1 + 6 * WIDTH];
            for (int y = 0; y <= HEIGHT; y++) {
                if (y == HEIGHT) {
                    deflater.finish();
                } else {
                    for (int x = 0; x < WIDTH; x++) {
                        for (int k = 0; k < 3; k++) {
                            row[1 + 6 * x + 2 * k] = (byte) (0x60 + x * 64 / WIDTH + 8 * k);
                        }
                    }
                    deflater.setInput(row);
                }
                for (int n = deflater.deflate(packed); n > 0; n = deflater.deflate(packed)) {
                    chunk(out, "IDAT", packed, n);
                }
            }
            chunk(out, "IEND", new byte[0], 0);
        }
        return file;
    }

    private static void chunk(DataOutputStream out, String name, byte[] body, int length) throws Exception {
        byte[] type = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(type);
        crc.update(body, 0, length);
        out.writeInt(length);
        out.write(type);
        out.write(body, 0, length);
        out.writeInt((int) crc.getValue());
    }
}
