package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.Matrix3;
import tintwright.colour.RgbSpace;
import tintwright.colour.Viewing;
import tintwright.reading.photo.card.CardPatch;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.PatchReader;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.PlacedCard;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.reading.photo.card.Region;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.Orientation;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.file.Rgb;

/** One scene, saved in every way a phone may save it, is read the same. */
class SameSceneTest {
    private static final int WIDTH = 720;
    private static final int HEIGHT = 480;
    private static final int PITCH = 80;
    /** What the issue asks for. */
    private static final double THE_SAME = 0.3;
    /** Display P3's primaries carried to D50 (SMPTE EG 432-1 chromaticities, Bradford), as phones write them. */
    private static final double[][] P3_TO_D50 = {
        {0.51512, 0.29198, 0.15710}, {0.24120, 0.69225, 0.06657}, {-0.00105, 0.04189, 0.78407}
    };

    @TempDir
    Path folder;

    private final List<double[]> patches = colours();
    private final double[][] hulls = {{0.62, 0.60, 0.52}, {0.30, 0.36, 0.42}};

    /** Linear sRGB of 24 patches: mild enough for every gamut. */
    private static List<double[]> colours() {
        List<double[]> out = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            double level = i < 18 ? 0.12 + 0.6 * (i * 7 % 18) / 18 : Math.pow(0.88, 1 + 3.2 * (i - 18));
            double tint = i < 18 ? 0.35 : 0;
            out.add(new double[] {
                level * (1 + tint * Math.cos(i)),
                level * (1 + tint * Math.cos(i + 2.1)),
                level * (1 + tint * Math.cos(i + 4.2))
            });
        }
        return out;
    }

    private double[] light(int x, int y) {
        int column = x / PITCH - 1;
        int row = y / PITCH - 1;
        if (column >= 0 && column < 6 && row >= 0 && row < 4) {
            return patches.get(6 * row + column);
        }
        return column >= 6 ? hulls[y < HEIGHT / 2 ? 0 : 1] : new double[] {0.1, 0.1, 0.1};
    }

    /** The patches state what stands before the camera, which sees a little too blue and too bright. */
    private Marks marks() {
        List<CardPatch> known = new ArrayList<>();
        for (double[] light : patches) {
            known.add(CardPatch.of(
                    "p" + known.size(),
                    RgbSpace.SRGB.decode(
                            RgbSpace.toCode(light[0] * 1.05),
                            RgbSpace.toCode(light[1]),
                            RgbSpace.toCode(light[2] * 0.9))));
        }
        ReferenceCard card = new ReferenceCard("made", 4, 6, known, 1, 0.3);
        return new Marks(
                List.of(new PlacedCard(
                        card,
                        List.of(
                                new PixelPoint(80, 80),
                                new PixelPoint(560, 80),
                                new PixelPoint(560, 400),
                                new PixelPoint(80, 400)))),
                List.of(),
                List.of(Spot.hull("light hull", 640, 120, 25), Spot.hull("dark hull", 640, 360, 25)),
                false);
    }

    private static double[] srgb(double[] light) {
        return new double[] {RgbSpace.toCode(light[0]), RgbSpace.toCode(light[1]), RgbSpace.toCode(light[2])};
    }

    /**
     * Codes with the noise that every photo has, in grains of two pixels as a demosaicked photo has it, the same
     * each time. Without noise a JPEG rounds the hue of a whole patch to full codes, which alone is 0.4.
     */
    private static double[] noisy(double[] code, int x, int y) {
        java.util.Random random = new java.util.Random(31L * (x / 2) + 7919L * (y / 2));
        random.nextInt();
        for (int k = 0; k < 3; k++) {
            code[k] += 3 / 255.0 * random.nextGaussian();
        }
        return code;
    }

    private static double[] p3(double[] light) {
        double[][] toP3 =
                Matrix3.times(Matrix3.inverse(RgbSpace.DISPLAY_P3.matrixToXyz()), RgbSpace.SRGB.matrixToXyz());
        return srgb(Matrix3.times(toP3, light));
    }

    private List<Lab> read(Path file) throws PhotoException {
        PhotoFile photo = PhotoFile.open(file);
        assertEquals(WIDTH, photo.width());
        assertEquals(HEIGHT, photo.height());
        PhotoReadings read = PhotoReader.read(photo, marks(), Viewing.D65_2, Progress.NONE);
        return read.spots().stream().map(one -> one.reading().lab()).toList();
    }

    private List<Lab> plain() throws Exception {
        return read(TestPhotos.save(
                folder,
                "plain.jpg",
                TestPhotos.jpeg(TestPhotos.image(WIDTH, HEIGHT, 8, (x, y) -> noisy(srgb(light(x, y)), x, y)))));
    }

    private static void assertSame(List<Lab> one, List<Lab> other) {
        for (int i = 0; i < 2; i++) {
            double apart = Ciede2000.between(one.get(i), other.get(i));
            assertTrue(apart <= THE_SAME, "differ by " + apart + ": " + one.get(i) + ", " + other.get(i));
        }
    }

    @Test
    void comesOutAsWhatStoodBeforeTheCamera() throws Exception {
        List<Lab> read = plain();
        for (int i = 0; i < 2; i++) {
            double[] h = hulls[i];
            Lab truth = RgbSpace.SRGB.decode(
                    RgbSpace.toCode(h[0] * 1.05), RgbSpace.toCode(h[1]), RgbSpace.toCode(h[2] * 0.9));
            assertTrue(Ciede2000.between(truth, read.get(i)) < 0.5, "off by " + Ciede2000.between(truth, read.get(i)));
        }
    }

    @Test
    void displayP3IsReadAlike() throws Exception {
        byte[] jpeg = TestPhotos.jpeg(TestPhotos.image(WIDTH, HEIGHT, 8, (x, y) -> noisy(p3(light(x, y)), x, y)));
        byte[] tagged = TestPhotos.withSegment(jpeg, 0xE2, TestPhotos.profileSegment(TestPhotos.profile(P3_TO_D50)));
        assertSame(plain(), read(TestPhotos.save(folder, "p3.jpg", tagged)));
        // Without its profile the same file is another scene: the test would notice a profile passed over. The
        // references make up for most of it, so the codes themselves are compared.
        PhotoFile with = PhotoFile.open(folder.resolve("p3.jpg"));
        assertTrue(with.profileStated() && !with.profileBroken());
        Rgb seen = new PatchReader(with, with.decode(0, 0, WIDTH, HEIGHT, Progress.NONE), with.profile())
                .read("hull", new Region.Disc(new PixelPoint(640, 120), 25))
                .sample()
                .light();
        for (int k = 0; k < 3; k++) {
            assertEquals(hulls[0][k], seen.at(k), 0.004);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8})
    void aTurnedPhotoIsReadAlike(int orientation) throws Exception {
        Orientation turn = Orientation.of(orientation);
        int storedWidth = turn.swapped() ? HEIGHT : WIDTH;
        int storedHeight = turn.swapped() ? WIDTH : HEIGHT;
        byte[] jpeg = TestPhotos.jpeg(TestPhotos.image(storedWidth, storedHeight, 8, (column, row) -> {
            int[] upright = upright(orientation, column, row);
            return noisy(srgb(light(upright[0], upright[1])), upright[0], upright[1]);
        }));
        Path file =
                TestPhotos.save(folder, "turned.jpg", TestPhotos.withSegment(jpeg, 0xE1, TestPhotos.exif(orientation)));
        assertSame(plain(), read(file));
    }

    /** Where a stored pixel belongs, straight from the meaning of the eight values in TIFF 6.0. */
    private static int[] upright(int orientation, int column, int row) {
        int right = WIDTH - 1;
        int bottom = HEIGHT - 1;
        return switch (orientation) {
            case 2 -> new int[] {right - column, row};
            case 3 -> new int[] {right - column, bottom - row};
            case 4 -> new int[] {column, bottom - row};
            case 5 -> new int[] {row, column};
            case 6 -> new int[] {right - row, column};
            case 7 -> new int[] {right - row, bottom - column};
            case 8 -> new int[] {row, bottom - column};
            default -> new int[] {column, row};
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"deep.png", "deep.tiff", "plain.png", "plain.tiff"})
    void pngAndTiffAreReadAlike(String name) throws Exception {
        int bits = name.startsWith("deep") ? 16 : 8;
        Path file = TestPhotos.save(
                folder, name, TestPhotos.image(WIDTH, HEIGHT, bits, (x, y) -> noisy(srgb(light(x, y)), x, y)));
        assertSame(plain(), read(file));
    }
}
