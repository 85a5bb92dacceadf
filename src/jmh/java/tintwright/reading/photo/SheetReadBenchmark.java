package tintwright.reading.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
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
import tintwright.colour.Viewing;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.sheet.MadeUpGreys;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.reading.photo.sheet.SheetLayout;

/** A 12-megapixel JPEG with the printed sheet in it: from the file to the hull, against the JDK's bare decoding of it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 6, time = 2)
public class SheetReadBenchmark {
    private static final int WIDTH = 4000;
    private static final int HEIGHT = 3000;
    private Path file;

    /** Noisy, so that the file is as heavy as a real one; the sheet a little turned, a third of the picture. */
    @Setup
    public void draw() throws IOException {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D ink = image.createGraphics();
        ink.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        ink.setColor(new Color(190, 184, 168));
        ink.fillRect(0, 0, WIDTH, HEIGHT);
        ink.translate(1300, 150);
        ink.rotate(0.1);
        BufferedImage page = MadeUpGreys.page(SheetLayout.A4, "K7QD");
        double scale = 2600.0 / page.getHeight();
        ink.scale(scale, scale);
        ink.drawImage(page, 0, 0, null);
        ink.scale(page.getWidth() / SheetLayout.A4.width(), page.getWidth() / SheetLayout.A4.width());
        var window = SheetLayout.A4.window();
        ink.fillRect((int) window.left(), (int) window.top(), (int) window.width(), (int) window.height());
        ink.dispose();
        Random random = new Random(9);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int rgb = image.getRGB(x, y);
                int noise = (int) (random.nextGaussian() * 4);
                image.setRGB(x, y, dimmed(rgb >> 16, noise) << 16 | dimmed(rgb >> 8, noise) << 8 | dimmed(rgb, noise));
            }
        }
        file = Files.createTempFile("sheet", ".jpg");
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
    }

    private static int dimmed(int code, int noise) {
        return Math.max(0, Math.min(255, (code & 255) * 9 / 10 + noise));
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
    public Object photoToReading() throws PhotoException {
        return SheetReader.read(
                PhotoFile.open(file), Optional.empty(), SheetContents.PAPER_ALONE, Viewing.D65_10, Progress.NONE);
    }
}
