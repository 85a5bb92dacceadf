package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The everyday run kills 25; {@code mvn test -Dwanted.groups=study -Dtest=KillTest -Dtintwright.kills=2000} kills
 * as many as one likes.
 *
 * <p>Processes that write are killed at random moments (SIGKILL on Unix: no handler runs). This shows what survives
 * the death of the program, not of the power: for that see {@link FaultyDiskTest}.
 */
class KillTest {
    private static final int KILLS_IN_ONE_FOLDER = 25;

    @TempDir
    Path tmp;

    @Test
    void noAcknowledgedEntryIsLostIn25Kills() throws Exception {
        killMany(25, 30);
    }

    @Test
    @Tag("study")
    void noAcknowledgedEntryIsLostInManyKills() throws Exception {
        killMany(Integer.getInteger("tintwright.kills", 2000), 100);
    }

    @Test
    void twoProcessesOf1000EntriesMake2000() throws Exception {
        Path log = tmp.resolve("log");
        Process first = start(log, "left", 1, 1000);
        Process second = start(log, "left", 2, 1000);
        Set<String> said = new HashSet<>();
        said.addAll(acknowledged(first));
        said.addAll(acknowledged(second));
        assertEquals(0, first.waitFor());
        assertEquals(0, second.waitFor());
        assertEquals(2000, said.size());
        try (LogStore store = Folders.open(log, Folders.bench(tmp, "reader"))) {
            assertEquals(2000, Folders.count(store));
            assertEquals(List.of(), store.troubles());
        }
    }

    private void killMany(int kills, int longestMs) throws Exception {
        for (int done = 0; done < kills; done += KILLS_IN_ONE_FOLDER) {
            killInOneFolder(tmp.resolve("log-" + done), 1000 + done, longestMs);
        }
    }

    /** Two at a time, in one folder: as two windows of one bench, and now and then as another bench. */
    private void killInOneFolder(Path log, int firstSeed, int longestMs) throws Exception {
        Set<String> acknowledged = Collections.synchronizedSet(new HashSet<>());
        ExecutorService lanes = Executors.newFixedThreadPool(2);
        try {
            List<Callable<Integer>> all = new ArrayList<>();
            for (int i = 0; i < KILLS_IN_ONE_FOLDER; i++) {
                int seed = firstSeed + i;
                all.add(() -> killOnce(log, seed, longestMs, acknowledged));
            }
            for (Future<Integer> one : lanes.invokeAll(all)) {
                one.get();
            }
        } finally {
            lanes.shutdownNow();
        }
        assertTrue(acknowledged.size() > KILLS_IN_ONE_FOLDER, "too few to mean anything: " + acknowledged.size());
        assertEverythingIsThere(log, acknowledged);
    }

    private int killOnce(Path log, int seed, int longestMs, Set<String> acknowledged) throws Exception {
        Process writer = start(log, seed % 3 == 0 ? "right" : "left", seed, 0);
        try {
            SplittableRandom random = new SplittableRandom(seed);
            // Every tenth is killed while it still opens the log, the others once they write.
            if (seed % 10 == 0) {
                Thread.sleep(random.nextInt(200, 500));
            } else {
                int first = writer.getInputStream().read();
                acknowledgedFirst(first, writer, acknowledged);
                LockSupport.parkNanos(random.nextLong(longestMs * 1_000_000L));
            }
        } finally {
            // By its handle: killing the Process itself would close the pipe with names still in it.
            writer.toHandle().destroyForcibly();
        }
        acknowledged.addAll(acknowledged(writer));
        assertTrue(writer.waitFor() != 0, "killed, not ended");
        return seed;
    }

    /** Reads the rest of the first name, whose first letter told that the writer is at work. */
    private static void acknowledgedFirst(int firstLetter, Process writer, Set<String> acknowledged)
            throws IOException {
        if (firstLetter < 0) {
            throw new IOException(
                    "the writer ended: " + new String(writer.getErrorStream().readAllBytes(), StandardCharsets.UTF_8));
        }
        byte[] rest = writer.getInputStream().readNBytes(36);
        String name = (char) firstLetter + new String(rest, StandardCharsets.US_ASCII).trim();
        acknowledged.add(UUID.fromString(name).toString());
    }

    private void assertEverythingIsThere(Path log, Set<String> acknowledged) {
        try (LogStore store = Folders.open(log, Folders.bench(tmp, "reader"))) {
            Set<String> missing = new HashSet<>(acknowledged);
            store.ask(ledger -> missing.removeAll(
                    ledger.all().stream().map(e -> e.id().toString()).toList()));
            assertEquals(Set.of(), missing);
            List<Trouble> grave = store.troubles().stream()
                    .filter(trouble -> trouble.kind() != Trouble.Kind.TORN)
                    .toList();
            assertEquals(List.of(), grave);
        }
    }

    private Process start(Path log, String bench, int seed, int entries) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(
                        java,
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:-UsePerfData",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        KilledWriter.class.getName(),
                        log.toString(),
                        tmp.resolve("home-" + bench).toString(),
                        bench,
                        Integer.toString(seed),
                        Integer.toString(entries))
                .start();
    }

    /** Only whole lines: a name that was cut off was never heard. */
    private static Set<String> acknowledged(Process writer) throws IOException {
        Set<String> said = new HashSet<>();
        try (InputStream in = writer.getInputStream();
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.US_ASCII))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.length() == 36) {
                    said.add(line);
                }
            }
        }
        return said;
    }
}
