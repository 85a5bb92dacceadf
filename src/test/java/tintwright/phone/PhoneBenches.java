package tintwright.phone;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import tintwright.files.BenchJob;

/** Jobs and photos for the tests of the phone's faces. */
public final class PhoneBenches {
    private PhoneBenches() {}

    /** @return the demo's boat with an empty cup for its first place */
    public static BenchJob job() {
        return PhonePagesTest.job();
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
