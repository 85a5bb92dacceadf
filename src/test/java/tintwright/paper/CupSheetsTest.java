package tintwright.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.logbook.Page;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.shelf.Parts;

class CupSheetsTest {
    private static final Lab COLOUR = new Lab(61.2, -9.6, 2.5, Viewing.D65_10);

    private static CupSheets.Told told(int tints) {
        Map<String, Double> grams = new LinkedHashMap<>(Map.of("white", 58.0));
        List<Page.Ingredient> shelf = new ArrayList<>(List.of(new Page.Ingredient("white", "plain white", "base", "")));
        List<Page.Weighing> weighings = new ArrayList<>(List.of(new Page.Weighing("white", 58, "")));
        for (int i = 0; i < tints; i++) {
            grams.put("tint" + i, 0.5);
            shelf.add(new Page.Ingredient("tint" + i, "tint paste number " + i, "tint", "unknown"));
            weighings.add(new Page.Weighing("tint" + i, 0.5, "as 1:10 letdown"));
        }
        Page.Cup cup = new Page.Cup(
                "bow 2",
                LocalDate.of(2026, 5, 3),
                Optional.empty(),
                Parts.of(grams),
                shelf,
                weighings,
                List.of(new ColourReading(
                        COLOUR, Covariance.same(0.3), Geometry.SPECULAR_EXCLUDED, FilmState.CURED, Optional.empty())),
                "a touch warm");
        return new CupSheets.Told(
                "Tarrowmere",
                "port bow",
                cup,
                Optional.of(COLOUR),
                List.of("invisible"),
                "b4fcf7dd",
                "TINTWRIGHT CUP 1");
    }

    private static String text(byte[] pdf, int pages) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(pages, document.getNumberOfPages());
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void theLabelFitsAndSaysWhatIsInTheCup() throws IOException {
        String label = text(PdfSheet.of(CupSheets.label(told(3)), CupSheets.LABEL), 1);
        for (String words : List.of(
                "Tarrowmere, port bow",
                "bow 2",
                "2026-05-03",
                "59.50",
                "b4fcf7dd",
                "plain white 97.48",
                "tint paste number 2 0.840",
                "L* 61.2 a* -9.6 b* 2.5",
                "greyish green",
                "data sheet")) {
            assertTrue(label.contains(words), words + " in: " + label);
        }
    }

    @Test
    void theCardSaysEverythingWeighedAndHowItCameOut() throws IOException {
        String card = text(PdfSheet.of(CupSheets.card(told(3)), CupSheets.CARD), 1);
        for (String words : List.of(
                "tint paste number 1 (as 1:10 letdown) 0.50",
                "plain white 97.48 58.00",
                "invisible",
                "a touch warm",
                "Take care",
                "Styrene",
                "Peroxide")) {
            assertTrue(card.contains(words), words + " in: " + card);
        }
    }

    /** Shares of 100 g must add up, however many parts there are. */
    @Test
    void alsoALongRecipeIsShownWhole() throws IOException {
        CupSheets.Told many = told(12);
        String label = text(PdfSheet.of(CupSheets.label(many), CupSheets.LABEL), 1);
        assertTrue(label.contains("tint paste number 11"), label);
        try (PDDocument card = Loader.loadPDF(PdfSheet.of(CupSheets.card(many), CupSheets.CARD))) {
            assertTrue(new PDFTextStripper().getText(card).contains("tint paste number 11 (as 1:10"));
        }
    }
}
