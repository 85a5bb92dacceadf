package tintwright.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import tintwright.files.Demo;
import tintwright.fill.Caution;
import tintwright.fill.FillJob;
import tintwright.fill.FillOrder;
import tintwright.fill.FillPlan;
import tintwright.fill.FillPlanner;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.CatalystTable;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.fill.repair.Hull;
import tintwright.units.UnitSystem;

class JobSheetTest {
    /** A number with drops, or a percentage by mass or by volume, in a passage that speaks of catalyst. */
    private static final Pattern CATALYST_FIGURE =
            Pattern.compile("\\d drops?\\b|(?i:catalyst|peroxide)\\D{0,40}\\d[\\d.]* (?:%|g|ml|oz)");

    private static Sheet sheet(FillOrder order, UnitSystem units) {
        return JobSheet.of(order, FillPlanner.plan(order.job()), LocalDate.of(2026, 5, 3), units, Optional.empty());
    }

    private static FillOrder with(CatalystChoice catalyst) {
        FillOrder demo = Demo.fillOrder();
        FillJob job = demo.job();
        return new FillOrder(
                demo.boat(),
                demo.place(),
                demo.colour(),
                demo.recipe(),
                new FillJob(
                        job.lines(),
                        job.materials(),
                        job.conditions(),
                        catalyst,
                        job.allowances(),
                        job.tools(),
                        job.supply(),
                        job.surface(),
                        job.hull(),
                        job.noted()));
    }

    private static List<FillOrder> orders() {
        return List.of(
                Demo.fillOrder(),
                with(new CatalystChoice.Typed(new CatalystShare(3, Basis.MASS))),
                with(new CatalystChoice.Typed(new CatalystShare(1.2, Basis.VOLUME))),
                with(new CatalystChoice.Own(new CatalystTable(
                        "plain white base",
                        List.of(new CatalystTable.Row(
                                20, new CatalystShare(2.4, Basis.MASS), new WorkingTime(15, 22)))))));
    }

    /** Every passage of the sheet a person reads as one: a paragraph, a cell under its title, a step. */
    private static List<String> passages(Sheet sheet) {
        List<String> passages = new ArrayList<>(List.of(sheet.title(), sheet.subtitle(), sheet.footer()));
        for (Block block : sheet.blocks()) {
            if (block instanceof Block.Text text) {
                passages.add(text.text());
            } else if (block instanceof Block.Facts facts) {
                facts.facts().forEach(fact -> passages.add(fact.label() + ": " + fact.value()));
            } else if (block instanceof Block.Timeline day) {
                day.moments().forEach(moment -> passages.add(moment.words()));
            } else if (block instanceof Block.Notice notice) {
                passages.addAll(notice.lines());
            } else if (block instanceof Block.Table table) {
                table.rows().forEach(row -> {
                    for (int i = 0; i < row.size(); i++) {
                        passages.add(table.columns().get(i).title() + ": " + row.get(i));
                    }
                });
            }
        }
        return passages;
    }

    @Test
    void noCatalystFigureStandsWithoutBasisLimitAndCaution() {
        int figures = 0;
        int expected = 0;
        for (FillOrder order : orders()) {
            for (UnitSystem units : UnitSystem.values()) {
                expected += 1 + FillPlanner.plan(order.job()).batches().size();
                for (String passage : passages(sheet(order, units))) {
                    if (CATALYST_FIGURE.matcher(passage).find()) {
                        figures++;
                        assertTrue(passage.contains("by mass") || passage.contains("by volume"), passage);
                        assertTrue(passage.contains("limit 1.2 to 3 %"), passage);
                        assertTrue(passage.contains(CatalystShare.CAUTION), passage);
                    }
                }
            }
        }
        // The share once and every batch: the pattern really finds them.
        assertEquals(expected, figures);
        assertTrue(figures >= 4 * 2 * 7, "figures: " + figures);
    }

    @Test
    void everyPassageIsInThePdfInTheHtmlAndOnTheTerminal() throws IOException {
        for (UnitSystem units : UnitSystem.values()) {
            Sheet sheet = sheet(Demo.fillOrder(), units);
            String html = plain(HtmlSheet.of(sheet).replaceAll("<[^>]*>", " "));
            String terminal = plain(String.join(" ", TextSheet.of(sheet)));
            for (String passage : passages(sheet)) {
                String value = plain(passage.substring(passage.indexOf(": ") + 1));
                assertTrue(html.contains(value), value);
                assertTrue(terminal.contains(value), value);
            }
            String pdf;
            try (PDDocument document = Loader.loadPDF(PdfSheet.of(sheet, Paper.A4))) {
                pdf = plain(new PDFTextStripper().getText(document));
            }
            // Cells stand side by side in a PDF, so words are looked for one by one there.
            for (String passage : passages(sheet)) {
                for (String word :
                        plain(passage.substring(passage.indexOf(": ") + 1)).split(" ")) {
                    assertTrue(pdf.contains(word), word + " of " + passage);
                }
            }
        }
    }

    private static String plain(String text) {
        return text.replace("&quot;", "\"")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ")
                .trim();
    }

    @Test
    void theWorkedJobFitsTheTwoSidesOfOneLeafOfEitherPaper() throws IOException {
        for (UnitSystem units : UnitSystem.values()) {
            for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
                try (PDDocument document = Loader.loadPDF(PdfSheet.of(sheet(Demo.fillOrder(), units), paper))) {
                    assertTrue(document.getNumberOfPages() <= 2, units + ", " + paper);
                }
            }
        }
    }

    @Test
    void allCautionsAreOnTheSheet() {
        List<String> passages = passages(sheet(Demo.fillOrder(), UnitSystem.METRIC));
        for (Caution caution : Caution.values()) {
            assertTrue(passages.contains(caution.words()), caution.name());
        }
    }

    @Test
    void theRecipeIsScaledToTheJob() {
        FillOrder order = Demo.fillOrder();
        FillPlan plan = FillPlanner.plan(order.job());
        double sum = order.recipeFor(plan.gelCoatGrams()).stream()
                .mapToDouble(FillOrder.Ingredient::grams)
                .sum();
        assertEquals(plan.gelCoatGrams(), sum, 1e-9);
        String white = UnitSystem.METRIC.weighed(116.4 / 120 * sum, 0.01);
        assertTrue(
                passages(sheet(order, UnitSystem.METRIC)).stream()
                        .anyMatch(passage -> passage.startsWith("plain white: " + white)),
                white);
    }

    @Test
    void aBareJobMakesASheetToo() {
        FillJob job = Demo.fillOrder().job();
        FillOrder bare = new FillOrder(
                "",
                "",
                "",
                List.of(),
                new FillJob(
                        job.lines(),
                        job.materials(),
                        job.conditions(),
                        job.catalyst(),
                        job.allowances(),
                        job.tools(),
                        Optional.empty(),
                        Optional.empty(),
                        Hull.UNKNOWN,
                        List.of()));
        assertEquals("Fill job", sheet(bare, UnitSystem.METRIC).title());
        assertTrue(HtmlSheet.of(sheet(bare, UnitSystem.METRIC)).endsWith("</html>\n"));
    }
}
