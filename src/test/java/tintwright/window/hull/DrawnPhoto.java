package tintwright.window.hull;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.ImageIO;
import tintwright.bench.PhotoBench;
import tintwright.colour.Lab;
import tintwright.colour.RgbSpace;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.ReferenceCard;

/** Photos drawn for tests of the window. */
public final class DrawnPhoto {
    /** The middle of the chip. */
    public static final PixelPoint CHIP = new PixelPoint(1250, 300);
    /** A place on the hull far from card and chip. */
    public static final PixelPoint HULL = new PixelPoint(1250, 760);

    private DrawnPhoto() {}

    /** @return linear red, green and blue of a colour on the screen */
    public static double[] linear(Lab colour) {
        RgbSpace.Code code = RgbSpace.SRGB.encode(colour);
        return new double[] {
            RgbSpace.toLinear(code.red()), RgbSpace.toLinear(code.green()), RgbSpace.toLinear(code.blue())
        };
    }

    /** A hull of one colour in soft light, with the card of 24 laid on it a little askew. */
    public static Path of(Path file) throws Exception {
        return of(file, new double[] {0.52, 0.60, 0.62}, new double[] {0.52, 0.60, 0.62});
    }

    /**
     * The same with a chip lying to the right of the card.
     *
     * @param hull linear red, green and blue of the hull
     * @param chip and of the chip, whose middle is {@link #CHIP}
     */
    public static Path of(Path file, double[] hull, double[] chip) throws Exception {
        ReferenceCard card = PhotoBench.cards().get(0);
        int width = 1600;
        int height = 1000;
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(5);
        double cos = Math.cos(0.12);
        double sin = Math.sin(0.12);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double u = ((x - 220) * cos + (y - 250) * sin) / 120;
                double v = (-(x - 220) * sin + (y - 250) * cos) / 120;
                double light = 1.02 - 0.0001 * x - 0.00005 * y;
                boolean onChip = Math.abs(x - CHIP.x()) < 100 && Math.abs(y - CHIP.y()) < 100;
                double[] linear = onChip ? chip : hull;
                if (u > -0.15 && v > -0.15 && u < card.columns() + 0.15 && v < card.rows() + 0.15) {
                    linear = new double[] {0.03, 0.03, 0.03};
                    boolean patch = u > 0
                            && v > 0
                            && u < card.columns()
                            && v < card.rows()
                            && Math.abs(u - Math.floor(u) - 0.5) < 0.42
                            && Math.abs(v - Math.floor(v) - 0.5) < 0.42;
                    if (patch) {
                        Lab lab = card.patch((int) v, (int) u).lab().orElseThrow();
                        linear = linear(lab);
                    }
                }
                int rgb = 0;
                double[] balance = {1.02, 0.97, 0.9};
                for (int k = 0; k < 3; k++) {
                    double code = RgbSpace.toCode(linear[k] * light * balance[k]) + 0.006 * random.nextGaussian();
                    rgb = rgb << 8 | (int) Math.round(255 * Math.max(0, Math.min(1, code)));
                }
                image.setRGB(x, y, rgb);
            }
        }
        ImageIO.write(image, "png", file.toFile());
        return file;
    }
}
