package tintwright.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

class SheetTest {
    private static final Sheet SMALL = new Sheet(
            "Cup label",
            "Tarrowmere, port bow",
            List.of(
                    new Block.Facts(
                            List.of(new Block.Fact("Base", "plain white base"), new Block.Fact("Mass", "96.0 g"))),
                    new Block.Heading("Recipe"),
                    new Block.Table(
                            List.of(new Block.Column("What", 3, false), new Block.Column("g", 1, true)),
                            List.of(List.of("plain white base", "95.2"), List.of("black <tint> & \"co\"", "0.8"))),
                    new Block.Timeline(List.of(new Block.Moment("now", "Stir for two minutes"))),
                    new Block.Notice("Careful", List.of("Gloves and glasses.")),
                    new Block.Patch(220, 214, 190, "only a hint of the colour"),
                    new Block.Text("Ω Ж é ± ² ° – ü 船")),
            "a footer");

    private static String words(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void everyWordOfTheSheetIsInThePdfAndInTheHtml() throws IOException {
        String pdf = words(PdfSheet.of(SMALL, Paper.A4));
        String html = HtmlSheet.of(SMALL);
        for (String words : List.of(
                "Cup label",
                "Tarrowmere, port bow",
                "plain white base",
                "95.2",
                "Recipe",
                "Stir for two minutes",
                "Gloves and glasses.",
                "only a hint of the colour",
                "a footer")) {
            assertTrue(pdf.contains(words), words + " in " + pdf);
            assertTrue(html.contains(words), words + " in " + html);
        }
        assertTrue(pdf.contains("black <tint> & \"co\""));
        assertTrue(html.contains("black &lt;tint&gt; &amp; &quot;co&quot;"));
        assertFalse(html.contains("<tint>"), "a name must never become markup");
    }

    @Test
    void aLetterTheTypefaceLacksBecomesAQuestionMark() throws IOException {
        assertTrue(words(PdfSheet.of(SMALL, Paper.A4)).contains("Ω Ж é ± ² ° – ü ?"));
    }

    @Test
    void theSameSheetGivesTheSameBytes() {
        assertArrayEquals(PdfSheet.of(SMALL, Paper.LETTER), PdfSheet.of(SMALL, Paper.LETTER));
    }

    @Test
    void nothingIsDrawnOutsideTheMargins() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < 90; i++) {
            rows.add(List.of(
                    "row " + i + " with a name that goes on and on until it must be broken",
                    "Averylongwordthatfitsinnocolumnatallandhastobecutsomewhere",
                    "" + i));
        }
        Sheet big = new Sheet(
                "Long",
                "",
                List.of(
                        new Block.Table(
                                List.of(
                                        new Block.Column("Name", 2, false),
                                        new Block.Column("Word", 1, false),
                                        new Block.Column("Number", 1, true)),
                                rows),
                        new Block.Notice("Careful", Collections.nCopies(4, "words ".repeat(60)))),
                "footer");
        for (Paper paper : List.of(Paper.A4, Paper.LETTER, Paper.card(90, 55))) {
            try (PDDocument document = Loader.loadPDF(PdfSheet.of(big, paper))) {
                assertTrue(document.getNumberOfPages() > 1);
                List<TextPosition> letters = letters(document);
                assertTrue(letters.size() > 5000, "letters read back: " + letters.size());
                for (TextPosition letter : letters) {
                    assertTrue(letter.getX() >= paper.margin() - 0.6, "left of the margin: " + letter);
                    assertTrue(
                            letter.getX() + letter.getWidth() <= paper.width() - paper.margin() + 0.6,
                            "right of the margin: " + letter);
                    assertTrue(
                            letter.getY() <= paper.height() - paper.margin() + 0.6 && letter.getY() > 0,
                            "below the margin: " + letter);
                }
            }
        }
    }

    private static List<TextPosition> letters(PDDocument document) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                letters.add(letter);
            }
        }.getText(document);
        return letters;
    }

    @Test
    void smallerTypeBringsASheetOntoOnePageWhileItCan() throws IOException {
        Sheet sheet = new Sheet(
                "Steps",
                "",
                List.of(new Block.Timeline(Collections.nCopies(72, new Block.Moment("now", "a step")))),
                "");
        try (PDDocument document = Loader.loadPDF(PdfSheet.of(sheet, Paper.A4))) {
            assertEquals(1, document.getNumberOfPages());
        }
    }

    @Test
    void refusesARowOfTheWrongLength() {
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class,
                () -> new Block.Table(List.of(new Block.Column("a", 1, false)), List.of(List.of("1", "2"))));
        assertTrue(refusal.getMessage().contains("expected 1 cells"), refusal.getMessage());
    }
}
