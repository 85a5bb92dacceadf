package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.colour.RgbSpace;
import tintwright.colour.Viewing;
import tintwright.reading.photo.card.CardPatch;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.PlacedCard;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Progress;

/** Each thing that can be wrong with a photo is said, and a sound photo is left in peace. */
class FlagTest {
    private static final int WIDTH = 760;
    private static final int HEIGHT = 480;
    private static final int PITCH = 80;

    @TempDir
    Path folder;

    private final List<double[]> patches = new ArrayList<>();

    FlagTest() {
        for (int i = 0; i < 24; i++) {
            double level = i < 18 ? 0.08 + 0.6 * (i * 7 % 18) / 18 : Math.pow(0.85, 1 + 3.4 * (i - 18));
            double tint = i < 18 ? 0.4 : 0;
            patches.add(new double[] {
                level * (1 + tint * Math.cos(i)),
                level * (1 + tint * Math.cos(i + 2.1)),
                level * (1 + tint * Math.cos(i + 4.2))
            });
        }
    }

    /** Changes the light at a place. */
    private interface Trouble {
        double light(int x, int y);
    }

    private double[] surface(int x, int y) {
        int column = Math.floorDiv(x - PITCH, PITCH);
        int row = Math.floorDiv(y - PITCH, PITCH);
        if (column >= 0 && column < 6 && row >= 0 && row < 4) {
            boolean inside = Math.abs((x - PITCH) % PITCH - 40) < 34 && Math.abs((y - PITCH) % PITCH - 40) < 34;
            return inside ? patches.get(6 * row + column) : new double[] {0.03, 0.03, 0.03};
        }
        return new double[] {0.5, 0.45, 0.4};
    }

    private Set<Flag.Kind> flags(Trouble trouble, int blur) throws Exception {
        Random random = new Random(4);
        double[][] light = new double[WIDTH * HEIGHT][];
        for (int i = 0; i < light.length; i++) {
            double factor = trouble.light(i % WIDTH, i / WIDTH);
            double[] s = surface(i % WIDTH, i / WIDTH);
            light[i] = new double[] {s[0] * factor, s[1] * factor, s[2] * factor};
        }
        Path file = TestPhotos.save(folder, "photo.png", TestPhotos.image(WIDTH, HEIGHT, 8, (x, y) -> {
            double[] code = new double[3];
            for (int k = 0; k < 3; k++) {
                double sum = 0;
                int count = 0;
                for (int dx = -blur; dx <= blur; dx++) {
                    int at = Math.max(0, Math.min(WIDTH - 1, x + dx));
                    sum += light[y * WIDTH + at][k];
                    count++;
                }
                code[k] = RgbSpace.toCode(sum / count) + 1.5 / 255 * random.nextGaussian();
            }
            return code;
        }));
        List<CardPatch> known = new ArrayList<>();
        for (double[] p : patches) {
            known.add(CardPatch.of(
                    "p" + known.size(),
                    RgbSpace.SRGB.decode(RgbSpace.toCode(p[0]), RgbSpace.toCode(p[1]), RgbSpace.toCode(p[2]))));
        }
        ReferenceCard card = new ReferenceCard("made", 4, 6, known, 0.85, 0.4);
        PlacedCard placed = new PlacedCard(
                card,
                List.of(
                        new PixelPoint(86, 86),
                        new PixelPoint(554, 86),
                        new PixelPoint(554, 394),
                        new PixelPoint(86, 394)));
        PhotoReadings read = PhotoReader.read(
                PhotoFile.open(file),
                new Marks(List.of(placed), List.of(), List.of(Spot.hull("hull", 660, 240, 30)), false),
                Viewing.D65_2,
                Progress.NONE);
        Set<Flag.Kind> kinds = EnumSet.noneOf(Flag.Kind.class);
        for (Flag flag : read.flags()) {
            kinds.add(flag.kind());
            assertFalse(flag.sentence().isBlank() || flag.where().isBlank());
        }
        return kinds;
    }

    @Test
    void aSoundPhotoIsLeftInPeace() throws Exception {
        assertEquals(Set.of(), flags((x, y) -> 1, 0));
    }

    @Test
    void unevenLight() throws Exception {
        assertTrue(flags((x, y) -> 0.7 + 0.3 * x / WIDTH, 0).contains(Flag.Kind.UNEVEN_LIGHT));
    }

    @Test
    void aShadowAcrossTheCard() throws Exception {
        assertTrue(flags((x, y) -> x > 320 ? 0.7 : 1, 0).contains(Flag.Kind.SHADOW_EDGE));
    }

    @Test
    void glareOnTheSpot() throws Exception {
        assertTrue(flags((x, y) -> Math.hypot(x - 650, y - 230) < 9 ? 1.8 : 1, 0)
                .contains(Flag.Kind.GLARE));
    }

    @Test
    void glareOnAPatchIsKeptOutOfIt() throws Exception {
        assertTrue(flags((x, y) -> Math.hypot(x - 126, y - 120) < 8 ? 3 : 1, 0).contains(Flag.Kind.GLARE));
    }

    @Test
    void aClippedSpotIsNotRead() throws Exception {
        PhotoException refused = assertThrows(PhotoException.class, () -> flags((x, y) -> x > 600 ? 4 : 1, 0));
        assertTrue(refused.getMessage().contains("clipped"), refused.getMessage());
        // One clipped patch is left out and named.
        assertTrue(flags((x, y) -> x > 86 && x < 154 && y > 326 && y < 394 ? 1.3 : 1, 0)
                .contains(Flag.Kind.CLIPPED));
    }

    @Test
    void aDarkSpot() throws Exception {
        assertTrue(flags((x, y) -> x > 600 ? 0.01 : 1, 0).contains(Flag.Kind.TOO_DARK));
    }

    @Test
    void aBlurredCard() throws Exception {
        assertTrue(flags((x, y) -> 1, 12).contains(Flag.Kind.BLURRED));
        assertFalse(flags((x, y) -> 1, 1).contains(Flag.Kind.BLURRED));
    }

    @Test
    void aDirtyPatchIsNamedAndLeftOut() throws Exception {
        assertTrue(flags((x, y) -> x > 246 && x < 314 && y > 166 && y < 234 ? 0.5 : 1, 0)
                .contains(Flag.Kind.DOES_NOT_FIT));
    }
}
