package tintwright.phone;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import tintwright.bench.job.BenchFile;
import tintwright.bench.log.ShopLog;
import tintwright.bench.top.BenchTop;
import tintwright.bench.top.KeptBench;
import tintwright.window.Desks;

/** Takes the pictures of docs/phone.md: the demo's job on the pages of a phone of 360 pixels, in a real Chromium. */
public final class PhonePictures {
    private static final Path IMAGES = Path.of("docs", "images");

    private PhonePictures() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("phone-pictures");
        Path job = folder.resolve("bench.json");
        BenchFile.keep(job, Optional.empty(), PhonePagesTest.job());
        try (ShopLog log = ShopLog.demo(Clock.systemUTC());
                KeptBench bench = KeptBench.open(job, Clock.systemUTC(), Desks::learn, Optional.of(log));
                PhoneServer server = PhoneServer.open(
                        PhoneRefusalsTest.here(), 0, bench.top(), folder.resolve("photos"), Clock.systemUTC());
                Browser browser = new Browser()) {
            browser.open(server.invitation());
            browser.press("button.main");
            browser.says("Weigh in");
            String pages = browser.ask("location.href").replaceFirst("[a-z]*$", "");
            bench.top().act("", new BenchTop.Act.Catalysed(1)).join();
            weigh(bench, "");
            for (String page : new String[] {"photo", "dose", "day", "eye", "log"}) {
                browser.open(pages + page);
                browser.picture(IMAGES.resolve("phone-" + page + ".png"));
            }
            browser.open(pages + "log");
            browser.ask("document.querySelector('a[href^=recipe]').click()");
            browser.says("Label to print");
            browser.picture(IMAGES.resolve("phone-recipe.png"));
            weigh(bench, "2");
            for (int look = 0; look < 2; look++) {
                browser.open(pages + "eye");
                browser.press("input[value=MUCH_TOO_DARK]");
                browser.press("input[value=NONE]");
                browser.press("button.main");
                browser.says("Written down");
            }
            browser.open(pages + "dark");
            browser.picture(IMAGES.resolve("phone-dark.png"));
        }
        System.exit(0);
    }

    private static void weigh(KeptBench bench, String really) {
        BenchTop.CupNow cup = bench.top().sight().cup().orElseThrow();
        String advised = cup.deeds().now().amount().orElseThrow().shown().replace(" g", "");
        bench.top()
                .act(cup.key(), new BenchTop.Act.Weighed(really.isEmpty() ? advised : really))
                .join();
    }
}
