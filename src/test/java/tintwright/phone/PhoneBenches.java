package tintwright.phone;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.RescaleOp;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import tintwright.bench.SheetBench;
import tintwright.bench.job.Job;
import tintwright.paper.HullSheet;
import tintwright.reading.photo.sheet.Area;
import tintwright.reading.photo.sheet.SheetLayout;
import tintwright.shelf.Shelf;

/** Jobs and photos for the tests of the phone's faces. */
public final class PhoneBenches {
    private PhoneBenches() {}

    /** @return the demo's boat with an empty cup for its first place */
    public static Job job() {
        return PhonePagesTest.job();
    }

    /**
     * The printed sheet on a hull, as a phone sees it, in even light.
     *
     * @param hull in the sheet's window and all around
     * @param dab  at the window's edge
     * @param wide pixels across; half as many again down
     */
    public static byte[] photoOf(Shelf shelf, Color hull, Color dab, int wide) throws IOException {
        SheetLayout layout = SheetLayout.A4;
        BufferedImage print;
        try (PDDocument document = Loader.loadPDF(HullSheet.pdf(layout, SheetBench.signOf(shelf)))) {
            print = new PDFRenderer(document).renderImageWithDPI(0, 200);
        }
        // Paper is not burnt out in a photo that can be read.
        BufferedImage paper = new RescaleOp(0.85f, 8, null).filter(print, null);
        BufferedImage seen = new BufferedImage(wide, wide * 3 / 2, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = seen.createGraphics();
        brush.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        brush.setColor(hull);
        brush.fillRect(0, 0, seen.getWidth(), seen.getHeight());
        double scale = 0.85 * wide / layout.width();
        brush.translate(0.07 * wide, 0.12 * wide);
        brush.rotate(0.02);
        brush.scale(scale, scale);
        brush.drawImage(paper, 0, 0, (int) layout.width(), (int) layout.height(), null);
        fill(brush, layout.window(), hull);
        fill(brush, layout.dab(), dab);
        brush.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(seen, "jpg", out);
        return out.toByteArray();
    }

    private static void fill(Graphics2D brush, Area area, Color colour) {
        brush.setColor(colour);
        brush.fill(new Rectangle2D.Double(area.left(), area.top(), area.width(), area.height()));
    }

    /** The label as a phone sees it from a hand's width: small in the picture, askew, on a grey bench, as JPEG. */
    public static byte[] photoOf(byte[] label) throws IOException {
        BufferedImage print;
        try (PDDocument document = Loader.loadPDF(label)) {
            print = new PDFRenderer(document).renderImageWithDPI(0, 300);
        }
        BufferedImage seen = new BufferedImage(2000, 1500, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = seen.createGraphics();
        brush.setColor(new Color(120, 118, 112));
        brush.fillRect(0, 0, 2000, 1500);
        brush.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        brush.translate(480, 380);
        brush.rotate(0.2);
        brush.drawImage(print, 0, 0, null);
        brush.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(seen, "jpg", out);
        return out.toByteArray();
    }
}
