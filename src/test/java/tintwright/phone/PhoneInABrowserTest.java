package tintwright.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.KeptBench;
import tintwright.files.BenchFile;
import tintwright.window.Desks;

/** The pages in a real browser, as small as a phone. Skipped where no chromedriver is installed. */
class PhoneInABrowserTest {
    @TempDir
    Path folder;

    private KeptBench bench;
    private PhoneServer server;
    private Browser browser;
    private String pages;

    @BeforeEach
    void open() throws Exception {
        assumeTrue(Browser.installed(), "no chromedriver on the path: the phone's pages are not tried in a browser");
        Path job = folder.resolve("bench.json");
        BenchFile.keep(job, Optional.empty(), PhonePagesTest.job());
        bench = KeptBench.open(job, Clock.systemUTC(), Desks::learn, Optional.empty());
        server =
                PhoneServer.open(PhoneRefusalsTest.here(), 0, bench.top(), folder.resolve("photos"), Clock.systemUTC());
        browser = new Browser();
        browser.open(server.invitation());
        browser.press("button.main");
        pages = browser.ask("location.href").replaceFirst("[a-z]*$", "");
    }

    @AfterEach
    void close() throws Exception {
        if (browser != null) {
            browser.close();
            server.close();
            bench.close();
        }
    }

    @Test
    void theWholeOfAPhoneFromTheCodeOn() throws Exception {
        assertTrue(browser.ask("location.pathname").endsWith("/dose"));
        for (String page : List.of("photo", "dark", "day", "dose")) {
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
        assertEquals("1", browser.ask("document.querySelectorAll('.tick.done').length"));
        // A photo goes off by itself when it was taken; what is wrong with it comes back.
        Path film = Files.write(
                folder.resolve("film.jpg"), "\0\0\0\u0018ftypmp42, and so on".getBytes(StandardCharsets.ISO_8859_1));
        browser.open(pages + "photo");
        browser.type("#photo", film.toString());
        assertTrue(browser.says("It is a film, not a photo."));
    }
}
