package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.photo.card.CardPatch;
import tintwright.reading.photo.card.KnownPatch;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.PlacedCard;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Progress;

/** Photos and marks that cannot be read end in one clear sentence and no reading. */
class BadPhotoTest {
    @TempDir
    Path folder;

    private static String refused(Path file) {
        String message = assertThrows(
                        PhotoException.class, () -> read(PhotoFile.open(file), Spot.hull("bow", 50, 50, 10)))
                .getMessage();
        assertFalse(message.contains("Exception") || message.contains("null"), message);
        assertTrue(message.endsWith("."), message);
        return message;
    }

    private static PhotoReadings read(PhotoFile photo, Spot spot, KnownPatch... known) throws PhotoException {
        return PhotoReader.read(
                photo, new Marks(List.of(), List.of(known), List.of(spot), false), Viewing.D65_10, Progress.NONE);
    }

    private static byte[] jpeg(double level) throws IOException {
        return TestPhotos.jpeg(TestPhotos.image(400, 300, 8, (x, y) ->
                new double[] {level, level * (0.8 + 0.0002 * x), level * (0.7 + 0.0004 * y)}));
    }

    private Path save(String name, byte[] bytes) throws IOException {
        return TestPhotos.save(folder, name, bytes);
    }

    @Test
    void notAPicture() throws IOException {
        assertTrue(refused(save("a.jpg", "not a picture".getBytes(StandardCharsets.US_ASCII)))
                .contains("not a JPEG"));
        assertTrue(refused(save("b.jpg", new byte[0])).contains("empty"));
        assertTrue(refused(folder.resolve("absent.jpg")).contains("cannot be opened"));
        assertTrue(refused(folder).contains("cannot be opened"));
        assertTrue(refused(save("c.gif", "GIF89a0000000000".getBytes(StandardCharsets.US_ASCII)))
                .contains("not a JPEG"));
    }

    @Test
    void heicIsRefusedWithTheWayToAJpeg() throws IOException {
        byte[] start = "\0\0\0\30ftypheic\0\0\0\0".getBytes(StandardCharsets.ISO_8859_1);
        String message = refused(save("IMG_0042.HEIC", start));
        assertTrue(message.contains("HEIC") && message.contains("JPEG"), message);
    }

    @Test
    void cutShort() throws IOException {
        byte[] whole = jpeg(0.8);
        for (int share : new int[] {2, 30, 60, 95}) {
            String message = refused(save("cut.jpg", Arrays.copyOf(whole, whole.length * share / 100)));
            assertTrue(message.contains("cut short"), message);
        }
        Path png = TestPhotos.save(folder, "whole.png", TestPhotos.image(200, 150, 8, (x, y) ->
                new double[] {(x * 31 % 97) / 97.0, (y * 17 % 89) / 89.0, 0.5}));
        byte[] bytes = Files.readAllBytes(png);
        assertTrue(
                refused(save("cut.png", Arrays.copyOf(bytes, bytes.length / 2))).contains("cut short"));
    }

    @Test
    void noise() throws IOException {
        byte[] whole = jpeg(0.8);
        byte[] spoilt = whole.clone();
        for (int i = 20; i < 300; i++) {
            spoilt[i] = (byte) (i * 37);
        }
        refused(save("spoilt.jpg", spoilt));
    }

