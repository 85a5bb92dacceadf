package tintwright.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Color;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.job.BenchFile;
import tintwright.bench.top.BenchTop;
import tintwright.bench.top.KeptBench;
import tintwright.cup.Deed;
import tintwright.window.Desks;

/** The pages in a real browser, as small as a phone. Skipped where no chromedriver is installed. */
class PhoneInABrowserTest {
    private static Browser browser;

    @TempDir
    Path folder;

    private final MovedClock clock = new MovedClock();
    private KeptBench bench;
    private PhoneServer server;
    private String pages;

    @BeforeAll
    static void start() throws Exception {
        assumeTrue(Browser.installed(), "no chromedriver on the path: the phone's pages are not tried in a browser");
        browser = new Browser();
    }

    @BeforeEach
    void open() throws Exception {
        Path job = folder.resolve("bench.json");
        BenchFile.keep(job, Optional.empty(), PhonePagesTest.job());
        bench = KeptBench.open(job, clock, Desks::learn, Optional.empty());
        server = PhoneServer.open(PhoneRefusalsTest.here(), 0, bench.top(), folder.resolve("photos"), clock);
        browser.anew();
        browser.open(server.invitation());
        browser.press("button.main");
        assertTrue(browser.says("Weigh in"), "let in");
        pages = browser.ask("location.href").replaceFirst("[a-z]*$", "");
    }

    /** A clock that runs, and that a test can set forward. */
    private static final class MovedClock extends Clock {
        private volatile Duration forward = Duration.ZERO;

