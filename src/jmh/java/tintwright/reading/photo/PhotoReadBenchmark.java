package tintwright.reading.photo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import tintwright.colour.Lab;
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

/** A 12-megapixel JPEG with a card of 24 and three spots: reading it, against the JDK's bare decoding of it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 6, time = 2)
public class PhotoReadBenchmark {
    private static final int WIDTH = 4000;
    private static final int HEIGHT = 3000;
    private static final int PITCH = 220;
    private Path file;
    private Marks marks;
    private Marks spread;

    /** Noisy, so that the file is as heavy as a real one. */
    @Setup
    public void draw() throws IOException {
        Random random = new Random(9);
        List<CardPatch> patches = new ArrayList<>();
        int[] colours = new int[24];
        for (int i = 0; i < 24; i++) {
            colours[i] = 0xFF000000
                    | 60 + random.nextInt(160) << 16
                    | 60 + random.nextInt(160) << 8
                    | 60 + random.nextInt(160);
            Lab lab = RgbSpace.SRGB.decode(
                    (colours[i] >> 16 & 255) / 255.0, (colours[i] >> 8 & 255) / 255.0, (colours[i] & 255) / 255.0);
            patches.add(CardPatch.of("p" + i, new Lab(lab.lightness(), lab.a() * 0.95, lab.b() + 1, Viewing.D65_2)));
        }
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int column = (x - 1000) / PITCH;
                int row = (y - 1000) / PITCH;
                boolean card = x >= 1000 && y >= 1000 && column < 6 && row < 4;
                int rgb = card ? colours[6 * row + column] : 0xC0B8A8;
                int noise = (int) (random.nextGaussian() * 4);
                image.setRGB(
                        x,
                        y,
                        clip((rgb >> 16 & 255) + noise) << 16
                                | clip((rgb >> 8 & 255) + noise) << 8
                                | clip((rgb & 255) + noise));
            }
        }
        file = Files.createTempFile("photo", ".jpg");
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(0.92f);
        try (var out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), how);
        } finally {
            writer.dispose();
        }
        ReferenceCard card = new ReferenceCard("24", 4, 6, patches, 1, 0.5);
        PlacedCard placed = new PlacedCard(
                card,
                List.of(
                        new PixelPoint(1000, 1000),
                        new PixelPoint(2320, 1000),
                        new PixelPoint(2320, 1880),
                        new PixelPoint(1000, 1880)));
        marks = new Marks(
                List.of(placed),
                List.of(),
                List.of(Spot.hull("a", 2600, 1100, 60), Spot.hull("b", 2600, 1400, 60), Spot.hull("c", 2600, 1700, 60)),
                false);
        spread = new Marks(
                List.of(placed),
                List.of(),
                List.of(Spot.hull("a", 100, 100, 60), Spot.hull("b", 2600, 1400, 60), Spot.hull("c", 3900, 2900, 60)),
                false);
    }

    private static int clip(int code) {
        return Math.max(0, Math.min(255, code));
    }

    @TearDown
    public void clear() throws IOException {
        Files.delete(file);
    }

    @Benchmark
    public Object bareDecodingByTheJdk() throws IOException {
        for (Iterator<ImageReader> all = ImageIO.getImageReadersByFormatName("jpeg"); all.hasNext(); ) {
            ImageReader reader = all.next();
            if (reader.getClass().getName().startsWith("com.sun")) {
                try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
                    reader.setInput(in, true, true);
                    return reader.read(0);
                } finally {
                    reader.dispose();
                }
            }
        }
        throw new IllegalStateException("the JDK's JPEG reader is gone");
    }

    @Benchmark
    public Object readingWithMarksInTheMiddle() throws PhotoException {
        return PhotoReader.read(PhotoFile.open(file), marks, Viewing.D65_2, Progress.NONE);
    }

    @Benchmark
    public Object readingWithMarksFromCornerToCorner() throws PhotoException {
        return PhotoReader.read(PhotoFile.open(file), spread, Viewing.D65_2, Progress.NONE);
    }
}
