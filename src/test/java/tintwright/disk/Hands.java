package tintwright.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tintwright.bench.job.BenchFile;
import tintwright.cup.Cup;
import tintwright.demo.MeteredShop;
import tintwright.files.CupFile;
import tintwright.files.FileProblem;
import tintwright.files.SettingsFile;
import tintwright.files.ShelfFile;
import tintwright.logbook.LogBook;
import tintwright.logbook.Page;
import tintwright.logbook.disk.ThisBench;
import tintwright.logbook.disk.Trouble;

/** Several processes at one cup, one shelf and one log, and what is there afterwards. */
final class Hands {
    static final int MOST_HANDS = 60;

    private Hands() {}

    static void begin(Path folder) throws FileProblem {
        CupFile.at(folder.resolve("cup.json"))
                .create(Cup.empty("bow 1", MeteredShop.places().get(0), 100, 0.01, "plain-white"));
        ShelfFile.at(folder.resolve("shelf.json")).create(MeteredShop.shelf());
    }

    /** @return a process of this class path that runs {@code main} */
    static Process start(Class<?> main, String... args) throws IOException {
        return startUnder(List.of(), main, args);
    }

    /** @param tracer the beginning of the command line: a program that runs another under its eyes */
    static Process startUnder(List<String> tracer, Class<?> main, String... args) throws IOException {
        List<String> line = new ArrayList<>(tracer);
        line.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:-UsePerfData",
                "-Xshare:auto",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                main.getName()));
        line.addAll(List.of(args));
        return new ProcessBuilder(line)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /** @return the whole lines a process said until its end */
    static Set<String> acknowledged(Process process) throws IOException {
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        Set<String> lines = new HashSet<>(
                List.of(said.substring(0, said.lastIndexOf('\n') + 1).split("\n")));
        lines.remove("");
        return lines;
    }

    /** Takes out of {@code acknowledged} what is there; every file must open. */
    static Set<String> missing(Path folder, Set<String> acknowledged) throws FileProblem {
        Set<String> missing = new HashSet<>(acknowledged);
        CupFile.read(folder.resolve("cup.json"))
                .entries()
                .forEach(entry -> missing.remove("cup hand " + entry.at().getEpochSecond() % MOST_HANDS + " time "
                        + entry.at().getEpochSecond() / MOST_HANDS));
        ShelfFile.read(folder.resolve("shelf.json")).chips().forEach(chip -> missing.remove("shelf " + chip.id()));
        ThisBench reader = new ThisBench("reader", folder.resolve("reader"));
        try (LogBook log = LogBook.open(folder.resolve("log"), reader, Clock.systemUTC(), new SecureRandom())) {
            log.all().forEach(noted -> {
                if (noted.page() instanceof Page.Remark remark) {
                    missing.remove("log " + remark.text());
                }
            });
            List<Trouble> grave = log.troubles().stream()
                    .filter(trouble -> trouble.kind() != Trouble.Kind.TORN)
                    .toList();
            assertEquals(List.of(), grave);
        }
        Path window = folder.resolve("window.json");
        Map<String, String> settings = Files.exists(window) ? SettingsFile.read(window) : Map.of();
        for (int hand = 0; hand < MOST_HANDS; hand++) {
            int kept = Integer.parseInt(settings.getOrDefault("times " + hand, "-1"));
            for (int time = 0; time <= kept; time++) {
                missing.remove("settings hand " + hand + " time " + time);
            }
            Path bench = HandWriter.benchOf(folder, hand);
            if (Files.exists(bench)) {
                int times = (int) BenchFile.read(bench).grams() - HandWriter.FIRST_GRAMS;
                for (int time = 0; time <= times; time++) {
                    missing.remove("bench hand " + hand + " time " + time);
                }
            }
        }
        return missing;
    }
}