    @Test
    void aSizeBombIsRefusedBeforeItIsDecoded() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(out);
        data.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        ByteArrayOutputStream header = new ByteArrayOutputStream();
        DataOutputStream h = new DataOutputStream(header);
        h.writeBytes("IHDR");
        h.writeInt(60_000);
        h.writeInt(60_000);
        h.write(new byte[] {8, 2, 0, 0, 0});
        data.writeInt(13);
        data.write(header.toByteArray());
        CRC32 crc = new CRC32();
        crc.update(header.toByteArray());
        data.writeInt((int) crc.getValue());
        data.writeInt(0);
        data.writeBytes("IDAT");
        crc.reset();
        crc.update("IDAT".getBytes(StandardCharsets.US_ASCII));
        data.writeInt((int) crc.getValue());
        Path file = save("bomb.png", out.toByteArray());
        String message =
                assertThrows(PhotoException.class, () -> PhotoFile.open(file)).getMessage();
        assertTrue(message.contains("60000 by 60000") && message.contains("megapixels"), message);
    }

    @Test
    void tooSmallOrWithoutColour() throws IOException {
        assertTrue(refused(TestPhotos.save(
                        folder, "small.png", TestPhotos.image(12, 12, 8, (x, y) -> new double[] {0.5, 0.5, 0.5})))
                .contains("too small"));
        BufferedImage grey = new BufferedImage(100, 100, BufferedImage.TYPE_BYTE_GRAY);
        assertTrue(refused(TestPhotos.save(folder, "grey.jpg", grey)).contains("black and white"));
        assertTrue(refused(TestPhotos.save(folder, "grey.png", grey)).contains("black and white"));
    }

    @Test
    void printingInksAreNotLight() throws IOException {
        String message = refused(save("inks.jpg", TestPhotos.fourInks(120, 90)));
        assertTrue(message.contains("CMYK") && message.contains("RGB"), message);
    }

    @Test
    void aBrokenProfileIsSaidAndSrgbStandsIn() throws Exception {
        byte[] broken = TestPhotos.withSegment(jpeg(0.8), 0xE2, TestPhotos.profileSegment(new byte[200]));
        PhotoReadings read = read(PhotoFile.open(save("broken.jpg", broken)), Spot.hull("bow", 50, 50, 10));
        PhotoReadings plain = read(PhotoFile.open(save("plain.jpg", jpeg(0.8))), Spot.hull("bow", 50, 50, 10));
        assertTrue(read.flags().stream().anyMatch(flag -> flag.kind() == Flag.Kind.PROFILE_BROKEN));
        assertEquals(
                plain.spots().get(0).reading().lab(),
                read.spots().get(0).reading().lab());
    }

    @Test
    void marksOutsideAndTooSmall() throws Exception {
        PhotoFile photo = PhotoFile.open(save("p.jpg", jpeg(0.8)));
        String outside = assertThrows(PhotoException.class, () -> read(photo, Spot.hull("bow", 410, 50, 10)))
                .getMessage();
        assertTrue(
                outside.contains("\"bow\"") && outside.contains("410, 50") && outside.contains("400 by 300"), outside);
        String two = assertThrows(PhotoException.class, () -> read(photo, Spot.hull("bow", 50, 50, 0.8)))
                .getMessage();
        assertTrue(two.contains("pixels") && two.contains("9"), two);
        assertTrue(assertThrows(
                        PhotoException.class, () -> PhotoReader.read(photo, Marks.NONE, Viewing.D65_10, Progress.NONE))
                .getMessage()
                .contains("No spot is marked"));
    }

    @Test
    void aFrameWithNoCardInItIsNotRead() throws Exception {
        PhotoFile photo = PhotoFile.open(save("flat.jpg", jpeg(0.6)));
        List<CardPatch> patches = new java.util.ArrayList<>();
        for (int i = 0; i < 6; i++) {
            patches.add(CardPatch.of(
                    "patch " + i, new Lab(25 + 12 * i, 20 * Math.cos(i), 20 * Math.sin(i), Viewing.D65_10)));
        }
        ReferenceCard card = new ReferenceCard("six", 2, 3, patches, 0.85, 0.5);
        PlacedCard placed = new PlacedCard(
                card,
                List.of(
                        new PixelPoint(100, 80),
                        new PixelPoint(300, 80),
                        new PixelPoint(300, 220),
                        new PixelPoint(100, 220)));
        String missing = assertThrows(
                        PhotoException.class,
                        () -> PhotoReader.read(
                                photo,
                                new Marks(List.of(placed), List.of(), List.of(Spot.hull("bow", 50, 50, 10)), false),
                                Viewing.D65_10,
                                Progress.NONE))
                .getMessage();
        assertTrue(missing.contains("not the card"), missing);
        String onCard = assertThrows(
                        PhotoException.class,
                        () -> PhotoReader.read(
                                photo,
                                new Marks(List.of(placed), List.of(), List.of(Spot.hull("bow", 200, 150, 10)), false),
                                Viewing.D65_10,
                                Progress.NONE))
                .getMessage();
        assertTrue(onCard.contains("on the card"), onCard);
    }

    @Test
    void everythingClipped() throws Exception {
        PhotoFile photo = PhotoFile.open(save(
                "white.png", Files.readAllBytes(TestPhotos.save(folder, "w.png", TestPhotos.image(400, 300, 8, (x, y) ->
                        new double[] {1, 1, 1})))));
        KnownPatch white = new KnownPatch(
                CardPatch.of("white", new Lab(95, 0, 0, Viewing.D65_10)), new PixelPoint(100, 100), 20, 0.5);
        String message = assertThrows(PhotoException.class, () -> read(photo, Spot.hull("bow", 50, 50, 10), white))
                .getMessage();
        assertTrue(message.contains("clipped") && message.contains("expos"), message);
    }

    @Test
    void crossedCorners() {
        ReferenceCard card = new ReferenceCard(
                "two",
                1,
                2,
                List.of(
                        CardPatch.of("w", new Lab(95, 0, 0, Viewing.D65_10)),
                        CardPatch.of("k", new Lab(20, 0, 0, Viewing.D65_10))),
                0.9,
                0.5);
        for (List<PixelPoint> corners : List.of(
                List.of(new PixelPoint(0, 0), new PixelPoint(9, 9), new PixelPoint(9, 0), new PixelPoint(0, 9)),
                List.of(new PixelPoint(0, 0), new PixelPoint(0, 9), new PixelPoint(9, 9), new PixelPoint(9, 0)),
                List.of(new PixelPoint(0, 0), new PixelPoint(4, 0), new PixelPoint(9, 0), new PixelPoint(0, 9)))) {
            assertTrue(assertThrows(IllegalArgumentException.class, () -> new PlacedCard(card, corners))
                    .getMessage()
                    .contains("crossed"));
        }
    }

    @Test
    void stoppingIsHeard() throws Exception {
        PhotoFile photo = PhotoFile.open(save("p.jpg", jpeg(0.8)));
        Progress stop = new Progress() {
            @Override
            public void at(double part) {
                assertTrue(part >= 0 && part <= 1);
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        assertTrue(assertThrows(PhotoException.class, () -> photo.preview(400, stop))
                .getMessage()
                .contains("stopped"));
    }

    @Test
    void withoutAnyReferenceThereIsAnAnswerWithItsTrueWidth() throws Exception {
        PhotoFile photo = PhotoFile.open(save("p.jpg", jpeg(0.8)));
        PhotoReadings bare = read(photo, Spot.hull("bow", 50, 50, 10));
        assertTrue(bare.flags().stream().anyMatch(flag -> flag.kind() == Flag.Kind.NO_REFERENCE));
        assertTrue(
                bare.spots().get(0).goodTo() > 6,
                "claims " + bare.spots().get(0).goodTo());
        Lab near = bare.spots().get(0).reading().lab();
        KnownPatch base = new KnownPatch(CardPatch.of("chip of the base", near), new PixelPoint(120, 60), 10, 0.5);
        double with =
                read(photo, Spot.hull("bow", 50, 50, 10), base).spots().get(0).goodTo();
        assertTrue(with < bare.spots().get(0).goodTo() / 2, "a chip beside the hull should help, claims " + with);
    }
}
