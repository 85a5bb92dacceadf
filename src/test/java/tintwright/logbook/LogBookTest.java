package tintwright.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.Looks;
import tintwright.colour.Viewing;
import tintwright.logbook.disk.Folders;

class LogBookTest {
    @TempDir
    Path tmp;

    private LogBook open() {
        return LogBook.open(
                tmp.resolve("log"), Folders.bench(tmp, "anna"), Folders.NOON, new SplittableRandom(System.nanoTime()));
    }

    @Test
    void everyPageComesBackAsItWasWritten() {
        UUID boat;
        try (LogBook book = open()) {
            boat = book.begin(Samples.boat()).entry().id();
            Samples.every().stream().skip(1).forEach(page -> book.write(Optional.of(boat), page));
        }
        try (LogBook again = open()) {
            List<Page> pages = again.of(boat).stream().map(Noted::page).toList();
            assertEquals(Samples.every().toString(), pages.toString());
            assertEquals(
                    List.of(Samples.boat()),
                    again.boats().stream().map(Noted::page).toList());
            assertEquals(PageShape.body(Samples.target()), PageShape.body(pages.get(2)));
            assertEquals(PageShape.body(Samples.chip()), PageShape.body(pages.get(4)));
            assertEquals(Samples.cup(60).parts(), ((Page.Cup) pages.get(3)).parts());
        }
    }

    @Test
    void aCorrectionChangesWhatIsReadAndKeepsTheNameAndTheHistory() {
        try (LogBook book = open()) {
            UUID boat = book.begin(Samples.boat()).entry().id();
            book.correct(boat, new Page.Boat("Tarrowmere II", "", Optional.empty(), "", List.of()));
            assertEquals(boat, book.boatsNamed("TARROWMERE ii").get(0).id());
            assertEquals(List.of(), book.boatsNamed("Tarrowmere"));
            assertEquals(2, book.history(boat).size());
            book.withdraw(boat, "sold");
            assertEquals(List.of(), book.boats());
            assertTrue(book.find(boat).isEmpty());
            assertThrows(IllegalArgumentException.class, () -> book.withdraw(Samples.CUP, "never was"));
        }
    }

    @Test
    void findsAsOneTypesWhateverTheAccentsAndTheOrder() {
        try (LogBook book = open()) {
            UUID tarrowmere = book.begin(Samples.boat()).entry().id();
            book.write(Optional.of(tarrowmere), Samples.cup(60));
            UUID other = book.begin(new Page.Boat("Gr\u00f8lle \u00c9trin", "dinghy", Optional.of(2001), "", List.of()))
                    .entry()
                    .id();
            book.write(Optional.of(other), new Page.Remark(Optional.empty(), "seen beside the Tarrowmere"));
            assertEquals(List.of(tarrowmere, other), ids(book.search("tarrow", 9)));
            assertEquals(List.of(other), ids(book.search("etrin  GROLLE", 9)));
            assertEquals(List.of(tarrowmere), ids(book.search("soot rod", 9)));
            assertEquals(List.of(), ids(book.search("soot dinghy", 9)));
            assertEquals(List.of(), ids(book.search("specular", 9)));
            assertEquals(2, book.search("", 9).size());
            book.write(Optional.of(other), new Page.Remark(Optional.empty(), "soot on the sail"));
            assertEquals(List.of(other), ids(book.search("soot dinghy", 9)));
        }
    }

    /** The first question is answered from the bytes, the second from texts that are made ready. */
    @Test
    void findsTheSameWhenAskedForTheFirstTime() {
        try (LogBook book = open()) {
            book.begin(new Page.Boat("Gr\u00f8lle \"\u00c9trin\"", "DINGHY", Optional.of(2001), "a/b", List.of()));
            UUID other = book.begin(new Page.Boat("Sallow\tQuay", "", Optional.empty(), "", List.of()))
                    .entry()
                    .id();
            book.write(Optional.of(other), new Page.Remark(Optional.empty(), "soot on the SAIL, film by film"));
        }
        for (String query : List.of(
                "",
                "etrin",
                "dinghy GROLLE",
                "a/b",
                "\"",
                "sallow quay",
                "sail quux",
                "sail",
                "film",
                "ssoot",
                "\u00d8")) {
            try (LogBook fresh = open()) {
                List<UUID> first = ids(fresh.search(query, 9));
                assertEquals(ids(fresh.search(query, 9)), first, query);
                assertEquals(query.equals("ssoot") || query.equals("sail quux"), first.isEmpty(), query);
            }
        }
    }

