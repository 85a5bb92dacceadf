package tintwright.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boofcv.abst.fiducial.QrCodeDetector;
import boofcv.alg.fiducial.qrcode.QrCode;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tintwright.reading.photo.sheet.Area;
import tintwright.reading.photo.sheet.SheetLayout;

/** The printed page itself: drawn by PDFBox's renderer, its codes read back. */
class HullSheetTest {
    private static final double DPI = 150;
    private static final double PIXELS_PER_MM = DPI / 25.4;

    @ParameterizedTest
    @ValueSource(strings = {"A4", "US"})
    void thePageIsOfItsPaperAndItsCodesStandWhereTheLayoutSays(String name) throws Exception {
        SheetLayout layout = SheetLayout.ALL.stream()
                .filter(one -> one.code().equals(name))
                .findFirst()
                .orElseThrow();
        BufferedImage page;
        try (PDDocument document = Loader.loadPDF(HullSheet.pdf(layout, "K7QD"))) {
            assertEquals(1, document.getNumberOfPages());
            PDRectangle box = document.getPage(0).getMediaBox();
            assertEquals(layout.width(), box.getWidth() * 25.4 / 72, 0.01);
            assertEquals(layout.height(), box.getHeight() * 25.4 / 72, 0.01);
            page = new PDFRenderer(document).renderImageWithDPI(0, (float) DPI);
        }
        GrayU8 grey = new GrayU8(page.getWidth(), page.getHeight());
        for (int y = 0; y < grey.height; y++) {
            for (int x = 0; x < grey.width; x++) {
                grey.unsafe_set(x, y, page.getRGB(x, y) >> 8 & 255);
            }
        }
        QrCodeDetector<GrayU8> detector = FactoryFiducial.qrcode(null, GrayU8.class);
        detector.process(grey);
        Map<String, QrCode> found = new TreeMap<>();
        detector.getDetections().forEach(code -> found.put(code.message, code));
        assertEquals(4, found.size());
        for (int corner = 1; corner <= 4; corner++) {
            QrCode code = found.get("TWS1-" + name + "-K7QD-" + corner);
            Area place = layout.code(corner);
            // Upright: the first corner of the bounds is the upper left one. A pixel is 0.17 mm.
            assertEquals(place.left(), code.bounds.get(0).x / PIXELS_PER_MM, 0.3);
            assertEquals(place.top(), code.bounds.get(0).y / PIXELS_PER_MM, 0.3);
        }
        for (Area patch : layout.paper()) {
            for (double x : new double[] {patch.left(), patch.middleX(), patch.right()}) {
                for (double y : new double[] {patch.top(), patch.middleY(), patch.bottom()}) {
                    int value = grey.get((int) (x * PIXELS_PER_MM), (int) (y * PIXELS_PER_MM));
                    assertTrue(value > 250, "ink on the bare paper at " + x + ", " + y + " mm");
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"K7QD"})
    void theSameSheetGivesTheSameBytes(String shop) {
        assertArrayEquals(HullSheet.pdf(SheetLayout.A4, shop), HullSheet.pdf(SheetLayout.A4, shop));
    }
}