        @Override
        public Instant instant() {
            return Instant.now().plus(forward);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    private List<Deed> inTheCup() throws Exception {
        return BenchFile.read(folder.resolve("bench.json")).cup().orElseThrow().standing().stream()
                .map(entry -> entry.deed())
                .toList();
    }

    private void look(String depth, String hue) throws Exception {
        browser.open(pages + "eye");
        browser.press("input[value=" + depth + "]");
        browser.press("input[value=" + hue + "]");
        browser.press("button.main");
    }

    @AfterEach
    void close() throws Exception {
        // Not a page of a server that is gone, which asks for it again and again.
        browser.open("about:blank");
        server.close();
        bench.close();
    }

    @AfterAll
    static void end() throws Exception {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void theWholeOfAPhoneFromTheCodeOn() throws Exception {
        assertTrue(browser.ask("location.pathname").endsWith("/dose"));
        for (String page : List.of("photo", "dark", "eye", "day", "log", "dose")) {
            browser.open(pages + page);
            assertEquals("360", browser.ask("document.documentElement.scrollWidth"), page);
        }
        // A dose pressed here, and one pressed on another phone: both stand here without a press.
        browser.press("button.main");
        assertTrue(browser.says("It is in: "));
        RawPhone other = RawPhone.in(server);
        String key = browser.ask("document.querySelector('input[name=key]').value");
        other.post("dose", "key=" + key.replace("/", "%2F") + "&grams=0.4");
        assertTrue(browser.says("0.4 g soot black"));
        browser.press("a.quiet");
        assertTrue(browser.says("Put nothing more in."));
        // The day: a tick, and a clock that runs by itself.
        browser.open(pages + "day");
        browser.press("section ~ form button");
        assertTrue(browser.says("All steps"));
        aStepIsTicked();
        browser.open(pages + "dose");
        browser.open(pages + "day");
        assertEquals("1", browser.ask("document.querySelectorAll('.tick.done').length"), "a tick is kept");
        // A photo goes off by itself when it was taken; what is wrong with it comes back.
        Path film = Files.write(
                folder.resolve("film.jpg"), "\0\0\0\u0018ftypmp42, and so on".getBytes(StandardCharsets.ISO_8859_1));
        browser.open(pages + "photo");
        browser.type("#photo", film.toString());
        assertTrue(browser.says("It is a film, not a photo."));
    }

    @Test
    void theSameDosePressedHereAndOnAnotherPhoneIsOneDose() throws Exception {
        RawPhone other = RawPhone.in(server);
        String key = browser.ask("document.querySelector('input[name=key]').value");
        String grams = browser.ask("document.querySelector('input[name=grams]').value");
        browser.press("button.main");
        other.post("dose", "key=" + key.replace("/", "%2F") + "&grams=" + grams);
        assertTrue(browser.says("It is in: "));
        assertEquals(2, inTheCup().size(), "the white, and what is held back: once");
    }

    @Test
    void aCupSeenTooDarkFindsItsWayBackAndItsDabIsRead() throws Exception {
        browser.press("button.main");
        assertTrue(browser.says("It is in: "));
        browser.ask("document.querySelector('.field input').value = ''");
        browser.type(".field input", "2");
        browser.press("button.main");
        assertTrue(browser.says("2 g soot black"));
        browser.press("a.quiet");
        assertTrue(browser.says("Put nothing more in."));
        look("MUCH_TOO_DARK", "TOO_RED");
        assertTrue(browser.says("Written down: much too dark and a little too red."));
        look("MUCH_TOO_DARK", "NONE");
        assertTrue(browser.says("Written down: much too dark and no other hue."));
        browser.press("a.main");
        assertTrue(browser.says("Go this way"));
        browser.press("button.main");
        assertTrue(browser.says("Pour off"));
        browser.press("button.main");
        assertTrue(browser.says("set aside as"));
        // What the way back puts in first.
        for (int dose = 0; dose < 4 && bench.top().sight().wanted() != BenchTop.Wanted.CHIP; dose++) {
            int before = inTheCup().size();
            browser.open(pages + "dose");
            browser.press("button.main");
            for (int i = 0; i < 100 && inTheCup().size() == before; i++) {
                Thread.sleep(100);
            }
        }
        assertEquals(BenchTop.Wanted.CHIP, bench.top().sight().wanted());
        // The dab of it beside the hull, in one photo with the sheet.
        Path photo = Files.write(
                folder.resolve("dab.jpg"),
                PhoneBenches.photoOf(
                        PhonePagesTest.job().shelf(), new Color(138, 150, 140), new Color(120, 122, 124), 1500));
        browser.open(pages + "photo");
        browser.type("#photo", photo.toString());
        assertTrue(browser.says("The dab beside it too, "), browser.ask("document.querySelector('main').innerText"));
        assertTrue(inTheCup().get(inTheCup().size() - 1) instanceof Deed.Read);
    }

    /** The press brings the page anew, which takes a moment. */
    private void aStepIsTicked() throws Exception {
        String ticked = "document.querySelectorAll('.tick.done').length";
        for (int i = 0; i < 100 && !browser.ask(ticked).equals("1"); i++) {
            Thread.sleep(100);
        }
        assertEquals("1", browser.ask(ticked));
    }

    /** The whole of it but the clocks: weighing, a tick, a photo, too dark, the eye. */
    @Test
    void withoutJavaScriptEveryPageDoesItsWork() throws Exception {
        browser.withoutScripts();
        browser.open(pages + "dose");
        assertEquals("", browser.ask("document.documentElement.className"), "no script of ours ran");
        browser.press("button.main");
        assertTrue(browser.says("It is in: "));
        assertEquals(2, inTheCup().size(), "the white, and what is held back");
        browser.open(pages + "day");
        browser.press("section ~ form button");
        aStepIsTicked();
        Path film = Files.write(
                folder.resolve("film.jpg"), "\0\0\0\u0018ftypmp42, and so on".getBytes(StandardCharsets.ISO_8859_1));
        browser.open(pages + "photo");
        browser.type("#photo", film.toString());
        browser.press("button.second");
        assertTrue(browser.says("It is a film, not a photo."));
        browser.open(pages + "dose");
        browser.ask("document.querySelector('.field input').value = ''");
        browser.type(".field input", "2");
        browser.press("button.main");
        assertTrue(browser.says("2 g soot black"));
        look("MUCH_TOO_DARK", "TOO_RED");
        assertTrue(browser.says("Written down: much too dark and a little too red."));
    }

    @Test
    void aClockRingsWhenItsTimeHasCome() throws Exception {
        bench.top().act("", new BenchTop.Act.Catalysed(1)).join();
        browser.open(pages + "day");
        double left = Double.parseDouble(browser.ask("document.querySelector('[data-left]').dataset.left"));
        clock.forward = Duration.ofMillis((long) left - 4000);
        browser.open(pages + "day");
        browser.ask("(window.rung = 0, Object.defineProperty(navigator, 'vibrate',"
                + " {value: function () { window.rung += 1; }}), 0)");
        assertEquals("0", browser.ask("window.rung"), "not yet");
        for (int i = 0; i < 100 && browser.ask("window.rung").equals("0"); i++) {
            Thread.sleep(100);
        }
        assertEquals("1", browser.ask("window.rung"), "once");
        assertTrue(browser.says("now"));
    }

    @Test
    void whatIsDoneAtTheBenchStandsHereWithoutAPress() throws Exception {
        BenchTop.CupNow cup = bench.top().sight().cup().orElseThrow();
        bench.top().act(cup.key(), new BenchTop.Act.Weighed("91.5")).join();
        assertTrue(browser.says("91.5 g plain white"));
    }
}