    @Test
    void findsByThePlainWordsOfAColour() {
        try (LogBook book = open()) {
            UUID boat = book.begin(Samples.boat()).entry().id();
            book.write(Optional.of(boat), Samples.target());
            String looks = Looks.of(new Lab(62.1, -3.4, 11, Viewing.D65_10));
            assertTrue(looks.contains("greyish"), looks);
            assertEquals(List.of(boat), ids(book.search("greyish", 9)));
        }
    }

    @Test
    void theNearestColoursComeFirstWithTheirDifference() {
        try (LogBook book = open()) {
            Optional<UUID> boat = Optional.of(book.begin(Samples.boat()).entry().id());
            UUID far = book.write(boat, Samples.cup(40)).entry().id();
            UUID near = book.write(boat, Samples.cup(61)).entry().id();
            book.write(boat, Samples.target());
            book.withdraw(book.write(boat, Samples.cup(62)).entry().id(), "wrong");
            Lab hull = new Lab(62, -3, 10, Viewing.D65_10);
            Nearest nearest = book.nearest(hull, 9);
            assertEquals(
                    List.of(near, far),
                    nearest.found().stream().map(Nearest.Found::id).toList());
            assertEquals(
                    Ciede2000.between(hull, new Lab(61, -3, 10, Viewing.D65_10)),
                    nearest.found().get(0).deltaE(),
                    1e-9);
            Nearest underLampLight = book.nearest(new Lab(62, -3, 10, Viewing.A_10), 9);
            assertEquals(List.of(), underLampLight.found());
            assertEquals(2, underLampLight.notComparable());
        }
    }

    @Test
    void anotherWindowsEntriesAreFoundAfterALook() {
        try (LogBook one = open();
                LogBook two = open()) {
            one.begin(Samples.boat());
            assertEquals(List.of(), two.search("tarrow", 9));
            two.refresh();
            assertEquals(1, two.search("tarrow", 9).size());
        }
    }

    /** Version 1 as it was frozen: it must read like this for ever. */
    @Test
    void theFirstVersionIsReadForEver() throws Exception {
        Path fixture = Path.of(LogBookTest.class.getResource("v1").toURI());
        try (LogBook book =
                LogBook.open(fixture, Folders.bench(tmp, "reader"), Folders.NOON, new SplittableRandom(1))) {
            assertEquals(List.of(), book.troubles());
            UUID boat = book.boatsNamed("Tarrowmere").get(0).id();
            List<Noted<Page>> pages = book.of(boat);
            assertEquals(
                    Samples.every().toString(),
                    pages.stream()
                            .limit(Samples.every().size())
                            .map(Noted::page)
                            .toList()
                            .toString());
            Page.Unknown moisture =
                    assertInstanceOf(Page.Unknown.class, pages.get(9).page());
            assertEquals("moisture", moisture.kind());
            assertTrue(moisture.body().contains("\"percent\":14"), moisture.body());
            assertEquals("after the correction", ((Page.Remark) pages.get(10).page()).text());
            assertEquals(11, pages.size());
            assertEquals(
                    1,
                    book.nearest(new Lab(60, -3, 10, Viewing.D65_10), 1).found().size());
        }
    }

    @Test
    void theExampleInTheDocumentIsALog() throws Exception {
        Matcher example = Pattern.compile("```jsonl\\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("docs/formats.md")));
        assertTrue(example.find());
        Files.createDirectories(tmp.resolve("log"));
        Files.writeString(tmp.resolve("log/example-0001.jsonl"), example.group(1));
        try (LogBook book = open()) {
            assertEquals(List.of(), book.troubles());
            UUID boat = book.boatsNamed("Tarrowmere").get(0).id();
            List<Noted<Page.Verdict>> verdicts = book.of(boat, Page.Verdict.class);
            assertEquals(Page.Outcome.INVISIBLE, verdicts.get(0).page().outcome());
            assertEquals(1, verdicts.size());
            assertEquals(List.of(), book.of(boat, Page.Remark.class));
            assertTrue(book.of(boat).stream().noneMatch(noted -> noted.page() instanceof Page.Unknown));
        }
    }

    private static List<UUID> ids(List<Noted<Page.Boat>> boats) {
        return boats.stream().map(Noted::id).toList();
    }
}
