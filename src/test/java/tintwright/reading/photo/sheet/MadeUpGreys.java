package tintwright.reading.photo.sheet;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import tintwright.paper.HullSheet;

/** The sheet's own PDF, drawn, laid into made-up grey scenes and taken with a made-up camera. */
public final class MadeUpGreys {
    private static final double DPI = 200;
    private static final double DOTS = DPI / 25.4;
    private static final Map<String, BufferedImage> PAGES = new ConcurrentHashMap<>();

    private static final byte[] CODES = new byte[4096];

    static {
        for (int i = 0; i < CODES.length; i++) {
            CODES[i] = (byte) Math.round(255 * Math.pow(i / 4095.0, 1 / 2.2));
        }
    }

    /** How the scene is lit and taken. */
    record Taken(double exposure, double slope, double shadow, double noise, double blur, float quality, int longest) {
        static final Taken WELL = new Taken(0.8, 0.1, 0, 0.01, 0.6, 0.9f, Integer.MAX_VALUE);
    }

    private MadeUpGreys() {}

    public static BufferedImage page(SheetLayout layout, String shop) {
        return PAGES.computeIfAbsent(layout.code() + shop, key -> {
            try (PDDocument document = Loader.loadPDF(HullSheet.pdf(layout, shop))) {
                BufferedImage drawn = new PDFRenderer(document).renderImageWithDPI(0, (float) DPI);
                BufferedImage grey =
                        new BufferedImage(drawn.getWidth(), drawn.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
                Graphics2D ink = grey.createGraphics();
                ink.drawImage(drawn, 0, 0, null);
                ink.dispose();
                return grey;
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        });
    }

    /**
     * @param background 0 a smooth hull, 1 planks, 2 clutter of boxes and print
     * @return the photo's codes, 0 to 255
     */
    static GreyPicture photo(MadeUpView view, SheetLayout layout, String shop, int background, Taken taken, long seed) {
        Random random = new Random(seed);
        BufferedImage page = page(layout, shop);
        byte[] texture = ((DataBufferByte) page.getRaster().getDataBuffer()).getData();
        int pageWidth = page.getWidth();
        int pageHeight = page.getHeight();
        double hull = 0.05 + 0.8 * random.nextDouble();
        double[] chips = random.doubles(layout.places().size(), 0.03, 0.9).toArray();
        float[] light = background(view.width, view.height, background, hull, random);
        double[] at = new double[2];
        int half = 2;
        for (int y = 0; y < view.height; y++) {
            for (int x = 0; x < view.width; x++) {
                if (!view.sees(x + 0.5, y + 0.5, at) || outside(layout, at)) {
                    continue;
                }
                double sum = 0;
                for (int i = 0; i < half * half; i++) {
                    view.sees(x + (i % half + 0.5) / half, y + (Math.floorDiv(i, half) + 0.5) / half, at);
                    sum += sheet(layout, texture, pageWidth, pageHeight, at, hull, chips);
                }
                light[y * view.width + x] = (float) (sum / (half * half));
            }
        }
        double[] bell = new double[1 << 16];
        for (int i = 0; i < bell.length; i++) {
            bell[i] = random.nextGaussian();
        }
        int next = 0;
        double angle = 2 * Math.PI * random.nextDouble();
        double edge = 0.3 * random.nextGaussian();
        float[] seen = blurred(light, view.width, view.height, taken.blur());
        byte[] out = new byte[seen.length];
        for (int y = 0; y < view.height; y++) {
            double v = 2.0 * y / view.height - 1;
            next = random.nextInt(bell.length);
            for (int x = 0; x < view.width; x++) {
                double u = 2.0 * x / view.width - 1;
                double along = u * Math.cos(angle) + v * Math.sin(angle);
                double lit = 1 + taken.slope() * along - (along > edge ? taken.shadow() : 0) - 0.1 * (u * u + v * v);
                double signal = seen[y * view.width + x] * lit * taken.exposure();
                signal += taken.noise() * Math.sqrt(Math.max(signal, 0) + 0.02) * bell[next++ & bell.length - 1];
                out[y * view.width + x] = CODES[(int) (4095 * Math.max(0, Math.min(1, signal)))];
            }
        }
        return saved(out, view.width, view.height, taken);
    }

    private static boolean outside(SheetLayout layout, double[] at) {
        return at[0] < 0 || at[1] < 0 || at[0] >= layout.width() || at[1] >= layout.height();
    }

    private static double sheet(
            SheetLayout layout, byte[] texture, int width, int height, double[] at, double hull, double[] chips) {
        Area window = layout.window();
        if (in(window, at)) {
            return hull;
        }
        for (int i = 0; i < chips.length; i++) {
            Area place = layout.places().get(i);
            if (in(Area.about(place.middleX(), place.middleY(), 30, 30), at)) {
                return chips[i];
            }
        }
        int x = Math.min(width - 1, Math.max(0, (int) (at[0] * DOTS)));
        int y = Math.min(height - 1, Math.max(0, (int) (at[1] * DOTS)));
        double code = (texture[y * width + x] & 255) / 255.0;
        return 0.05 + 0.80 * code * code;
    }

    private static boolean in(Area area, double[] at) {
        return at[0] >= area.left() && at[0] < area.right() && at[1] >= area.top() && at[1] < area.bottom();
    }

    private static float[] background(int width, int height, int kind, double hull, Random random) {
        float[] light = new float[width * height];
        int boxes = kind == 2 ? 150 : kind == 1 ? 12 : 0;
        java.util.Arrays.fill(light, (float) (kind == 0 ? hull : 0.15 + 0.3 * random.nextDouble()));
        for (int i = 0; i < boxes; i++) {
            int w = kind == 1 ? width : 4 + random.nextInt(width / 6);
            int h = kind == 1 ? 3 + random.nextInt(6) : 4 + random.nextInt(height / 6);
            int x = kind == 1 ? 0 : random.nextInt(width);
            int y = random.nextInt(height);
            float value = (float) (0.02 + 0.9 * random.nextDouble());
            for (int row = y; row < Math.min(height, y + h); row++) {
                java.util.Arrays.fill(light, row * width + x, row * width + Math.min(width, x + w), value);
            }
        }
        return light;
    }

    /** A blur of this standard deviation, pixels, along rows and then columns. */
    static float[] blurred(float[] light, int width, int height, double sigma) {
        if (sigma <= 0) {
            return light;
        }
        int reach = (int) Math.ceil(3 * sigma);
        float[] kernel = new float[2 * reach + 1];
        float sum = 0;
        for (int i = -reach; i <= reach; i++) {
            kernel[i + reach] = (float) Math.exp(-i * i / (2 * sigma * sigma));
            sum += kernel[i + reach];
        }
        float[] rows = new float[light.length];
        float[] out = new float[light.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                float v = 0;
                for (int i = -reach; i <= reach; i++) {
                    v += kernel[i + reach] * light[y * width + Math.max(0, Math.min(width - 1, x + i))];
                }
                rows[y * width + x] = v / sum;
            }
        }
        for (int y = 0; y < height; y++) {
            for (int i = -reach; i <= reach; i++) {
                int from = Math.max(0, Math.min(height - 1, y + i)) * width;
                float k = kernel[i + reach] / sum;
                for (int x = 0; x < width; x++) {
                    out[y * width + x] += k * rows[from + x];
                }
            }
        }
        return out;
    }

    private static GreyPicture saved(byte[] codes, int width, int height, Taken taken) {
        try {
            BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
            image.getRaster().setDataElements(0, 0, width, height, codes);
            int longest = Math.max(width, height);
            if (longest > taken.longest()) {
                int w = width * taken.longest() / longest;
                int h = height * taken.longest() / longest;
                BufferedImage small = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
                Graphics2D ink = small.createGraphics();
                ink.drawImage(image.getScaledInstance(w, h, java.awt.Image.SCALE_AREA_AVERAGING), 0, 0, null);
                ink.dispose();
                image = small;
            }
            ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(taken.quality());
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            writer.setOutput(ImageIO.createImageOutputStream(bytes));
            writer.write(null, new IIOImage(image, null, null), how);
            writer.dispose();
            BufferedImage back = ImageIO.read(new ByteArrayInputStream(bytes.toByteArray()));
            byte[] read = ((DataBufferByte) back.getRaster().getDataBuffer()).getData();
            return new GreyPicture(back.getWidth(), back.getHeight(), read.clone(), 1);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
