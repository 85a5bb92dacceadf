package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two benches write at once while a program keeps their folders in step, as docs/sharing.md tells it: it is late, brings
 * files in another order, brings one twice under another name, brings half of one first, takes a file away before it puts
 * the new one, and swaps two files for a moment.
 */
class SharedFolderTest {
    @TempDir
    private Path tmp;

    private final Set<String> acknowledged = new TreeSet<>();

    @Test
    void whatWasAcknowledgedOnEitherBenchIsThereOnBoth() throws IOException {
        for (int seed = 0; seed < 6; seed++) {
            acknowledged.clear();
            play(Files.createDirectory(tmp.resolve("round-" + seed)), new SplittableRandom(seed));
        }
    }

    private void play(Path round, SplittableRandom random) throws IOException {
        Path left = Files.createDirectory(round.resolve("left"));
        Path right = Files.createDirectory(round.resolve("right"));
        try (LogStore anna = Folders.open(left, Folders.bench(round, "anna"));
                LogStore bert = Folders.open(right, Folders.bench(round, "bert"))) {
            for (int i = 0; i < 60; i++) {
                write(random.nextBoolean() ? anna : bert, "note " + i);
                if (random.nextInt(3) == 0) {
                    boolean there = random.nextBoolean();
                    move(there ? left : right, there ? right : left, random);
                }
                if (random.nextInt(4) == 0) {
                    anna.refresh();
                    bert.refresh();
                }
            }
            settle(left, right);
            settle(right, left);
            anna.refresh();
            bert.refresh();
            assertEquals(Folders.state(anna), Folders.state(bert));
            assertEquals(60, acknowledged.size());
            assertTrue(texts(anna).containsAll(acknowledged), "lost: " + missing(anna));
            assertEquals(0, anna.waiting().size() + bert.waiting().size());
        }
        try (LogStore fresh = Folders.open(left, Folders.bench(round, "carl"))) {
            assertTrue(texts(fresh).containsAll(acknowledged), "lost: " + missing(fresh));
        }
    }

    private void write(LogStore store, String text) {
        if (store.append("note", null, Folders.note(text)) instanceof Saved.OnDisk) {
            acknowledged.add(Folders.note(text));
        }
    }

    private static Set<String> texts(LogStore store) {
        return store.ask(ledger -> ledger.all().stream().map(Entry::body).collect(Collectors.toSet()));
    }

    private Set<String> missing(LogStore store) {
        Set<String> missing = new TreeSet<>(acknowledged);
        missing.removeAll(texts(store));
        return missing;
    }

    /** What such a program does on one of its rounds; the files of a bench are older where it does not write. */
    private static void move(Path from, Path to, SplittableRandom random) throws IOException {
        List<Path> files = files(from);
        files.sort((a, b) -> random.nextInt(3) - 1 == 0 ? a.compareTo(b) : b.compareTo(a));
        for (Path file : files) {
            Path there = to.resolve(file.getFileName());
            byte[] bytes = Files.readAllBytes(file);
            if (Files.exists(there) && Files.size(there) >= bytes.length) {
                continue;
            }
            switch (random.nextInt(6)) {
                case 0 -> {
                    continue; // late
                }
                case 1 -> Files.write(there, Arrays.copyOf(bytes, random.nextInt(bytes.length)));
                case 2 -> {
                    Files.deleteIfExists(there);
                    Files.write(there, bytes);
                }
                case 3 -> Files.write(to.resolve(name(file) + " (conflict copy).jsonl"), bytes);
                case 4 -> {
                    if (Files.exists(there)) {
                        Path aside = to.resolve(file.getFileName() + ".swap");
                        Files.move(there, aside);
                        Files.write(there, bytes);
                        Files.delete(aside);
                    }
                }
                default -> {
                    Path part = to.resolve(file.getFileName() + ".part");
                    Files.write(part, bytes);
                    Files.move(part, there, StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
    }

    private static String name(Path file) {
        return file.getFileName().toString().replaceFirst("\\.jsonl$", "");
    }

    /** In the end everything has come: the longer of two files of one name counts. */
    private static void settle(Path from, Path to) throws IOException {
        for (Path file : files(from)) {
            Path there = to.resolve(file.getFileName());
            if (!Files.exists(there) || Files.size(there) < Files.size(file)) {
                Files.write(there, Files.readAllBytes(file));
            }
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return new ArrayList<>(found.filter(file -> file.toString().endsWith(Pen.ENDING))
                    .sorted()
                    .toList());
        }
    }
}
