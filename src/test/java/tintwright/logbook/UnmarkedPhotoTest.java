package tintwright.logbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** What is given away is read back by another's reader (metadata-extractor), not by ours. */
class UnmarkedPhotoTest {
    static byte[] picture(String format) {
        BufferedImage image = new BufferedImage(16, 8, BufferedImage.TYPE_INT_RGB);
        image.setRGB(3, 3, Color.ORANGE.getRGB());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, format, out);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return out.toByteArray();
    }

    /** Which way is up, an artist, a camera's serial number and a place, in an Exif block. */
    private static byte[] exif() {
        ByteBuffer tiff = ByteBuffer.allocate(160);
        tiff.put(new byte[] {'M', 'M', 0, 42}).putInt(8);
        tiff.putShort((short) 4);
        field(tiff, 0x0112, 3, 1, 6 << 16);
        field(tiff, 0x013b, 2, 12, 100);
        field(tiff, 0x8769, 4, 1, 64);
        field(tiff, 0x8825, 4, 1, 82);
        tiff.putInt(0);
        tiff.position(64);
        tiff.putShort((short) 1);
        field(tiff, 0xa431, 2, 10, 120);
        tiff.putInt(0);
        tiff.position(82);
        tiff.putShort((short) 1);
        field(tiff, 0x0001, 2, 2, 'N' << 24);
        tiff.putInt(0);
        tiff.position(100);
        tiff.put("Ann Orrowby\0".getBytes(StandardCharsets.US_ASCII));
        tiff.position(120);
        tiff.put("SN-777-88\0".getBytes(StandardCharsets.US_ASCII));
        return tiff.array();
    }

    private static void field(ByteBuffer tiff, int tag, int type, int count, int value) {
        tiff.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }

    private static byte[] jpegWithMarks() {
        byte[] plain = picture("jpg");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 2);
        segment(out, 0xe1, "Exif\0\0", exif());
        segment(out, 0xe1, "http://ns.adobe.com/xap/1.0/\0", "<x>Ann Orrowby</x>".getBytes(StandardCharsets.US_ASCII));
        segment(out, 0xfe, "", "comment of Ann Orrowby".getBytes(StandardCharsets.US_ASCII));
        out.write(plain, 2, plain.length - 2);
        out.writeBytes("a film of Ann Orrowby".getBytes(StandardCharsets.US_ASCII));
        return out.toByteArray();
    }

    private static void segment(ByteArrayOutputStream out, int marker, String name, byte[] content) {
        byte[] head = name.getBytes(StandardCharsets.US_ASCII);
        int length = 2 + head.length + content.length;
        out.write(0xff);
        out.write(marker);
        out.write(length >> 8);
        out.write(length);
        out.writeBytes(head);
        out.writeBytes(content);
    }

    private static void tellsNothing(byte[] given) {
        String all = new String(given, StandardCharsets.ISO_8859_1);
        assertFalse(all.contains("Orrowby"), "who");
        assertFalse(all.contains("SN-777"), "with what");
    }

    @Test
    void aJpegKeepsItsPictureAndWhichWayIsUpAndNothingElse() throws Exception {
        byte[] marked = jpegWithMarks();
        Metadata before = ImageMetadataReader.readMetadata(new ByteArrayInputStream(marked));
        assertTrue(before.getFirstDirectoryOfType(GpsDirectory.class) != null, "the test's own photo tells a place");

        byte[] given = UnmarkedPhoto.of(marked).orElseThrow();
        tellsNothing(given);
        Metadata after = ImageMetadataReader.readMetadata(new ByteArrayInputStream(given));
        assertTrue(after.getFirstDirectoryOfType(GpsDirectory.class) == null, "where");
        ExifIFD0Directory main = after.getFirstDirectoryOfType(ExifIFD0Directory.class);
        assertEquals(6, main.getInt(ExifIFD0Directory.TAG_ORIENTATION));
        assertSamePicture(marked, given);
    }

    @Test
    void aPngLosesItsTexts() throws Exception {
        byte[] plain = picture("png");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 33);
        byte[] text = "tEXtAuthor\0Ann Orrowby".getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(text);
        out.writeBytes(ByteBuffer.allocate(4).putInt(text.length - 4).array());
        out.writeBytes(text);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
        out.write(plain, 33, plain.length - 33);
        byte[] given = UnmarkedPhoto.of(out.toByteArray()).orElseThrow();
        tellsNothing(given);
        assertArrayEquals(plain, given);
    }

    @Test
    void aTiffIsCleanedWhereItStands() {
        byte[] given = UnmarkedPhoto.of(exif()).orElseThrow();
        tellsNothing(given);
        assertEquals(2, ByteBuffer.wrap(given).getShort(8), "which way is up and the empty Exif part");
    }

    @Test
    void whatIsNoPhotoIsNotGivenAway() {
        assertEquals(Optional.empty(), UnmarkedPhoto.of(new byte[] {1, 2, 3}));
        assertEquals(Optional.empty(), UnmarkedPhoto.of(new byte[0]));
    }

    @Test
    void harmedPhotosAreCleanedOrLeftOutAndNothingElse() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 3000; i++) {
            byte[] harmed = i % 2 == 0 ? jpegWithMarks() : exif();
            for (int k = 0; k < 3; k++) {
                harmed[random.nextInt(harmed.length)] = (byte) random.nextInt(256);
            }
            // Whatever is wrong with it, it is an answer and never an error.
            assertTrue(UnmarkedPhoto.of(harmed).map(given -> given.length).orElse(0) <= harmed.length);
        }
    }

    private static void assertSamePicture(byte[] a, byte[] b) throws IOException {
        BufferedImage one = ImageIO.read(new ByteArrayInputStream(a));
        BufferedImage other = ImageIO.read(new ByteArrayInputStream(b));
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                assertEquals(one.getRGB(x, y), other.getRGB(x, y));
            }
        }
    }
}
