package tintwright.logbook.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the tests of the log share: benches, stores, and the state as text that can be compared. */
public final class Folders {
    public static final Clock NOON = Clock.fixed(Instant.parse("2026-05-03T12:00:00Z"), ZoneOffset.UTC);

    private static final AtomicInteger SEEDS = new AtomicInteger();

    private Folders() {}

    public static ThisBench bench(Path under, String id) {
        return new ThisBench(id, under.resolve("home-" + id));
    }

    static LogStore open(Path folder, ThisBench bench) {
        return open(folder, bench, Disk.REAL);
    }

    static LogStore open(Path folder, ThisBench bench, Disk disk) {
        return new LogStore(folder, bench, disk, NOON, new SplittableRandom(SEEDS.incrementAndGet()), entry -> {});
    }

    public static String note(String text) {
        return "{\"text\":\"" + text + "\"}";
    }

    /** What counts today, and every word ever written, as text. */
    static String state(LogStore store) {
        return store.ask(ledger -> {
            TreeMap<String, String> all = new TreeMap<>();
            ledger.all().forEach(entry -> all.put("all " + entry.id(), text(entry)));
            ledger.current().forEach(entry -> all.put("now " + Ledger.rootOf(entry), text(entry)));
            return all.entrySet().stream().map(Object::toString).collect(Collectors.joining("\n"));
        });
    }

    private static String text(Entry entry) {
        return entry.kind() + " " + entry.boat().map(UUID::toString).orElse("-") + " " + entry.body();
    }

    static Path onlyFile(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(Pen.ENDING))
                    .reduce((a, b) -> {
                        throw new IllegalStateException("more than one file: " + a + ", " + b);
                    })
                    .orElseThrow();
        }
    }

    static int count(LogStore store) {
        return store.ask(ledger -> ledger.all().size());
    }
}
