package tintwright.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A {@link Sheet} as PDF. The typeface travels inside the file, so it prints the same everywhere; it holds Latin,
 * Greek and Cyrillic letters, and any other letter becomes a question mark. The same sheet gives the same bytes.
 */
public final class PdfSheet {
    private PdfSheet() {}

    /** The sheet on this paper: on one page if smaller type can bring it there, else on several. */
    public static byte[] of(Sheet sheet, Paper paper) {
        return drawn(sheet.title(), HtmlSheet.of(sheet).hashCode(), paper, face -> Setting.pages(sheet, paper, face));
    }

    /**
     * Pages whose marks have found their places.
     *
     * @param title    of the document
     * @param identity the same for the same pages: PDFBox would otherwise make it from the clock
     * @param pages    asked for once the widths of letters are known
     */
    static byte[] drawn(String title, long identity, Paper paper, Function<Type, List<List<Mark>>> pages) {
        try (PDDocument document = new PDDocument()) {
            Face face = new Face(load(document, Typeface.REGULAR), load(document, Typeface.BOLD));
            document.getDocumentInformation().setTitle(title);
            document.setDocumentId(identity);
            for (List<Mark> marks : pages.apply(face)) {
                PDPage page = new PDPage(new PDRectangle((float) paper.width(), (float) paper.height()));
                document.addPage(page);
                try (PDPageContentStream ink = new PDPageContentStream(document, page)) {
                    for (Mark mark : marks) {
                        draw(ink, face, mark);
                    }
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            // Everything happens in memory: no disk or network can be at fault.
            throw new UncheckedIOException("\"" + title + "\" could not be set as PDF", e);
        }
    }

    private static PDType0Font load(PDDocument document, Typeface typeface) throws IOException {
        try (InputStream file = typeface.file().openStream()) {
            return PDType0Font.load(document, file);
        }
    }

    private static void draw(PDPageContentStream ink, Face face, Mark mark) throws IOException {
        if (mark instanceof Mark.Words words) {
            ink.beginText();
            ink.setFont(words.bold() ? face.bold : face.font, (float) words.size());
            ink.setNonStrokingColor(0.1f, 0.12f, 0.13f);
            ink.newLineAtOffset((float) words.x(), (float) words.y());
            ink.showText(face.printable(words.text()));
            ink.endText();
        } else if (mark instanceof Mark.Box box) {
            if (box.fill() != Mark.NONE) {
                ink.setNonStrokingColor(part(box.fill(), 16), part(box.fill(), 8), part(box.fill(), 0));
                ink.addRect((float) box.x(), (float) box.y(), (float) box.width(), (float) box.height());
                ink.fill();
            }
            if (box.line() != Mark.NONE) {
                ink.setStrokingColor(part(box.line(), 16), part(box.line(), 8), part(box.line(), 0));
                ink.setLineWidth(0.7f);
                ink.addRect((float) box.x(), (float) box.y(), (float) box.width(), (float) box.height());
                ink.stroke();
            }
        }
    }

    private static float part(int rgb, int shift) {
        return (rgb >> shift & 0xff) / 255f;
    }

    /** The typeface, with what it cannot show replaced and each letter's width remembered. */
    private static final class Face implements Type {
        private final PDType0Font font;
        private final PDType0Font bold;
        private final Map<Integer, Double> widths = new HashMap<>();

        Face(PDType0Font font, PDType0Font bold) {
            this.font = font;
            this.bold = bold;
        }

        @Override
        public double width(String words, double size) {
            return words.codePoints().mapToDouble(this::widthOf).sum() * size / 1000;
        }

        private double widthOf(int letter) {
            Double known = widths.get(letter);
            if (known == null) {
                known = measured(letter);
                widths.put(letter, known);
            }
            return known;
        }

        private double measured(int letter) {
            try {
                return font.getStringWidth(Character.toString(letter));
            } catch (IllegalArgumentException e) {
                return widthOf('?');
            } catch (IOException e) {
                throw new UncheckedIOException("the typeface cannot be read", e);
            }
        }

        String printable(String words) {
            StringBuilder shown = new StringBuilder();
            words.codePoints().forEach(letter -> shown.append(has(letter) ? Character.toString(letter) : "?"));
            return shown.toString();
        }

        private boolean has(int letter) {
            try {
                font.encode(Character.toString(letter));
                return true;
            } catch (IllegalArgumentException | IOException e) {
                return false;
            }
        }
    }
}
