package tintwright.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tintwright.logbook.disk.Folders;

class LogCsvTest {
    @TempDir
    Path tmp;

    @Test
    void everyEntryIsARowAndNoCellIsAFormula() throws Exception {
        try (LogBook book =
                LogBook.open(tmp.resolve("log"), Folders.bench(tmp, "anna"), Folders.NOON, new SplittableRandom(4))) {
            UUID boat = book.begin(new Page.Boat("=HYPERLINK(\"x\")", "+7 m", Optional.empty(), "-note", List.of()))
                    .entry()
                    .id();
            UUID place = book.write(Optional.of(boat), Samples.place()).entry().id();
            book.write(
                    Optional.of(boat),
                    new Page.Cup(
                            "@cup",
                            Samples.DAY,
                            Optional.of(place),
                            Samples.parts(),
                            Samples.shelf(),
                            Samples.cup(60).weighings(),
                            Samples.cup(60).readings(),
                            ""));
            Samples.every().stream().skip(2).forEach(page -> book.write(Optional.of(boat), page));
            String csv = LogCsv.of(book);
            assertEquals('\ufeff', csv.charAt(0));
            List<CSVRecord> rows = CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(new StringReader(csv.substring(1)))
                    .getRecords();
            assertEquals(3 + Samples.every().size() - 2, rows.size());
            for (CSVRecord row : rows) {
                for (String cell : row) {
                    assertTrue(cell.isEmpty() || "=+-@".indexOf(cell.charAt(0)) < 0 || cell.matches("-[0-9.]+"), cell);
                }
            }
            CSVRecord cup = rows.get(2);
            assertEquals("'=HYPERLINK(\"x\")", cup.get("boat"));
            assertEquals("port bow", cup.get("place"));
            assertEquals("'@cup", cup.get("name"));
            assertEquals("plain white 40 g; soot black 0.21 g", cup.get("parts"));
            assertEquals("40.21", cup.get("grams"));
            assertEquals(
                    "plain white 40 g; soot black 0.31 g (as 1:10 letdown); soot black -0.1 g", cup.get("weighings"));
            assertEquals("-3.00", cup.get("a*"));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1+1",
                "-1+1",
                "@SUM(A1)",
                "  =1",
                "\t=1",
                "\r=1",
                "\n=1",
                "-",
                "-1e5",
                "+3",
                "\uff1d1+1"
            })
    void whatBeginsLikeAFormulaBecomesText(String formula) {
        assertEquals("'" + formula, Harmless.cell(formula));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "port bow", "-3.40", "0", "a=b", "60 g"})
    void plainWordsAndNumbersStayAsTheyAre(String plain) {
        assertEquals(plain, Harmless.cell(plain));
    }
}
