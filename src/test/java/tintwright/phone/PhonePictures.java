package tintwright.phone;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import tintwright.bench.BenchTop;
import tintwright.bench.KeptBench;
import tintwright.files.BenchFile;
import tintwright.window.Desks;

/**
 * Takes the pictures of docs/phone.md: the demo's job on the pages of a phone, in a real Chromium without a window. Its
 * name is in the environment variable CHROMIUM where it is not {@code chromium}.
 */
public final class PhonePictures {
    /** As wide as Chromium without a window goes; a phone's pages are at most that wide. */
    private static final String SIZE = "500,860";

    private PhonePictures() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("phone-pictures");
        Path job = folder.resolve("bench.json");
        BenchFile.keep(job, Optional.empty(), PhonePagesTest.job());
        try (KeptBench bench = KeptBench.open(job, Clock.systemUTC(), Desks::learn, Optional.empty());
                PhoneServer server = PhoneServer.open(
                        PhoneRefusalsTest.here(), 0, bench.top(), folder.resolve("photos"), Clock.systemUTC())) {
            RawPhone phone = RawPhone.in(server);
            String pages = server.invitation().replaceFirst("[0-9a-f]{32}/$", phone.secret() + "/");
            bench.top().act("", new BenchTop.Act.Catalysed(1)).join();
            BenchTop.CupNow cup = bench.top().sight().cup().orElseThrow();
            String white = cup.deeds().now().amount().orElseThrow().shown().replace(" g", "");
            bench.top().act(cup.key(), new BenchTop.Act.Weighed(white)).join();
            for (String page : List.of("photo", "dose", "day")) {
                take(pages + page, Path.of("docs", "images", "phone-" + page + ".png"), folder);
            }
        }
        System.exit(0);
    }

    private static void take(String page, Path picture, Path folder) throws IOException, InterruptedException {
        String chromium = System.getenv().getOrDefault("CHROMIUM", "chromium");
        int code = new ProcessBuilder(
                        chromium,
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--hide-scrollbars",
                        "--window-size=" + SIZE,
                        "--user-data-dir=" + folder.resolve("chromium"),
                        "--timeout=6000",
                        "--screenshot=" + picture.toAbsolutePath(),
                        page)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        System.out.println(code == 0 ? "Written: " + picture : chromium + " ended with " + code + " for " + picture);
    }
}
